import { useEditorState } from '../../app/use-session.ts';
import { DeleteKey } from './delete-key.tsx';
import { NumberBox } from './number-box.tsx';
import { TubeKeys } from './tube-keys.tsx';
import { useChange } from './use-change.ts';

/** Old pipe nobody can see: how long and how bent it may be. */
export function InspectStretch({ id }: { readonly id: string }) {
  const stretch = useEditorState((s) => s.plan.stretches[id]);
  const service = useEditorState((s) => s.plan.runs[stretch?.run ?? '']?.service ?? '');
  const { disabled, run } = useChange();
  if (!stretch) return null;
  const set = (change: object): boolean => run('stretch.set', { stretch: id, change });
  const asRange = (v: number | { lo: number; hi: number } | null) => (typeof v === 'number' ? { lo: v, hi: v } : v);
  return (
    <>
      <NumberBox
        label="Length"
        value={stretch.lengthMm}
        unit="mm"
        min={0}
        range
        help="Lowest to highest: 3200 to 4500."
        disabled={disabled}
        onSet={(v) => v !== null && set({ lengthMm: asRange(v) })}
      />
      <NumberBox
        label="Bends in it"
        value={stretch.bends}
        min={0}
        max={100}
        range
        disabled={disabled}
        onSet={(v) => v !== null && set({ bends: asRange(v) })}
      />
      <TubeKeys service={service} tube={stretch.tube} disabled={disabled} surveyed onChoose={(tube) => set({ tube })} />
      <div className="key-row end-keys">
        <DeleteKey of={{ map: 'stretches', id }} word="stretch" />
      </div>
    </>
  );
}

import { GROUND_KINDS } from '../../../catalogue/ground-kinds.ts';
import { groundStorey } from '../../../geometry/ground.ts';
import type { Ground } from '../../../plan/records/building.ts';
import { useEditorState } from '../../app/use-session.ts';
import { DeleteKey } from './delete-key.tsx';
import { NumberBox } from './number-box.tsx';
import { SelectBox } from './select-box.tsx';
import { SurenessKeys } from './sureness-keys.tsx';
import { useChange } from './use-change.ts';

function kindChoices(now: string) {
  const own = now === '' || GROUND_KINDS.includes(now) ? [] : [now];
  return [{ value: null, label: 'not told' }, ...[...own, ...GROUND_KINDS].map((k) => ({ value: k, label: k }))];
}

/** Ground along the outside: what it is, and its level over the floor at each place that was measured. */
export function InspectGround({ id }: { readonly id: string }) {
  const ground = useEditorState((s) => s.plan.grounds[id]);
  const floorMm = useEditorState((s) => {
    const g = s.plan.grounds[id];
    return (g && s.plan.storeys[groundStorey(s.plan, g) ?? '']?.floorMm) ?? 0;
  });
  const { disabled, run } = useChange();
  if (!ground) return null;
  const set = (change: Partial<Ground>): boolean => {
    const { line, kind, sureness } = { ...ground, ...change };
    return run('ground.set', { ground: id, line, kind, sureness });
  };
  const setLevel = (at: number, mm: number): boolean =>
    set({ line: ground.line.map((p, i) => (i === at ? { ...p, z: floorMm + mm } : p)) });
  return (
    <>
      <SelectBox
        label="Made of"
        choices={kindChoices(ground.kind)}
        chosen={ground.kind === '' ? null : ground.kind}
        disabled={disabled}
        onChoose={(kind) => set({ kind: kind ?? '' })}
      />
      <h3>Level over the floor</h3>
      <p className="inspect-says">Below the floor is less than nothing: -150.</p>
      <div className="pair">
        {ground.line.map((p, i) => (
          <NumberBox
            key={`${p.x} ${p.y}`}
            label={`Place ${i + 1}`}
            value={p.z - floorMm}
            unit="mm"
            min={-20_000}
            max={20_000}
            disabled={disabled}
            onSet={(v) => typeof v === 'number' && setLevel(i, v)}
          />
        ))}
      </div>
      <SurenessKeys sureness={ground.sureness} disabled={disabled} onChoose={(sureness) => set({ sureness })} />
      <div className="key-row end-keys">
        <DeleteKey of={{ map: 'grounds', id }} word="ground level" />
      </div>
    </>
  );
}

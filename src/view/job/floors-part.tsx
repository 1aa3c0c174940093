import type { Storey } from '../../plan/records/building.ts';
import { useEditorState } from '../app/use-session.ts';
import { CopyUpward } from '../many/copy-upward.tsx';
import { NumberBox } from '../panels/inspect/number-box.tsx';
import { TextBox } from '../panels/inspect/text-box.tsx';
import { useChange } from '../panels/inspect/use-change.ts';

/** The floors of the house, the highest first. */
export function FloorsPart() {
  const storeys = useEditorState((s) => s.plan.storeys);
  return (
    <>
      {Object.values(storeys)
        .sort((a, b) => b.floorMm - a.floorMm)
        .map((s) => (
          <Floor key={s.id} storey={s} />
        ))}
      <CopyUpward />
    </>
  );
}

function Floor({ storey }: { readonly storey: Storey }) {
  const { disabled, run } = useChange();
  const set = (change: object): boolean => run('storey.set', { storey: storey.id, change });
  const measure = (key: 'floorMm' | 'ceilingMm' | 'buildUpMm', label: string) => (
    <NumberBox
      label={label}
      value={storey[key]}
      disabled={disabled}
      onSet={(v) => typeof v === 'number' && set({ [key]: v, sureness: 'seen' })}
    />
  );
  return (
    <>
      <TextBox
        label={storey.sureness === 'assumed' ? 'Floor, heights assumed until measured' : 'Floor'}
        value={storey.name}
        disabled={disabled}
        onSet={(name) => set({ name })}
      />
      <div className="triple">
        {measure('floorMm', 'Level')}
        {measure('ceilingMm', 'To ceiling')}
        {measure('buildUpMm', 'Build-up')}
      </div>
    </>
  );
}

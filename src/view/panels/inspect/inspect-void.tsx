import type { Joists } from '../../../plan/records/building.ts';
import { useEditorState } from '../../app/use-session.ts';
import { ChoiceKeys, YES_NO } from './choice-keys.tsx';
import { DeleteKey } from './delete-key.tsx';
import { NumberBox } from './number-box.tsx';
import { SelectBox } from './select-box.tsx';
import { SurenessKeys } from './sureness-keys.tsx';
import { TextBox } from './text-box.tsx';
import { useChange } from './use-change.ts';

const JOIST_KINDS = [
  { value: 'solid', label: 'solid timber' },
  { value: 'engineered', label: 'engineered' },
  { value: 'metalWeb', label: 'metal web' },
  { value: 'truss', label: 'truss' },
  { value: 'battens', label: 'battens' },
  { value: 'unknown', label: 'not known' },
];

/** A space in a floor, ceiling or boxing, and the joists in it. */
export function InspectVoid({ id }: { readonly id: string }) {
  const record = useEditorState((s) => s.plan.voids[id]);
  const { disabled, run } = useChange();
  if (!record) return null;
  const set = (change: object): boolean => run('void.set', { void: id, change });
  const { joists } = record;
  const setJoists = (change: Partial<Joists>): boolean => joists !== null && set({ joists: { ...joists, ...change } });
  return (
    <>
      <TextBox label="Name" value={record.name} disabled={disabled} onSet={(name) => set({ name })} />
      {joists && (
        <>
          <SelectBox
            label="Joists"
            choices={JOIST_KINDS}
            chosen={joists.kind}
            disabled={disabled}
            onChoose={(kind) => kind !== null && setJoists({ kind: kind as Joists['kind'] })}
          />
          <div className="pair">
            <NumberBox
              label="Centres"
              value={joists.centresMm}
              unit="mm"
              min={1}
              disabled={disabled}
              onSet={(v) => typeof v === 'number' && setJoists({ centresMm: v })}
            />
            <NumberBox
              label="They run, degrees"
              value={joists.wayDeg}
              disabled={disabled}
              onSet={(v) => typeof v === 'number' && setJoists({ wayDeg: v })}
            />
            <NumberBox
              label="Depth"
              value={joists.depthMm}
              unit="mm"
              min={1}
              empty
              disabled={disabled}
              onSet={(v) => setJoists({ depthMm: typeof v === 'number' ? v : null })}
            />
            <NumberBox
              label="Breadth"
              value={joists.breadthMm}
              unit="mm"
              min={1}
              empty
              disabled={disabled}
              onSet={(v) => setJoists({ breadthMm: typeof v === 'number' ? v : null })}
            />
          </div>
          <NumberBox
            label="Clear span"
            value={joists.spanMm}
            unit="mm"
            min={1}
            empty
            disabled={disabled}
            onSet={(v) => setJoists({ spanMm: typeof v === 'number' ? v : null })}
          />
        </>
      )}
      <ChoiceKeys
        label="May it be cut?"
        choices={YES_NO}
        chosen={record.mayBeCut}
        disabled={disabled}
        onChoose={(mayBeCut) => set({ mayBeCut })}
      />
      <ChoiceKeys
        label="Ventilated?"
        choices={YES_NO}
        chosen={record.ventilated}
        disabled={disabled}
        onChoose={(ventilated) => set({ ventilated })}
      />
      <SurenessKeys sureness={record.sureness} disabled={disabled} onChoose={(sureness) => set({ sureness })} />
      <div className="key-row end-keys">
        <DeleteKey of={{ map: 'voids', id }} word="void" />
      </div>
    </>
  );
}

import { useEditorState } from '../../app/use-session.ts';
import { ChoiceKeys, YES_NO } from './choice-keys.tsx';
import { DeleteKey } from './delete-key.tsx';
import { FateKeys } from './fate-keys.tsx';
import { NumberBox } from './number-box.tsx';
import { SurenessKeys } from './sureness-keys.tsx';
import { TextBox } from './text-box.tsx';
import { useChange } from './use-change.ts';

type Kind = 'door' | 'window' | 'vent' | 'archway';
export const OPENING_KINDS = [
  { value: 'door', label: 'door' },
  { value: 'window', label: 'window' },
  { value: 'vent', label: 'vent' },
  { value: 'archway', label: 'archway' },
] as const;

const MEASURES = [
  { key: 'widthMm', label: 'Width', min: 1 },
  { key: 'alongMm', label: 'Along the wall', min: undefined },
  { key: 'sillMm', label: 'Sill', min: undefined },
  { key: 'headMm', label: 'Head', min: undefined },
] as const;

/** A door, window, vent or archway; whether it opens matters to a flue. */
export function InspectOpening({ id }: { readonly id: string }) {
  const opening = useEditorState((s) => s.plan.openings[id]);
  const { disabled, run } = useChange();
  if (!opening) return null;
  const set = (change: object): boolean => run('opening.set', { opening: id, change });
  return (
    <>
      <ChoiceKeys<Kind>
        label="Kind"
        choices={OPENING_KINDS}
        chosen={opening.kind}
        disabled={disabled}
        onChoose={(kind) => set({ kind })}
      />
      <TextBox label="Name" value={opening.name} disabled={disabled} onSet={(name) => set({ name })} />
      <div className="pair">
        {MEASURES.map(({ key, label, min }) => (
          <NumberBox
            key={key}
            label={label}
            value={opening[key]}
            unit="mm"
            min={min}
            disabled={disabled}
            onSet={(v) => typeof v === 'number' && set({ [key]: v })}
          />
        ))}
      </div>
      <ChoiceKeys
        label="Does it open?"
        choices={YES_NO}
        chosen={opening.opens}
        disabled={disabled}
        onChoose={(opens) => set({ opens })}
      />
      <SurenessKeys sureness={opening.sureness} disabled={disabled} onChoose={(sureness) => set({ sureness })} />
      <FateKeys id={id} surveyed={opening.option === null} />
      <div className="key-row end-keys">
        <DeleteKey of={{ map: 'openings', id }} word="opening" />
      </div>
    </>
  );
}

import { useState } from 'react';
import type { Storey } from '../../plan/records/building.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { RadioKeys } from '../look/radio-keys.tsx';
import { TextBox } from '../panels/inspect/text-box.tsx';
import './many.css';

/** Floors over the lowest, by their usual names; past these they are counted. */
const NAMES = ['First floor', 'Second floor', 'Third floor'] as const;

/** A name that no floor has yet. */
export function nextName(storeys: readonly Pick<Storey, 'name'>[]): string {
  const taken = new Set(storeys.map((s) => s.name.trim().toLowerCase()));
  return NAMES.find((n) => !taken.has(n.toLowerCase())) ?? `Floor ${storeys.length}`;
}

/** The walls, doors and rooms of a floor once more on top of the highest. */
export function CopyUpward() {
  const editor = useEditor();
  const storeys = useEditorState((s) => s.plan.storeys);
  const shown = useEditorState((s) => (s.panes.plan.view.kind === 'plan' ? s.panes.plan.view.storey : ''));
  const hasVoids = useEditorState((s) => Object.values(s.plan.voids).some((v) => v.storey === shown));
  const disabled = useEditorState((s) => s.readOnly !== null);
  const all = Object.values(storeys);
  const [told, setTold] = useState<string | null>(null);
  const [voids, setVoids] = useState(false);
  const [made, setMade] = useState<string | null>(null);
  const from = storeys[shown];
  if (!from) return null;
  const name = told ?? nextName(all);
  const copy = (): void => {
    if (disabled) return;
    const outcome = editor.run('storey.duplicate', { storey: from.id, name, voids: voids && hasVoids });
    const [storey] = outcome.ok ? outcome.made : [];
    if (storey === undefined) return;
    setTold(null);
    setMade(storey);
    editor.setStorey(storey);
    editor.zoomToFit();
  };
  const untold =
    made === null ? 0 : Object.values(editor.store.getState().plan.rooms).filter((r) => r.storey === made).length;
  return (
    <fieldset className="plain-set copy-upward">
      <legend className="field-label">Copy {from.name || 'this floor'} upward</legend>
      <TextBox label="Name of the new floor" value={name} disabled={disabled} onSet={setTold} />
      {hasVoids && (
        <RadioKeys
          legend="Its voids"
          className="two-keys"
          choices={[
            { value: false, label: 'leave out' },
            { value: true, label: 'copy too' },
          ]}
          chosen={voids}
          disabled={disabled}
          onChoose={setVoids}
        />
      )}
      <button type="button" className="key slight block" aria-disabled={disabled} onClick={copy}>
        Copy walls and rooms upward
      </button>
      <p className="field-help" role="status">
        {made !== null && storeys[made]
          ? `${storeys[made].name} is there, all of it assumed until measured. ${
              untold === 0
                ? ''
                : `Tell of ${untold === 1 ? 'its room' : `its ${untold} rooms`} what each is for and whether it is heated.`
            }`
          : 'It stands over the highest ceiling. Its rooms are not told what they are for, and all of it is assumed until measured.'}
      </p>
    </fieldset>
  );
}

import { useState } from 'react';
import type { Option } from '../../plan/records/statements.ts';
import { screen } from '../app/screen.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { TextBox } from '../panels/inspect/text-box.tsx';
import { useChange } from '../panels/inspect/use-change.ts';
import { sayNew, sayWhat } from './say-option.ts';

const sentence = (s: string): string => s.charAt(0).toUpperCase() + s.slice(1);

/** Name and note of one option, and what is done with it as a whole. */
export function OptionForm({ option }: { readonly option: Option }) {
  const { disabled, run } = useChange();
  const plan = useEditorState((s) => s.plan);
  const [asking, setAsking] = useState(false);
  const set = (change: Partial<Pick<Option, 'name' | 'note'>>): void =>
    void run('option.set', { option: option.id, change });
  return (
    <div className="option-form">
      <TextBox
        label="Name"
        value={option.name}
        disabled={disabled}
        onSet={(name) => name.trim() !== '' && set({ name: name.trim() })}
      />
      <TextBox label="Note" rows={2} value={option.note} disabled={disabled} onSet={(note) => set({ note })} />
      <p className="options-says">{sentence(sayWhat(plan, option.id))}.</p>
      {asking ? (
        <Asked option={option} onKeep={() => setAsking(false)} />
      ) : (
        <div className="key-row">
          <CopyKey option={option} disabled={disabled} />
          <button
            type="button"
            className="key slight warn"
            aria-disabled={disabled}
            onClick={() => !disabled && setAsking(true)}
          >
            Delete
          </button>
        </div>
      )}
    </div>
  );
}

/** The copy is what is looked at from then on: it is made to be changed. */
function CopyKey({ option, disabled }: { readonly option: Option; readonly disabled: boolean }) {
  const editor = useEditor();
  const copy = (): void => {
    if (disabled) return;
    const done = editor.run('option.copy', { option: option.id });
    const made = done.ok ? done.made[0] : undefined;
    if (made !== undefined) editor.setCase({ option: made, when: 'after' });
  };
  return (
    <button type="button" className="key slight" aria-disabled={disabled} onClick={copy}>
      Copy {option.name}
    </button>
  );
}

function Asked({ option, onKeep }: { readonly option: Option; readonly onKeep: () => void }) {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const goes = sayNew(plan, option.id);
  const remove = (): void => {
    const { chosen } = editor.store.getState();
    if (!editor.run('option.delete', { option: option.id }).ok) return;
    const { revision } = editor.store.getState();
    const undo = (): void => {
      // What was done since is not undone in its place.
      if (editor.store.getState().revision !== revision || !editor.undo().ok) return;
      editor.setCase(chosen);
    };
    screen.setState({ undone: { text: `Option ${option.name} was deleted.`, undo } });
  };
  return (
    <div className="option-asked" role="alertdialog" aria-label={`Delete option ${option.name}?`}>
      <p>
        Delete option {option.name}? {goes === '' ? 'Nothing new is drawn in it.' : `${goes} go with it.`} What was
        surveyed stays.
      </p>
      <div className="key-row">
        <button type="button" className="key slight warn" onClick={remove}>
          Delete it
        </button>
        <button type="button" className="key slight" onClick={onKeep}>
          Keep it
        </button>
      </div>
    </div>
  );
}

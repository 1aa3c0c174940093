import { useState } from 'react';
import { useEditorState } from '../app/use-session.ts';
import { TextBox } from '../panels/inspect/text-box.tsx';
import { useChange } from '../panels/inspect/use-change.ts';

/** The ways the work could be done, each with a name. */
export function OptionsPart() {
  const options = useEditorState((s) => s.plan.options);
  const { disabled, run } = useChange();
  const [name, setName] = useState('');
  const add = (): void => {
    if (name.trim() !== '' && run('option.add', { name: name.trim() })) setName('');
  };
  return (
    <>
      {Object.values(options).map((o) => (
        <TextBox
          key={o.id}
          label="Option"
          value={o.name}
          disabled={disabled}
          onSet={(value) => run('option.set', { option: o.id, change: { name: value } })}
        />
      ))}
      <form
        className="key-row"
        onSubmit={(e) => {
          e.preventDefault();
          add();
        }}
      >
        <label className="field grow">
          <span className="field-label">A further option</span>
          <span className="field-box">
            <input value={name} onChange={(e) => setName(e.target.value)} />
          </span>
        </label>
        <button type="submit" className="key slight" aria-disabled={disabled || name.trim() === ''}>
          Add
        </button>
      </form>
    </>
  );
}

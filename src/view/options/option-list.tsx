import { useState } from 'react';
import { nextOptionName } from '../../editor/later/option-things.ts';
import { setOver } from '../app/screen.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { KickTurn } from '../look/kick.tsx';
import { useChange } from '../panels/inspect/use-change.ts';
import { OptionForm } from './option-form.tsx';
import { sayWhat } from './say-option.ts';
import './options.css';

/** The ways the work could be done. A tap looks at one; the one that is looked at can be copied, named and deleted. */
export function OptionList() {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const chosen = useEditorState((s) => s.chosen);
  const { disabled } = useChange();
  const [open, setOpen] = useState<string | null>(null);
  const options = Object.values(plan.options).sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  const add = (): void => {
    if (disabled) return;
    const done = editor.run('option.copy', { option: null });
    const made = done.ok ? done.made[0] : undefined;
    if (made !== undefined) editor.setCase({ option: made, when: 'after' });
  };
  return (
    <div className="options">
      {options.length === 0 && <p className="fold-says">No option yet: what is drawn is as it was surveyed.</p>}
      <ul className="option-list">
        {options.map((o) => {
          const looked = chosen.when === 'after' && chosen.option === o.id;
          const under = o.note.split('\n')[0] || sayWhat(plan, o.id);
          return (
            <li key={o.id} className="option-card" data-looked={looked}>
              <div className="option-head">
                <button
                  type="button"
                  className="option-row"
                  aria-pressed={looked}
                  onClick={() => editor.setCase({ option: o.id, when: 'after' })}
                >
                  <span className="option-name">{o.name}</span>
                  {looked && <span className="option-looked">looked at</span>}
                  <span className="option-under">{under}</span>
                </button>
                <button
                  type="button"
                  className="bare-key option-more"
                  aria-expanded={open === o.id}
                  aria-label={`Copy, name or delete option ${o.name}`}
                  onClick={() => setOpen(open === o.id ? null : o.id)}
                >
                  <KickTurn />
                </button>
              </div>
              {open === o.id && <OptionForm option={o} />}
            </li>
          );
        })}
      </ul>
      <div className="key-row">
        {options.length > 0 && (
          <button type="button" className="key slight" onClick={() => setOver('options')}>
            Compare
          </button>
        )}
        <button type="button" className="key slight" aria-disabled={disabled} onClick={add}>
          New option {nextOptionName(plan)}
        </button>
      </div>
    </div>
  );
}

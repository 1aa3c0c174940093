import type { Selected } from '../../editor/editor-api.ts';
import type { Fate } from '../../plan/records/statements.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { Icon } from '../look/icon.tsx';
import { KickTurn } from '../look/kick.tsx';
import { ChoiceKeys } from '../panels/inspect/choice-keys.tsx';
import { useChange } from '../panels/inspect/use-change.ts';
import { nameOf } from '../panels/name-of.ts';
import { AlignPart } from './align-part.tsx';
import { MirrorPart } from './mirror-part.tsx';
import { MovePart } from './move-part.tsx';
import { PipesPart } from './pipes-part.tsx';
import { sayMany } from './say-many.ts';
import '../things/things.css';
import './many.css';

const SURVEYED = ['walls', 'openings', 'voids', 'points', 'runs', 'legs', 'stretches', 'items'] as const;
const COPIED: ReadonlySet<string> = new Set(['walls', 'points', 'runs', 'voids']);
const FATES = [
  { value: 'keep', label: 'keep' },
  { value: 'strip', label: 'strip out' },
  { value: 'cap', label: 'cut off, cap' },
] as const;

/** What becomes of all surveyed things that are chosen, in the option looked at. */
function ManyFates({ things }: { readonly things: readonly Selected[] }) {
  const plan = useEditorState((s) => s.plan);
  const option = useEditorState((s) =>
    s.chosen.when === 'after' && s.chosen.option !== null ? s.plan.options[s.chosen.option] : undefined,
  );
  const { disabled, run } = useChange();
  const ids = things.flatMap(({ map, id }) => {
    const known = SURVEYED.find((m) => m === map);
    return known && plan[known][id]?.option === null ? [id] : [];
  });
  if (!option || ids.length === 0) return null;
  const fates = new Set(ids.map((id) => option.fates[id] ?? 'keep'));
  const [first] = fates;
  return (
    <ChoiceKeys<Fate | null>
      label={`After the work (${option.name}), of ${ids.length} that ${ids.length === 1 ? 'was' : 'were'} there`}
      choices={FATES}
      chosen={fates.size === 1 && first !== undefined ? first : null}
      disabled={disabled}
      onChoose={(fate) => fate !== null && run('fate.set', { option: option.id, ids, fate })}
    />
  );
}

/** Several things at once: what they are, and what can be done to all of them in one step. */
export function ManyForm({ things }: { readonly things: readonly Selected[] }) {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const several = useEditorState((s) => s.tool === 'select' && s.toolState === 'several');
  const { disabled } = useChange();
  const press = (key: string, ctrl = false): void => {
    editor.key({ key, ctrl, shift: false, alt: false });
  };
  return (
    <>
      <div className="many-head">
        <p className="many-count" aria-live="polite">
          {sayMany(things)}
        </p>
        <button type="button" className="key slight" aria-pressed={several} onClick={() => press('several')}>
          {several ? 'Done' : 'Add or take away'}
        </button>
      </div>
      <div className="many-folds">
        <details className="field-group">
          <summary>
            <span className="group-name">List</span>
            <span className="group-told">{things.length} chosen</span>
            <KickTurn />
          </summary>
          <ul className="things many-list">
            {things.map((s) => (
              <li key={`${s.map}${s.id}`} className="thing-line">
                <button type="button" className="thing" onClick={() => editor.select([s])}>
                  <span className="thing-name">{nameOf(plan, s)}</span>
                </button>
                <button
                  type="button"
                  className="bare-key"
                  aria-label={`Take away ${nameOf(plan, s)}`}
                  onClick={() => editor.select(things.filter((t) => t !== s))}
                >
                  <Icon name="close" size={18} />
                </button>
              </li>
            ))}
          </ul>
        </details>
        <MovePart things={things} />
        <AlignPart things={things} />
        <MirrorPart things={things} />
        <PipesPart things={things} />
      </div>
      <ManyFates things={things} />
      <div className="key-row end-keys">
        {things.some((t) => COPIED.has(t.map)) && (
          <button
            type="button"
            className="key slight"
            aria-disabled={disabled}
            onClick={() => !disabled && press('d', true)}
          >
            Duplicate
          </button>
        )}
        <button
          type="button"
          className="key slight"
          aria-disabled={disabled}
          onClick={() => {
            if (!disabled && editor.run('things.delete', { things }).ok) editor.select([]);
          }}
        >
          <Icon name="bin" size={20} />
          Delete all {things.length}
        </button>
      </div>
    </>
  );
}

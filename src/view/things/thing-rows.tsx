import { pointKinds } from '../../catalogue/point-kinds.ts';
import type { Thing } from '../../plan/records/statements.ts';
import { screen } from '../app/screen.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { Icon } from '../look/icon.tsx';
import { sayKept } from './say-thing-kept.ts';
import { editThing, shelve, undoShelf, unshelve } from './shelf.ts';
import { copyThing, takeThing } from './take-thing.ts';

function UseKey({ thing }: { readonly thing: Thing }) {
  const editor = useEditor();
  const disabled = useEditorState((s) => s.readOnly !== null) || !pointKinds.has(thing.kind);
  return (
    <button
      type="button"
      className="bare-key accent"
      aria-label={`Use ${thing.name}`}
      aria-disabled={disabled}
      onClick={() => {
        if (!disabled) takeThing(editor, thing);
      }}
    >
      use
    </button>
  );
}

function Words({ thing }: { readonly thing: Thing }) {
  return (
    <>
      <span className="job-name">{thing.name}</span>
      <span className="job-when">{sayKept(thing)}</span>
    </>
  );
}

/** One of the user's own: opened, used, copied, deleted. */
export function MineRow({ thing }: { readonly thing: Thing }) {
  const remove = (): void => {
    void unshelve(thing);
    screen.setState({ undone: { text: `"${thing.name}" was deleted.`, undo: () => void undoShelf() } });
  };
  return (
    <li>
      <button type="button" className="job-open" onClick={() => editThing(thing.id)}>
        <Words thing={thing} />
      </button>
      <UseKey thing={thing} />
      <button
        type="button"
        className="bare-key"
        aria-label={`Copy ${thing.name}`}
        onClick={() => void copyThing(thing, `${thing.name} copy`)}
      >
        copy
      </button>
      <button type="button" className="bare-key" aria-label={`Delete ${thing.name}`} onClick={remove}>
        <Icon name="bin" size={20} />
      </button>
    </li>
  );
}

/** One that came with the job: used, or kept on this device too. */
export function JobRow({ thing }: { readonly thing: Thing }) {
  return (
    <li>
      <span className="job-open">
        <Words thing={thing} />
      </span>
      <UseKey thing={thing} />
      <button
        type="button"
        className="bare-key"
        aria-label={`Keep ${thing.name} among mine`}
        onClick={() => void shelve(thing, `keep ${thing.name}`)}
      >
        keep
      </button>
    </li>
  );
}

/** An ordinary one of its class: used as it is, or copied to be made one's own. */
export function ClassRow({ thing }: { readonly thing: Thing }) {
  const name = thing.name.replace(/, assumed$/, '');
  return (
    <li>
      <span className="job-open">
        <Words thing={thing} />
      </span>
      <UseKey thing={thing} />
      <button
        type="button"
        className="bare-key"
        aria-label={`Copy ${thing.name}`}
        onClick={() => void copyThing(thing, name)}
      >
        copy
      </button>
    </li>
  );
}

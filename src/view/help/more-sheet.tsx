import { Dialog } from '../app/dialog.tsx';
import { screen, setOver } from '../app/screen.ts';
import { usePhone } from '../app/use-phone.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { toolKeys } from '../bench/tools.ts';
import { Icon } from '../look/icon.tsx';

/** The tools that have no place on the bench, and the rest of the page. */
export default function MoreSheet() {
  const editor = useEditor();
  const phone = usePhone();
  const tool = useEditorState((s) => s.tool);
  const last = useEditorState((s) => s.history.redo.at(-1));
  const take = (id: string): void => {
    editor.setTool(id);
    setOver(null);
  };
  return (
    <Dialog title="More">
      <div className="tool-grid">
        {toolKeys()
          .filter((k) => !(phone ? k.phone : k.tablet))
          .map((k) => (
            <button key={k.id} type="button" className="key" aria-pressed={k.id === tool} onClick={() => take(k.id)}>
              <Icon name={k.icon} />
              {k.label}
            </button>
          ))}
        {phone && (
          <button type="button" className="key" aria-disabled={last === undefined} onClick={() => editor.redo()}>
            <Icon name="redo" />
            Redo
          </button>
        )}
        <button type="button" className="key" onClick={() => screen.setState({ over: null, tray: true })}>
          <Icon name="in-hand" />
          In hand
        </button>
        {phone && (
          <button type="button" className="key" onClick={() => setOver('words')}>
            <Icon name="words" />
            By words
          </button>
        )}
        <button type="button" className="key" onClick={() => setOver('my-things')}>
          <Icon name="my-things" />
          My things
        </button>
        <button type="button" className="key" onClick={() => setOver('sums')}>
          <Icon name="sums" />
          Sums
        </button>
        <button type="button" className="key" onClick={() => setOver('jobs')}>
          <Icon name="list" />
          Jobs
        </button>
        <button type="button" className="key" onClick={() => setOver('print')}>
          <Icon name="print" />
          Print
        </button>
        <button type="button" className="key" onClick={() => setOver('help')}>
          <Icon name="help" />
          Help
        </button>
      </div>
    </Dialog>
  );
}

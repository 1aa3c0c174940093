import { openChapter, screen, setOver } from '../app/screen.ts';
import { usePhone } from '../app/use-phone.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { usePenDraws } from '../hands/use-pen-draws.ts';
import { useToolLetter } from '../help/key-table.ts';
import { Icon } from '../look/icon.tsx';
import { inHandWords } from './in-hand-words.ts';
import { Thumb } from './thumb.tsx';
import { type ToolKey, toolKeys } from './tools.ts';
import './bench.css';

/** The tools, starting at the hand that holds the tablet; at the far end, what is in hand. */
export function Bench({ phone }: { readonly phone: boolean }) {
  const keys = toolKeys().filter((k) => (phone ? k.phone : k.tablet));
  if (phone) {
    return (
      <>
        <Thumb />
        <div className="bench" role="toolbar" aria-label="Tools">
          <StepKey which="undo" />
          <StepKey which="redo" />
          {keys.map((k) => (
            <Tool key={k.id} tool={k} />
          ))}
          <More />
        </div>
      </>
    );
  }
  return (
    <>
      <Thumb />
      <div className="bench" role="toolbar" aria-label="Tools">
        <StepKey which="undo" />
        <StepKey which="redo" />
        <span className="bench-part" />
        {keys.map((k, i) => (
          <ToolInGroup key={k.id} tool={k} parted={i > 0 && keys[i - 1]?.group !== k.group} />
        ))}
        <More />
        <span className="bench-part" />
        <InHand />
      </div>
    </>
  );
}

/** The tools that have no place here. One of them in hand shows in its key. */
function More() {
  const phone = usePhone();
  const other = useEditorState((s) => toolKeys().find((k) => k.id === s.tool && !(phone ? k.phone : k.tablet)));
  return (
    <button
      type="button"
      className="tool more"
      aria-label={other ? `More, ${other.label} in hand` : 'More'}
      aria-pressed={other !== undefined}
      onClick={() => setOver('more')}
    >
      {other && (
        <span className="letter always" aria-hidden="true">
          <Icon name="more" size={18} />
        </span>
      )}
      <Icon name={other?.icon ?? 'more'} />
      {other?.label ?? 'More'}
    </button>
  );
}

function ToolInGroup({ tool, parted }: { readonly tool: ToolKey; readonly parted: boolean }) {
  return (
    <>
      {parted && <span className="bench-part" />}
      <Tool tool={tool} />
    </>
  );
}

function Tool({ tool }: { readonly tool: ToolKey }) {
  const editor = useEditor();
  const pressed = useEditorState((s) => s.tool === tool.id);
  const letter = useToolLetter(tool.id);
  const take = (): void => {
    // A second press shows what is in hand. Choosing has nothing in hand: the pipe that stands in the tray is not its.
    if (pressed && tool.id !== 'select') screen.setState((s) => ({ tray: !s.tray }));
    else {
      editor.setTool(tool.id);
      screen.setState({ tray: false });
    }
  };
  return (
    <button
      type="button"
      className="tool"
      aria-pressed={pressed}
      aria-keyshortcuts={letter || undefined}
      title={letter === '' ? tool.label : `${tool.label} (${letter})`}
      onClick={take}
    >
      {letter !== '' && (
        <span className="letter" aria-hidden="true">
          {letter}
        </span>
      )}
      <Icon name={tool.icon} />
      {tool.label}
    </button>
  );
}

export function StepKey({ which }: { readonly which: 'undo' | 'redo' }) {
  const editor = useEditor();
  const last = useEditorState((s) => s.history[which].at(-1));
  const word = which === 'undo' ? 'Undo' : 'Redo';
  return (
    <button
      type="button"
      className="tool"
      aria-disabled={last === undefined}
      aria-label={last === undefined ? `${word}: nothing` : `${word}: ${last}`}
      title={last === undefined ? word : `${word}: ${last}`}
      onClick={() => editor[which]()}
    >
      <Icon name={which} />
      {word}
    </button>
  );
}

/** What a tap on the words at the end of the bench does: choosing tools have nothing in hand to change. */
function openInHand(tool: string, chosen: boolean): void {
  if (tool === 'trace') openChapter('traces');
  else if (tool === 'photo') openChapter('job');
  else if (tool !== 'select') screen.setState((s) => ({ tray: !s.tray }));
  else openChapter(chosen ? 'inspect' : 'things');
}

function InHand() {
  const one = useEditorState((s) => inHandWords(s)[0]);
  const two = useEditorState((s) => inHandWords(s)[1]);
  const tool = useEditorState((s) => s.tool);
  const chosen = useEditorState((s) => s.selection.length > 0);
  const penDraws = usePenDraws();
  const does = tool !== 'select' ? 'tap to change' : chosen ? 'tap to see it' : 'tap for a list';
  return (
    <button type="button" className="in-hand" title={does} onClick={() => openInHand(tool, chosen)}>
      <span className="line-one">{one}</span>
      <span className="line-two">
        {two === '' ? does : two}
        {penDraws && ' · pen draws, fingers move'}
      </span>
    </button>
  );
}

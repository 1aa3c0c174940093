import { sayAloud } from '../a11y/aloud.tsx';
import { setOver } from '../app/screen.ts';
import { useEditor, useEditorState, useScreen } from '../app/use-session.ts';
import { Icon } from '../look/icon.tsx';
import { NudgeKey } from './nudge-key.tsx';

/** Moved by the height keys at a time, mm. */
const STEP_MM = 50;

/** The four keys at the root of the thumb of the hand that holds the tablet, at the foot of the heights. */
export function Thumb() {
  return (
    <div className="thumb" role="toolbar" aria-label="By the thumb">
      <HeightKey by={1} />
      <HeightKey by={-1} />
      <EndKey />
      <FinishKey />
    </div>
  );
}

/** To the next place up or down; what is chosen goes along. What the places are is asked when it is pressed. */
function HeightKey({ by }: { readonly by: 1 | -1 }) {
  const editor = useEditor();
  const chosen = useEditorState((s) => s.tool === 'select' && s.selection.length > 0);
  const readOnly = useEditorState((s) => s.readOnly !== null);
  const word = by > 0 ? 'Higher' : 'Lower';
  const press = async (): Promise<void> => {
    if (readOnly) return;
    const { stepHeight } = await import('./height-step.ts');
    const said = stepHeight(editor, by, STEP_MM);
    if (said !== null) sayAloud(said);
  };
  return (
    <button
      type="button"
      className="tool"
      aria-label={chosen ? `${word} by ${STEP_MM}` : `${word}: next place for the work height`}
      aria-disabled={readOnly}
      onClick={() => void press()}
    >
      <Icon name={by > 0 ? 'up' : 'down'} />
      {word}
    </button>
  );
}

/** By words while something is drawn, nudge while something is chosen. */
function EndKey() {
  const drawing = useEditorState((s) => s.tool === 'run' || s.tool === 'tee' || s.selection.length === 0);
  const over = useScreen((s) => s.over);
  if (!drawing) return <NudgeKey />;
  return (
    <button type="button" className="key end" aria-pressed={over === 'words'} onClick={() => setOver('words')}>
      <span className="under">by</span>
      words
    </button>
  );
}

/** Ends what is being made and keeps it, as Enter does. */
function FinishKey() {
  const editor = useEditor();
  const asked = useEditorState((s) => s.ask?.enter ?? null);
  const going = useEditorState((s) => s.ask !== null || (s.tool !== 'select' && s.toolState !== 'idle'));
  return (
    <button
      type="button"
      className="tool"
      aria-label={asked === null ? 'Finish' : `Finish: ${asked}`}
      aria-disabled={!going}
      // A pressed key takes no focus: Enter of a keyboard goes on to mean the tool's own Enter.
      onMouseDown={(e) => e.preventDefault()}
      onClick={() => {
        if (going) editor.key({ key: 'Enter', ctrl: false, shift: false, alt: false });
      }}
    >
      <Icon name="finish" />
      Finish
    </button>
  );
}

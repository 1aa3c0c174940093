import { useLayoutEffect, useRef } from 'react';
import type { Ask, AskKey } from '../../editor/editor-api.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { Icon } from '../look/icon.tsx';
import { keepAskedInView } from './keep-asked-in-view.ts';
import './ask-pad.css';

const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '0', '00'] as const;
/** More keys than this in a row go on past its edge, and are reached by sliding it. */
const MOST_WRAPPED = 5;

/** What the tool in hand asks to be typed: where the panel stands, on a phone at the foot of the drawing. */
export function AskPad() {
  const ask = useEditorState((s) => s.ask);
  const readOnly = useEditorState((s) => s.readOnly);
  return ask === null || readOnly !== null ? null : <Pad ask={ask} />;
}

function Pad({ ask }: { readonly ask: Ask }) {
  const editor = useEditor();
  const box = useRef<HTMLElement>(null);
  const pressed = useRef(false);
  useLayoutEffect(() => {
    if (ask && box.current) keepAskedInView(editor, box.current);
  }, [editor, ask]);
  const press = (key: string): void => {
    editor.key({ key, ctrl: false, shift: false, alt: false });
  };
  return (
    <section
      className="ask"
      aria-label="Asked for"
      ref={box}
      onPointerDownCapture={() => {
        pressed.current = true;
      }}
      onClickCapture={(e) => {
        // A browser makes its click of a tap where the finger was lifted: on a pad that came up under it, it is meant for
        // the drawing. A key of the keyboard has no such press, and says so by its detail.
        if (e.detail > 0 && !pressed.current) e.stopPropagation();
        pressed.current = false;
      }}
    >
      <div className="ask-head">
        <div className="ask-told">
          <span className="ask-title">{ask.title}</span>
          {ask.figure !== null && (
            <>
              {ask.unit !== '' && <span className="ask-unit">{ask.unit}</span>}
              <span className="ask-digits" aria-live="polite">
                {ask.figure}
              </span>
            </>
          )}
        </div>
        {ask.enter !== null && (
          <PadKey of={{ key: 'Enter', label: ask.enter }} more="primary ask-enter" onPress={press} />
        )}
        <button
          type="button"
          className="bare-key"
          aria-label="Stop"
          onMouseDown={(e) => e.preventDefault()}
          onClick={() => editor.cancel()}
        >
          <Icon name="close" size={20} />
        </button>
      </div>
      {ask.says.map((line) => (
        <p key={line} className="ask-says">
          {line}
        </p>
      ))}
      {ask.rows.map((row) => (
        <div key={row.map((k) => k.key).join(' ')} className={row.length > MOST_WRAPPED ? 'ask-row slides' : 'ask-row'}>
          {row.map((k) => (
            <PadKey key={k.key} of={k} more="slight" onPress={press} />
          ))}
        </div>
      ))}
      {ask.figure !== null && (
        <div className="ask-digits-grid">
          {DIGITS.map((d) => (
            <PadKey key={d} of={{ key: d, label: d }} more="digit" onPress={press} />
          ))}
          <PadKey of={{ key: 'Backspace', label: 'rub' }} more="slight" onPress={press} />
        </div>
      )}
    </section>
  );
}

interface PadKeyProps {
  readonly of: AskKey;
  readonly more: string;
  readonly onPress: (key: string) => void;
}

function PadKey({ of, more, onPress }: PadKeyProps) {
  return (
    <button
      type="button"
      className={`key ${more}`}
      {...(of.on === undefined ? {} : { 'aria-pressed': of.on })}
      // A pressed key takes no focus: Enter of a keyboard goes on to mean the tool's own Enter.
      onMouseDown={(e) => e.preventDefault()}
      onClick={() => onPress(of.key)}
    >
      {of.icon !== undefined && <Icon name={of.icon} size={20} />}
      {of.label}
    </button>
  );
}

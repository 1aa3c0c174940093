import { useEffect, useState } from 'react';
import { afterFirstLine } from '../app/first-line.ts';
import { useEditorState, useSession } from '../app/use-session.ts';
import { Aloud, sayAloud } from './aloud.tsx';
import { keepFocus } from './keep-focus.ts';
import './said.css';

const SHOWN_MS = 6000;

/** What is said of the drawing by itself comes after the first line can be drawn. */
function useAnnouncing(): void {
  const session = useSession();
  useEffect(() => {
    let stop: (() => void) | null = null;
    let left = false;
    const told = afterFirstLine(() => import('./announce.ts'));
    told().then(
      ({ announce }) => {
        if (!left) stop = announce(session);
      },
      () => undefined,
    );
    // A key asks for these, and the next key is typed into them.
    const asked = afterFirstLine(() =>
      Promise.all([import('../panels/things/things-list.tsx'), import('./height-ask.tsx')]),
    );
    void asked().catch(() => undefined);
    return () => {
      left = true;
      stop?.();
    };
  }, [session]);
}

/** Refusals aloud at once, everything else when there is a pause; and the same words for the eye, over the bench. */
export function LiveRegion() {
  const said = useEditorState((s) => s.said);
  useAnnouncing();
  useEffect(keepFocus, []);
  useEffect(() => {
    if (said !== null && !said.refusal) sayAloud(said.text);
  }, [said]);
  return (
    <>
      <p className="out-of-sight" id="drawing-how">
        An arrow shows a cross and moves it. Ctrl with an arrow goes to the next thing. Enter taps. F6 goes to the next
        part of the page, L to the list of things, question mark to all keys.
      </p>
      <Aloud />
      <div className="out-of-sight" role="alert">
        {said?.refusal && <span key={said.n}>{said.text}</span>}
      </div>
      <SaidHere />
    </>
  );
}

/** The last thing said, for the eye. A page that covers the drawing shows its own. */
export function SaidHere() {
  const said = useEditorState((s) => s.said);
  return said === null ? null : <Said key={said.n} text={said.text} refusal={said.refusal} />;
}

function Said({ text, refusal }: { readonly text: string; readonly refusal: boolean }) {
  const [shown, setShown] = useState(true);
  useEffect(() => {
    const timer = setTimeout(() => setShown(false), SHOWN_MS);
    return () => clearTimeout(timer);
  }, []);
  if (!shown) return null;
  return (
    <div className={`said${refusal ? ' refusal' : ''}`} aria-hidden="true">
      {text}
    </div>
  );
}

import { screen } from '../app/screen.ts';
import type { Session } from '../app/session.ts';
import { placeOf, writePlace } from './kept-place.ts';

/** After the last change of what is looked at or in hand; a page that is hidden or left is written at once. */
const REST_MS = 400;

/**
 * Remembers where somebody is in a job while it is open. A page that only looks on beside another tab, or that nothing was
 * drawn on yet, is not remembered. Gives back how to stop; what was not written yet is written then.
 */
export function keepPlace(session: Session, isKept: boolean): () => void {
  const { editor, kept } = session;
  let timer = 0;
  let waiting = false;
  const write = (): void => {
    clearTimeout(timer);
    if (!waiting) return;
    waiting = false;
    const state = editor.store.getState();
    if ((isKept || state.revision > 0) && !kept.getState().elsewhere)
      writePlace(session.id, placeOf(state, screen.getState(), Date.now()));
  };
  const later = (): void => {
    waiting = true;
    clearTimeout(timer);
    timer = window.setTimeout(write, REST_MS);
  };
  const onHidden = (): void => {
    if (document.visibilityState === 'hidden') write();
  };
  const stops = [
    editor.store.subscribe((s, was) => {
      // A pointer that moves touches neither.
      if (
        s.panes !== was.panes ||
        s.inHand !== was.inHand ||
        s.selection !== was.selection ||
        s.tool !== was.tool ||
        s.chosen !== was.chosen ||
        s.revision !== was.revision
      )
        later();
    }),
    screen.subscribe(later),
  ];
  document.addEventListener('visibilitychange', onHidden);
  window.addEventListener('pagehide', write);
  return () => {
    write();
    document.removeEventListener('visibilitychange', onHidden);
    window.removeEventListener('pagehide', write);
    for (const stop of stops) stop();
  };
}

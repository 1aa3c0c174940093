import { useEffect } from 'react';
import type { Editor } from '../../editor/editor-api.ts';
import { screen } from './screen.ts';
import { useEditor } from './use-session.ts';

const FIELDS = 'input, textarea, select, [contenteditable="true"]';
/** Keys a focused button, tab list or slider means for itself. */
const OWN = new Set([
  'Enter',
  ' ',
  'ArrowUp',
  'ArrowDown',
  'ArrowLeft',
  'ArrowRight',
  'Home',
  'End',
  'PageUp',
  'PageDown',
]);

const matches = (target: EventTarget | null, what: string): boolean =>
  target instanceof Element && target.closest(what) !== null;

/** Closes the topmost thing that lies over the drawing. True when there was one. */
export function closeTopmost(): boolean {
  const s = screen.getState();
  if (s.over !== null) screen.setState({ over: null });
  else if (s.tray) screen.setState({ tray: false });
  else if (s.finding !== null) screen.setState({ finding: null });
  else return false;
  return true;
}

/** True when the page did something with the key. */
export function pageKey(editor: Editor, e: KeyboardEvent): boolean {
  const typing = matches(e.target, FIELDS);
  const ctrl = e.ctrlKey || e.metaKey;
  const over = screen.getState().over;
  if (e.key === 'Escape' && (over !== null || !busy(editor)) && closeTopmost()) return true;
  if (over !== null) return false;
  if (ctrl && !e.shiftKey && !e.altKey && e.key.toLowerCase() === 'p') {
    screen.setState({ over: 'print' });
    return true;
  }
  if (!typing && !ctrl && !e.altKey && e.key === '?') {
    screen.setState({ over: 'help' });
    return true;
  }
  if (!typing && !ctrl && OWN.has(e.key) && matches(e.target, 'button, a, summary, [role="slider"]')) return false;
  return editor.key({ key: e.key, ctrl, shift: e.shiftKey, alt: e.altKey, typing });
}

/** Something half made is given up before anything else is closed. */
function busy(editor: Editor): boolean {
  const { draft, typed } = editor.store.getState();
  return draft !== null || typed !== '';
}

/** Keys of the whole page, on its way to the editor. Space held down pans. */
export function useKeyboard(): void {
  const editor = useEditor();
  useEffect(() => {
    const down = (e: KeyboardEvent): void => {
      if (e.defaultPrevented || e.isComposing) return;
      if (e.key === ' ' && matches(e.target, '[data-pane]')) {
        editor.holdToPan(true);
        e.preventDefault();
        return;
      }
      if (pageKey(editor, e)) e.preventDefault();
    };
    const up = (e: KeyboardEvent): void => {
      if (e.key === ' ') editor.holdToPan(false);
    };
    window.addEventListener('keydown', down);
    window.addEventListener('keyup', up);
    return () => {
      window.removeEventListener('keydown', down);
      window.removeEventListener('keyup', up);
    };
  }, [editor]);
}

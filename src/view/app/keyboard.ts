import { useEffect } from 'react';
import type { Editor } from '../../editor/editor-api.ts';
import { bindingOf, type PageAct } from '../../editor/keys.ts';
import { asked } from '../a11y/asked.ts';
import { goToNextPart } from '../a11y/page-parts.ts';
import { keysNow, keyTable } from '../help/key-table.ts';
import { openChapter, screen } from './screen.ts';
import { useEditor } from './use-session.ts';

/** Where letters are typed. Nothing is typed into a key that is one of several. */
const FIELDS = 'input:not([type="radio"], [type="checkbox"]), textarea, select, [contenteditable="true"]';
const PRESSED = 'button, a, summary, [role="slider"], input[type="radio"], input[type="checkbox"]';
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

/** What has not come by then will not come. */
const ON_ITS_WAY_MS = 3000;

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

function doAct(act: PageAct, back: boolean): void {
  if (act === 'help' || act === 'print') screen.setState({ over: act });
  else if (act === 'height') asked.setState({ height: true, since: performance.now(), typed: '' });
  else if (act === 'where') asked.setState(({ where }) => ({ where: where + 1 }));
  else if (act === 'part') goToNextPart(back);
  else {
    asked.setState({ things: act === 'find' ? 'find' : 'list', since: performance.now(), typed: '' });
    screen.setState({ finding: null });
    openChapter('things');
  }
}

/** A field is asked for and not there yet: what is typed meanwhile is kept for it, and takes no tool. */
function isOnItsWay(): boolean {
  const { things, height, since } = asked.getState();
  const waited = things !== null || (height && document.querySelector('.height-box') === null);
  return waited && performance.now() - since < ON_ITS_WAY_MS;
}

/** True when the page did something with the key. */
export function pageKey(editor: Editor, e: KeyboardEvent): boolean {
  const typing = matches(e.target, FIELDS);
  const ctrl = e.ctrlKey || e.metaKey;
  const over = screen.getState().over;
  if (e.key === 'Escape' && (over !== null || !busy(editor)) && closeTopmost()) return true;
  if (over !== null) return false;
  if (!typing && !ctrl && e.key !== 'Tab' && isOnItsWay()) {
    if (e.key.length === 1) asked.setState(({ typed }) => ({ typed: typed + e.key }));
    return true;
  }
  const pane = e.target instanceof Element ? e.target.closest<HTMLElement>('[data-pane]')?.dataset.pane : undefined;
  if (pane === 'plan' || pane === 'face') editor.setActivePane(pane);
  if (!typing && !ctrl && OWN.has(e.key) && matches(e.target, PRESSED)) return false;
  const input = { key: e.key, ctrl, shift: e.shiftKey, alt: e.altKey, typing, drawing: pane !== undefined };
  const does = bindingOf(keysNow(), input)?.does;
  // A tool that asks for something has the first say, but for what is typed nowhere else.
  if (does && 'page' in does && (ctrl || e.key.length > 1 || !isAsked(editor, e.key))) {
    doAct(does.page, e.shiftKey);
    return true;
  }
  return editor.key(input);
}

/** The tool in hand shows a key of that name on its pad. */
const isAsked = (editor: Editor, key: string): boolean =>
  editor.store.getState().ask?.rows.some((row) => row.some((k) => k.key === key)) ?? false;

/** Something half made is given up before anything else is closed. */
function busy(editor: Editor): boolean {
  const { draft, typed } = editor.store.getState();
  return draft !== null || typed !== '';
}

/** Keys of the whole page, on its way to the editor. Space held down pans while a pointer leads. */
export function useKeyboard(): void {
  const editor = useEditor();
  useEffect(() => {
    const give = (): void => editor.setKeys(keysNow(), keyTable.getState().signs);
    give();
    return keyTable.subscribe(give);
  }, [editor]);
  useEffect(() => {
    const down = (e: KeyboardEvent): void => {
      if (e.defaultPrevented || e.isComposing) return;
      if (e.key === ' ' && matches(e.target, '[data-pane]') && editor.store.getState().cursor === null) {
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

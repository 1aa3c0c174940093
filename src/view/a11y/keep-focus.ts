import { isFocusLost } from '../app/use-focus-back.ts';

const STOPS = 'button, input, select, textarea, summary, a[href], [tabindex="0"], [role="slider"]';

const isSeen = (e: Element): boolean => e.isConnected && e.checkVisibility({ checkVisibilityCSS: true });

const paneOf = (): HTMLElement | null => document.querySelector('[data-pane="plan"], [data-pane]');

function firstIn(place: Element): HTMLElement | null {
  const title = place.querySelector<HTMLElement>('.panel-title');
  if (title && isSeen(title)) return title;
  return [...place.querySelectorAll<HTMLElement>(STOPS)].find(isSeen) ?? null;
}

/** Where the focus goes whose place is gone: to what lies over the page, else near where it was, else to the drawing. */
export function homeOf(path: readonly Element[]): HTMLElement | null {
  const over = [...document.querySelectorAll('dialog[open]')].at(-1);
  if (over) return firstIn(over);
  const near = path.find(isSeen);
  const small = near?.matches('main, .frame, #root, body, html') === false;
  return (near && small ? firstIn(near) : null) ?? paneOf();
}

/**
 * Whatever goes from the page takes the focus along, and a keyboard would start again at the top. Looked after once what happened
 * is drawn: a part that gives the focus back by itself has done so by then.
 */
export function keepFocus(): () => void {
  let path: Element[] = [];
  let byKey = false;
  let frame = 0;
  const remember = (e: FocusEvent): void => {
    path = [];
    for (let at = e.target instanceof Element ? e.target : null; at; at = at.parentElement) path.push(at);
  };
  const look = (): void => {
    frame = 0;
    const gone = path[0] !== undefined && !isSeen(path[0]);
    if (isFocusLost() && document.hasFocus() && (byKey || gone)) homeOf(path)?.focus({ preventScroll: true });
  };
  /** After the frame that is drawn next, since what is hidden loses the focus only then. */
  const later = (): void => {
    if (frame === 0)
      frame = requestAnimationFrame(() => {
        frame = requestAnimationFrame(look);
      });
  };
  const key = (e: KeyboardEvent): void => {
    byKey = true;
    // The tab key is on its way to somewhere by itself.
    if (e.key !== 'Tab') later();
  };
  const press = (): void => {
    byKey = false;
  };
  const changes = new MutationObserver(() => {
    if (isFocusLost()) later();
  });
  changes.observe(document.body, { childList: true, subtree: true });
  document.addEventListener('focusin', remember);
  document.addEventListener('keydown', key, true);
  document.addEventListener('pointerdown', press, true);
  return () => {
    cancelAnimationFrame(frame);
    changes.disconnect();
    document.removeEventListener('focusin', remember);
    document.removeEventListener('keydown', key, true);
    document.removeEventListener('pointerdown', press, true);
  };
}

const STOPS = 'button, input, select, textarea, summary, [tabindex="0"]';

/** Parts of the page in the order they are gone through: drawing, answers, tools, strip, heights. */
const PARTS = ['.frame-canvas', '.frame-panel', '.frame-bench', '.frame-strip', '.frame-ribbon'] as const;

function stopIn(part: Element): HTMLElement | null {
  const own = part.querySelector<HTMLElement>('[data-pane], .panel-title');
  if (own?.checkVisibility({ checkVisibilityCSS: true })) return own;
  const all = [...part.querySelectorAll<HTMLElement>(STOPS)];
  return all.find((e) => e.tabIndex >= 0 && e.checkVisibility({ checkVisibilityCSS: true })) ?? null;
}

/** The focus goes to the next part of the page, or to the one before. */
export function goToNextPart(back: boolean): void {
  const parts = PARTS.flatMap((p) => document.querySelector(p) ?? []);
  const here = parts.findIndex((p) => p.contains(document.activeElement));
  const step = back ? -1 : 1;
  for (let i = 1; i <= parts.length; i++) {
    const at = here < 0 && !back ? i - 1 : here + step * i;
    const stop = stopIn(parts[((at % parts.length) + parts.length) % parts.length] ?? document.body);
    if (!stop) continue;
    stop.focus();
    return;
  }
}

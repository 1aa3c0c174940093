import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { atRest } from './model.ts';

const CONTRAST = ['color-contrast'];

/**
 * No rule of the checker is broken. A state looks the same by day and by night but for its colours, so the second light
 * is only looked at for those, and a page of each width has its own first light.
 */
export async function expectNoViolations(page: Page, where: string, both: boolean): Promise<void> {
  const [first, second] =
    (page.viewportSize()?.width ?? 0) < 700 ? (['dark', 'light'] as const) : (['light', 'dark'] as const);
  for (const colorScheme of both ? [first, second] : [first]) {
    await page.emulateMedia({ colorScheme });
    await atRest(page);
    const axe = new AxeBuilder({ page });
    const { violations } = await (colorScheme === first ? axe : axe.withRules(CONTRAST)).analyze();
    const said = violations.flatMap((v) =>
      v.nodes.map((n) => `${v.id}: ${n.target.join(' ')}: ${n.any.map((c) => c.message).join('; ') || v.help}`),
    );
    expect.soft(said, `${where}, ${colorScheme}`).toEqual([]);
  }
}

/** Controls that are smaller than a finger, with their size. A control within a label is as large as the label. */
export async function tooSmall(page: Page, least: number): Promise<string[]> {
  return page.evaluate((least) => {
    const found: string[] = [];
    const all = document.querySelectorAll<HTMLElement>(
      'button, input, select, textarea, summary, a[href], [role="button"], [role="slider"], [role="radio"]',
    );
    for (const e of all) {
      if (!e.checkVisibility({ checkVisibilityCSS: true })) continue;
      const label = e instanceof HTMLInputElement && /^(radio|checkbox)$/.test(e.type) ? e.closest('label') : null;
      const by =
        label ?? (e instanceof HTMLInputElement || e instanceof HTMLSelectElement ? (e.closest('.field-box') ?? e) : e);
      const r = by.getBoundingClientRect();
      if (r.width === 0 || r.height === 0) continue;
      // Half a px is the rounding of a font's line.
      if (r.width < least - 0.5 || r.height < least - 0.5) {
        const name = e.getAttribute('aria-label') ?? e.textContent ?? '';
        found.push(
          `${e.tagName.toLowerCase()}.${e.className} "${name.trim().slice(0, 40)}" ${r.width.toFixed(0)} x ${r.height.toFixed(0)}`,
        );
      }
    }
    return [...new Set(found)];
  }, least);
}

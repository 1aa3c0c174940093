import type { Locator, Page } from '@playwright/test';
import { bench, panel } from './hands/drawing.ts';
import { expect, openEmpty, openFlat, test } from './hands/kickset.ts';
import { answer, held } from './hands/model.ts';

test.describe.configure({ timeout: 120_000 });

const drawing = (page: Page) => page.locator('[data-pane="plan"]');

/** What has the focus: never the page itself after anything a key did. */
async function expectFocus(page: Page, after: string): Promise<void> {
  await expect
    .poll(() => page.evaluate(() => document.activeElement !== null && document.activeElement !== document.body), {
      message: `the focus after ${after}`,
    })
    .toBe(true);
}

async function keys(page: Page, ...all: readonly string[]): Promise<void> {
  for (const key of all) {
    await page.keyboard.press(key);
    await expectFocus(page, key);
  }
}

/** Everything that is said by itself from here on, in its order. */
async function listen(page: Page): Promise<() => Promise<string[]>> {
  await page.evaluate(() => {
    const heard: string[] = [];
    Object.assign(window, { heard });
    for (const region of document.querySelectorAll('main > [role="status"], main > [role="alert"]'))
      new MutationObserver(() => {
        const text = region.textContent ?? '';
        if (text !== '') heard.push(text);
      }).observe(region, { childList: true, subtree: true, characterData: true });
  });
  return () => page.evaluate(() => (window as unknown as { heard: string[] }).heard);
}

const expectHeard = (heard: () => Promise<string[]>, what: RegExp): Promise<void> =>
  expect.poll(heard, { message: `heard ${what}` }).toContainEqual(expect.stringMatching(what));

/** Goes by F6 until the drawing has the focus. */
async function toDrawing(page: Page): Promise<void> {
  for (let i = 0; i < 6; i++) {
    if (await drawing(page).evaluate((e) => e === document.activeElement)) return;
    await keys(page, 'F6');
  }
  await expect(drawing(page)).toBeFocused();
}

/** Goes by the tab key until something has the focus. */
async function tabTo(page: Page, selector: string): Promise<void> {
  for (let i = 0; i < 80; i++) {
    if (await page.evaluate((s) => document.activeElement?.matches(s) ?? false, selector)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`the tab key never comes to ${selector}`);
}

/** Marks what a hand would look for, so that it is known when the tab key has come to it. */
async function tabToNamed(page: Page, at: Locator): Promise<void> {
  await at.evaluate((e) => {
    for (const before of document.querySelectorAll('[data-wanted]')) before.removeAttribute('data-wanted');
    e.setAttribute('data-wanted', '');
  });
  await tabTo(page, '[data-wanted]');
}

/** What the next point or pipe is, chosen in the tray: the tool's key a second time, then the tab key. */
async function chooseInTray(page: Page, tool: string, letter: string, ...choices: readonly RegExp[]): Promise<void> {
  await keys(page, letter);
  await tabToNamed(page, bench(page, tool));
  await keys(page, 'Enter');
  const tray = page.getByRole('region', { name: 'In hand' });
  await expect(tray).toBeVisible();
  for (const name of choices) {
    await tabToNamed(page, tray.getByRole('button', { name }).first());
    await keys(page, 'Enter');
  }
  await keys(page, 'Escape');
  await expect(tray).toBeHidden();
  await expectFocus(page, 'closing the tray');
  await toDrawing(page);
}

const toolState = (page: Page) => page.evaluate(() => window.__kickset?.editor?.store.getState().toolState);
const points = async (page: Page): Promise<number> => Object.keys((await held(page)).plan.points).length;

test('from an empty page to a finding cured, by keys alone', async ({ page }) => {
  await openEmpty(page);
  const heard = await listen(page);
  await chooseInTray(page, 'Point', 'p', /^Gas meter$/);
  await keys(page, 'ArrowRight', 'Enter');
  await expect.poll(() => points(page)).toBe(1);
  await expectHeard(heard, /Gas meter/);
  await chooseInTray(page, 'Point', 'p', /^Boiler$/, /30 kW combi/);
  await keys(page, 'Shift+ArrowRight', 'Shift+ArrowRight', 'Shift+ArrowUp', 'Shift+ArrowUp', 'Enter');
  await expect.poll(() => points(page)).toBe(2);

  await chooseInTray(page, 'Run', 'r', /^15$/);
  // Back over the meter's outlet: past the gas tail of the boiler, the next thing that way.
  await keys(page, 'Home', 'Control+ArrowDown', 'Control+ArrowDown');
  await expectHeard(heard, /outlet of Gas meter/);
  await keys(page, 'Enter');
  await expect.poll(() => toolState(page)).toBe('aiming');
  await expectHeard(heard, /^Started at outlet of Gas meter/);

  await keys(page, 'z');
  await expect(page.getByRole('textbox', { name: 'Off floor', exact: true })).toBeFocused();
  await page.keyboard.type('2420');
  await keys(page, 'Enter');
  await expect(drawing(page)).toBeFocused();
  await expectHeard(heard, /Work height: 2420 off floor/);
  for (const way of ['ArrowRight', 'ArrowUp', 'ArrowLeft'] as const) {
    await page.keyboard.type('4000');
    await keys(page, way, 'Enter');
  }
  // The last piece drops to the tail of the boiler by itself.
  const { plan } = await held(page);
  expect(Object.keys(plan.legs)).toHaveLength(4);
  const heights = Object.values(plan.nodes).flatMap((n) => (n.place.on === 'storey' ? [n.place.height.mm] : []));
  expect(heights.every((mm) => mm === 2420)).toBe(true);
  // The list points the cross at the boiler; its gas tail is the next thing below.
  await keys(page, 'Control+f');
  await page.keyboard.type('boiler');
  await expect(page.getByRole('searchbox', { name: /^Find by name/ })).toHaveValue('boiler');
  await keys(page, 'ArrowDown', 'Control+Enter');
  await expect(drawing(page)).toBeFocused();
  await keys(page, 'Control+ArrowDown');
  await expectHeard(heard, /^gas of 30 kW combi/);
  await keys(page, 'Enter');
  await expect.poll(() => toolState(page)).toBe('idle');
  await answer(page);
  await expectHeard(heard, /New: .*stop, .*[Gg]as drop/);

  await keys(page, 'Control+f');
  await expect(page.getByRole('searchbox', { name: /^Find by name/ })).toBeFocused();
  await page.keyboard.type('gas 15');
  await keys(page, 'Enter');
  await expect(panel(page).locator('.inspect')).toBeVisible();
  expect((await held(page)).selection).toMatchObject([{ map: 'runs' }]);
  await panel(page)
    .locator('.inspect')
    .getByRole('radio', { name: '28', exact: true })
    .first()
    .evaluate((e) => e.closest('fieldset')?.setAttribute('data-sizes', ''));
  await tabTo(page, '[data-sizes] input');
  for (let i = 0; i < 6; i++) {
    if (await page.evaluate(() => document.activeElement?.closest('label')?.textContent === '28')) break;
    await keys(page, 'ArrowRight');
  }
  await answer(page);
  // The next size up may be milder for a moment, before the one after it cures it.
  await expectHeard(heard, /Gone: .*(stop|check), .*[Gg]as drop/);
  await toDrawing(page);
  await keys(page, 'Control+z');
  await answer(page);
  await expectHeard(heard, /Undone: /);

  // Nothing is said twice in a row.
  const all = await heard();
  expect(all.filter((text, i) => i > 0 && text === all[i - 1] && /^(New|Gone|Chosen)/.test(text))).toEqual([]);
});

test('the list mirrors the drawing, and chooses there', async ({ page }) => {
  await openFlat(page);
  await drawing(page).focus();
  await keys(page, '/');
  await page.keyboard.type('boiler');
  await expect(page.getByText(/^\d+ found$/)).toBeVisible();
  await keys(page, 'ArrowDown', ' ', 'ArrowDown', ' ');
  expect((await held(page)).selection).toHaveLength(2);
  await expect(page.getByRole('searchbox')).toBeVisible();
  await keys(page, ' ');
  expect((await held(page)).selection).toHaveLength(1);
  await keys(page, 'Control+Enter');
  await expect(drawing(page)).toBeFocused();
  const cross = await page.evaluate(() => window.__kickset?.editor?.store.getState().cursor?.at);
  expect(cross).toBeDefined();
  // What is chosen on the drawing is where the list stands when it is opened again.
  await page.evaluate(() => window.__kickset?.editor?.select([{ map: 'walls', id: 'BN' }]));
  await keys(page, 'l');
  await expect(page.locator('.thing[aria-pressed="true"][tabindex="0"]')).toBeFocused();
});

test('the focus is never lost', async ({ page }) => {
  await openFlat(page);
  await drawing(page).focus();
  await keys(page, 'Control+f');
  await page.keyboard.type('worktop');
  await keys(page, 'Escape', 'Escape');
  await expect(drawing(page)).toBeFocused();
  for (const close of ['?', 'Control+p']) {
    await keys(page, close);
    await expect(page.getByRole('dialog')).toBeVisible();
    await keys(page, 'Escape');
    await expect(page.getByRole('dialog')).toBeHidden();
    await expectFocus(page, `closing what ${close} opened`);
  }
  // Deleted by the key of its own form, which goes with it.
  await page.evaluate(() => window.__kickset?.editor?.select([{ map: 'openings', id: 'Bd1' }]));
  const { plan } = await held(page);
  const opening = Object.keys(plan.openings)[0] ?? '';
  await page.evaluate((id) => window.__kickset?.editor?.select([{ map: 'openings', id }]), opening);
  await panel(page)
    .getByRole('button', { name: /^Delete/ })
    .focus();
  await keys(page, 'Enter');
  await expectFocus(page, 'deleting');
  await page.waitForTimeout(200);
  await expectFocus(page, 'the form went');
  await keys(page, 'Control+z', 'Control+y', 'Control+z');
  for (let i = 0; i < 6; i++) await keys(page, 'F6');
  for (let i = 0; i < 6; i++) await keys(page, 'Shift+F6');
});

test('keys are changed, clash in words, are kept, and can be off', async ({ page }) => {
  await openFlat(page);
  await drawing(page).focus();
  await keys(page, '?');
  const help = page.getByRole('dialog', { name: 'Help' });
  const wall = help.getByRole('button', { name: /^Wall: / });
  await wall.focus();
  await keys(page, 'Enter', 'r');
  await expect(help.getByText(/It is the key of "Run"/)).toBeVisible();
  await keys(page, 'x');
  await expect(help.getByText('Wall is on X now.')).toBeVisible();
  await expectFocus(page, 'a key is changed');
  await keys(page, 'Escape');
  await expect(help).toBeHidden();
  await toDrawing(page);
  await keys(page, 'x');
  expect((await held(page)).tool).toBe('wall');
  await expect(bench(page, 'Wall').locator('.letter')).toHaveText('X');
  await keys(page, 's', 'w');
  expect((await held(page)).tool).toBe('select');

  await keys(page, '?');
  await help.getByRole('radio', { name: 'only on the drawing' }).focus();
  await keys(page, ' ', 'Escape');
  await expect(bench(page, 'Wall').locator('.letter')).toHaveCount(0);
  await toDrawing(page);
  await keys(page, 'r');
  expect((await held(page)).tool).toBe('select');
  await page.reload();
  await expect(bench(page, 'Wall')).toBeVisible();
  await expect(bench(page, 'Wall').locator('.letter')).toHaveCount(0);
  await bench(page, 'Select').focus();
  await keys(page, 'r', '?', 'l');
  expect((await held(page)).tool).toBe('select');
  await expect(page.getByRole('dialog')).toHaveCount(0);
});

test('a wall face is drawn on by keys', async ({ page }) => {
  await openFlat(page);
  await page.evaluate(() => window.__kickset?.editor?.foldUp({ wall: 'BN', side: 'right' }));
  const face = page.locator('[data-pane="face"]');
  await expect(face).toBeVisible();
  await face.focus();
  const legs = Object.keys((await held(page)).plan.legs).length;
  await keys(page, 'r', 'ArrowRight', 'Alt+Enter');
  await page.keyboard.type('600');
  await keys(page, 'ArrowUp', 'Enter', 'Enter');
  expect(Object.keys((await held(page)).plan.legs)).toHaveLength(legs + 1);
});

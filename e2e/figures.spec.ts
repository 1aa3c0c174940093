import type { Page } from '@playwright/test';
import { bench, look, nodeAt, panel, pullSheet, tapPlan } from './hands/drawing.ts';
import { figureAt } from './hands/figures.ts';
import { type Hand, handOf } from './hands/hand.ts';
import { expect, isPhone, openFlat, test } from './hands/kickset.ts';
import { answer, atRest, held } from './hands/model.ts';

const pad = (page: Page) => page.getByRole('region', { name: 'Asked for' });
const key = (page: Page, name: string) => pad(page).getByRole('button', { name, exact: true });
const type = async (page: Page, hand: Hand, digits: string): Promise<void> => {
  for (const digit of digits) await hand.press(key(page, digit));
};
const drop = (report: Awaited<ReturnType<typeof answer>>): string =>
  report.sections.find((s) => s.id === 'gas-drop')?.answer ?? '?';

/** Chooses the gas from the meter by a tap in the hall, looked at from near. */
async function chooseGas(page: Page, hand: Hand): Promise<void> {
  await look(page, 7900, 3200, isPhone(page) ? 10 : 6);
  await atRest(page);
  await tapPlan(page, hand, [8500, 3300]);
  await expect.poll(async () => (await held(page)).selection).toEqual([{ map: 'runs', id: 'B-g1' }]);
  await pullSheet(page, hand, 'low');
  await atRest(page);
}

for (const kind of ['mouse', 'touch'] as const) {
  test(`a tapped figure sets a leg, and the drop with it, by ${kind}`, async ({ page }) => {
    const hand = await handOf(page, kind);
    await openFlat(page);
    const before = await held(page);
    const said = await answer(page);
    await chooseGas(page, hand);

    await hand.tap(await figureAt(page, 'leg', 1650));
    await expect(pad(page)).toBeVisible();
    await expect(pad(page)).toContainText('It is 1650 now.');
    for (const button of await pad(page).getByRole('button').all()) {
      const box = await button.boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0), (await button.textContent()) ?? '').toBeGreaterThanOrEqual(
        44,
      );
    }
    await expect(key(page, 'lower end moves')).toHaveAttribute('aria-pressed', 'false');
    await type(page, hand, '1400');
    await hand.press(key(page, 'keep'));
    await expect(pad(page)).toBeHidden();
    const now = await held(page);
    expect(now.undo.length).toBe(before.undo.length + 1);
    expect(nodeAt(before.plan, 'B-g1.2')).toMatchObject({ x: 8500, y: 3950 });
    expect(nodeAt(now.plan, 'B-g1.2')).toMatchObject({ x: 8500, y: 3700 });
    expect(nodeAt(now.plan, 'B-g1.1')).toEqual(nodeAt(before.plan, 'B-g1.1'));

    // The boiler further along its wall: the gas that follows it is longer.
    await page.evaluate(() => window.__kickset?.editor?.select([{ map: 'points', id: 'B-NB' }]));
    await look(page, 1300, 5900, isPhone(page) ? 10 : 6);
    await atRest(page);
    await hand.tap(await figureAt(page, 'point', 550));
    await type(page, hand, '15');
    await hand.press(key(page, '00'));
    await hand.press(key(page, 'keep'));
    await expect.poll(async () => (await held(page)).plan.points['B-NB']?.place).toMatchObject({ alongMm: 1750 });
    expect(drop(await answer(page))).not.toBe(drop(said));

    await hand.press(bench(page, 'Undo'));
    await hand.press(bench(page, 'Undo'));
    await expect.poll(async () => (await held(page)).plan).toEqual(before.plan);
  });
}

test('a keyboard types it, Escape gives it up, and a refusal is said', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  const before = await held(page);
  await chooseGas(page, hand);
  await hand.tap(await figureAt(page, 'leg', 1650));
  await page.keyboard.type('77');
  await expect(pad(page)).toContainText('77');
  await page.keyboard.press('Escape');
  await expect(pad(page)).toBeHidden();
  expect((await held(page)).plan).toEqual(before.plan);
  expect((await held(page)).selection).toEqual([{ map: 'runs', id: 'B-g1' }]);

  await page.evaluate(() => window.__kickset?.editor?.select([{ map: 'openings', id: 'bd1' }]));
  const door = before.plan.openings.bd1;
  const wall = before.plan.walls[door?.wall ?? ''];
  if (!door || !wall) throw new Error('no door');
  await look(page, (wall.a.x + wall.b.x) / 2, (wall.a.y + wall.b.y) / 2, 10);
  await atRest(page);
  await hand.tap(await figureAt(page, 'opening', 900));
  await page.keyboard.type('90000');
  await page.keyboard.press('Enter');
  await expect(page.locator('.said.refusal')).toHaveText(/^The opening does not fit/);
  await expect(pad(page)).toBeVisible();
  expect((await held(page)).plan).toEqual(before.plan);
  await page.keyboard.press('Escape');
});

test('on the face of a wall a figure sets how high a thing hangs', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  const { plan } = await held(page);
  const boiler = plan.points['B-NB'];
  if (boiler?.place.on !== 'wall') throw new Error('no new boiler on a wall');
  const { wall, side } = boiler.place;
  await page.evaluate(({ wall, side }) => window.__kickset?.editor?.foldUp({ wall, side }), { wall, side });
  await expect(page.getByRole('application', { name: /^Drawing: face of/ })).toBeVisible();
  await atRest(page);
  await page.evaluate(() => {
    const editor = window.__kickset?.editor;
    editor?.setActivePane('face');
    editor?.select([{ map: 'points', id: 'B-NB' }]);
  });
  await pullSheet(page, hand, 'low');
  await look(page, 700, 1100, isPhone(page) ? 8 : 5, 'face');
  await atRest(page);
  await hand.tap(await figureAt(page, 'point', 1300, 'face'));
  await type(page, hand, '12');
  await hand.press(key(page, '00'));
  await hand.press(key(page, 'rub'));
  await type(page, hand, '5');
  await hand.press(key(page, 'keep'));
  await expect
    .poll(async () => (await held(page)).plan.points['B-NB']?.place.height)
    .toMatchObject({ from: 'floor', mm: 1205 });
  await expect(panel(page)).toBeVisible();
});

import type { Page } from '@playwright/test';
import { bench, look, onPlan, openChapter, panel, pullSheet, tapPlan } from './hands/drawing.ts';
import { type Hand, handOf } from './hands/hand.ts';
import { expect, isPhone, openFlat, test } from './hands/kickset.ts';
import { atRest, held } from './hands/model.ts';

const bar = (page: Page) => page.getByRole('region', { name: 'Choosing several' });

async function chosen(page: Page): Promise<string[]> {
  return (await held(page)).selection.map((s) => `${s.map} ${s.id}`).sort();
}

/** Opens one part of the form of several, and gives it. */
async function part(page: Page, hand: Hand, name: string) {
  await pullSheet(page, hand, 'full');
  const title = page.locator('.group-name').getByText(name, { exact: true });
  const fold = panel(page).locator('details.field-group').filter({ has: title });
  if ((await fold.getAttribute('open')) === null) await hand.press(fold.locator('summary'));
  await expect(fold).toHaveAttribute('open', '');
  return fold;
}

async function undo(page: Page, hand: Hand, to: unknown): Promise<void> {
  await hand.press(bench(page, 'Undo'));
  await expect.poll(async () => (await held(page)).plan).toEqual(to);
}

/** The walls of the meter's cupboard, from near. */
async function atTheCupboard(page: Page): Promise<void> {
  await openFlat(page);
  await look(page, 7600, 2500, isPhone(page) ? 6.5 : 6);
  await atRest(page);
}

test('by a finger: several by taps and a box, moved by a typed way, aligned, mirrored', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await atTheCupboard(page);
  const before = await held(page);
  await tapPlan(page, hand, [8150, 2100]);
  await expect.poll(() => chosen(page)).toEqual(['walls BP10']);
  await pullSheet(page, hand, 'low');
  await expect(bar(page)).toBeHidden();
  await hand.press(page.getByRole('button', { name: 'Several', exact: true }));
  await expect(bar(page)).toBeVisible();
  await tapPlan(page, hand, [7850, 2700]);
  await expect.poll(() => chosen(page)).toEqual(['walls BP10', 'walls BP9']);

  // A box takes what it touches, and the paper stays where it is.
  const { camera } = await held(page);
  await hand.drag([await onPlan(page, 7150, 2650), await onPlan(page, 7250, 2850)]);
  await expect.poll(() => chosen(page)).toEqual(['walls BP10', 'walls BP2', 'walls BP9']);
  await expect(bar(page)).toContainText('3 walls');
  expect((await held(page)).camera).toEqual(camera);
  await tapPlan(page, hand, [7200, 2850]);
  await expect.poll(() => chosen(page)).toEqual(['walls BP10', 'walls BP9']);
  await hand.press(bar(page).getByRole('button', { name: 'Done' }));
  await expect(bar(page)).toBeHidden();
  expect((await held(page)).plan).toEqual(before.plan);
  expect(await chosen(page)).toEqual(['walls BP10', 'walls BP9']);

  await pullSheet(page, hand, 'full');
  await expect(panel(page).locator('.many-count')).toHaveText('2 walls');
  const move = await part(page, hand, 'Move');
  await hand.press(move.getByRole('button', { name: 'Across: right, change to left' }));
  await move.getByRole('textbox', { name: 'Across, mm left' }).fill('150');
  await move.getByRole('textbox', { name: 'On the sheet, mm up sheet' }).fill('40');
  await hand.press(move.getByRole('button', { name: 'Move', exact: true }));
  await expect.poll(async () => (await held(page)).plan.walls.BP9?.a).toMatchObject({ x: 7700, y: 2140 });
  expect((await held(page)).plan.walls.BP10?.a).toMatchObject({ x: 7700, y: 2140 });
  expect((await held(page)).undo.length).toBe(before.undo.length + 1);
  await undo(page, hand, before.plan);

  await hand.press(move.getByRole('button', { name: '50', exact: true }));
  await hand.press(move.getByRole('button', { name: '50 left' }));
  await expect.poll(async () => (await held(page)).plan.walls.BP9?.a.x).toBe(7800);
  await undo(page, hand, before.plan);
  await hand.press(move.locator('summary'));

  const align = await part(page, hand, 'Align');
  await hand.press(align.getByRole('group', { name: 'In a line up the sheet' }).getByRole('button', { name: 'left' }));
  // The one stands with its face there, the other begins there.
  await expect.poll(async () => (await held(page)).plan.walls.BP10?.a.x).toBe(7812.5);
  expect((await held(page)).plan.walls.BP9?.a.x).toBe(7850);
  await undo(page, hand, before.plan);
  await hand.press(align.locator('summary'));

  const mirror = await part(page, hand, 'Mirror');
  await expect(mirror).toContainText('Appliances keep the hand they are made with');
  await hand.press(mirror.getByRole('radio', { name: 'a copy' }));
  await hand.press(mirror.getByRole('button', { name: 'Left to right' }));
  await expect
    .poll(async () => Object.keys((await held(page)).plan.walls).length)
    .toBe(Object.keys(before.plan.walls).length + 2);
  const now = await held(page);
  expect(now.selection.map((s) => s.map)).toEqual(['walls', 'walls']);
  expect(now.selection.every((s) => !(s.id in before.plan.walls))).toBe(true);
  expect(now.undo.at(-1)).toBe('mirrored copy of 2 things');
  await undo(page, hand, before.plan);
});

test('by a mouse: shift adds and draws a box; lagging of all their legs is one step', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  await look(page, 4200, 5200, isPhone(page) ? 14 : 8);
  await atRest(page);
  const before = await held(page);
  await page.evaluate(() => window.__kickset?.editor?.select([{ map: 'runs', id: 'B-f1' }]));
  await page.keyboard.down('Shift');
  await hand.drag([await onPlan(page, 4200, 5600), await onPlan(page, 4260, 6200)]);
  await page.keyboard.up('Shift');
  const taken = (await held(page)).selection;
  expect(taken.length).toBeGreaterThan(1);
  expect(taken.every((s) => s.map === 'runs' || s.map === 'legs')).toBe(true);
  await expect(bar(page)).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(bar(page)).toBeHidden();
  expect((await held(page)).selection).toEqual(taken);

  const legs = Object.values(before.plan.legs).filter((l) => taken.some((t) => t.id === l.id || t.id === l.run));
  const pipes = await part(page, hand, 'Size and lagging');
  const boxes = await pipes.getByRole('textbox', { name: 'Lagging' }).all();
  for (const box of boxes) {
    await box.fill('19');
    await box.press('Enter');
  }
  await expect
    .poll(async () => {
      const { plan } = await held(page);
      return legs.every((l) => plan.legs[l.id]?.insulation?.thicknessMm === 19);
    })
    .toBe(true);
  expect((await held(page)).undo.length).toBe(before.undo.length + boxes.length);
});

test('a floor is copied upward, and says what is to be told of it', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  const before = await held(page);
  await openChapter(page, hand, 'Job and basis');
  await hand.press(panel(page).getByRole('button', { name: /^Floors/ }));
  const copy = panel(page).getByRole('group', { name: /^Copy .* upward$/ });
  await copy.getByRole('textbox', { name: 'Name of the new floor' }).fill('Attic');
  await hand.press(copy.getByRole('button', { name: 'Copy walls and rooms upward' }));
  await expect(copy.getByRole('status')).toContainText('Attic is there, all of it assumed until measured. Tell of its');
  const { plan, undo: steps } = await held(page);
  const attic = Object.values(plan.storeys).find((s) => s.name === 'Attic');
  const [below] = Object.values(before.plan.storeys);
  if (!attic || !below) throw new Error('no floors');
  expect(attic.floorMm).toBe(below.floorMm + below.ceilingMm + below.buildUpMm);
  expect(Object.values(plan.walls).filter((w) => w.storey === attic.id).length).toBe(
    Object.values(before.plan.walls).filter((w) => w.storey === below.id).length,
  );
  expect(steps.length).toBe(before.undo.length + 1);
  await pullSheet(page, hand, 'low');
  await expect(page.getByRole('group', { name: 'Floor' }).getByRole('button', { name: 'Attic' })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
});

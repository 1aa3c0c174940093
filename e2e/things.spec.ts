import type { Page } from '@playwright/test';
import { expectNoViolations, tooSmall } from './hands/a11y.ts';
import { bench, look, onPlan, panel, pullSheet } from './hands/drawing.ts';
import { type Hand, handOf } from './hands/hand.ts';
import { expect, isPhone, openEmpty, test } from './hands/kickset.ts';
import { held } from './hands/model.ts';

const dialog = (page: Page) => page.getByRole('dialog');

async function openThings(page: Page, hand: Hand) {
  await hand.press(bench(page, 'More'));
  await hand.press(dialog(page).getByRole('button', { name: 'My things', exact: true }));
  await expect(dialog(page).getByRole('heading', { name: 'My things' })).toBeVisible();
}

/** Types into a box of the open sheet and leaves it. */
async function type(page: Page, label: string, text: string) {
  const box = dialog(page).getByRole('textbox', { name: label, exact: true }).first();
  await box.fill(text);
  await box.press('Enter');
  await box.blur();
}

/** A boiler copied from its class and typed from its sheet: its gas tail is furthest left but one. */
async function typeBoiler(page: Page, hand: Hand) {
  await openThings(page, hand);
  await hand.press(dialog(page).getByRole('button', { name: 'Copy 30 kW combi class, assumed' }));
  await type(page, 'Name', 'Loft boiler');
  await expect(dialog(page).getByRole('heading', { name: 'Loft boiler' })).toBeVisible();
  await hand.press(dialog(page).getByRole('radio', { name: 'its own sheet' }));
  await type(page, 'Heat input, hot water', '31.2');
  await hand.press(dialog(page).getByRole('button', { name: 'Gas: one to the left' }));
  await hand.press(dialog(page).getByRole('button', { name: 'All my things' }));
}

async function useBoiler(page: Page, hand: Hand) {
  await hand.press(dialog(page).getByRole('button', { name: 'Use Loft boiler' }));
  await expect(dialog(page)).toBeHidden();
  await look(page, 2000, 2000, 10);
  await hand.tap(await onPlan(page, 2000, 2000));
  await expect.poll(async () => Object.keys((await held(page)).plan.points).length).toBe(1);
}

const boiler = async (page: Page) => {
  const [point] = Object.values((await held(page)).plan.points);
  if (!point) throw new Error('no boiler');
  return point;
};

const leftToRight = (point: Awaited<ReturnType<typeof boiler>>): string[] =>
  [...point.connections].sort((a, b) => a.at.x - b.at.x).map((c) => c.id);

test('typed once from its sheet, used on the plan, kept for the next job', async ({ page }) => {
  await openEmpty(page);
  const hand = await handOf(page, 'touch');
  await typeBoiler(page, hand);
  await useBoiler(page, hand);
  const point = await boiler(page);
  expect(point).toMatchObject({ name: 'Loft boiler', kind: 'boiler', sureness: 'seen' });
  expect(point.fields).toMatchObject({ inputKwHotWater: 31.2, class: '30' });
  expect(leftToRight(point).slice(0, 3)).toEqual(['flow', 'gas', 'hot']);
  const { plan } = await held(page);
  expect(Object.values(plan.things)).toMatchObject([{ id: point.thing, name: 'Loft boiler' }]);

  await hand.press(bench(page, 'Undo'));
  expect((await held(page)).plan.things).toEqual({});

  await page.goto('./');
  await page.evaluate(() => history.replaceState(null, '', location.pathname));
  await page.reload();
  await openThings(page, hand);
  await expect(dialog(page).getByRole('button', { name: /^Loft boiler boiler; 30 kW class/ })).toBeVisible();
});

test('a sheet that changed is offered to the point, and taken only when it is asked for', async ({ page }) => {
  await openEmpty(page);
  const hand = await handOf(page, 'touch');
  await typeBoiler(page, hand);
  await useBoiler(page, hand);
  await pullSheet(page, hand, 'full');
  await expect(panel(page).getByText('As the sheet of Loft boiler says.')).toBeVisible();

  await hand.press(panel(page).getByRole('button', { name: 'Open its sheet' }));
  await type(page, 'Heat input, hot water', 'much');
  await expect(dialog(page).getByText('A number is wanted.')).toBeVisible();
  await type(page, 'Heat input, hot water', '33');
  await hand.press(dialog(page).getByRole('button', { name: 'Close' }));
  expect((await boiler(page)).fields.inputKwHotWater).toBe(31.2);

  const offer = panel(page).getByRole('region', { name: 'Its sheet' });
  await expect(offer).toContainText('The sheet of Loft boiler says otherwise:');
  await expect(offer).toContainText('33 kW here 31.2 kW');
  await hand.press(offer.getByRole('button', { name: 'Take what the sheet says' }));
  await expect.poll(async () => (await boiler(page)).fields.inputKwHotWater).toBe(33);
  await expect(offer).toContainText('As the sheet of Loft boiler says.');
  await page.keyboard.press('Control+z');
  await expect.poll(async () => (await boiler(page)).fields.inputKwHotWater).toBe(31.2);
});

test('a class placed from the tray is assumed; kept as a thing, deleted and brought back', async ({ page }) => {
  await openEmpty(page);
  const hand = await handOf(page, 'touch');
  await openThings(page, hand);
  await hand.press(dialog(page).getByRole('button', { name: 'Use 24 kW system class, assumed' }));
  await look(page, 2000, 2000, 10);
  await hand.tap(await onPlan(page, 2000, 2000));
  await expect.poll(async () => Object.keys((await held(page)).plan.points).length).toBe(1);
  expect(await boiler(page)).toMatchObject({ sureness: 'assumed', fields: { inputKwHeating: { lo: 24, hi: 28.5 } } });

  await pullSheet(page, hand, 'full');
  await hand.press(panel(page).getByRole('button', { name: 'Keep as one of my things' }));
  await expect(panel(page).getByText('As the sheet of 24 kW system class says.')).toBeVisible();
  await openThings(page, hand);
  const row = dialog(page).getByRole('button', { name: /^24 kW system class boiler/ });
  await expect(row).toBeVisible();
  await hand.press(dialog(page).getByRole('button', { name: 'Delete 24 kW system class' }));
  await expect(row).toBeHidden();
  await hand.press(dialog(page).getByRole('button', { name: 'Bring it back' }));
  await expect(row).toBeVisible();
});

test('the screens are easy to hit and to read', async ({ page }) => {
  await openEmpty(page);
  const hand = await handOf(page, 'touch');
  await openThings(page, hand);
  expect(await tooSmall(page, 44)).toEqual([]);
  await expectNoViolations(page, 'my things', isPhone(page));
  await hand.press(dialog(page).getByRole('button', { name: 'Copy 210 litre unvented cylinder class, assumed' }));
  await expect(dialog(page).getByRole('img', { name: /^Front, tails from the left/ })).toBeVisible();
  expect(await tooSmall(page, 44)).toEqual([]);
  await expectNoViolations(page, 'a sheet', isPhone(page));
});

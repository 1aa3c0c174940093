import type { Page } from '@playwright/test';
import { expectNoViolations, tooSmall } from './hands/a11y.ts';
import { nodeAt } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { expect, openFlat, test } from './hands/kickset.ts';
import { answer, atRest, draws, held } from './hands/model.ts';
import type { At } from './hands/touch.ts';

const MOVES = 40;

const bars = (page: Page) => page.getByRole('region', { name: 'Pipes by their heights' });
const gas = (page: Page) => bars(page).getByRole('slider', { name: 'Height of gas 28' });
const pull = (page: Page) => page.getByRole('button', { name: /the long section/ });

async function middle(page: Page, name: string): Promise<At> {
  const box = await bars(page).getByRole('slider', { name }).boundingBox();
  if (!box) throw new Error(`no bar "${name}"`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

async function choose(page: Page, run: string): Promise<void> {
  await page.evaluate((id) => window.__kickset?.editor?.select([{ map: 'runs', id }]), run);
  await expect(gas(page)).toBeVisible();
  await atRest(page);
}

/** Height of the level gas pipe over the datum. */
async function gasHeight(page: Page): Promise<number> {
  const { plan } = await held(page);
  const legs = Object.values(plan.legs).filter((l) => l.run === 'B-g1');
  const level = legs.find((l) => Math.abs(nodeAt(plan, l.a).z - nodeAt(plan, l.b).z) < 1);
  if (!level) throw new Error('no level gas pipe');
  return nodeAt(plan, level.a).z;
}

test('a tap on a bar chooses its run, a second tap types its height', async ({ page }) => {
  await openFlat(page);
  const hand = await handOf(page, 'touch');
  const bar = bars(page).getByRole('slider', { name: 'Height of boiler relief 15' });
  await expect(bar).toHaveAttribute('aria-valuetext', /off the floor.*falls 10/);
  await hand.press(bar);
  const { plan, selection } = await held(page);
  expect(selection.map(({ map, id }) => [map, plan.runs[id]?.service])).toEqual([['runs', 'boilerRelief']]);
  await hand.press(bar);
  const box = page.getByRole('dialog', { name: 'Height of boiler relief 15' });
  await expect(box.getByRole('textbox', { name: 'Off floor' })).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(box).toBeHidden();
});

test('bars that lie together are offered as a list', async ({ page }) => {
  await openFlat(page);
  const hand = await handOf(page, 'touch');
  await hand.press(bars(page).getByRole('button', { name: /pipes: .*HR/ }));
  const box = page.getByRole('dialog', { name: 'Pipes here' });
  await hand.press(box.getByRole('button', { name: /^Heating return 22/ }));
  const told = page.getByRole('dialog', { name: 'Height of heating return 22' });
  await expect(told.getByText(/off the floor/).first()).toBeVisible();
  expect((await held(page)).selection[0]?.map).toBe('runs');
  expect(await tooSmall(page, 44)).toEqual([]);
});

for (const kind of ['mouse', 'touch'] as const) {
  test(`a bar dragged by ${kind} moves the height of its stretch in one step, and nothing is drawn anew meanwhile`, async ({
    page,
  }) => {
    await openFlat(page);
    await choose(page, 'B-g1');
    const hand = await handOf(page, kind);
    const from = await middle(page, 'Height of gas 28');
    const was = await gasHeight(page);
    const { undo } = await held(page);
    const before = (await draws(page)).plan;
    await hand.down(from);
    for (let i = 1; i <= 6; i++) await hand.move({ x: from.x, y: from.y + i * 3 });
    await atRest(page);
    const first = (await draws(page)).plan;
    for (let i = 7; i <= MOVES; i++) {
      await hand.move({ x: from.x, y: from.y + i * 3 });
      await page.evaluate(() => new Promise((next) => requestAnimationFrame(next)));
    }
    await atRest(page);
    const last = (await draws(page)).plan;
    expect(first.still - before.still, 'still draws at the start').toBeLessThanOrEqual(1);
    expect(last.still - first.still, 'still draws while it moves').toBe(0);
    expect(last.work - first.work, 'work draws while it moves').toBe(0);
    expect(last.live - first.live, 'live draws while it moves').toBeGreaterThan(MOVES / 4);
    await expect(page.locator('.height-says')).toHaveText(/^\d+/);
    expect(await gasHeight(page), 'nothing of the plan has changed yet').toBe(was);
    await hand.up();
    await answer(page);
    await atRest(page);
    const after = (await draws(page)).plan;
    expect(after.still - last.still, 'still draws at the commit').toBeLessThanOrEqual(1);
    expect(await gasHeight(page)).toBeLessThan(was - 100);
    expect((await held(page)).undo.length).toBe(undo.length + 1);
    await page.evaluate(() => window.__kickset?.editor?.undo());
    expect(await gasHeight(page)).toBe(was);
  });
}

test('a second finger gives the drag up and leaves no mark', async ({ page }) => {
  await openFlat(page);
  await choose(page, 'B-g1');
  const hand = await handOf(page, 'mouse');
  const from = await middle(page, 'Height of gas 28');
  const { undo } = await held(page);
  await hand.down(from);
  await hand.move({ x: from.x, y: from.y + 60 });
  expect((await held(page)).drafting).toBe(true);
  await page.evaluate(() =>
    document.body.dispatchEvent(
      new PointerEvent('pointerdown', { pointerId: 77, bubbles: true, pointerType: 'touch' }),
    ),
  );
  expect((await held(page)).drafting).toBe(false);
  await hand.move({ x: from.x, y: from.y + 90 });
  await hand.up();
  expect((await held(page)).undo).toEqual(undo);
});

test('keys: arrows step by 10, page keys by 100, Enter types', async ({ page }) => {
  await openFlat(page);
  await choose(page, 'B-g1');
  const was = await gasHeight(page);
  await gas(page).focus();
  await page.keyboard.press('ArrowDown');
  expect(await gasHeight(page)).toBe(was - 10);
  await expect(gas(page)).toBeFocused();
  await page.keyboard.press('PageDown');
  expect(await gasHeight(page)).toBe(was - 110);
  await page.keyboard.press('Enter');
  const field = page.getByRole('textbox', { name: 'Off floor' });
  await expect(field).toBeFocused();
  await field.fill('2300');
  await field.press('Enter');
  expect(await gasHeight(page)).toBeCloseTo(2300, 1);
  await page.keyboard.press('Escape');
  await expect(gas(page)).toBeFocused();
});

test('the ribbon pulls out to the long section by its edge and by a key, and is taken hold of there', async ({
  page,
}) => {
  await openFlat(page);
  await choose(page, 'B-g1');
  const hand = await handOf(page, 'mouse');
  const edge = await pull(page).boundingBox();
  if (!edge) throw new Error('no edge');
  const at = { x: edge.x + 22, y: edge.y + 28 };
  await hand.drag([at, { x: at.x + 240, y: at.y }]);
  const ribbon = page.locator('.ribbon');
  await expect.poll(async () => Math.round((await ribbon.boundingBox())?.width ?? 0)).toBe(360);
  const told = page.getByRole('list', { name: 'Along the gas 28' });
  await expect(told).toContainText('up 1920 to 2420');
  await expect(told).toContainText('over a joist');
  const was = await gasHeight(page);
  const from = await middle(page, 'Height of gas 28');
  await hand.drag([from, { x: from.x, y: from.y + 60 }]);
  expect(await gasHeight(page)).toBeLessThan(was - 100);
  await expectNoViolations(page, 'long section', true);
  expect(await tooSmall(page, 44)).toEqual([]);
  await pull(page).focus();
  await page.keyboard.press('Enter');
  await expect.poll(async () => Math.round((await ribbon.boundingBox())?.width ?? 0)).toBeLessThan(120);
});

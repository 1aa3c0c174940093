import type { Locator, Page } from '@playwright/test';
import { expectNoViolations, tooSmall } from './hands/a11y.ts';
import { bench, look, onPlan, panel, pullSheet, takeTool } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { expect, isPhone, openEmpty, openFlat, test } from './hands/kickset.ts';
import { answer, atRest, held } from './hands/model.ts';
import type { At } from './hands/touch.ts';

const LEAST_PX = 44;

const pane = (page: Page): Locator => page.getByRole('region', { name: 'Isometric' });
const stage = (page: Page): Locator => pane(page).getByRole('application');
const key = (page: Page, name: string): Locator => pane(page).getByRole('button', { name, exact: true });
const open = (page: Page): Locator => page.locator('.canvas-keys').getByRole('button', { name: 'Isometric' });
const draws = (page: Page): Promise<number> =>
  stage(page)
    .locator('canvas')
    .evaluate((c: HTMLCanvasElement) => Number(c.dataset.draws));
const picture = (page: Page): Promise<string> =>
  stage(page)
    .locator('canvas')
    .evaluate((c: HTMLCanvasElement) => c.toDataURL());

/** A place on the drawing where a tap chooses one of its legs: looked for over a net, as an eye would. */
async function tapLeg(page: Page, tap: (at: At) => Promise<void>): Promise<string> {
  const box = await stage(page).boundingBox();
  if (!box) throw new Error('no isometric');
  for (const v of [0.5, 0.45, 0.55, 0.4, 0.6, 0.35]) {
    for (const u of [0.5, 0.6, 0.4, 0.7, 0.3, 0.8]) {
      await tap({ x: box.x + box.width * u, y: box.y + box.height * v });
      const [first] = (await held(page)).selection;
      if (first?.map === 'legs') return first.id;
    }
  }
  throw new Error('no leg under any place');
}

test('opened by touch beside the plan, a tapped leg is the one the panel tells of', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await hand.press(open(page));
  await expect(stage(page)).toBeVisible();
  await atRest(page);
  const leg = await tapLeg(page, hand.tap);
  const { plan, selection, undo } = await held(page);
  expect(selection).toEqual([{ map: 'legs', id: leg }]);
  expect(plan.legs[leg]).toBeDefined();
  expect(undo).toEqual([]);
  const title = panel(page).getByRole('heading', { level: 2 });
  if (!isPhone(page)) await expect(title).toContainText(/leg/);
});

test('one run, its system, all; turned four times it is as it was', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await hand.press(open(page));
  await expect(stage(page)).toBeVisible();
  await expect(stage(page)).toHaveAccessibleName(/Isometric of all pipes/);
  await page.evaluate(() => window.__kickset?.editor?.select([]));
  await hand.press(key(page, 'One run'));
  await expect(pane(page)).toContainText('Choose a run on the plan');
  const { plan } = await held(page);
  const run = Object.values(plan.runs).find((r) => r.service === 'gas');
  if (!run) throw new Error('no gas');
  await page.evaluate((id) => window.__kickset?.editor?.select([{ map: 'runs', id }]), run.id);
  await expect(stage(page)).toHaveAccessibleName(new RegExp(`Isometric of ${run.name}`));
  await hand.press(key(page, 'System'));
  await expect(stage(page)).toHaveAccessibleName(/all that hangs on/);
  await atRest(page);
  const seen = [await picture(page)];
  for (let i = 0; i < 4; i++) {
    const before = seen.at(-1);
    await hand.press(key(page, 'Turn'));
    await expect.poll(() => picture(page)).not.toBe(before);
    seen.push(await picture(page));
  }
  expect(seen[4]).toBe(seen[0]);
  expect(new Set(seen.slice(0, 4)).size).toBe(4);
  const before = await picture(page);
  await hand.press(key(page, 'Lengths'));
  await expect.poll(() => picture(page)).not.toBe(before);
});

test('pushed, pinched by wheel and fitted again, with nothing in history', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  await hand.press(open(page));
  await expect(stage(page)).toBeVisible();
  await atRest(page);
  const first = await picture(page);
  const box = await stage(page).boundingBox();
  if (!box) throw new Error('no isometric');
  const middle = { x: box.x + box.width / 2, y: box.y + box.height * 0.8 };
  await hand.drag([middle, { x: middle.x + 60, y: middle.y - 40 }]);
  await expect.poll(() => picture(page)).not.toBe(first);
  await page.mouse.wheel(0, -240);
  await page.waitForTimeout(250);
  await hand.press(key(page, 'Show all of the isometric'));
  await expect.poll(() => picture(page)).toBe(first);
  expect((await held(page)).undo).toEqual([]);
});

test('keys go from pipe to pipe and say it', async ({ page }) => {
  await openFlat(page);
  await open(page).click();
  await expect(stage(page)).toBeVisible();
  await stage(page).focus();
  await page.keyboard.press('ArrowRight');
  const said = pane(page).getByRole('status');
  await expect(said).toContainText(/^Pipe 1 of \d+: /);
  const [first] = (await held(page)).selection;
  await page.keyboard.press('ArrowRight');
  await expect(said).toContainText(/^Pipe 2 of /);
  await page.keyboard.press('ArrowLeft');
  expect((await held(page)).selection).toEqual([first]);
  expect((await held(page)).undo).toEqual([]);
});

test('a drag on the plan draws the isometric once, when it is done', async ({ page }) => {
  test.skip(isPhone(page), 'one pane at a time');
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  await hand.press(open(page));
  await expect(stage(page)).toBeVisible();
  await takeTool(page, hand, 'Select');
  const { plan } = await held(page);
  const node = Object.values(plan.nodes).find(
    (n) => n.place.on === 'storey' && Object.values(plan.legs).filter((l) => l.a === n.id || l.b === n.id).length === 2,
  );
  if (node?.place.on !== 'storey') throw new Error('no corner');
  const { x, y } = node.place;
  await look(page, x, y, 6);
  const leg = Object.values(plan.legs).find((l) => l.a === node.id || l.b === node.id);
  await page.evaluate((id) => window.__kickset?.editor?.select([{ map: 'nodes', id }]), node.id);
  await atRest(page);
  const from = await onPlan(page, x, y);
  const before = await draws(page);
  await hand.down(from);
  for (let i = 1; i <= 20; i++) await hand.move({ x: from.x, y: from.y + i * 2 });
  await atRest(page);
  expect((await held(page)).drafting).toBe(true);
  expect(await draws(page)).toBe(before);
  await hand.up();
  await answer(page);
  expect(leg).toBeDefined();
  await expect.poll(() => draws(page)).toBeGreaterThan(before);
  expect((await held(page)).undo).toHaveLength(1);
});

test('the bar between the panes is dragged and stepped, and the device keeps it', async ({ page }) => {
  test.skip(isPhone(page), 'one pane at a time');
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await hand.press(open(page));
  const bar = page.getByRole('separator', { name: 'Width of the plan' });
  await expect(bar).toHaveAttribute('aria-valuenow', '50');
  const box = await bar.boundingBox();
  const whole = await page.locator('.stages').boundingBox();
  if (!box || !whole) throw new Error('no bar');
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 3 };
  await hand.drag([at, { x: whole.x + whole.width * 0.62, y: at.y }]);
  await expect(bar).toHaveAttribute('aria-valuenow', '62');
  await bar.focus();
  await page.keyboard.press('ArrowLeft');
  await expect(bar).toHaveAttribute('aria-valuenow', '57');
  await page.keyboard.press('End');
  await expect(bar).toHaveAttribute('aria-valuenow', '75');
  await page.reload();
  await openFlatAgain(page);
  if (!(await stage(page).isVisible())) await hand.press(open(page));
  await expect(bar).toHaveAttribute('aria-valuenow', '75');
});

async function openFlatAgain(page: Page): Promise<void> {
  const demo = page.getByRole('button', { name: 'open the demo flat' });
  const job = page.getByRole('button', { name: /First-floor flat/ }).first();
  await expect(demo.or(job).first()).toBeVisible();
  if (await demo.isVisible()) await demo.click();
  await answer(page);
}

test('a wall folds up and down beside it', async ({ page }) => {
  test.skip(isPhone(page), 'one pane at a time');
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await hand.press(open(page));
  await expect(stage(page)).toBeVisible();
  const { plan } = await held(page);
  const wall = Object.keys(plan.walls)[0] ?? '';
  await page.evaluate((id) => window.__kickset?.editor?.foldUp({ wall: id, side: 'left' }), wall);
  await expect(page.locator('.pane-face')).toBeVisible();
  await atRest(page);
  const { camera, faceCamera } = await held(page);
  expect(faceCamera?.mmPerPx).toBeCloseTo(camera.mmPerPx, 6);
  await expect(stage(page)).toBeVisible();
  await hand.press(page.getByRole('button', { name: 'fold down' }));
  await expect(page.locator('.pane-face')).toHaveCount(0);
  await expect(stage(page)).toBeVisible();
});

test('a phone shows one of the two, and one key for the other', async ({ page }) => {
  test.skip(!isPhone(page), 'both have room');
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await hand.press(open(page));
  await expect(stage(page)).toBeVisible();
  await expect(page.locator('.pane-plan')).not.toBeVisible();
  await hand.press(page.getByRole('button', { name: 'Plan', exact: true }));
  await expect(stage(page)).toHaveCount(0);
  await expect(page.locator('.pane-plan')).toBeVisible();
  await hand.press(open(page));
  await expect(stage(page)).toBeVisible();
  await hand.press(key(page, 'Close the isometric'));
  await expect(stage(page)).toHaveCount(0);
  await expect(open(page)).toBeVisible();
});

test('from the form of a run to its isometric', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  const { plan } = await held(page);
  const run = Object.values(plan.runs).find((r) => r.service === 'gas');
  await page.evaluate((id) => window.__kickset?.editor?.select([{ map: 'runs', id }]), run?.id ?? '');
  const see = panel(page).getByRole('button', { name: 'See it in isometric' });
  await pullSheet(page, hand, 'full');
  await hand.press(see);
  await expect(stage(page)).toHaveAccessibleName(new RegExp(`Isometric of ${run?.name}`));
});

test('an empty job is told in words', async ({ page }) => {
  await openEmpty(page);
  await bench(page, 'Run').click();
  await open(page).click();
  await expect(pane(page)).toContainText('No pipe is drawn yet');
});

test('nothing of it is too small for a finger, nor against the checker', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await hand.press(open(page));
  await expect(stage(page)).toBeVisible();
  await atRest(page);
  expect(await tooSmall(page, LEAST_PX)).toEqual([]);
  await expectNoViolations(page, 'isometric', true);
});

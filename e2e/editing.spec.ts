import type { Page } from '@playwright/test';
import type { Plan } from '../src/plan/plan.ts';
import { bench, inHand, look, nodeAt, only, onPlan, panel, tailOf, takeTool, tapPlan } from './hands/drawing.ts';
import { type Hand, handOf } from './hands/hand.ts';
import { expect, openEmpty, openFlat, test } from './hands/kickset.ts';
import { answer, held } from './hands/model.ts';

const NEAR = 2;
/** Lengths go in steps of 50 where nothing is caught. */
const ROUND = 50;
const pointOf = (plan: Plan, kind: string) => {
  const found = Object.values(plan.points).find((p) => p.kind === kind);
  if (!found) throw new Error(`no ${kind}`);
  return found;
};

/** Four walls of 3000 by 2400 about the middle of an empty page. */
async function drawRoom(page: Page, hand: Hand): Promise<void> {
  await page.getByRole('button', { name: 'Draw a wall' }).click();
  await tapPlan(page, hand, [-1500, -1200], [1500, -1200], [1500, 1200], [-1500, 1200], [-1500, -1200]);
}

/** A meter on the left wall and a boiler on the upper one of such a room. */
async function placeBoth(page: Page, hand: Hand): Promise<Plan> {
  await inHand(page, hand, 'Point', 'Gas meter');
  await tapPlan(page, hand, [-1430, -600]);
  await inHand(page, hand, 'Point', 'Boiler');
  await tapPlan(page, hand, [600, 1130]);
  return (await held(page)).plan;
}

for (const kind of ['mouse', 'touch'] as const) {
  test.describe(`by ${kind}`, () => {
    test('a chain of walls closes a room, and takes a door', async ({ page }) => {
      const hand = await handOf(page, kind);
      await openEmpty(page);
      await drawRoom(page, hand);
      let now = await held(page);
      const walls = Object.values(now.plan.walls);
      expect(walls.map((w) => Math.hypot(w.b.x - w.a.x, w.b.y - w.a.y))).toEqual([3000, 2400, 3000, 2400]);
      expect(walls[3]?.b).toEqual(walls[0]?.a);
      expect(now.undo).toHaveLength(4);
      expect(now.toolState).toBe('idle');
      expect(now.drafting).toBe(false);

      await inHand(page, hand, 'Opening', 'door');
      await hand.drag([await onPlan(page, -400, -1200), await onPlan(page, 400, -1200)]);
      now = await held(page);
      const door = only(now.plan.openings);
      expect(door).toMatchObject({ kind: 'door', wall: walls[0]?.id });
      expect(door.widthMm).toBeCloseTo(800, -2);
      expect(now.selection).toEqual([{ map: 'openings', id: door.id }]);
      expect(now.undo).toHaveLength(5);
      await expect(panel(page).getByRole('heading', { name: 'Door' })).toBeVisible();
    });

    test('a run from the meter by a corner and a rise ends on the boiler', async ({ page }) => {
      const hand = await handOf(page, kind);
      await openEmpty(page);
      await drawRoom(page, hand);
      const plan = await placeBoth(page, hand);
      const meter = pointOf(plan, 'gas-meter');
      const boiler = pointOf(plan, 'boiler');
      expect(meter.place).toMatchObject({ on: 'wall' });
      const before = (await held(page)).undo.length;

      await takeTool(page, hand, 'Run');
      const outlet = tailOf(plan, meter.id, 'outlet');
      const tail = tailOf(plan, boiler.id, 'gas');
      await tapPlan(page, hand, [outlet.x, outlet.y], [tail.x, outlet.y]);
      let now = await held(page);
      expect(now.service).toBe('gas');
      expect(now.undo.length).toBe(before + 1);
      const corner = nodeAt(now.plan, Object.keys(now.plan.nodes).at(-1) ?? '');
      expect(corner).toMatchObject({ y: outlet.y, z: 150 });
      expect(Math.abs(corner.x - tail.x)).toBeLessThan(ROUND);

      const tab = page.getByRole('slider', { name: 'Work height' });
      const grip = await tab.boundingBox();
      if (!grip) throw new Error('no tab');
      const at = { x: grip.x + grip.width / 2, y: grip.y + grip.height / 2 };
      await hand.drag([at, { x: at.x, y: at.y - 300 }]);
      const height = Number(await tab.getAttribute('aria-valuenow'));
      expect(height).toBeGreaterThan(1000);

      await tapPlan(page, hand, [tail.x, tail.y]);
      now = await held(page);
      expect(now.undo.length).toBe(before + 2);
      expect(now.toolState).toBe('idle');
      const places = Object.values(now.plan.nodes).map((n) => nodeAt(now.plan, n.id));
      expect(places.some((p) => p.x === corner.x && p.y === outlet.y && Math.abs(p.z - height) < NEAR)).toBe(true);
      const ends = Object.values(now.plan.nodes).flatMap((n) => (n.place.on === 'connection' ? [n.place.point] : []));
      expect(ends).toEqual([meter.id, boiler.id]);
      const report = await answer(page);
      const drop = report.sections.find((s) => s.id === 'gas-drop');
      expect(drop?.answer).toBeTruthy();
      await takeTool(page, hand, 'Select');
      await expect(
        panel(page)
          .getByText(drop?.answer ?? '?')
          .first(),
      ).toBeVisible();
    });

    test('a tee off a pipe, a valve in it, and the tape along it', async ({ page }) => {
      const hand = await handOf(page, kind);
      await openEmpty(page);
      await takeTool(page, hand, 'Run');
      await tapPlan(page, hand, [-2000, 0], [2000, 0]);
      await page.keyboard.press('Enter');
      await inHand(page, hand, 'Tee', '15');
      await tapPlan(page, hand, [0, 0], [0, 1000]);
      await page.keyboard.press('Enter');
      let now = await held(page);
      const sizes = Object.values(now.plan.legs).map((l) => l.tube.size);
      expect(sizes.filter((s) => s === '15x0.7')).toHaveLength(1);
      expect(Object.keys(now.plan.legs)).toHaveLength(3);
      expect(Object.keys(now.plan.runs)).toHaveLength(2);
      expect(now.undo).toHaveLength(2);

      await inHand(page, hand, 'Item', 'Gas cock');
      await tapPlan(page, hand, [1000, 0]);
      now = await held(page);
      expect(only(now.plan.items)).toMatchObject({ kind: 'gas-cock' });
      expect(Object.keys(now.plan.legs)).toHaveLength(4);
      await expect(panel(page).getByRole('heading', { name: 'Gas cock' })).toBeVisible();

      await takeTool(page, hand, 'Tape');
      const steps = now.undo.length;
      await hand.drag([await onPlan(page, -2000, 0), await onPlan(page, 0, 0)]);
      now = await held(page);
      expect(now.labels).toEqual(['2000']);
      expect(now.toolState).toBe('read');
      expect(now.undo).toHaveLength(steps);
      await page.keyboard.press('Escape');
      expect((await held(page)).drafting).toBe(false);
    });

    test('chosen, dragged, copied, split by a size from here on, and deleted', async ({ page }) => {
      const hand = await handOf(page, kind);
      await openFlat(page);
      await look(page, 4500, 3950, 8);
      const before = await held(page);
      const leg = 'B-g1-3';
      await tapPlan(page, hand, [4200, 3950]);
      expect((await held(page)).selection).toEqual([{ map: 'runs', id: 'B-g1' }]);
      await expect(panel(page).getByRole('heading', { name: 'Gas from the meter to the hob tee' })).toBeVisible();
      await tapPlan(page, hand, [4200, 3950]);
      expect((await held(page)).selection).toEqual([{ map: 'legs', id: leg }]);

      await hand.drag([await onPlan(page, 4200, 3950), await onPlan(page, 4200, 3700)]);
      let now = await held(page);
      expect(now.undo.length).toBe(before.undo.length + 1);
      expect(nodeAt(now.plan, 'B-g1.2').y).toBeCloseTo(3700, -2);
      expect(nodeAt(now.plan, 'B-g1.2').y).toBe(nodeAt(now.plan, 'B-g1.3').y);
      await bench(page, 'Undo').click();
      now = await held(page);
      expect(now.plan).toEqual(before.plan);

      await panel(page).getByRole('radio', { name: 'from here on' }).click();
      await panel(page).getByRole('radio', { name: '22', exact: true }).click();
      now = await held(page);
      expect(
        Object.values(now.plan.legs)
          .filter((l) => l.run === 'B-g1')
          .map((l) => l.tube.size),
      ).toEqual(['28x0.9', '28x0.9', '22x0.9', '22x0.9']);
      expect(now.undo.length).toBe(before.undo.length + 1);
      await page.keyboard.press('Control+z');

      await panel(page).getByRole('button', { name: 'Choose the whole run' }).click();
      await page.keyboard.press('Control+d');
      now = await held(page);
      expect(Object.keys(now.plan.runs).length).toBe(Object.keys(before.plan.runs).length + 1);
      expect(now.undo.length).toBe(before.undo.length + 1);
      await page.keyboard.press('Delete');
      now = await held(page);
      expect(Object.keys(now.plan.runs)).toEqual(Object.keys(before.plan.runs));
      expect(now.undo.length).toBe(before.undo.length + 2);
    });
  });
}

test('Escape leaves no trace of anything half made', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  const before = await held(page);
  const free = [await onPlan(page, 1500, 1500), await onPlan(page, 2500, 1500)] as const;
  for (const name of ['Run', 'Wall', 'Tape']) {
    await takeTool(page, hand, name);
    await hand.tap(free[0]);
    await hand.move(free[1]);
    await expect.poll(async () => (await held(page)).drafting, name).toBe(true);
    await page.keyboard.press('Escape');
    const now = await held(page);
    expect(now.drafting, name).toBe(false);
    expect(now.plan, name).toEqual(before.plan);
    expect(now.undo, name).toEqual(before.undo);
  }
  await takeTool(page, hand, 'Select');
  const [from, to] = [await onPlan(page, 4200, 3950), await onPlan(page, 4200, 3700)];
  await hand.down(from);
  for (const y of [from.y + 10, from.y + 15, to.y]) await hand.move({ x: to.x, y });
  await expect.poll(async () => (await held(page)).drafting).toBe(true);
  await page.keyboard.press('Escape');
  await hand.up();
  const now = await held(page);
  expect(now.drafting).toBe(false);
  expect(now.plan).toEqual(before.plan);
  expect(now.undo).toEqual(before.undo);
});

test('every tool of the bench has the key that stands on it', async ({ page }) => {
  await openFlat(page);
  const keys = page.getByRole('toolbar', { name: 'Tools' }).locator('[aria-keyshortcuts]');
  expect(await keys.count()).toBeGreaterThan(6);
  for (const key of await keys.all()) {
    const letter = await key.getAttribute('aria-keyshortcuts');
    await page.keyboard.press(letter ?? '');
    await expect(key).toHaveAttribute('aria-pressed', 'true');
  }
});

test('lengths can be typed, steps taken back and forth with keys', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openEmpty(page);
  await takeTool(page, hand, 'Run');
  await tapPlan(page, hand, [0, 0]);
  await hand.move(await onPlan(page, 900, 0));
  await page.keyboard.type('2607');
  await page.keyboard.press('Backspace');
  await page.keyboard.type('0');
  await expect(page.getByText('typed 2600')).toBeVisible();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  let now = await held(page);
  const leg = only(now.plan.legs);
  expect(nodeAt(now.plan, leg.b).x - nodeAt(now.plan, leg.a).x).toBe(2600);
  expect(now.undo).toHaveLength(1);
  await page.keyboard.press('Control+z');
  now = await held(page);
  expect([now.undo.length, now.redo.length, Object.keys(now.plan.legs).length]).toEqual([0, 1, 0]);
  await page.keyboard.press('Control+Shift+z');
  now = await held(page);
  expect([now.undo.length, now.redo.length, Object.keys(now.plan.legs).length]).toEqual([1, 0, 1]);
});

test('the wheel brings nearer what is under it, the trackpad moves the paper', async ({ page }) => {
  await openFlat(page);
  const before = await held(page);
  const place = await onPlan(page, 2000, 3000);
  await page.mouse.move(place.x, place.y);
  await page.mouse.wheel(0, -200);
  await expect.poll(async () => (await held(page)).camera.mmPerPx).toBeLessThan(before.camera.mmPerPx);
  const still = await onPlan(page, 2000, 3000);
  expect(Math.hypot(still.x - place.x, still.y - place.y)).toBeLessThan(1);

  const near = await held(page);
  await page.mouse.wheel(30, 12);
  await expect.poll(async () => (await held(page)).camera.centre[0]).not.toBe(near.camera.centre[0]);
  const moved = await held(page);
  expect(moved.camera.mmPerPx).toBe(near.camera.mmPerPx);
  expect(moved.camera.centre[0] - near.camera.centre[0]).toBeCloseTo(30 * near.camera.mmPerPx, 3);
  expect(moved.camera.centre[1] - near.camera.centre[1]).toBeCloseTo(-12 * near.camera.mmPerPx, 3);
  expect(moved.undo).toEqual(before.undo);

  await page.getByRole('button', { name: 'Show all' }).click();
  expect((await held(page)).camera).toEqual(before.camera);
});

import type { Page } from '@playwright/test';
import { look, onPlan, takeTool } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { expect, openFlat, test } from './hands/kickset.ts';
import { answer, atRest, draws, held, pxOf } from './hands/model.ts';
import type { At } from './hands/touch.ts';

const MOVES = 60;

interface Spied {
  /** Reports asked of the worker. */
  asked: number;
  /** Steps added to the storage one by one. */
  steps: number;
  /** Whole plans written to the storage. */
  snapshots: number;
}

declare global {
  interface Window {
    __spied?: Spied;
  }
}

/** Counts what leaves the page for the worker and for the storage, before the page has run anything. */
async function spy(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const spied: Spied = { asked: 0, steps: 0, snapshots: 0 };
    window.__spied = spied;
    const ask = Worker.prototype.postMessage;
    Worker.prototype.postMessage = function (this: Worker, ...args: unknown[]) {
      spied.asked += 1;
      return ask.apply(this, args as Parameters<typeof ask>);
    };
    const add = IDBObjectStore.prototype.add;
    IDBObjectStore.prototype.add = function (this: IDBObjectStore, ...args: Parameters<typeof add>) {
      if (this.name === 'steps') spied.steps += 1;
      return add.apply(this, args);
    };
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...args: Parameters<typeof put>) {
      if (this.name === 'snapshots') spied.snapshots += 1;
      return put.apply(this, args);
    };
  });
}

const spied = (page: Page): Promise<Spied> =>
  page.evaluate(() => {
    if (!window.__spied) throw new Error('nothing counted');
    return { ...window.__spied };
  });

async function counted(page: Page) {
  const { plan } = await draws(page);
  return { ...plan, ...(await spied(page)) };
}

/** Down, sixty moves with a frame to each, up; what had been counted before, between and after. */
async function gesture(page: Page, from: At, to: At) {
  const hand = await handOf(page, 'mouse');
  await hand.move(from);
  await atRest(page);
  const before = await counted(page);
  await hand.down(from);
  const at = (i: number): At => ({
    x: from.x + ((to.x - from.x) * i) / MOVES,
    y: from.y + ((to.y - from.y) * i) / MOVES,
  });
  for (let i = 1; i <= 6; i++) await hand.move(at(i));
  await atRest(page);
  const first = await counted(page);
  for (let i = 7; i <= MOVES; i++) {
    await hand.move(at(i));
    await page.evaluate(() => new Promise((next) => requestAnimationFrame(next)));
  }
  await atRest(page);
  const last = await counted(page);
  await hand.up();
  await answer(page);
  await atRest(page);
  return { before, first, last, after: await counted(page) };
}

type Counted = Awaited<ReturnType<typeof gesture>>;

/** While it moves only what moves is drawn, and nothing is asked or kept. `startDraws`: a drag takes what it moves off the still drawing. */
function expectStill({ before, first, last }: Counted, startDraws: number): void {
  expect(first.still - before.still, 'still draws at the start').toBeLessThanOrEqual(startDraws);
  expect(last.still - first.still, 'still draws while it moves').toBe(0);
  expect(last.work - first.work, 'work draws while it moves').toBe(0);
  expect(last.live - first.live, 'live draws while it moves').toBeGreaterThan(MOVES / 3);
  expect(last.live - first.live, 'live draws while it moves').toBeLessThanOrEqual(MOVES + 4);
  expect([last.asked - before.asked, last.steps - before.steps], 'asked and kept while it moves').toEqual([0, 0]);
}

/** The rules of a gesture that ends in one step, whatever it is. */
function expectCheap(counted: Counted, startDraws: number): void {
  expectStill(counted, startDraws);
  const { last, after } = counted;
  expect(after.still - last.still, 'still draws at the commit').toBeLessThanOrEqual(1);
  expect([after.asked - last.asked, after.steps - last.steps], 'asked and kept at the commit').toEqual([1, 1]);
}

test('a drag of a pipe draws the still layers once at its start and once at its end', async ({ page }) => {
  await spy(page);
  await openFlat(page);
  await look(page, 4500, 3950, 8);
  const { undo } = await held(page);
  const from = await onPlan(page, 4200, 3950);
  const counts = await gesture(page, from, await onPlan(page, 4200, 3450));
  expectCheap(counts, 1);
  expect((await held(page)).undo.length).toBe(undo.length + 1);
});

test('a drag of a wall does the same', async ({ page }) => {
  await spy(page);
  await openFlat(page);
  await look(page, 5050, 1500, 8);
  const { undo } = await held(page);
  const from = await onPlan(page, 5050, 1500);
  const counts = await gesture(page, from, await onPlan(page, 5400, 1500));
  expectCheap(counts, 1);
  const now = await held(page);
  expect(now.undo.length).toBe(undo.length + 1);
  expect(now.plan.walls.BP6?.a.x).toBeCloseTo(5400, -1);
});

test('a drag on a wall face draws neither pane anew', async ({ page }) => {
  await spy(page);
  await openFlat(page);
  await page.evaluate(() => window.__kickset?.editor?.foldUp({ wall: 'BN', side: 'right' }));
  await expect(page.getByRole('application', { name: /^Drawing: face of/ })).toBeVisible();
  await atRest(page);
  const hot = { x: 1700, y: 0, z: 270 };
  await look(page, hot.x, hot.z, 2, 'face');
  await atRest(page);
  const before = (await draws(page)).face;
  const from = await pxOf(page, hot, 'face');
  const counts = await gesture(page, from, await pxOf(page, { ...hot, z: 450 }, 'face'));
  expectCheap(counts, 1);
  const after = (await draws(page)).face;
  expect(after.still - before.still, 'still draws of the face in all').toBeLessThanOrEqual(2);
  expect(after.live - before.live, 'live draws of the face').toBeGreaterThan(MOVES / 3);
  expect((await held(page)).undo).toHaveLength(1);
});

test('a leg that is drawn costs no still draw until it is placed', async ({ page }) => {
  await spy(page);
  await openFlat(page);
  await look(page, 2000, 1800, 8);
  const hand = await handOf(page, 'mouse');
  await takeTool(page, hand, 'Run');
  const counts = await gesture(page, await onPlan(page, 1000, 1000), await onPlan(page, 3000, 1000));
  expectCheap(counts, 0);
  expect((await held(page)).undo).toHaveLength(1);
});

test('a bank that is drawn costs no still draw until it is placed', async ({ page }) => {
  await spy(page);
  await openFlat(page);
  await look(page, 2000, 1800, 8);
  const hand = await handOf(page, 'mouse');
  await takeTool(page, hand, 'Bank');
  const counts = await gesture(page, await onPlan(page, 1000, 1000), await onPlan(page, 3000, 1000));
  expectCheap(counts, 0);
  expect((await held(page)).undo).toEqual(['lay bank of 5']);
});

test('a part of a run that is laid anew costs no still draw until it is', async ({ page }) => {
  await spy(page);
  await openFlat(page);
  await look(page, 4500, 3950, 8);
  const hand = await handOf(page, 'mouse');
  await takeTool(page, hand, 'Re-route');
  await hand.tap(await onPlan(page, 3200, 3950));
  await hand.tap(await onPlan(page, 5200, 3950));
  await expect.poll(async () => (await held(page)).toolState).toBe('laying');
  const counts = await gesture(page, await onPlan(page, 3200, 3500), await onPlan(page, 3200, 3300));
  expectStill(counts, 0);
  expect((await held(page)).undo).toEqual([]);
});

test('a box that takes several draws the choice once, at its end', async ({ page }) => {
  await spy(page);
  await openFlat(page);
  await look(page, 4500, 3950, 8);
  await page.keyboard.down('Shift');
  const counts = await gesture(page, await onPlan(page, 3000, 3000), await onPlan(page, 5500, 4300));
  await page.keyboard.up('Shift');
  expectStill(counts, 0);
  expect(counts.after.still - counts.last.still, 'still draws at its end').toBeLessThanOrEqual(1);
  expect([counts.after.asked - counts.last.asked, counts.after.steps - counts.last.steps]).toEqual([0, 0]);
  expect((await held(page)).undo).toEqual([]);
});

test('moving the paper and coming nearer draws the still layers once, when it has come to rest', async ({ page }) => {
  await spy(page);
  await openFlat(page);
  const from = await onPlan(page, 1500, 1500);
  await page.mouse.move(from.x, from.y);
  await page.keyboard.down('Space');
  await atRest(page);
  const before = await counted(page);
  await page.mouse.down({ button: 'middle' });
  for (let i = 1; i <= MOVES; i++) await page.mouse.move(from.x + i * 2, from.y + i);
  await atRest(page);
  const moved = await counted(page);
  expect(moved.still - before.still).toBe(0);
  await page.mouse.up({ button: 'middle' });
  await page.keyboard.up('Space');
  await atRest(page);
  const after = await counted(page);
  expect(after.still - moved.still).toBeLessThanOrEqual(1);
  expect([after.asked - before.asked, after.steps - before.steps, after.snapshots - before.snapshots]).toEqual([
    0, 0, 0,
  ]);
  expect((await held(page)).undo).toEqual([]);
});

test('reports: one asked for each step, one shown, none for a look', async ({ page }) => {
  await spy(page);
  await openFlat(page);
  const before = await spied(page);
  const hand = await handOf(page, 'mouse');
  await hand.tap(await onPlan(page, 4200, 3950));
  await page.mouse.wheel(0, -100);
  await atRest(page);
  expect((await spied(page)).asked).toBe(before.asked);
  await page.keyboard.press('Control+z');
  expect((await spied(page)).asked).toBe(before.asked);
  await page.getByRole('radio', { name: 'Before' }).click();
  await answer(page);
  expect((await spied(page)).asked).toBe(before.asked + 1);
  expect((await spied(page)).steps).toBe(before.steps);
});

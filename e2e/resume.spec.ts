import type { Page } from '@playwright/test';
import { bench, look, nodeAt, onPlan, openChapter, panel, pullSheet, takeTool, tapPlan } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { expect, isPhone, openEmpty, openFlat, test } from './hands/kickset.ts';
import { answer, atRest, held, stepsKept } from './hands/model.ts';
import { fingers } from './hands/touch.ts';

/** Everything of a job that must be there again. */
async function state(page: Page) {
  const { plan, undo, redo } = await held(page);
  return { plan, undo, redo };
}

/** A job whose run has been begun and is not ended. */
async function begin(page: Page): Promise<void> {
  const hand = await handOf(page, 'touch');
  await openEmpty(page);
  await bench(page, 'Run').tap();
  await tapPlan(page, hand, [-1000, 0], [1000, 0], [1000, 1000]);
  expect((await held(page)).undo).toHaveLength(2);
}

test('a reload in mid-run loses nothing', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await begin(page);
  await bench(page, 'Undo').tap();
  await tapPlan(page, hand, [1000, 700]);
  await bench(page, 'Undo').tap();
  const before = await state(page);
  expect([before.undo.length, before.redo.length]).toEqual([1, 1]);

  // Soon after the last touch: nothing of it may hang on a pause. A fresh page is kept whole with its first step, as 0.
  await expect.poll(() => stepsKept(page), { timeout: 2_000 }).toBe(4);
  await page.reload();
  await answer(page);
  expect(await state(page)).toEqual(before);
  expect((await held(page)).drafting).toBe(false);

  // Its end is still open and in hand, and the run goes on from there.
  await expect(page.getByText('Gas run goes on: tap its end or the next corner.').last()).toBeVisible();
  await tapPlan(page, hand, [1000, -900]);
  let now = await held(page);
  expect(Object.keys(now.plan.runs)).toEqual(Object.keys(before.plan.runs));
  expect(Object.keys(now.plan.legs)).toHaveLength(2);
  const ends = Object.keys(now.plan.nodes).map((id) => nodeAt(now.plan, id));
  expect(ends.at(-1)).toMatchObject({ x: 1000, y: -900 });

  await expect.poll(() => stepsKept(page), { timeout: 2_000 }).toBe(5);
  await page.reload();
  await answer(page);
  for (const left of [1, 0]) {
    await bench(page, 'Undo').tap();
    await expect.poll(async () => (await held(page)).undo.length).toBe(left);
  }
  now = await held(page);
  expect([now.plan.runs, now.plan.nodes, now.plan.legs]).toEqual([{}, {}, {}]);
  expect(now.redo).toHaveLength(2);
});

/** What was looked at and in hand, as far as it must be there again. */
const place = (page: Page) =>
  page.evaluate(() => {
    const s = window.__kickset?.editor?.store.getState();
    if (!s) throw new Error('no job is open');
    const { plan, face, active, flat } = s.panes;
    return {
      cameras: [plan.camera, face?.camera ?? null, flat],
      views: [plan.view, face?.view ?? null],
      active,
      chosen: s.chosen,
      tool: s.tool,
      toolState: s.toolState,
      inHand: s.inHand,
      selection: s.selection,
    };
  });

/** As the system does it: hidden without a word, thrown away, and opened anew. */
async function thrownAway(page: Page): Promise<void> {
  await page.evaluate(() => {
    Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true });
    document.dispatchEvent(new Event('visibilitychange'));
  });
  await page.reload();
  await answer(page);
  await atRest(page);
}

test('a run that was interrupted under the finger goes on after the page was thrown away', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await look(page, 2300, 1900, isPhone(page) ? 14 : 10);
  await bench(page, 'Run').tap();
  await page.evaluate(() => {
    const editor = window.__kickset?.editor;
    editor?.setInHand({ service: 'cold' });
    const storey = editor?.store.getState().inHand.height.of ?? null;
    editor?.setInHand({ height: { from: 'floor', of: storey, mm: 1800 } as never });
  });
  await tapPlan(page, hand, [1000, 1000], [2500, 1000], [2500, 2000]);
  const before = await held(page);
  const was = await place(page);
  expect(was.inHand.goesOn).not.toBeNull();
  // A call comes while the next corner is aimed at.
  const glass = await fingers(page);
  const at = await onPlan(page, 1500, 2000);
  await glass.down(0, at);
  await glass.move([0, { x: at.x + 20, y: at.y + 10 }]);
  await thrownAway(page);

  expect((await held(page)).plan).toEqual(before.plan);
  expect(await place(page)).toEqual(was);
  if (!isPhone(page)) await expect(page.locator('.in-hand')).toContainText('Cold run goes on');
  await tapPlan(page, hand, [1200, 2000]);
  const now = await held(page);
  expect(Object.keys(now.plan.runs)).toEqual(Object.keys(before.plan.runs));
  expect(Object.keys(now.plan.legs)).toHaveLength(Object.keys(before.plan.legs).length + 1);
});

test('cameras of both panes, case, choice, chapter and sheet are as they were left', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await page.getByRole('radio', { name: 'Before' }).check({ force: true });
  await answer(page);
  await page.evaluate(() => window.__kickset?.editor?.foldUp({ wall: 'BN', side: 'right' }));
  await atRest(page);
  await look(page, 1700, 900, 3, 'face');
  await atRest(page);
  const [run] = Object.keys((await held(page)).plan.runs);
  await page.evaluate((id) => window.__kickset?.editor?.select([{ map: 'runs', id }]), run ?? '');
  await openChapter(page, hand, 'List');
  await pullSheet(page, hand, 'half');
  await takeTool(page, hand, 'Select');
  const was = await place(page);
  await thrownAway(page);
  expect(await place(page)).toEqual(was);
  await expect(page.getByRole('application', { name: /^Drawing: face of/ })).toBeVisible();
  await expect(panel(page).getByRole('heading', { name: 'List', level: 2 })).toBeVisible();
  if (isPhone(page)) await expect(panel(page)).toHaveAttribute('data-stop', 'half');

  // What is gone since is not chosen, and a wall that is gone is not folded up.
  await page.evaluate(() => {
    for (const key of Object.keys(localStorage).filter((k) => k.startsWith('kickset.place.'))) {
      const kept = JSON.parse(localStorage.getItem(key) ?? '{}');
      kept.selection = [{ map: 'runs', id: 'gone' }];
      kept.face.wall = 'gone';
      window.addEventListener('pagehide', () => localStorage.setItem(key, JSON.stringify(kept)));
    }
  });
  await page.reload();
  await answer(page);
  const now = await place(page);
  expect([now.selection, now.views[1], now.cameras[0]]).toEqual([[], null, was.cameras[2]]);
});

test('turned, the page keeps what was in its middle, and the run in hand', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await look(page, 2300, 1900, 12);
  await bench(page, 'Run').tap();
  await tapPlan(page, hand, [1500, 1500], [3000, 1500]);
  const was = await place(page);
  const { width, height } = page.viewportSize() ?? { width: 0, height: 0 };
  await page.setViewportSize({ width: height, height: width });
  await atRest(page);
  expect(await place(page)).toEqual(was);
  const box = await page.locator('.pane-plan').boundingBox();
  const middle = await onPlan(page, 2300, 1900);
  expect(Math.abs(middle.x - (box?.x ?? 0) - (box?.width ?? 0) / 2)).toBeLessThan(1);
  expect(Math.abs(middle.y - (box?.y ?? 0) - (box?.height ?? 0) / 2)).toBeLessThan(1);
  await page.setViewportSize({ width, height });
  await atRest(page);
  expect(await place(page)).toEqual(was);
  await tapPlan(page, hand, [3000, 2500]);
  expect(Object.keys((await held(page)).plan.legs).length).toBeGreaterThan(0);
  expect((await place(page)).inHand.goesOn).not.toBe(was.inHand.goesOn);
});

test('the place belongs to the device: the file that is saved does not know of it', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await begin(page);
  await takeTool(page, hand, 'Tee');
  await thrownAway(page);
  expect((await place(page)).tool).toBe('tee');
  const { plan } = await held(page);
  expect(JSON.stringify(plan)).not.toContain('goesOn');
  expect(JSON.stringify(plan)).not.toContain('mmPerPx');
});

test('a second tab looks on until it takes over, and then the first one does', async ({ page, context }) => {
  await begin(page);
  const second = await context.newPage();
  await second.goto(page.url());
  const sentence = 'This job is open in another tab. You can look at it here, or take it over.';
  await expect(second.getByText(sentence)).toBeVisible();
  await answer(second);
  expect((await held(second)).readOnly).toBe(sentence);
  expect((await held(second)).plan).toEqual((await held(page)).plan);

  const hand = await handOf(second, 'mouse');
  await bench(second, 'Run').click();
  const before = await held(second);
  await hand.drag([await onPlan(second, -1000, -500), await onPlan(second, 1000, -500)]);
  await bench(second, 'Undo').click();
  expect((await held(second)).plan).toEqual(before.plan);
  expect((await held(second)).undo).toEqual(before.undo);

  await second.getByRole('button', { name: 'Take over here' }).click();
  await expect.poll(async () => (await held(second)).readOnly).toBeNull();
  await expect(page.getByText('This job was taken over by another tab. You can only look at it here.')).toBeVisible();
  await expect(second.getByText(sentence)).toBeHidden();
  const there = await held(second);
  expect(there.undo).toHaveLength(2);
  await bench(second, 'Undo').click();
  expect((await held(second)).undo).toHaveLength(1);
  await bench(page, 'Undo').click();
  expect((await held(page)).undo).toHaveLength(2);
});

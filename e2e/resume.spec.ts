import type { Page } from '@playwright/test';
import { bench, nodeAt, onPlan, tapPlan } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { expect, openEmpty, test } from './hands/kickset.ts';
import { answer, held, stepsKept } from './hands/model.ts';

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

  // Its end is still open, and the run goes on from there.
  await bench(page, 'Run').tap();
  await tapPlan(page, hand, [1000, 0], [1000, -900]);
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

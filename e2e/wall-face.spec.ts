import type { Page } from '@playwright/test';
import type { Plan } from '../src/plan/plan.ts';
import { look, nodeAt, panel, pullSheet, tapPlan } from './hands/drawing.ts';
import { type Hand, handOf } from './hands/hand.ts';
import { expect, openFlat, test } from './hands/kickset.ts';
import { answer, atRest, held, pxOf } from './hands/model.ts';
import { fingers } from './hands/touch.ts';

/** A place on the gas along the kitchen's outside wall, under the new boiler: mm along the face, and up. */
const onGas = (plan: Plan) => ({ x: 550, y: 0, z: nodeAt(plan, 'B-g2.3').z });
const face = (page: Page) => page.getByRole('application', { name: /^Drawing: face of/ });

/** Chooses the outside wall in the plan and folds its inner face up. */
async function foldUp(page: Page, hand: Hand): Promise<void> {
  await look(page, 5600, 6000, 8);
  await tapPlan(page, hand, [5600, 6460]);
  expect((await held(page)).selection).toEqual([{ map: 'walls', id: 'BN' }]);
  await pullSheet(page, hand, 'half');
  await hand.press(panel(page).getByRole('button', { name: 'Fold up right face' }));
  await pullSheet(page, hand, 'low');
  await expect(face(page)).toBeVisible();
  await atRest(page);
  const gas = onGas((await held(page)).plan);
  await look(page, gas.x, gas.z, 4, 'face');
}

for (const kind of ['mouse', 'touch'] as const) {
  test(`a run dragged on a face is moved in the plan too, by ${kind}`, async ({ page }) => {
    const hand = await handOf(page, kind);
    await openFlat(page);
    const before = await held(page);
    const said = await answer(page);
    await foldUp(page, hand);

    const gas = onGas(before.plan);
    await hand.drag([await pxOf(page, gas, 'face'), await pxOf(page, { ...gas, z: gas.z - 300 }, 'face')]);
    const now = await held(page);
    expect(now.undo.length).toBe(before.undo.length + 1);
    for (const node of ['B-g2.2', 'B-g2.3']) {
      expect(nodeAt(before.plan, node).z).toBe(gas.z);
      expect(nodeAt(now.plan, node).z).toBe(gas.z - 300);
      expect(nodeAt(now.plan, node)).toMatchObject({ x: nodeAt(before.plan, node).x, y: nodeAt(before.plan, node).y });
    }
    const report = await answer(page);
    const length = (of: typeof report): number => of.runs.find((r) => r.run === 'B-g2')?.lengthM.value ?? 0;
    expect(length(report) - length(said)).toBeCloseTo(0.6, 2);
    const drop = report.sections.find((s) => s.id === 'gas-drop')?.answer ?? '?';
    expect(drop).not.toBe(said.sections.find((s) => s.id === 'gas-drop')?.answer);
    await expect(panel(page).getByText(drop).first()).toBeVisible();

    const undo = page.getByRole('toolbar', { name: 'Tools' }).getByRole('button', { name: 'Undo: move leg' });
    await hand.press(undo);
    await expect.poll(async () => (await held(page)).undo).toEqual(before.undo);
    expect((await held(page)).plan).toEqual(before.plan);
    expect((await answer(page)).sections).toEqual(said.sections);

    await hand.press(page.getByRole('button', { name: 'fold down' }));
    await expect(face(page)).toBeHidden();
    await expect(page.getByRole('application', { name: /^Drawing: plan of/ })).toBeVisible();
  });
}

test('a second finger takes the drag away without a trace, and pinches', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await foldUp(page, hand);
  const before = await held(page);
  const glass = await fingers(page);
  const gas = onGas(before.plan);
  const from = await pxOf(page, gas, 'face');
  await glass.down(0, from);
  for (const step of [14, 28, 42]) await glass.move([0, { x: from.x, y: from.y + step }]);
  await expect.poll(async () => (await held(page)).drafting).toBe(true);

  await glass.down(1, { x: from.x - 60, y: from.y + 42 });
  await expect.poll(async () => (await held(page)).drafting).toBe(false);
  for (const step of [20, 40, 60]) {
    await glass.move([0, { x: from.x + step, y: from.y + 42 }], [1, { x: from.x - 60 - step, y: from.y + 42 }]);
  }
  await glass.lift(1);
  await glass.lift(0);

  const now = await held(page);
  expect(now.plan).toEqual(before.plan);
  expect([now.undo, now.redo, now.revision]).toEqual([before.undo, before.redo, before.revision]);
  expect(now.faceCamera?.mmPerPx).toBeLessThan((before.faceCamera?.mmPerPx ?? 0) * 0.6);
  // Plan and face are folded from one sheet: one scale.
  expect(now.camera.mmPerPx).toBeCloseTo(now.faceCamera?.mmPerPx ?? 0, 6);

  // The hand that was lifted draws again at once.
  await hand.drag([await pxOf(page, gas, 'face'), await pxOf(page, { ...gas, z: gas.z - 100 }, 'face')]);
  expect((await held(page)).undo.length).toBe(before.undo.length + 1);
});

import type { Page } from '@playwright/test';
import { nodePlace } from '../src/geometry/places.ts';
import type { Plan } from '../src/plan/plan.ts';
import type { Xyz } from '../src/plan/records/parts.ts';
import { inHand, look, onPlan, panel, pullSheet, takeTool, tapPlan } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { expect, isPhone, openEmpty, test } from './hands/kickset.ts';
import { answer, atRest, draws, held } from './hands/model.ts';

/** A room of 4 by 3 with a gas pipe through it and a cold one across that, both at 150. */
async function openCrossing(page: Page): Promise<void> {
  await openEmpty(page);
  await page.evaluate(() => {
    const editor = window.__kickset?.editor;
    if (!editor) throw new Error('no job is open');
    const storey = Object.keys(editor.store.getState().plan.storeys)[0];
    const at = (x: number, y: number) => ({
      at: 'free',
      storey,
      x,
      y,
      height: { from: 'floor', of: storey, mm: 150 },
    });
    const corners = [
      { x: 0, y: 0 },
      { x: 4000, y: 0 },
      { x: 4000, y: 3000 },
      { x: 0, y: 3000 },
    ];
    for (const [i, a] of corners.entries())
      editor.run('wall.add', { storey, a, b: corners[(i + 1) % 4], thicknessMm: 100, construction: 'block' });
    const pipe = (service: string, size: string, path: unknown) =>
      editor.run('run.start', { service, joining: 'endFeed', turns: 'elbow', tube: { kind: 'copper', size }, path });
    pipe('gas', '22x0.9', [at(300, 1500), at(3300, 1500), at(3300, 2500)]);
    pipe('cold', '15x0.7', [at(1500, 300), at(1500, 2700)]);
  });
  await answer(page);
  await look(page, 1900, 1500, isPhone(page) ? 9 : 5);
  await atRest(page);
}

const steps = async (page: Page): Promise<readonly string[]> => (await held(page)).undo.slice(6);

/** Corners of a service, from the first pipe drawn on. */
function corners(plan: Plan, service: string): Xyz[] {
  const legs = Object.values(plan.legs).filter((l) => plan.runs[l.run]?.service === service);
  const nodes = [...new Set(legs.flatMap((l) => [l.a, l.b]))];
  return nodes.flatMap((id) => {
    const node = plan.nodes[id];
    const at = node && nodePlace(plan, node)?.at;
    return at ? [at] : [];
  });
}

for (const kind of ['touch', 'mouse'] as const) {
  test(`a passover over another pipe is one drag, and the still layers wait for its end, by ${kind}`, async ({
    page,
  }) => {
    const hand = await handOf(page, kind);
    await openCrossing(page);
    expect((await answer(page)).findings.some((f) => f.rule === 'clash/runs')).toBe(true);
    await takeTool(page, hand, 'Step');
    await atRest(page);
    const from = await onPlan(page, 1500, 1500);
    await hand.down(from);
    await hand.move({ x: from.x, y: from.y - 10.5 });
    await atRest(page);
    const first = await draws(page);
    for (let i = 1; i <= 8; i++) await hand.move({ x: from.x, y: from.y - 10.5 - i / 8 });
    await atRest(page);
    const last = await draws(page);
    expect(last.plan.still).toBe(first.plan.still);
    expect((await held(page)).labels.join()).toMatch(/^44 over, travel 62/);
    await hand.up();
    expect(await steps(page)).toEqual(['passover']);
    const { plan } = await held(page);
    expect(Math.max(...corners(plan, 'gas').map((p) => p.z))).toBe(194);
    expect((await answer(page)).findings.some((f) => f.rule === 'clash/runs')).toBe(false);
    await page.evaluate(() => window.__kickset?.editor?.undo());
    expect(await steps(page)).toEqual([]);
  });
}

test('a tap asks on the pad, and the step is told by keys', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openCrossing(page);
  await takeTool(page, hand, 'Step');
  await tapPlan(page, hand, [2500, 1500]);
  const pad = page.getByRole('region', { name: 'Asked for' });
  await hand.press(pad.getByRole('button', { name: 'Set', exact: true }));
  await hand.press(pad.getByRole('button', { name: 'left', exact: true }));
  await hand.press(pad.getByRole('button', { name: '90 degrees' }));
  for (const digit of ['1', '2', '0']) await hand.press(pad.getByRole('button', { name: digit, exact: true }));
  await expect(pad).toContainText('120 left');
  await hand.press(pad.getByRole('button', { name: 'lay it' }));
  expect(await steps(page)).toEqual(['set']);
  const { plan } = await held(page);
  expect(corners(plan, 'gas').filter((p) => p.y === 1620)).toHaveLength(2);
});

test('a leg drops to a height by the keys of its form', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openCrossing(page);
  await tapPlan(page, hand, [2500, 1500], [2500, 1500]);
  expect((await held(page)).selection[0]?.map).toBe('legs');
  await pullSheet(page, hand, 'full');
  const part = panel(page).locator('details').filter({ hasText: 'Drop or rise here' });
  await hand.press(part.locator('summary'));
  await part.getByLabel('Off floor').fill('900');
  await part.getByLabel('Off floor').press('Enter');
  await expect(part).toContainText('Up 750');
  await hand.press(part.getByRole('button', { name: 'Rise here' }));
  expect(await steps(page)).toEqual(['drop to a height']);
  const { plan } = await held(page);
  expect(
    corners(plan, 'gas')
      .map((p) => p.z)
      .sort((a, b) => a - b),
  ).toEqual([150, 150, 900, 900, 900]);
});

test('a part of a run is lifted and laid another way, and giving up leaves it', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openCrossing(page);
  const before = (await held(page)).plan;
  await takeTool(page, hand, 'Re-route');
  await tapPlan(page, hand, [2200, 1500], [3300, 2500]);
  expect((await held(page)).toolState).toBe('laying');
  await hand.press(page.getByRole('region', { name: 'Asked for' }).getByRole('button', { name: 'Stop' }));
  expect((await held(page)).plan).toEqual(before);
  await look(page, 1900, 2500, isPhone(page) ? 9 : 5);
  await atRest(page);
  await tapPlan(page, hand, [2200, 1500]);
  await look(page, 1900, 2500, isPhone(page) ? 9 : 5);
  await tapPlan(page, hand, [3300, 2500]);
  await look(page, 1900, isPhone(page) ? 1200 : 2500, isPhone(page) ? 9 : 5);
  await atRest(page);
  await tapPlan(page, hand, [2200, 2500], [3300, 2500]);
  expect(await steps(page)).toEqual(['re-route gas run']);
  const { plan } = await held(page);
  expect(
    corners(plan, 'gas')
      .map(({ x, y }) => `${Math.round(x / 100)},${Math.round(y / 100)}`)
      .sort(),
  ).toEqual(['22,15', '22,25', '3,15', '33,25'].sort());
});

test('a run follows the walls of a room to the next tap', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openCrossing(page);
  await inHand(page, hand, 'Run', 'the wall');
  await look(page, 1900, isPhone(page) ? 1200 : 1500, isPhone(page) ? 11 : 5);
  await atRest(page);
  await tapPlan(page, hand, [2000, 250], [3700, 2300]);
  const undo = await steps(page);
  expect(undo).toHaveLength(1);
  const { plan } = await held(page);
  const run = Object.keys(plan.runs).at(-1);
  const legs = Object.values(plan.legs).filter((l) => l.run === run);
  expect(legs).toHaveLength(2);
  const corner = plan.nodes[legs[0]?.b ?? ''];
  const at = corner && nodePlace(plan, corner)?.at;
  // Walls are 100 thick about their middles; the middle of the pipe is 25 off their faces.
  expect(at).toMatchObject({ x: 3925, y: 75 });
});

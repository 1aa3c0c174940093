import type { Page } from '@playwright/test';
import { chainOf } from '../src/network/bank/chain.ts';
import type { Plan } from '../src/plan/plan.ts';
import { bench, inHand, look, panel, pullSheet, tapPlan } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { expect, openEmpty, test } from './hands/kickset.ts';
import { answer, atRest, held } from './hands/model.ts';

const VOID_MM = 2500;

/** An empty house with a void over the ceiling and a combi boiler at x 3000. */
async function boilerUnderVoid(page: Page): Promise<void> {
  await openEmpty(page);
  await page.getByRole('button', { name: 'Draw a wall' }).click();
  await page.evaluate((mm) => {
    const editor = window.__kickset?.editor;
    const storey = Object.keys(editor?.store.getState().plan.storeys ?? {})[0] ?? '';
    const made = editor?.run('point.add', {
      kind: 'boiler',
      storey,
      place: { on: 'storey', x: 3000, y: 0, angleDeg: 0, height: { from: 'floor', of: storey, mm: 1100 } },
      fields: { type: 'combi' },
    });
    if (!made?.ok) throw new Error(made?.why ?? 'no job is open');
    const corners = [
      [-500, -3500],
      [4000, -3500],
      [4000, 500],
      [-500, 500],
    ].map(([x, y]) => ({ x, y }));
    const over = editor?.run('void.add', {
      kind: 'ceiling',
      storey,
      outline: corners,
      bottom: { from: 'ceiling', of: storey, mm: 0 },
      top: { from: 'ceiling', of: storey, mm: 250 },
    });
    if (!over?.ok) throw new Error(over?.why ?? 'no void');
    editor?.setInHand({ height: { from: 'floor', of: storey, mm } });
  }, VOID_MM);
}

/** The connection each run ends on, by its service. */
const endsOf = (plan: Plan): Record<string, string> =>
  Object.fromEntries(
    Object.values(plan.runs).map((run) => {
      const at = plan.nodes[chainOf(plan, run.id)?.nodes.at(-1) ?? '']?.place;
      return [run.service, at?.on === 'connection' ? at.connection : 'open'];
    }),
  );

const OWN = { gas: 'gas', heatingFlow: 'flow', heatingReturn: 'return', cold: 'cold', hot: 'hot' };

async function expectNoClash(page: Page): Promise<void> {
  const { findings } = await answer(page);
  expect(findings.filter((f) => f.rule === 'clash/runs')).toEqual([]);
}

test('five runs through a void to their own tails, changed in the panel, one taken out, undone, by touch', async ({
  page,
}) => {
  const hand = await handOf(page, 'touch');
  await boilerUnderVoid(page);
  await inHand(page, hand, 'Bank', 'beside each other');
  await atRest(page);
  await look(page, 1700, -1300, (page.viewportSize()?.width ?? 0) < 700 ? 14 : 7);
  const before = await held(page);

  await tapPlan(page, hand, [0, -2500], [1800, -2500], [1800, -900], [3000, -81]);
  let now = await held(page);
  expect(now.undo.slice(before.undo.length)).toEqual(['lay bank of 5', 'carry on bank', 'take bank to Boiler']);
  expect(now.toolState).toBe('idle');
  expect(endsOf(now.plan)).toEqual(OWN);
  const group = Object.values(now.plan.groups)[0];
  const services = (plan: Plan) => plan.groups[group?.id ?? '']?.members.map((r) => plan.runs[r]?.service);
  const tails = ['heatingFlow', 'hot', 'gas', 'cold', 'heatingReturn'];
  expect([tails, [...tails].reverse()]).toContainEqual(services(now.plan));
  await expectNoClash(page);

  // Order: the chosen run goes a place later.
  const [first, second] = group?.members ?? [];
  await page.evaluate((id) => window.__kickset?.editor?.select([{ map: 'runs', id }]), first ?? '');
  await pullSheet(page, hand, 'full');
  const form = panel(page).getByRole('region', { name: 'Bank of 5' });
  await expect(form).toBeVisible();
  await hand.press(form.getByRole('button', { name: / later in the row$/ }).first());
  now = await held(page);
  expect(now.plan.groups[group?.id ?? '']?.members.slice(0, 2)).toEqual([second, first]);
  expect(endsOf(now.plan)).toEqual(OWN);
  await expectNoClash(page);

  // Spacing.
  await hand.press(form.getByRole('radio', { name: '100' }));
  now = await held(page);
  expect(now.plan.groups[group?.id ?? '']?.spacingMm).toBe(100);
  expect(endsOf(now.plan)).toEqual(OWN);
  await expectNoClash(page);
  const changed = now;

  // One leaves the row, by a step aside.
  await hand.press(form.getByRole('button', { name: 'Step it aside' }));
  now = await held(page);
  expect(services(now.plan)).toHaveLength(4);
  expect(endsOf(now.plan)).toEqual(OWN);
  await expect(panel(page).getByRole('region', { name: /^Bank of/ })).toHaveCount(0);
  await expectNoClash(page);

  await pullSheet(page, hand, 'low');
  await hand.press(bench(page, 'Undo'));
  expect((await held(page)).plan).toEqual(changed.plan);
  const laid = changed.undo.length - before.undo.length;
  for (let i = 0; i < laid; i++) await hand.press(bench(page, 'Undo'));
  expect((await held(page)).plan).toEqual(before.plan);
});

test('a bank that is let go in the middle stays open, and goes on where it ended', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await boilerUnderVoid(page);
  await inHand(page, hand, 'Bank', 'beside each other');
  await atRest(page);
  await look(page, 1700, -1300, (page.viewportSize()?.width ?? 0) < 700 ? 14 : 7);
  await tapPlan(page, hand, [0, -2500], [1800, -2500]);
  const open = await held(page);
  expect(Object.keys(open.plan.runs)).toHaveLength(5);
  await page.evaluate(() => window.__kickset?.editor?.cancel());
  expect((await held(page)).plan).toEqual(open.plan);
  await tapPlan(page, hand, [1800, -2500], [1800, -900]);
  const now = await held(page);
  expect(Object.keys(now.plan.runs)).toHaveLength(5);
  expect(now.undo).toHaveLength(open.undo.length + 1);
});

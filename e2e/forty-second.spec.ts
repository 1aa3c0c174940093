import type { Locator, Page } from '@playwright/test';
import { sayFigures } from '../src/report/quantity.ts';
import type { Report } from '../src/report/report.ts';
import type { Row } from '../src/report/section.ts';
import { inHand, look, only, onPlan, openChapter, panel, tailOf, tapPlan } from './hands/drawing.ts';
import { type Hand, handOf } from './hands/hand.ts';
import { expect, openEmpty, test } from './hands/kickset.ts';
import { answer, held } from './hands/model.ts';

type Choice = Extract<Row, { kind: 'choice' }>;
type Answer = Extract<Row, { kind: 'answer' }>;

/** Meter here, boiler there, gas goes up, along the void, down: how big? */
const QUESTION = 'Gas|Gas meter|up|to void|ahead|4|2|00|left|2|6|00|down|boiler tail|Boiler|30 kW class|keep'.split(
  '|',
);
const WITH_TEE =
  'Gas|Gas meter|up|to void|ahead|4|2|00|tee|down|1|5|00|Hob|left|2|6|00|down|boiler tail|Boiler|30 kW class|keep'.split(
    '|',
  );

const words = (page: Page): Locator => page.getByRole('region', { name: 'Run by words' });
const gasRows = (report: Report): readonly Row[] => report.sections.find((s) => s.id === 'gas-drop')?.rows ?? [];
const choices = (report: Report): Choice[] => gasRows(report).filter((r) => r.kind === 'choice');
const answerFor = (report: Report, label: string): Answer => {
  const row = gasRows(report).find((r): r is Answer => r.kind === 'answer' && r.label === label);
  if (!row) throw new Error(`no answer for ${label}`);
  return row;
};
const choiceOf = (report: Report, label: string): Choice => {
  const row = choices(report).find((c) => c.label === label);
  if (!row?.figure) throw new Error(`no "${label}"`);
  return row;
};

/** Tells a run key by key; gives how many touches it took. */
async function tell(page: Page, hand: Hand, keys: readonly string[]): Promise<number> {
  await hand.press(page.getByRole('button', { name: 'Say a run' }));
  for (const key of keys) await hand.press(words(page).getByRole('button', { name: key, exact: true }));
  return keys.length + 1;
}

/** What stands in a column is what the engine says, figure for figure. */
async function expectColumn(page: Page, report: Report, size: string): Promise<void> {
  const row = choiceOf(report, `${size} all the way`);
  const column = words(page).getByRole('button', { name: new RegExp(`^${size}: `) });
  await expect(column).toBeVisible();
  await expect(column).toContainText(row.figure ? sayFigures(row.figure) : '?');
  await expect(column).toContainText(row.room ?? '?');
}

for (const kind of ['touch', 'mouse'] as const) {
  test(`an empty page answers how big, by ${kind}`, async ({ page }) => {
    const hand = await handOf(page, kind);
    await openEmpty(page);
    expect(await tell(page, hand, QUESTION)).toBeLessThanOrEqual(20);

    let report = await answer(page);
    let now = await held(page);
    expect(Object.keys(now.plan.walls)).toEqual([]);
    expect(Object.values(now.plan.legs)).toHaveLength(4);
    expect(only(now.plan.runs).service).toBe('gas');
    for (const size of ['15', '22', '28']) await expectColumn(page, report, size);
    expect(choiceOf(report, '15 all the way').state).toBe('stop');
    expect(choiceOf(report, '28 all the way').state).toBe('pass');
    await expect(words(page).getByRole('button', { name: /^22: .*passes, \d+ m left$/ })).toHaveAttribute(
      'aria-pressed',
      'true',
    );
    await expect(words(page).getByText('limit 1.00, gas drop in mbar')).toBeVisible();
    await expect(words(page).getByText(/^assumed: Boiler: 30 kW class/)).toBeVisible();

    // Told again: what it ends at in two touches, a length in three (its word, its figures, keep).
    const before = answerFor(report, 'Boiler').figure;
    await hand.press(words(page).getByRole('button', { name: '30 kW class, assumed, change' }));
    await hand.press(words(page).getByRole('button', { name: '24 kW class', exact: true }));
    report = await answer(page);
    expect(answerFor(report, 'Boiler').figure.lo).toBeLessThan(before.lo);
    await expectColumn(page, report, '22');
    await hand.press(words(page).getByRole('button', { name: 'ahead 4200, change' }));
    for (const key of ['9', '00', 'keep']) {
      await hand.press(words(page).getByRole('button', { name: key, exact: true }));
    }
    const shorter = await answer(page);
    expect(answerFor(shorter, 'Boiler').figure.lo).toBeLessThan(answerFor(report, 'Boiler').figure.lo);
    await expect(words(page).getByRole('button', { name: 'ahead 900, change' })).toBeVisible();
    for (const size of ['15', '22', '28']) await expectColumn(page, shorter, size);
    now = await held(page);
    expect(Object.values(now.plan.legs)).toHaveLength(4);
  });

  test(`a hob is teed in and 28 is chosen up to the tee, by ${kind}`, async ({ page }) => {
    const hand = await handOf(page, kind);
    await openEmpty(page);
    await tell(page, hand, QUESTION);
    const alone = answerFor(await answer(page), 'Boiler').figure;
    await hand.press(words(page).getByRole('button', { name: /^(Done|Place in a house)$/ }));
    await expect(words(page)).toBeHidden();

    await look(page, 2000, 600, 12);
    const told = await held(page);
    await inHand(page, hand, 'Point', 'Hob');
    await tapPlan(page, hand, [2000, -800]);
    let now = await held(page);
    const hob = Object.values(now.plan.points).find((p) => p.kind === 'hob');
    if (!hob) throw new Error('no hob');
    const tail = tailOf(now.plan, hob.id, 'gas');
    const along = Object.values(now.plan.nodes)
      .flatMap((n) => (n.place.on === 'storey' ? [n.place] : []))
      .map((p) => ({ x: p.x, y: p.y }));
    expect(along.length).toBeGreaterThan(1);
    await inHand(page, hand, 'Tee', '15');
    await hand.tap(await onPlan(page, tail.x, along[0]?.y ?? 0));
    await hand.tap(await onPlan(page, tail.x, tail.y));
    now = await held(page);
    expect(now.toolState).toBe('idle');
    expect(Object.keys(now.plan.runs)).toHaveLength(2);
    expect(now.undo.length).toBe(told.undo.length + 2);

    let report = await answer(page);
    const both = answerFor(report, 'Boiler').figure;
    expect(both.lo).toBeGreaterThan(alone.lo);
    await openChapter(page, hand, 'Gas drop');
    await expect(panel(page).getByText(sayFigures(both)).first()).toBeVisible();
    await expect(
      panel(page)
        .getByText(sayFigures(answerFor(report, 'Hob').figure))
        .first(),
    ).toBeVisible();

    const upToTee = choiceOf(report, '28 here');
    const steps = now.undo.length;
    await hand.press(
      panel(page)
        .getByRole('button', { name: /^28 here: / })
        .first(),
    );
    now = await held(page);
    expect(now.undo.length).toBe(steps + 1);
    const sizes = Object.values(now.plan.legs).map((l) => l.tube.size);
    expect(sizes.filter((s) => s === '28x0.9')).toHaveLength(upToTee.change.length);
    expect(upToTee.change.length).toBeLessThan(sizes.length);
    report = await answer(page);
    expect(answerFor(report, 'Boiler').figure).toEqual(upToTee.figure);
    expect(answerFor(report, 'Boiler').bar.state).toBe(upToTee.state);
    await expect(
      panel(page)
        .getByText(sayFigures(answerFor(report, 'Boiler').figure))
        .first(),
    ).toBeVisible();
  });
}

test('the same with the tee told in words', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openEmpty(page);
  await tell(page, hand, WITH_TEE);
  const report = await answer(page);
  const { plan } = await held(page);
  expect(Object.keys(plan.runs)).toHaveLength(2);
  expect(Object.values(plan.points).map((p) => p.kind)).toEqual(['gas-meter', 'hob', 'boiler']);
  for (const size of ['15', '22', '28']) await expectColumn(page, report, size);
  expect(answerFor(report, 'Boiler').figure).toEqual(choiceOf(report, '22 all the way').figure);
  expect(answerFor(report, 'Hob').figure.lo).toBeLessThan(answerFor(report, 'Boiler').figure.lo);
});

import { expectInSight, inHand, look, onPlan, openChapter, panel, pullSheet, tapPlan } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { expect, openFlat, test } from './hands/kickset.ts';
import { answer, atRest, held } from './hands/model.ts';

test('every finding leads to its place', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  const { findings } = await answer(page);
  expect(findings.length).toBeGreaterThan(5);
  for (const finding of findings) {
    const title = finding.title;
    await openChapter(page, hand, 'Findings');
    await panel(page).getByRole('button').filter({ hasText: title }).first().click();
    await expect(panel(page).getByRole('heading', { name: title, exact: true })).toBeVisible();
    expect((await held(page)).selection.length, title).toBeGreaterThan(0);
    await panel(page).getByRole('button', { name: 'Go there' }).click();
    expect(finding.at, title).not.toBeNull();
    await atRest(page);
    await expectInSight(page, finding.at?.x ?? Number.NaN, finding.at?.y ?? Number.NaN);
    await panel(page).getByRole('button', { name: 'Back to all findings' }).click();
  }
});

test('a tap on a mark of the drawing tells that finding', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await look(page, 920, 6245, 3);
  await atRest(page);
  await expect(panel(page).getByRole('article')).toBeHidden();
  // The ring marks the very spot; its mark stands off it, on a leader, on whichever side is free.
  const spot = await onPlan(page, 920, 6245);
  const told = panel(page).getByRole('article');
  for (const away of [0, 30, 45, 60, 75, 90, 110]) {
    for (let turn = 0; turn < 8 && !(await told.isVisible()); turn++) {
      const a = (turn * Math.PI) / 4;
      await hand.tap({ x: spot.x + away * Math.cos(a), y: spot.y + away * Math.sin(a) });
    }
  }
  await expect(told).toContainText('Cold to the boiler 22 meets heating return 22');
});

test('a note on a finding stays through a re-draw, and tells when it got worse', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  await openChapter(page, hand, 'Findings');
  const clash = /Cold to the boiler 22 meets heating return 22/;
  await panel(page).getByRole('button').filter({ hasText: clash }).click();
  await panel(page).getByRole('button', { name: 'Seen, leave it with a note' }).click();
  await panel(page).getByRole('textbox', { name: 'Why it may stay' }).fill('sleeved, asked the maker');
  await panel(page).getByRole('button', { name: 'Keep the note' }).click();
  let now = await held(page);
  expect(Object.values(now.plan.acknowledgements)).toHaveLength(1);
  await expect(panel(page).getByText('sleeved, asked the maker')).toBeVisible();
  expect(now.undo).toHaveLength(1);

  // Drawn anew: the cold leg goes 70 lower, the clash is the same one.
  await pullSheet(page, hand, 'low');
  await page.evaluate(() => window.__kickset?.editor?.run('leg.move', { leg: 'B-c1-1', by: { x: 0, y: 0, z: -70 } }));
  const report = await answer(page);
  expect(report.findings.some((f) => f.rule === 'clash/runs')).toBe(true);
  await pullSheet(page, hand, 'full');
  await expect(panel(page).getByText('sleeved, asked the maker')).toBeVisible();
  now = await held(page);
  expect(Object.values(now.plan.acknowledgements)[0]).toMatchObject({ note: 'sleeved, asked the maker' });
  await panel(page).getByRole('button', { name: 'Back to all findings' }).click();
  await expect(panel(page).getByRole('button').filter({ hasText: clash })).toContainText('seen.');
  // It still is a stop.
  expect(report.counts.stop).toBe(1);
  await expect(page.getByRole('button', { name: /^Findings: 1 stop/ })).toBeVisible();
});

test('a quantity by hand stays through a re-route, and shows that the drawing moved', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  const tube = (await answer(page)).lines.find((l) => l.family === 'tube' && l.runs.includes('B-g2'));
  if (!tube) throw new Error('no gas tube on the list');
  await openChapter(page, hand, 'List');
  const line = panel(page).getByRole('button').filter({ hasText: tube.name }).filter({ hasText: tube.size }).first();
  await line.click();
  await panel(page)
    .getByRole('textbox', { name: /^Quantity by hand/ })
    .fill('18');
  await panel(page).getByRole('textbox', { name: 'Note' }).fill('two lengths of 9');
  await panel(page).getByRole('button', { name: 'Keep', exact: true }).click();
  await expect(line).toContainText('18');
  expect(Object.values((await held(page)).plan.listEdits)).toHaveLength(1);
  await expect(line).not.toContainText('drawing moved');

  await page.evaluate(() => window.__kickset?.editor?.run('leg.move', { leg: 'B-g2-3', by: { x: 0, y: 0, z: -300 } }));
  const moved = (await answer(page)).lines.find((l) => l.key === tube.key);
  expect(moved?.edited).toMatchObject({ quantity: 18, moved: true });
  await expect(line).toContainText('18');
  await expect(line).toContainText(`drawing moved: now ${moved?.quantity.toFixed(1)}`);
  await expect(line).toContainText('two lengths of 9');
});

test('a valve put in takes its finding away', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  const shut = (await answer(page)).findings.filter((f) => f.rule === 'gas/shut-off');
  expect(shut.map((f) => f.ids.join())).toContain('B-NB');
  await look(page, 700, 6290, 2);
  await inHand(page, hand, 'Item', 'Gas cock');
  await tapPlan(page, hand, [550, 6290]);
  const now = await held(page);
  expect(Object.values(now.plan.items).some((i) => i.kind === 'gas-cock')).toBe(true);
  const left = (await answer(page)).findings.filter((f) => f.rule === 'gas/shut-off');
  expect(left.map((f) => f.ids.join())).not.toContain('B-NB');
});

test('findings are put together by place and by topic, and a kind is hidden and shown again', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await openChapter(page, hand, 'Findings');
  const all = (await answer(page)).findings.length;
  const rows = panel(page).locator('.finding-row');
  await expect(rows).toHaveCount(all);
  await hand.press(panel(page).getByRole('radio', { name: 'By topic', exact: true }));
  await expect(panel(page).getByRole('heading', { name: 'Gas', exact: true })).toBeVisible();
  await expect(rows).toHaveCount(all);
  await hand.press(panel(page).getByRole('radio', { name: 'By place', exact: true }));
  await expect(panel(page).getByRole('heading', { name: 'Hall', exact: true })).toBeVisible();
  const stops = panel(page).getByRole('button', { name: /^stop, \d+$/ });
  await stops.click();
  await expect(stops).toHaveAttribute('aria-pressed', 'false');
  await expect(panel(page).getByText(/(is|are) hidden/)).toBeVisible();
  await panel(page).getByRole('button', { name: 'Show all' }).click();
  await expect(rows).toHaveCount(all);
});

test('a finding opens its rule, and takes the figure of the sheet with its page', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  await openChapter(page, hand, 'Findings');
  await panel(page).getByRole('button').filter({ hasText: 'Condensate to the sink waste falls' }).first().click();
  await panel(page).getByText('The rule', { exact: true }).click();
  await expect(panel(page).getByText(/Asked for by a standard or regulation/)).toBeVisible();
  await panel(page).getByRole('button', { name: 'Its own sheet gives another' }).click();
  await panel(page).getByLabel('What its sheet gives').fill('44');
  await panel(page).getByRole('button', { name: 'Keep the limit' }).click();
  await expect(panel(page).getByRole('alert')).toContainText('page');
  await panel(page).getByLabel('Page of the sheet').fill('14');
  await panel(page).getByRole('button', { name: 'Keep the limit' }).click();
  await expect.poll(async () => Object.values((await held(page)).plan.overrides).length).toBe(1);
});

import type { Page } from '@playwright/test';
import type { Finding } from '../src/report/finding.ts';
import { bench, expectInSight, look, nodeAt, onPlan, panel, pullSheet, tapPlan } from './hands/drawing.ts';
import { type Hand, handOf } from './hands/hand.ts';
import { expect, isPhone, openFlat, test } from './hands/kickset.ts';
import { answer, atRest, held, pxOf } from './hands/model.ts';

/** Where cold meets the heating return behind the boiler, as the demo has it. */
const AT = { x: 920, y: 6245, z: 400 };
const COLD = 'B-c1-1';

const clash = async (page: Page): Promise<Finding | undefined> =>
  (await answer(page)).findings.find((f) => f.rule === 'clash/runs');

async function openFindings(page: Page, hand: Hand): Promise<void> {
  await hand.press(page.getByRole('button', { name: /^Findings: / }));
  await expect(panel(page).getByRole('heading', { name: 'Findings' })).toBeVisible();
}

async function expectClash(page: Page, z: number): Promise<void> {
  const found = await clash(page);
  expect(found).toMatchObject({ outcome: 'stop', ids: ['B-c1', 'B-r1'], found: { lo: -12, hi: -12 } });
  expect(found?.at).toMatchObject({ storey: 'B', x: AT.x, y: AT.y, z, ring: true });
}

for (const kind of ['mouse', 'touch'] as const) {
  test(`the clash behind the boiler is found, not cured by going lower, cured by going behind, by ${kind}`, async ({
    page,
  }) => {
    const hand = await handOf(page, kind);
    await openFlat(page);
    await expectClash(page, AT.z);
    await openFindings(page, hand);
    await hand.press(panel(page).getByRole('button', { name: /Cold to the boiler 22 meets heating return 22/ }));
    const detail = panel(page).getByRole('article');
    await expect(detail).toContainText('-12 mm');
    await expect(detail.getByRole('img', { name: /S1/ })).toBeVisible();
    await hand.press(detail.getByRole('button', { name: 'Go there' }));
    await atRest(page);
    await expectInSight(page, AT.x, AT.y);
    await pullSheet(page, hand, 'low');

    // Lower: on the face of the wall it runs along, from 400 to 330.
    await look(page, 1800, 6000, 8);
    await page.evaluate(() => window.__kickset?.editor?.foldUp({ wall: 'BN', side: 'right' }));
    await expect(page.getByRole('application', { name: /^Drawing: face of/ })).toBeVisible();
    await atRest(page);
    await look(page, 1500, 400, 3, 'face');
    await hand.drag([
      await pxOf(page, { x: 1500, y: 0, z: 400 }, 'face'),
      await pxOf(page, { x: 1500, y: 0, z: 330 }, 'face'),
    ]);
    let now = await held(page);
    expect(now.undo).toHaveLength(1);
    expect(nodeAt(now.plan, 'B-c1.1').z).toBe(330);
    await expectClash(page, 330);
    await hand.press(bench(page, 'Undo'));
    await hand.press(page.getByRole('button', { name: 'fold down' }));
    await expectClash(page, 400);

    // Behind: in the plan, towards the wall by 50, with the keys beside the drag.
    await atRest(page);
    await look(page, 1500, 6250, 1.5);
    await tapPlan(page, hand, [1500, 6250]);
    await tapPlan(page, hand, [1500, 6250]);
    expect((await held(page)).selection).toEqual([{ map: 'legs', id: COLD }]);
    if (isPhone(page)) await hand.drag([await onPlan(page, 1500, 6250), await onPlan(page, 1500, 6300)]);
    else {
      await hand.press(page.getByRole('button', { name: /^nudge by/ }));
      await hand.press(page.getByRole('button', { name: '50', exact: true }));
      await hand.press(page.getByRole('button', { name: '50 up the sheet' }));
    }
    now = await held(page);
    expect(now.undo).toHaveLength(1);
    expect(nodeAt(now.plan, 'B-c1.1')).toMatchObject({ y: 6300, z: 400 });
    expect(await clash(page)).toBeUndefined();
    expect((await answer(page)).counts.stop).toBe(0);
    await expect(page.getByRole('button', { name: /^Findings: (?!.*stop)/ })).toBeVisible();
  });
}

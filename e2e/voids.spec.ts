import type { Page } from '@playwright/test';
import type { Void } from '../src/plan/records/building.ts';
import { inHand, look, only, panel, pullSheet, takeTool } from './hands/drawing.ts';
import { type Hand, handOf } from './hands/hand.ts';
import { expect, isPhone, openEmpty, test } from './hands/kickset.ts';
import { answer, atRest, held, pxOf } from './hands/model.ts';

const asked = (page: Page) => page.getByRole('region', { name: 'Asked for' });
const press = (page: Page, hand: Hand, name: string) =>
  hand.press(asked(page).getByRole('button', { name, exact: true }));
const theVoid = async (page: Page): Promise<Void> => only((await held(page)).plan.voids);

/** A room of 4.1 by 3.1 m inside, drawn by the editor: how walls are drawn is told elsewhere. */
async function room(page: Page, hand: Hand): Promise<void> {
  await openEmpty(page);
  await hand.press(page.getByRole('button', { name: 'Draw a wall' }));
  await page.evaluate(() => {
    const editor = window.__kickset?.editor;
    const storey = Object.keys(editor?.store.getState().plan.storeys ?? {})[0];
    const corners = [
      [0, 0],
      [4200, 0],
      [4200, 3200],
      [0, 3200],
      [0, 0],
    ] as const;
    corners.slice(1).forEach(([x, y], i) => {
      const [ax, ay] = corners[i] ?? [0, 0];
      const ends = { a: { x: ax, y: ay }, b: { x, y } };
      editor?.run('wall.add', { storey, ...ends, thicknessMm: 100, construction: 'block', sureness: 'seen' });
    });
    editor?.zoomToFit();
  });
  await atRest(page);
}

const toRoom = async (page: Page): Promise<void> => {
  await look(page, 2100, 1600, isPhone(page) ? 16 : 10);
  await atRest(page);
};

for (const kind of ['mouse', 'touch'] as const) {
  test(`a ceiling is a tap in the room, then way, centres and depth, by ${kind}`, async ({ page }) => {
    const hand = await handOf(page, kind);
    await room(page, hand);
    await inHand(page, hand, 'Void', 'ceiling');
    await toRoom(page);
    const before = (await held(page)).undo;
    await hand.tap(await pxOf(page, { x: 2100, y: 1600, z: 0 }));
    await press(page, hand, 'along');
    await press(page, hand, '450');
    await press(page, hand, '200');
    await expect(asked(page)).toBeHidden();
    expect(await theVoid(page)).toMatchObject({
      kind: 'ceiling',
      joists: { wayDeg: 90, centresMm: 450, depthMm: 200, assumed: ['kind', 'first', 'breadthMm', 'bottom'] },
    });
    expect((await held(page)).undo).toEqual([...before, 'draw ceiling void']);

    await pullSheet(page, hand, 'full');
    await expect(panel(page).getByText(/^Assumed until somebody looks/)).toBeVisible();
    await hand.press(panel(page).getByRole('button', { name: 'It is all as drawn: seen' }));
    await expect.poll(async () => 'assumed' in ((await theVoid(page)).joists ?? {})).toBe(false);
    await hand.press(panel(page).getByRole('button', { name: 'Walls at both ends' }));
    await expect(panel(page).getByText('They span 3100 between bearings.')).toBeVisible();
  });
}

test('the questions are answered from the keyboard, and Escape goes back', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await room(page, hand);
  await inHand(page, hand, 'Void', 'floor');
  await toRoom(page);
  await hand.tap(await pxOf(page, { x: 2100, y: 1600, z: 0 }));
  await page.keyboard.press('1');
  await page.keyboard.press('Escape');
  await expect(asked(page)).toContainText('Which way');
  await page.keyboard.press('Enter');
  await page.keyboard.type('380');
  await page.keyboard.press('Enter');
  await page.keyboard.press('2');
  await page.keyboard.press('Enter');
  expect(await theVoid(page)).toMatchObject({ kind: 'floor', joists: { centresMm: 380, depthMm: 175 } });
});

test('a single joist is tapped and doubled; the step is undone', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await room(page, hand);
  await inHand(page, hand, 'Void', 'ceiling');
  await toRoom(page);
  await hand.tap(await pxOf(page, { x: 2100, y: 1600, z: 0 }));
  await press(page, hand, 'along');
  await press(page, hand, '400');
  await press(page, hand, '200');
  await pullSheet(page, hand, 'full');
  await hand.press(panel(page).getByRole('button', { name: 'Tap a joist' }));
  await expect(asked(page)).toContainText('Tap a joist');
  await toRoom(page);
  const x = ((await theVoid(page)).joists?.first.x ?? 0) + 3 * 400;
  await hand.tap(await pxOf(page, { x, y: 2400, z: 0 }));
  await expect(asked(page)).toContainText('Joist 4');
  await press(page, hand, 'doubled');
  expect((await theVoid(page)).joists?.exceptions).toEqual([{ index: 3, offsetMm: 0, what: 'doubled' }]);
  await press(page, hand, 'done');
  expect((await held(page)).tool).toBe('select');
  await page.keyboard.press('Control+z');
  await expect.poll(async () => (await theVoid(page)).joists?.exceptions).toEqual([]);
});

test('a boxing is dragged on the face of a wall and shows in the report', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await room(page, hand);
  await takeTool(page, hand, 'Select');
  await toRoom(page);
  await hand.tap(await pxOf(page, { x: 2100, y: 3200, z: 0 }));
  await pullSheet(page, hand, 'half');
  await hand.press(panel(page).getByRole('button', { name: 'Fold up left face' }));
  await pullSheet(page, hand, 'low');
  await atRest(page);
  await inHand(page, hand, 'Void', 'boxing');
  await look(page, 1500, 1200, 8, 'face');
  await atRest(page);
  const corner = (x: number, z: number) => pxOf(page, { x, y: 0, z }, 'face');
  await hand.drag([await corner(1000, 400), await corner(1200, 900), await corner(1400, 1400)]);
  await press(page, hand, '150');
  const made = await theVoid(page);
  expect(made).toMatchObject({ kind: 'boxing', sureness: 'seen' });
  expect(new Set(made.outline.map((p) => Math.round(p.y)))).toEqual(new Set([3150, 3000]));
  await pullSheet(page, hand, 'full');
  await expect(panel(page).getByText(/^Against the left face of a wall of 100/)).toBeVisible();
  await answer(page);
});

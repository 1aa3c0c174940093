import { expect as check, type Page } from '@playwright/test';
import { bench, openChapter, panel, pullSheet, takeTool } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { expect, openEmpty, test } from './hands/kickset.ts';
import { answer, atRest, held, pxOf } from './hands/model.ts';

/** A grey sheet with a black frame, drawn by the page itself and handed over as a file. */
async function sheetPng(page: Page, width: number, height: number): Promise<Buffer> {
  const url = await page.evaluate(
    ({ width, height }) => {
      const canvas = document.createElement('canvas');
      canvas.width = width;
      canvas.height = height;
      const paint = canvas.getContext('2d');
      if (!paint) throw new Error('no canvas');
      paint.fillStyle = '#bbb';
      paint.fillRect(0, 0, width, height);
      paint.lineWidth = 12;
      paint.strokeRect(40, 40, width - 80, height - 80);
      paint.font = '48px sans-serif';
      paint.fillStyle = '#000';
      paint.fillText('Kitchen', width / 2 - 80, height / 2);
      return canvas.toDataURL('image/png');
    },
    { width, height },
  );
  return Buffer.from(url.slice(url.indexOf(',') + 1), 'base64');
}

const traceOf = async (page: Page) => {
  const { plan } = await held(page);
  const [record] = Object.values(plan.blobRefs).filter((b) => b.kind === 'trace');
  if (!record?.place) throw new Error('no picture lies under the drawing');
  return { ...record, place: record.place };
};

/** Colour of the drawing at a place, from the lowest layer: 0 is black. */
const grey = (page: Page, at: { x: number; y: number }): Promise<number> =>
  page.evaluate(({ x, y }) => {
    const canvas = document.querySelector<HTMLCanvasElement>('.pane-plan canvas');
    const box = canvas?.getBoundingClientRect();
    if (!canvas || !box) throw new Error('no canvas');
    const k = canvas.width / box.width;
    const pixel = canvas.getContext('2d')?.getImageData((x - box.left) * k, (y - box.top) * k, 1, 1).data;
    return (pixel?.[3] ?? 0) === 0 ? 255 : (pixel?.[0] ?? 0);
  }, at);

test('a plan is put under the floor, scaled by a known length, locked, and is there after a reload', async ({
  page,
}) => {
  const hand = await handOf(page, 'touch');
  await openEmpty(page);
  const png = await sheetPng(page, 1000, 700);
  await openChapter(page, hand, 'Pictures under');
  const asked = page.waitForEvent('filechooser');
  await hand.press(panel(page).getByRole('button', { name: 'Put one under this floor' }));
  await (await asked).setFiles({ name: 'agent plan.png', mimeType: 'image/png', buffer: png });
  await expect(panel(page).getByRole('button', { name: /agent plan/ })).toBeVisible();

  // On a phone the sheet goes down for it, and the picture is brought into the room that leaves.
  await atRest(page);
  // Two ends of a wall on the picture, known to be 4000 long.
  const before = await traceOf(page);
  const k = before.place.mmPerPixel;
  const a = { x: before.place.x + 40 * k, y: before.place.y + 350 * k, z: 0 };
  const b = { ...a, x: before.place.x + 960 * k };
  await hand.tap(await pxOf(page, a));
  await hand.tap(await pxOf(page, b));
  const long = panel(page).getByLabel('It is this long');
  await expect(long).toBeVisible();
  await long.fill('4000');
  await long.press('Enter');
  await check.poll(async () => (await traceOf(page)).place.mmPerPixel).toBeCloseTo(4000 / 920, 1);

  await panel(page).getByRole('radio', { name: 'locked' }).check({ force: true });
  const kept = await traceOf(page);
  expect(kept.place.locked).toBe(true);
  await page.waitForTimeout(600);
  await page.reload();
  await answer(page);
  await page.waitForFunction(() => window.__kickset?.editor);
  await check.poll(async () => (await traceOf(page)).place).toEqual(kept.place);
  // The frame of the sheet is seen: its left line, half as strong as it was drawn.
  const on = await pxOf(page, {
    x: kept.place.x + 40 * kept.place.mmPerPixel,
    y: kept.place.y + 600 * kept.place.mmPerPixel,
    z: 0,
  });
  await check.poll(() => grey(page, on)).toBeLessThan(190);
});

test('a file that is no picture is refused in words', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openEmpty(page);
  await openChapter(page, hand, 'Pictures under');
  const asked = page.waitForEvent('filechooser');
  await hand.press(panel(page).getByRole('button', { name: 'Put one under this floor' }));
  await (await asked).setFiles({ name: 'notes.png', mimeType: 'image/png', buffer: Buffer.from('not a picture') });
  await expect(panel(page).getByRole('alert')).toHaveText(/^notes is no picture this browser can read/);
  expect(Object.keys((await held(page)).plan.blobRefs)).toEqual([]);
});

test('the empty page takes a plan to draw over; scaled, it stays as it is seen, and all of it is shown again', async ({
  page,
}) => {
  const hand = await handOf(page, 'touch');
  await openEmpty(page);
  const png = await sheetPng(page, 1000, 700);
  const asked = page.waitForEvent('filechooser');
  await hand.press(page.getByRole('button', { name: /^Draw over a picture/ }));
  await (await asked).setFiles({ name: 'agent plan.png', mimeType: 'image/png', buffer: png });
  await expect(panel(page).getByRole('button', { name: /agent plan/ })).toBeVisible();
  const { place } = await traceOf(page);
  const k = place.mmPerPixel;
  const ends = [40, 960].map((x) => ({ x: place.x + x * k, y: place.y + 350 * k, z: 0 }));
  const seen = await Promise.all(ends.map((at) => pxOf(page, at)));
  for (const at of ends) await hand.tap(await pxOf(page, at));
  const long = panel(page).getByLabel('It is this long');
  await long.fill('10.4 m');
  await long.press('Enter');
  await check.poll(async () => (await traceOf(page)).place.mmPerPixel).toBeCloseTo(10_400 / 920, 1);
  const scaled = await traceOf(page);
  for (const [i, x] of [40, 960].entries()) {
    const at = {
      x: scaled.place.x + x * scaled.place.mmPerPixel,
      y: scaled.place.y + 350 * scaled.place.mmPerPixel,
      z: 0,
    };
    const now = await pxOf(page, at);
    check(Math.abs(now.x - (seen[i]?.x ?? 0))).toBeLessThan(2);
    check(Math.abs(now.y - (seen[i]?.y ?? 0))).toBeLessThan(2);
  }
  // The card of the empty page does not come back over it.
  await takeTool(page, hand, 'Select');
  // Choosing has nothing in hand: a second press of its key opens no choice of pipes.
  await hand.press(bench(page, 'Select'));
  await expect(page.getByRole('region', { name: 'In hand' })).toBeHidden();
  await expect(page.getByRole('heading', { name: 'An empty page answers too.' })).toBeHidden();
  await page.evaluate(() => window.__kickset?.editor?.setCamera('plan', { centre: [90_000, 90_000], mmPerPx: 2 }));
  await pullSheet(page, hand, 'low');
  await hand.press(page.getByRole('button', { name: 'Show all' }));
  const middle = scaled.place.x + 500 * scaled.place.mmPerPixel;
  const { camera } = await held(page);
  check(Math.abs(camera.centre[0] - middle)).toBeLessThan(camera.mmPerPx * 60);
});

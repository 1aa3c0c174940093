import type { CDPSession, Locator, Page } from '@playwright/test';
import { bench, look, onPlan, pullSheet, takeTool, tapPlan } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { expect, isPhone, openEmpty, openFlat, test } from './hands/kickset.ts';
import { atRest, draws, held } from './hands/model.ts';
import { type At, fingers } from './hands/touch.ts';

/** How far a thumb reaches from the lower corner of the hand that holds the page, px. */
const REACH_PX = 300;

const frames = (page: Page): Promise<unknown> =>
  page.evaluate(() => new Promise((next) => requestAnimationFrame(() => requestAnimationFrame(next))));

const lens = (page: Page): Locator => page.locator('.lens');
const thumb = (page: Page): Locator => page.getByRole('toolbar', { name: 'By the thumb' });
const underTap = (page: Page): Locator => page.getByRole('group', { name: 'Under the tap' });

/** What a gesture that was given up may not have changed. */
async function mark(page: Page) {
  const { plan, undo, drafting, labels, toolState, selection } = await held(page);
  return { plan, undo, drafting, labels, toolState, selection };
}

/** A finger of a told breadth, a pen, or a touch the system takes away. */
interface Glass {
  touch(
    type: 'touchStart' | 'touchMove' | 'touchEnd' | 'touchCancel',
    ...at: (At & { radius?: number })[]
  ): Promise<void>;
  pen(type: 'mousePressed' | 'mouseMoved' | 'mouseReleased', at: At): Promise<void>;
}

async function glassOf(page: Page): Promise<Glass> {
  const session: CDPSession = await page.context().newCDPSession(page);
  return {
    async touch(type, ...at) {
      const touchPoints = at.map(({ x, y, radius = 10 }, id) => ({ id, x, y, radiusX: radius, radiusY: radius }));
      await session.send('Input.dispatchTouchEvent', { type, touchPoints });
    },
    async pen(type, { x, y }) {
      const down = type !== 'mouseReleased';
      await session.send('Input.dispatchMouseEvent', {
        type,
        x,
        y,
        button: 'left',
        buttons: down ? 1 : 0,
        clickCount: 1,
        pointerType: 'pen',
      });
    },
  };
}

test('a second finger takes the gesture away without a mark and moves the paper', async ({ page }) => {
  await openEmpty(page);
  const glass = await fingers(page);
  const hand = await handOf(page, 'touch');
  await takeTool(page, hand, 'Run');
  await tapPlan(page, hand, [-1000, 0], [1000, 0]);
  const before = await mark(page);
  const camera = (await held(page)).camera;
  const [a, b] = [await onPlan(page, 1000, 600), await onPlan(page, 0, 900)];
  await glass.down(0, a);
  await glass.move([0, { x: a.x + 30, y: a.y - 20 }]);
  await frames(page);
  expect((await held(page)).drafting).toBe(true);
  await glass.down(1, b);
  await glass.move([0, { x: a.x + 70, y: a.y }], [1, { x: b.x - 40, y: b.y }]);
  await frames(page);
  await glass.lift(0);
  await glass.lift(1);
  await frames(page);
  expect(await mark(page)).toEqual(before);
  expect((await held(page)).camera.mmPerPx).toBeLessThan(camera.mmPerPx);
  await tapPlan(page, hand, [1000, 700]);
  expect((await held(page)).undo).toHaveLength(before.undo.length + 1);
});

test('a gesture that is lost leaves no mark and nothing stuck', async ({ page }) => {
  await openEmpty(page);
  const hand = await handOf(page, 'touch');
  const glass = await glassOf(page);
  await takeTool(page, hand, 'Run');
  await tapPlan(page, hand, [-1000, 0], [1000, 0]);
  const before = await mark(page);
  const size = page.viewportSize() ?? { width: 0, height: 0 };
  const losses: Readonly<Record<string, () => Promise<unknown>>> = {
    cancel: () => glass.touch('touchCancel'),
    blur: () => page.evaluate(() => window.dispatchEvent(new Event('blur'))),
    lock: () =>
      page.evaluate(() => {
        Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true });
        document.dispatchEvent(new Event('visibilitychange'));
        Reflect.deleteProperty(document, 'visibilityState');
      }),
    capture: () =>
      page.evaluate(() => {
        const box = document.querySelector('.pane-box');
        for (let id = 0; id < 50; id++) if (box?.hasPointerCapture(id)) box.releasePointerCapture(id);
      }),
    rotation: () => page.setViewportSize({ width: size.height, height: size.width }),
  };
  for (const [how, lose] of Object.entries(losses)) {
    const at = await onPlan(page, 1000, 800);
    await glass.touch('touchStart', at);
    await glass.touch('touchMove', { x: at.x + 25, y: at.y + 25 });
    await frames(page);
    expect((await held(page)).drafting, how).toBe(true);
    await lose();
    await frames(page);
    if (how !== 'cancel') {
      await glass.touch('touchMove', { x: at.x + 40, y: at.y + 5 });
      await frames(page);
      await glass.touch('touchEnd');
    }
    await frames(page);
    expect(await mark(page), how).toEqual(before);
    expect(await page.evaluate(() => window.__kickset?.editor?.gesture()), how).toBe('rest');
  }
  await page.setViewportSize(size);
  await atRest(page);
  await tapPlan(page, hand, [1000, 700]);
  expect((await held(page)).undo).toHaveLength(before.undo.length + 1);
});

test('a palm on the glass neither draws nor takes the gesture from the finger', async ({ page }) => {
  await openEmpty(page);
  const hand = await handOf(page, 'touch');
  const glass = await glassOf(page);
  await takeTool(page, hand, 'Run');
  const [from, to, palm] = [await onPlan(page, -1000, 0), await onPlan(page, 1000, 0), await onPlan(page, 900, -1400)];
  const wide = { ...palm, radius: 90 };
  await glass.touch('touchStart', wide);
  await glass.touch('touchEnd');
  expect((await held(page)).drafting).toBe(false);
  await glass.touch('touchStart', from);
  await glass.touch('touchStart', from, wide);
  await glass.touch('touchMove', to, wide);
  await frames(page);
  await glass.touch('touchEnd', wide);
  await glass.touch('touchEnd');
  expect((await held(page)).undo).toHaveLength(1);
});

test('where the pen draws, fingers move the paper, and the bench says so', async ({ page }) => {
  await openEmpty(page);
  const hand = await handOf(page, 'touch');
  const glass = await glassOf(page);
  await hand.press(bench(page, 'More'));
  await hand.press(page.getByRole('dialog', { name: 'More' }).getByRole('button', { name: 'Help' }));
  await page.getByRole('radio', { name: 'pen draws, fingers move' }).check({ force: true });
  await page.keyboard.press('Escape');
  await takeTool(page, hand, 'Run');
  if (!isPhone(page)) await expect(page.locator('.in-hand')).toContainText('pen draws, fingers move');
  const before = await held(page);
  const [from, to] = [await onPlan(page, -1000, 0), await onPlan(page, 1000, 0)];
  await hand.drag([from, { x: from.x + 60, y: from.y + 40 }]);
  const moved = await held(page);
  expect(moved.undo).toEqual(before.undo);
  expect(moved.camera.centre[0]).toBeCloseTo(before.camera.centre[0] - 60 * before.camera.mmPerPx, 0);
  await glass.pen('mousePressed', from);
  for (let i = 1; i <= 6; i++) {
    await glass.pen('mouseMoved', { x: from.x + ((to.x - from.x) * i) / 6, y: from.y });
    await frames(page);
  }
  await glass.pen('mouseReleased', to);
  await expect.poll(async () => (await held(page)).undo.length).toBe(1);
});

test.describe('the lens', () => {
  /** Something other than nothing is painted in it: how many of its px differ from the first. */
  const inked = (page: Page): Promise<number> =>
    page.evaluate(() => {
      const canvas = document.querySelector<HTMLCanvasElement>('.lens canvas');
      const data = canvas?.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data;
      if (!data) return 0;
      let n = 0;
      for (let i = 4; i < data.length; i += 4) if (data[i] !== data[0] || data[i + 3] !== data[3]) n++;
      return n;
    });

  test('shows what is under the finger, draws nothing anew and catches no touch', async ({ page }) => {
    await openFlat(page);
    const hand = await handOf(page, 'touch');
    await takeTool(page, hand, 'Run');
    await look(page, 2300, 1900, isPhone(page) ? 14 : 10);
    await atRest(page);
    const corner = await onPlan(page, 4750, 3820);
    const from = await onPlan(page, 1500, 1000);
    await hand.down(from);
    await hand.move({ x: from.x + 24, y: from.y });
    await expect(lens(page)).toBeVisible();
    await atRest(page);
    const before = (await draws(page)).plan;
    const steps = 40;
    for (let i = 1; i <= steps; i++) {
      await hand.move({ x: from.x + ((corner.x - from.x) * i) / steps, y: from.y + ((corner.y - from.y) * i) / steps });
      await frames(page);
    }
    await atRest(page);
    const after = (await draws(page)).plan;
    expect([after.still - before.still, after.work - before.work]).toEqual([0, 0]);
    expect(after.live - before.live).toBeGreaterThan(steps / 3);
    expect(await inked(page)).toBeGreaterThan(200);
    const caught = await page.evaluate(() => window.__kickset?.editor?.store.getState().caught ?? null);
    await expect(lens(page).locator('p')).toHaveText(caught ?? 'nothing caught');
    const box = await lens(page).boundingBox();
    if (!box) throw new Error('no lens');
    const beside = corner.x < box.x || corner.x > box.x + box.width || corner.y > box.y + box.height + 20;
    expect(beside, 'off the finger').toBe(true);
    const hit = await page.evaluate(({ x, y }) => document.elementFromPoint(x, y)?.closest('.lens') !== null, {
      x: box.x + box.width / 2,
      y: box.y + box.height / 2,
    });
    expect(hit, 'catches pointers').toBe(false);
    await hand.up();
    await expect(lens(page)).toBeHidden();
  });

  test('comes for neither a tap nor a mouse, and can be put away', async ({ page }) => {
    await openFlat(page);
    const hand = await handOf(page, 'touch');
    const mouse = await handOf(page, 'mouse');
    await takeTool(page, hand, 'Run');
    const [a, b] = [await onPlan(page, 1000, 1000), await onPlan(page, 3000, 1000)];
    await mouse.down(a);
    await mouse.move(b);
    await frames(page);
    await expect(lens(page)).toBeHidden();
    await mouse.up();
    await page.keyboard.press('Escape');
    await hand.press(bench(page, 'More'));
    await hand.press(page.getByRole('dialog', { name: 'More' }).getByRole('button', { name: 'Help' }));
    await page.getByRole('radio', { name: 'not shown' }).check({ force: true });
    await page.keyboard.press('Escape');
    await hand.down(a);
    await hand.move(b);
    await frames(page);
    await expect(lens(page)).toBeHidden();
    await hand.up();
  });
});

/** Gas over heating over cold, along one line. */
async function stack(page: Page): Promise<void> {
  const hand = await handOf(page, 'touch');
  await openEmpty(page);
  for (const [service, mm] of [
    ['heatingFlow', 2270],
    ['gas', 2420],
    ['cold', 150],
  ] as const) {
    await page.evaluate(
      ({ service, mm }) => {
        const editor = window.__kickset?.editor;
        const storey = editor?.store.getState().inHand.height.of ?? null;
        editor?.setTool('run');
        editor?.setInHand({ service, height: { from: 'floor', of: storey, mm } as never });
        editor?.setInHand({ tube: { kind: 'copper', size: '22x0.9' } });
        editor?.run('run.start', {
          service,
          joining: editor.store.getState().inHand.joining,
          turns: 'elbow',
          tube: { kind: 'copper', size: '22x0.9' },
          path: [
            { at: 'free', storey, x: -1500, y: 0, height: { from: 'floor', of: storey, mm } },
            { at: 'free', storey, x: 1500, y: 0, height: { from: 'floor', of: storey, mm } },
          ],
        });
        editor?.setTool('select');
      },
      { service, mm },
    );
  }
  await look(page, 0, 0, 12);
  await atRest(page);
  await hand.press(bench(page, 'Select'));
}

test.describe('pipes over one another', () => {
  test('are all offered beside the tap, highest first, and a tap in the list chooses', async ({ page }) => {
    await stack(page);
    const hand = await handOf(page, 'touch');
    const at = await onPlan(page, 300, 0);
    await hand.tap(at);
    await expect(underTap(page)).toBeVisible();
    const rows = underTap(page).getByRole('button');
    await expect(rows).toHaveCount(3);
    const names = await rows.evaluateAll((all) => all.map((b) => b.getAttribute('aria-label')));
    expect(names).toEqual(['Gas 22, 2420', 'Heating flow 22, 2270', 'Cold 22, 150']);
    const pane = await page.locator('.pane-plan').boundingBox();
    const list = await underTap(page).boundingBox();
    if (!pane || !list) throw new Error('no boxes');
    expect(list.x >= pane.x && list.y >= pane.y).toBe(true);
    expect(list.x + list.width <= pane.x + pane.width && list.y + list.height <= pane.y + pane.height).toBe(true);
    expect(at.x < list.x || at.x > list.x + list.width || at.y < list.y || at.y > list.y + list.height).toBe(true);
    for (const row of await rows.all()) expect((await row.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    await hand.press(rows.nth(1));
    await expect(underTap(page)).toBeHidden();
    const { selection, plan } = await held(page);
    expect(plan.runs[selection[0]?.id ?? '']?.service).toBe('heatingFlow');
  });

  test('a tap in the same place goes on to the next; elsewhere, and by Escape, the list is shut', async ({ page }) => {
    await stack(page);
    const hand = await handOf(page, 'touch');
    const at = await onPlan(page, 300, 0);
    await hand.tap(at);
    const first = (await held(page)).selection;
    await expect(underTap(page)).toBeVisible();
    await hand.tap(at);
    const second = (await held(page)).selection;
    expect(second).not.toEqual(first);
    await expect(underTap(page)).toBeVisible();
    await page.keyboard.press('Escape');
    await expect(underTap(page)).toBeHidden();
    expect((await held(page)).selection).toEqual(second);
    await hand.tap(at);
    await expect(underTap(page)).toBeVisible();
    await pullSheet(page, hand, 'low');
    await hand.tap(await onPlan(page, 300, 900));
    await expect(underTap(page)).toBeHidden();
    expect((await held(page)).selection).toEqual([]);
  });

  test('the list is gone through by arrows, and a single pipe has none', async ({ page }) => {
    await stack(page);
    const hand = await handOf(page, 'touch');
    await hand.tap(await onPlan(page, 300, 0));
    const rows = underTap(page).getByRole('button');
    await rows.first().focus();
    await page.keyboard.press('ArrowDown');
    await expect(rows.nth(1)).toBeFocused();
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowUp');
    await expect(rows.nth(2)).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(underTap(page)).toBeHidden();
    await expect(page.locator('.pane-box[data-pane="plan"]')).toBeFocused();
    const chosen = (await held(page)).selection[0]?.id ?? '';
    expect((await held(page)).plan.runs[chosen]?.service).toBe('cold');
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await pullSheet(page, hand, 'low');
    await hand.tap(await onPlan(page, 300, 0));
    expect((await held(page)).selection).toHaveLength(1);
    await expect(underTap(page)).toBeHidden();
  });
});

/** Distance from a lower corner of the page to the nearest place of a control, px. */
async function reachOf(page: Page, key: Locator, corner: 'left' | 'right'): Promise<number> {
  const box = await key.boundingBox();
  const size = page.viewportSize();
  if (!box || !size) throw new Error(`${key} is not there`);
  const across = corner === 'left' ? Math.max(0, box.x) : Math.max(0, size.width - box.x - box.width);
  return Math.hypot(across, Math.max(0, size.height - box.y - box.height));
}

for (const heldIn of ['left', 'right'] as const) {
  test(`the ten commonest acts lie within reach of the ${heldIn} thumb`, async ({ page }) => {
    await page.addInitScript(
      (side) => localStorage.setItem('kickset.hand', side),
      heldIn === 'left' ? 'right' : 'left',
    );
    await stack(page);
    const hand = await handOf(page, 'touch');
    const size = page.viewportSize() ?? { width: 0, height: 0 };
    const acts: Readonly<Record<string, Locator>> = {
      undo: bench(page, 'Undo'),
      redo: bench(page, 'Redo'),
      run: bench(page, 'Run'),
      tee: bench(page, 'Tee'),
      select: bench(page, 'Select'),
      item: bench(page, 'Item'),
      higher: thumb(page).getByRole('button', { name: /^Higher/ }),
      lower: thumb(page).getByRole('button', { name: /^Lower/ }),
      'by words': thumb(page).getByRole('button', { name: 'by words' }),
      finish: thumb(page).getByRole('button', { name: /^Finish/ }),
    };
    const boxes: { name: string; x: number; y: number; width: number; height: number }[] = [];
    for (const [name, key] of Object.entries(acts)) {
      expect(await reachOf(page, key, heldIn), name).toBeLessThanOrEqual(REACH_PX);
      const box = await key.boundingBox();
      if (!box) throw new Error(name);
      expect(Math.min(box.width, box.height), name).toBeGreaterThanOrEqual(43.5);
      expect(box.x >= 0 && box.x + box.width <= size.width && box.y + box.height <= size.height, name).toBe(true);
      const on = await key.evaluate((e) => {
        const r = e.getBoundingClientRect();
        return e.contains(document.elementFromPoint(r.left + r.width / 2, r.top + r.height / 2));
      });
      expect(on, `${name} is not covered`).toBe(true);
      boxes.push({ name, ...box });
    }
    for (const a of boxes)
      for (const b of boxes) {
        if (a === b) continue;
        const apart =
          a.x + a.width <= b.x + 0.5 ||
          b.x + b.width <= a.x + 0.5 ||
          a.y + a.height <= b.y + 0.5 ||
          b.y + b.height <= a.y + 0.5;
        expect(apart, `${a.name} and ${b.name}`).toBe(true);
      }
    await hand.tap(await onPlan(page, 300, 0));
    const nudge = thumb(page).getByRole('button', { name: /^nudge by/ });
    expect(await reachOf(page, nudge, heldIn), 'nudge').toBeLessThanOrEqual(REACH_PX);
  });
}

test('the height keys step what is in hand to the next place, and what is chosen by 50', async ({ page }) => {
  await stack(page);
  const hand = await handOf(page, 'touch');
  const height = (): Promise<unknown> =>
    page.evaluate(() => window.__kickset?.editor?.store.getState().inHand.height ?? null);
  await takeTool(page, hand, 'Run');
  const low = await height();
  await hand.press(thumb(page).getByRole('button', { name: /^Higher/ }));
  await expect.poll(height).not.toEqual(low);
  const high = await height();
  await hand.press(thumb(page).getByRole('button', { name: /^Lower/ }));
  await expect.poll(height).not.toEqual(high);
  await takeTool(page, hand, 'Select');
  await hand.tap(await onPlan(page, 300, 0));
  const before = await held(page);
  const shift = thumb(page).getByRole('button', { name: 'Higher by 50' });
  await hand.press(shift);
  await expect.poll(async () => (await held(page)).undo.length).toBe(before.undo.length + 1);
});

test('Finish ends a run as Enter does', async ({ page }) => {
  await openEmpty(page);
  const hand = await handOf(page, 'touch');
  const finish = thumb(page).getByRole('button', { name: /^Finish/ });
  await expect(finish).toHaveAttribute('aria-disabled', 'true');
  await takeTool(page, hand, 'Run');
  await tapPlan(page, hand, [-1000, 0], [1000, 0]);
  await expect(finish).toHaveAttribute('aria-disabled', 'false');
  await hand.press(finish);
  expect((await held(page)).toolState).toBe('idle');
  expect((await held(page)).undo).toHaveLength(1);
});

test('nothing hangs on a long press: held it is a tap, and only the drawing keeps the menu away', async ({ page }) => {
  await stack(page);
  const glass = await glassOf(page);
  const at = await onPlan(page, 300, 0);
  await glass.touch('touchStart', at);
  await page.waitForTimeout(900);
  await glass.touch('touchEnd');
  await expect.poll(async () => (await held(page)).selection.length).toBe(1);
  const kept = (selector: string): Promise<boolean> =>
    page.evaluate((selector) => {
      const e = new MouseEvent('contextmenu', { bubbles: true, cancelable: true });
      return document.querySelector(selector)?.dispatchEvent(e) === false;
    }, selector);
  expect(await kept('.pane-box')).toBe(true);
  for (const elsewhere of ['.frame-panel', '.bench', '.frame-strip', '.ribbon'])
    expect(await kept(elsewhere)).toBe(false);
});

test('in gloves the keys at the foot are taller where there is room, and still within reach', async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('kickset.gloves', 'yes'));
  await openEmpty(page);
  const [tool, by] = isPhone(page) ? [56, 44] : [68, 60];
  for (const name of ['Undo', 'Redo', 'Run', 'Tee', 'Select', 'Item']) {
    const key = bench(page, name);
    expect((await key.boundingBox())?.height, name).toBeGreaterThanOrEqual(tool);
    expect(await reachOf(page, key, 'left'), name).toBeLessThanOrEqual(REACH_PX);
  }
  for (const key of await thumb(page).getByRole('button').all()) {
    expect((await key.boundingBox())?.height).toBeGreaterThanOrEqual(by);
    expect(await reachOf(page, key, 'left')).toBeLessThanOrEqual(REACH_PX);
  }
});

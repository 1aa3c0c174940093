import { expectNoViolations, tooSmall } from './hands/a11y.ts';
import { bench, panel, pullSheet } from './hands/drawing.ts';
import { handOf } from './hands/hand.ts';
import { key, open, pane, picture, stage, tapLeg } from './hands/isometric.ts';
import { expect, isPhone, openEmpty, openFlat, test } from './hands/kickset.ts';
import { atRest, held } from './hands/model.ts';

const LEAST_PX = 44;

test('opened by touch beside the plan, a tapped leg is the one the panel tells of', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await hand.press(open(page));
  await expect(stage(page)).toBeVisible();
  await atRest(page);
  const leg = await tapLeg(page, hand.tap);
  const { plan, selection, undo } = await held(page);
  expect(selection).toEqual([{ map: 'legs', id: leg }]);
  expect(plan.legs[leg]).toBeDefined();
  expect(undo).toEqual([]);
  const title = panel(page).getByRole('heading', { level: 2 });
  if (!isPhone(page)) await expect(title).toContainText(/leg/);
});

test('one run, its system, all; turned four times it is as it was', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await hand.press(open(page));
  await expect(stage(page)).toBeVisible();
  await expect(stage(page)).toHaveAccessibleName(/Isometric of all pipes/);
  await page.evaluate(() => window.__kickset?.editor?.select([]));
  await hand.press(key(page, 'One run'));
  await expect(pane(page)).toContainText('Choose a run on the plan');
  const { plan } = await held(page);
  const run = Object.values(plan.runs).find((r) => r.service === 'gas');
  if (!run) throw new Error('no gas');
  await page.evaluate((id) => window.__kickset?.editor?.select([{ map: 'runs', id }]), run.id);
  await expect(stage(page)).toHaveAccessibleName(new RegExp(`Isometric of ${run.name}`));
  await hand.press(key(page, 'System'));
  await expect(stage(page)).toHaveAccessibleName(/all that hangs on/);
  await atRest(page);
  const seen = [await picture(page)];
  for (let i = 0; i < 4; i++) {
    const before = seen.at(-1);
    await hand.press(key(page, 'Turn'));
    await expect.poll(() => picture(page)).not.toBe(before);
    seen.push(await picture(page));
  }
  expect(seen[4]).toBe(seen[0]);
  expect(new Set(seen.slice(0, 4)).size).toBe(4);
  const before = await picture(page);
  await hand.press(key(page, 'Lengths'));
  await expect.poll(() => picture(page)).not.toBe(before);
});

test('pushed, pinched by wheel and fitted again, with nothing in history', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  await hand.press(open(page));
  await expect(stage(page)).toBeVisible();
  await atRest(page);
  const first = await picture(page);
  const box = await stage(page).boundingBox();
  if (!box) throw new Error('no isometric');
  const middle = { x: box.x + box.width / 2, y: box.y + box.height * 0.8 };
  await hand.drag([middle, { x: middle.x + 60, y: middle.y - 40 }]);
  await expect.poll(() => picture(page)).not.toBe(first);
  await page.mouse.wheel(0, -240);
  await page.waitForTimeout(250);
  await hand.press(key(page, 'Show all of the isometric'));
  await expect.poll(() => picture(page)).toBe(first);
  expect((await held(page)).undo).toEqual([]);
});

test('keys go from pipe to pipe and say it', async ({ page }) => {
  await openFlat(page);
  await open(page).click();
  await expect(stage(page)).toBeVisible();
  await stage(page).focus();
  await page.keyboard.press('ArrowRight');
  const said = pane(page).getByRole('status');
  await expect(said).toContainText(/^Pipe 1 of \d+: /);
  const [first] = (await held(page)).selection;
  await page.keyboard.press('ArrowRight');
  await expect(said).toContainText(/^Pipe 2 of /);
  await page.keyboard.press('ArrowLeft');
  expect((await held(page)).selection).toEqual([first]);
  expect((await held(page)).undo).toEqual([]);
});

test('from the form of a run to its isometric', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  const { plan } = await held(page);
  const run = Object.values(plan.runs).find((r) => r.service === 'gas');
  await page.evaluate((id) => window.__kickset?.editor?.select([{ map: 'runs', id }]), run?.id ?? '');
  const see = panel(page).getByRole('button', { name: 'See it in isometric' });
  await pullSheet(page, hand, 'full');
  await hand.press(see);
  await expect(stage(page)).toHaveAccessibleName(new RegExp(`Isometric of ${run?.name}`));
});

test('an empty job is told in words', async ({ page }) => {
  await openEmpty(page);
  await bench(page, 'Run').click();
  await open(page).click();
  await expect(pane(page)).toContainText('No pipe is drawn yet');
});

test('nothing of it is too small for a finger, nor against the checker', async ({ page }) => {
  const hand = await handOf(page, 'touch');
  await openFlat(page);
  await hand.press(open(page));
  await expect(stage(page)).toBeVisible();
  await atRest(page);
  expect(await tooSmall(page, LEAST_PX)).toEqual([]);
  await expectNoViolations(page, 'isometric', true);
});

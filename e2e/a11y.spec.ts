import type { Page } from '@playwright/test';
import { expectNoViolations, tooSmall } from './hands/a11y.ts';
import { bench, inHand, openChapter, panel, pullSheet, takeTool } from './hands/drawing.ts';
import { type Hand, handOf } from './hands/hand.ts';
import { expect, isPhone, openEmpty, openFlat, test } from './hands/kickset.ts';
import { answer, held } from './hands/model.ts';

const LEAST_PX = 44;

// Each state is read by axe twice over, a second or more a time on two cores.
test.describe.configure({ timeout: 120_000 });

/** Without violations, nothing wider than the page, and every key as large as a finger. */
async function expectSound(page: Page, where: string, both = false): Promise<void> {
  expect.soft(await tooSmall(page, LEAST_PX), `${where}: smaller than ${LEAST_PX}`).toEqual([]);
  const wider = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect.soft(wider, `${where}: wider than the page`).toBeLessThanOrEqual(0);
  await expectNoViolations(page, where, both);
}

async function openJobs(page: Page, hand: Hand): Promise<void> {
  await hand.press(page.getByRole('button', { name: /All jobs$/ }));
  await expect(page.getByRole('dialog', { name: 'Jobs' })).toBeVisible();
}

test('the empty page and what lies over it', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openEmpty(page);
  await expectSound(page, 'empty page', true);
  await openJobs(page, hand);
  await expectSound(page, 'jobs');
  await page.keyboard.press('Escape');
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog', { name: 'Help' })).toBeVisible();
  await expectSound(page, 'help', true);
  await page.keyboard.press('Escape');
  await hand.press(bench(page, 'More'));
  await expectSound(page, 'more');
});

test('a run told in words', async ({ page }) => {
  await openEmpty(page);
  await page.getByRole('button', { name: 'Say a run' }).click();
  const words = page.getByRole('region', { name: 'Run by words' });
  await expect(words).toBeVisible();
  await expectSound(page, 'which pipe');
  for (const key of ['Gas', 'Gas meter', 'up']) await words.getByRole('button', { name: key, exact: true }).click();
  await expectSound(page, 'how high');
  for (const key of ['to void', 'ahead', '4', '2', '00', 'down', 'boiler tail', 'Boiler', '30 kW class']) {
    await words.getByRole('button', { name: key, exact: true }).click();
  }
  await answer(page);
  await expectSound(page, 'answered', true);
});

test('every chapter of the demo flat', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  const { sections } = await answer(page);
  expect(sections.length).toBeGreaterThan(1);
  for (const title of [...sections.map((s) => s.title), 'Findings', 'List', 'Runs', 'Things', 'Job and basis']) {
    await openChapter(page, hand, title);
    await expectSound(page, title, title === 'Gas drop');
  }
  await openChapter(page, hand, 'Findings');
  await panel(page).getByRole('button').filter({ hasText: 'Cold to the boiler 22 meets' }).click();
  await expectSound(page, 'a finding', true);
});

test('forms of what is chosen', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  const { plan } = await held(page);
  const first = (map: 'walls' | 'openings' | 'points' | 'runs' | 'legs' | 'nodes' | 'voids' | 'rooms') => ({
    map,
    id: map === 'points' ? 'B-NB' : map === 'nodes' ? 'B-hob-tee' : (Object.keys(plan[map])[0] ?? ''),
  });
  await pullSheet(page, hand, 'full');
  for (const map of ['walls', 'openings', 'points', 'runs', 'legs', 'nodes', 'voids', 'rooms'] as const) {
    await page.evaluate((thing) => window.__kickset?.editor?.select([thing]), first(map));
    await expect(panel(page).locator('.inspect')).toBeVisible();
    await expectSound(page, map);
  }
});

test('what is in hand', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  for (const [tool, choice] of [
    ['Run', '22'],
    ['Point', 'Boiler'],
    ['Item', 'Gas cock'],
    ['Wall', 'stud'],
    ['Opening', 'door'],
  ] as const) {
    await inHand(page, hand, tool, choice);
    if (isPhone(page) && !(await bench(page, tool).isVisible())) {
      await hand.press(bench(page, 'More'));
      await hand.press(page.getByRole('dialog', { name: 'More' }).getByRole('button', { name: 'In hand' }));
    } else await hand.press(bench(page, tool));
    await expect(page.getByRole('region', { name: 'In hand' })).toBeVisible();
    await expectSound(page, `in hand: ${tool}`);
    await page.getByRole('region', { name: 'In hand' }).getByRole('button', { name: 'Close' }).click();
  }
});

test('a wall folded up', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  await page.evaluate(() => window.__kickset?.editor?.foldUp({ wall: 'BN', side: 'right' }));
  await expect(page.getByRole('application', { name: /^Drawing: face of/ })).toBeVisible();
  await expectSound(page, 'wall face', true);
  await takeTool(page, hand, 'Select');
});

test('beside the plan, and over it', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  await page.keyboard.press('l');
  await expect(page.getByRole('searchbox', { name: /^Find by name/ })).toBeVisible();
  await page.getByRole('searchbox').fill('gas');
  await expectSound(page, 'found by name', true);
  await pullSheet(page, hand, 'low');
  await page.locator('[data-pane="plan"]').focus();
  await page.keyboard.press('z');
  await expect(page.getByRole('dialog', { name: 'Work height' })).toBeVisible();
  await expectSound(page, 'the work height typed');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Isometric', exact: true }).first().click();
  await expect(page.getByRole('application', { name: /^Isometric/ })).toBeVisible();
  await expectSound(page, 'isometric', true);
  await page.getByRole('button', { name: 'Close the isometric' }).click();
  for (const [open, name] of [
    ['Control+p', 'Print'],
    ['?', 'Help'],
  ] as const) {
    await page.keyboard.press(open);
    await expect(page.getByRole('dialog', { name })).toBeVisible();
    await expectSound(page, name, true);
    await page.keyboard.press('Escape');
    await expect(page.getByRole('dialog', { name })).toBeHidden();
  }
});

test('the tab key reaches everything, and where it stands is seen', async ({ page }) => {
  await openFlat(page);
  const wanted = await page.evaluate(() => {
    const all = document.querySelectorAll<HTMLElement>('button, input, [tabindex="0"], summary');
    const seen = [...all].filter((e) => e.tabIndex >= 0 && e.checkVisibility({ checkVisibilityCSS: true }));
    for (const [i, e] of seen.entries()) e.dataset.tabStop = String(i);
    // Of a group of radios the tab key only stops at the one that is chosen.
    return seen
      .filter((e) => !(e instanceof HTMLInputElement && e.type === 'radio' && !e.checked))
      .map((e) => e.dataset.tabStop);
  });
  expect(wanted.length).toBeGreaterThan(10);
  const reached = new Set<string | undefined>();
  const unseen: string[] = [];
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  for (let i = 0; i < wanted.length + 5; i++) {
    await page.keyboard.press('Tab');
    const at = await page.evaluate(() => {
      const e = document.activeElement as HTMLElement | null;
      if (!e || e === document.body) return null;
      const shown = [e, e.closest('label'), e.nextElementSibling, e.parentElement].some((x) => {
        if (!(x instanceof HTMLElement)) return false;
        const s = getComputedStyle(x);
        return s.outlineStyle !== 'none' && Number.parseFloat(s.outlineWidth) >= 2;
      });
      return { stop: e.dataset.tabStop, shown, name: e.outerHTML.slice(0, 80) };
    });
    if (!at) continue;
    reached.add(at.stop);
    if (!at.shown) unseen.push(at.name);
  }
  expect(wanted.filter((w) => !reached.has(w))).toEqual([]);
  expect(unseen).toEqual([]);
});

test('chosen and drawn without a pointer', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  await openChapter(page, hand, 'Things');
  await page.getByRole('searchbox', { name: /^Find by name/ }).fill('wall');
  await page.keyboard.press('ArrowDown');
  const walls = panel(page).getByRole('button', { name: /^Wall, / });
  await walls.first().focus();
  await page.keyboard.press('Enter');
  await expect.poll(async () => (await held(page)).selection.map((s) => s.map)).toEqual(['walls']);
  const { selection, plan } = await held(page);
  const id = selection[0]?.id ?? '';
  await page.evaluate(() => document.querySelector<HTMLElement>('[data-pane="plan"]')?.focus());
  await page.keyboard.press('Shift+ArrowUp');
  const now = await held(page);
  const along = plan.walls[id];
  expect(now.undo).toHaveLength(1);
  expect(now.plan.walls[id]?.a.y).toBeCloseTo((along?.a.y ?? 0) + 100, 3);
  await page.keyboard.press('Control+z');
  expect((await held(page)).plan).toEqual(plan);
});

test('refusals and changes are said aloud', async ({ page }) => {
  await openFlat(page);
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('alert').filter({ hasText: 'There is nothing to undo.' })).toBeAttached();
  await page.evaluate(() => window.__kickset?.editor?.run('leg.move', { leg: 'B-c1-1', by: { x: 0, y: 50, z: 0 } }));
  await answer(page);
  await expect(page.getByRole('status').filter({ hasText: /(New|Gone|Now): / })).toBeAttached();
});

test('forced colours and reduced motion leave nothing out', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' });
  await openFlat(page);
  await openChapter(page, hand, 'Gas drop');
  await pullSheet(page, hand, 'low');
  const ofTheDevice = (): Promise<string[]> =>
    page.evaluate(() => {
      const canvas = document.querySelector<HTMLCanvasElement>('[data-pane="plan"] canvas');
      const ctx = canvas?.getContext('2d');
      if (!canvas || !ctx) return [];
      const { data } = ctx.getImageData(0, 0, canvas.width, canvas.height);
      const seen = new Set<string>();
      for (let i = 0; i < data.length; i += 4)
        if (data[i + 3] === 255) seen.add(`${data[i]},${data[i + 1]},${data[i + 2]}`);
      // Edges of letters are mixed: what is neither end of the scale of greys would be a colour of ours.
      return [...seen].filter((c) => new Set(c.split(',')).size > 1);
    });
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce', colorScheme });
    await expect.poll(ofTheDevice, { message: `colours of ours, ${colorScheme}` }).toEqual([]);
    await expectNoViolations(page, `forced colours, ${colorScheme}`, false);
  }
  await page.evaluate(() => window.__kickset?.editor?.foldUp({ wall: 'BN', side: 'right' }));
  await expect(page.getByRole('application', { name: /^Drawing: face of/ })).toBeVisible();
  const running = await page.evaluate(
    () => document.getAnimations().filter((a) => Number(a.effect?.getComputedTiming().duration ?? 0) > 10).length,
  );
  expect(running).toBe(0);
  const lost = await page.evaluate(() => {
    const keys = [...document.querySelectorAll<HTMLElement>('button')].filter((e) => e.checkVisibility());
    return keys
      .filter((e) => {
        const s = getComputedStyle(e);
        return s.color === s.backgroundColor;
      })
      .map((e) => e.className);
  });
  expect(lost).toEqual([]);
  // What is pressed is told by more than its ground.
  const pressed = await bench(page, 'Select').evaluate((e) => {
    const [own, other] = [e, e.parentElement?.querySelector('.tool[aria-pressed="false"]')].map((x) =>
      x ? getComputedStyle(x) : null,
    );
    return { own: own?.backgroundColor, other: other?.backgroundColor };
  });
  expect(pressed.own).not.toBe(pressed.other);
  await page.screenshot({ path: test.info().outputPath('forced-colours.png') });
});

/** Text that does not fit its own box, where it is cut off without a sign that there is more. */
const cutOff = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    for (const e of document.querySelectorAll<HTMLElement>('button, label, h1, h2, h3, p, li, td, th, dt, dd, span')) {
      if (!e.checkVisibility({ checkVisibilityCSS: true }) || e.closest('.out-of-sight, .case-long')) continue;
      const s = getComputedStyle(e);
      if (s.textOverflow === 'ellipsis' || s.display === 'inline') continue;
      const hides = s.overflowX === 'hidden' || s.overflowX === 'clip';
      if (hides && (e.scrollWidth > e.clientWidth + 2 || e.scrollHeight > e.clientHeight + 2))
        found.push(`${e.className}: ${(e.textContent ?? '').slice(0, 40)}`);
    }
    return found;
  });

test('at twice the size nothing is cut off and everything is reached', async ({ page }) => {
  await page.setViewportSize({ width: 590, height: 410 });
  await openFlat(page);
  const expectWhole = async (where: string): Promise<void> => {
    expect.soft(await cutOff(page), `${where}: cut off`).toEqual([]);
    const wider = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect.soft(wider, `${where}: wider than the page`).toBeLessThanOrEqual(0);
  };
  await expectWhole('the flat');
  for (const map of ['points', 'runs', 'walls'] as const) {
    const id = { points: 'B-NB', runs: 'B-g1', walls: 'BN' }[map];
    await page.evaluate((thing) => window.__kickset?.editor?.select([thing]), { map, id });
    await expectWhole(map);
  }
  await page.evaluate(() => window.__kickset?.editor?.select([]));
  for (const [key, where] of [
    ['?', 'help'],
    ['Control+p', 'print'],
  ] as const) {
    await page.keyboard.press(key);
    await expect(page.getByRole('dialog')).toBeVisible();
    await expectWhole(where);
    // The last thing in it can be brought in.
    const last = page.getByRole('dialog').getByRole('button').last();
    await last.scrollIntoViewIfNeeded();
    await expect(last).toBeInViewport();
    await page.keyboard.press('Escape');
    await expect(page.getByRole('dialog')).toBeHidden();
  }
});

test('text at twice the size makes the whole page grow', async ({ page }) => {
  await openEmpty(page);
  const high = () => page.getByRole('toolbar', { name: 'Tools' }).evaluate((e) => e.getBoundingClientRect().height);
  const before = await high();
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  expect(await high()).toBeGreaterThan(1.7 * before);
  const letters = await bench(page, 'Run').evaluate((e) => Number.parseFloat(getComputedStyle(e).fontSize));
  expect(letters).toBeGreaterThan(22);
});

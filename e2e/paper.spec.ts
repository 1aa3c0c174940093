import { readFile } from 'node:fs/promises';
import type { Download, Page } from '@playwright/test';
import { type PdfPage, readPdf } from '../tests/files/pdf-lines.ts';
import { expectNoViolations, tooSmall } from './hands/a11y.ts';
import { type Hand, handOf } from './hands/hand.ts';
import { expect, FLAT, openEmpty, openFlat, openText, test } from './hands/kickset.ts';
import { answer, held } from './hands/model.ts';

test.describe.configure({ timeout: 120_000 });

/** What a print may be out by. */
const TRUE_TO = 0.005;

const dialog = (page: Page) => page.getByRole('dialog', { name: 'Print' });
const pictures = (page: Page) => dialog(page).locator('.print-sheet > svg');

/** A house of one wall, a metre long and a hundred thick. */
function oneMetre(): string {
  const file = JSON.parse(FLAT) as { plan: Record<string, unknown> & { name: string } };
  const kept = ['id', 'name', 'job', 'basis', 'storeys', 'options'];
  for (const key of Object.keys(file.plan)) if (!kept.includes(key)) file.plan[key] = {};
  file.plan.name = 'One metre';
  file.plan.walls = {
    w: {
      id: 'w',
      storey: 'B',
      a: { x: 0, y: 0 },
      b: { x: 1000, y: 0 },
      thicknessMm: 100,
      construction: 'block',
      heightMm: null,
      option: null,
      sureness: 'seen',
    },
  };
  return JSON.stringify(file);
}

async function openPrint(page: Page, hand: Hand): Promise<void> {
  await hand.press(page.getByRole('button', { name: /All jobs$/ }));
  await hand.press(page.getByRole('dialog', { name: 'Jobs' }).getByRole('button', { name: 'Print or PDF' }));
  await expect(pictures(page).first()).toBeVisible();
}

async function saved(page: Page, hand: Hand): Promise<Buffer> {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    hand.press(dialog(page).getByRole('button', { name: 'Save as PDF' })),
  ]);
  return readFile(await (file as Download).path());
}

/** The beats of dashes that a page shows: lengths, where they begin, ends of strokes. Hundredths of a mm. */
function beatsShown(page: Page): Promise<string[]> {
  return pictures(page).evaluateAll((all) => {
    const told = all.flatMap((picture) =>
      [...picture.querySelectorAll('path[stroke-dasharray]')].map((path) => {
        const dash = (path.getAttribute('stroke-dasharray') ?? '').split(' ').map((d) => Number(d).toFixed(2));
        const at = Number(path.getAttribute('stroke-dashoffset') ?? 0).toFixed(2);
        return `${dash.join(' ')} from ${at} ${path.getAttribute('stroke-linecap') === 'round' ? 'round' : 'flat'}`;
      }),
    );
    return [...new Set(told)].sort();
  });
}

function beatsSaved(pages: readonly PdfPage[]): string[] {
  const told = pages.flatMap(({ shapes }) =>
    shapes
      .filter(({ how, pen }) => how !== 'fill' && pen.dashMm.length > 0)
      .map(({ pen }) => {
        const dash = pen.dashMm.map((d) => d.toFixed(2)).join(' ');
        return `${dash} from ${pen.dashAtMm.toFixed(2)} ${pen.round ? 'round' : 'flat'}`;
      }),
  );
  return [...new Set(told)].sort();
}

/** Shapes of this size in mm, to half a hundredth of it. */
const ofSize = (page: PdfPage | undefined, w: number, h: number) =>
  page?.shapes.filter((s) => Math.abs(s.w - w) <= w * TRUE_TO && Math.abs(s.h - h) <= h * TRUE_TO) ?? [];

/** A metre of wall, the four pieces of the bar beside each other, and text that is text. */
function expectTrue(page: PdfPage | undefined, scale: number, piece: number): void {
  expect(Math.abs((page?.wMm ?? 0) - 297)).toBeLessThan(297 * TRUE_TO);
  expect(Math.abs((page?.hMm ?? 0) - 210)).toBeLessThan(210 * TRUE_TO);
  expect(ofSize(page, 1000 / scale, 100 / scale).length, `wall at 1:${scale}`).toBeGreaterThan(0);
  const bar = ofSize(page, piece, 1.2)
    .map((s) => s.x)
    .sort((a, b) => a - b);
  expect(bar.length, 'pieces of the bar').toBeGreaterThanOrEqual(4);
  const whole = (bar.at(-1) ?? 0) + piece - (bar[0] ?? 0);
  expect(Math.abs(whole - 4 * piece)).toBeLessThanOrEqual(4 * piece * TRUE_TO);
  const text = page?.text.join(' ') ?? '';
  expect(text).toContain(`Scale 1:${scale}. Check the bar after printing`);
  expect(text).toContain('Limits compared, not approved: the registered engineer decides.');
  expect(page?.images).toBe(0);
}

for (const kind of ['mouse', 'touch'] as const) {
  test(`sheets are chosen and every page is shown, by ${kind}`, async ({ page }) => {
    const hand = await handOf(page, kind);
    await openFlat(page);
    await openPrint(page, hand);
    const usual = await pictures(page).count();
    expect(usual).toBeGreaterThan(4);
    await expect(dialog(page).getByText(/^sheet 1 of \d+: First floor, 1:50$/)).toBeVisible();

    await hand.press(dialog(page).getByText('List of pieces', { exact: true }));
    await expect(pictures(page)).toHaveCount(usual - 1);

    await dialog(page).getByLabel('Scale of Plan, First floor').selectOption({ value: '20' });
    await expect(
      dialog(page).getByText(/Parted over \d+ sheets with match lines\. At 1:50 it stands on one\./),
    ).toBeVisible();
    await expect.poll(() => pictures(page).count()).toBeGreaterThan(usual);
    await expect(pictures(page).first().getByText('match line: sheet 2')).toBeAttached();

    await hand.press(dialog(page).getByRole('radio', { name: 'A3 upright' }));
    await expect(pictures(page).first()).toHaveAttribute('width', '297mm');
    await expect(pictures(page).first()).toHaveAttribute('height', '420mm');
    await page.keyboard.press('Escape');
    await expect(dialog(page)).toBeHidden();
  });
}

test('the title block is told once and kept with the job', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  await page.keyboard.press('Control+p');
  await expect(pictures(page).first()).toBeVisible();
  await hand.press(dialog(page).getByText('Title block'));
  const number = dialog(page).getByLabel('Number');
  await number.fill('K-07');
  await number.press('Enter');
  await expect(pictures(page).first().getByText('K-07')).toBeAttached();
  expect((await held(page)).plan.job.issue).toMatchObject({ number: 'K-07' });
});

test('the screen is sound by day and by night', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  await openPrint(page, hand);
  expect.soft(await tooSmall(page, 44)).toEqual([]);
  await expectNoViolations(page, 'print', true);
});

test('a metre is a metre in the file that is saved', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openEmpty(page);
  await openText(page, oneMetre());
  await expect(page.getByRole('button', { name: /One metre/ })).toBeVisible();
  await answer(page);
  await openPrint(page, hand);
  for (const [scale, piece] of [
    [50, 20],
    [20, 12.5],
  ] as const) {
    await dialog(page)
      .getByLabel('Scale of Plan, First floor')
      .selectOption({ value: String(scale) });
    await expect(dialog(page).getByText(`sheet 1 of 3: First floor, 1:${scale}`)).toBeVisible();
    const pages = readPdf(await saved(page, hand));
    expect(pages).toHaveLength(3);
    expectTrue(pages[0], scale, piece);
  }
});

test('the file that is saved has every sheet as it is shown, in text that is text', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  await openPrint(page, hand);
  const shown = await pictures(page).count();
  const lines = await pictures(page).evaluateAll((all) =>
    all.map((picture) => [...picture.querySelectorAll('text')].map((t) => t.textContent)),
  );
  const beats = await beatsShown(page);
  expect(beats.length).toBeGreaterThan(5);
  const file = await saved(page, hand);
  const pages = readPdf(file);
  expect(pages).toHaveLength(shown);
  for (const [i, one] of pages.entries()) {
    expect(one.wMm).toBeCloseTo(297, 2);
    expect(one.hMm).toBeCloseTo(210, 2);
    expect(one.images).toBe(0);
    expect(one.text).toEqual(lines[i]);
    expect(one.text.join(' ')).toContain(`sheet ${i + 1} of ${shown}`);
    expect(Math.max(...one.shapes.map((s) => s.x + s.w))).toBeLessThanOrEqual(297.01);
  }
  const text = pages.flatMap((p) => p.text);
  expect(text).toContain('First-floor flat');
  expect(text).toContain('22 end feed elbow');
  expect(beatsSaved(pages)).toEqual(beats);

  const raw = file.toString('latin1');
  expect([...raw.matchAll(/\/FontFile2 /g)]).toHaveLength(2);
  const names = [...raw.matchAll(/\/BaseFont \/([\w-]+)/g)].map(([, name]) => name);
  expect([...new Set(names)].sort()).toEqual(['HankenGrotesk-Regular', 'HankenGrotesk-SemiBold']);
  expect(raw).toMatch(/\/PrintScaling \/None/);
  expect(file.length).toBeLessThan(300_000);
});

test('a file on larger paper has pages of that size', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  await openPrint(page, hand);
  await hand.press(dialog(page).getByRole('radio', { name: 'A3 upright' }));
  await expect(pictures(page).first()).toHaveAttribute('height', '420mm');
  const pages = readPdf(await saved(page, hand));
  expect(pages).toHaveLength(await pictures(page).count());
  for (const { wMm, hMm } of pages) {
    expect(wMm).toBeCloseTo(297, 2);
    expect(hMm).toBeCloseTo(420, 2);
  }
});

test('a letter that the font has not is named instead of left out', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  const file = JSON.parse(oneMetre()) as { plan: { name: string } };
  file.plan.name = 'Łąka 3';
  await openEmpty(page);
  await openText(page, JSON.stringify(file));
  await expect(page.getByRole('button', { name: /Łąka 3/ })).toBeVisible();
  await answer(page);
  await openPrint(page, hand);
  let files = 0;
  page.on('download', () => files++);
  await hand.press(dialog(page).getByRole('button', { name: 'Save as PDF' }));
  await expect(dialog(page).getByText(/^The font of the PDF has no "Ł", which stands on sheet 1 of 3\./)).toBeVisible();
  expect(files).toBe(0);
});

test('a metre is a metre as the browser prints it', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openEmpty(page);
  await openText(page, oneMetre());
  await expect(page.getByRole('button', { name: /One metre/ })).toBeVisible();
  await answer(page);
  await openPrint(page, hand);
  await dialog(page).getByLabel('Scale of Plan, First floor').selectOption({ value: '50' });
  await expect(dialog(page).getByText('sheet 1 of 3: First floor, 1:50')).toBeVisible();
  const file = await page.pdf({ preferCSSPageSize: true });
  const pages = readPdf(file);
  expect(pages).toHaveLength(3);
  expectTrue(pages[0], 50, 20);
  expect(file.toString('latin1')).toMatch(/\/BaseFont \/\w+\+HankenGrotesk-Regular/);
  await expect(pictures(page).first()).toBeVisible();
});

test('the browser is asked to install only when somebody wants it', async ({ page }) => {
  const hand = await handOf(page, 'mouse');
  await openFlat(page);
  await page.evaluate(() => {
    const offer = Object.assign(new Event('beforeinstallprompt', { cancelable: true }), {
      prompt: () => {
        document.title = 'asked';
        return Promise.resolve({ outcome: 'accepted' });
      },
    });
    window.dispatchEvent(offer);
    if (!offer.defaultPrevented) throw new Error('the browser would ask by itself');
  });
  await hand.press(page.getByRole('button', { name: /All jobs$/ }));
  const jobs = page.getByRole('dialog', { name: 'Jobs' });
  await expect(jobs.getByText(/In use: [\d.]+ MB of [\d.]+ [MG]B\./)).toBeVisible();
  await hand.press(jobs.getByRole('button', { name: 'Install on this device' }));
  await expect(page).toHaveTitle('asked');
  await expect(jobs.getByText('Kickset is installed here and works without a signal.')).toBeVisible();
});

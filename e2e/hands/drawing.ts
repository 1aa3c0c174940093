import { expect, type Page } from '@playwright/test';
import { connectionPlace } from '../../src/geometry/hosting.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Xyz } from '../../src/plan/records/parts.ts';
import type { Hand } from './hand.ts';
import { type PaneName, pxOf } from './model.ts';
import type { At } from './touch.ts';

/** A key of the bench. Those of undo and redo go on with what they would do, that of the rest with what is in hand. */
export const bench = (page: Page, name: string) =>
  page
    .getByRole('toolbar', { name: 'Tools' })
    .getByRole('button', /^(Undo|Redo|More)$/.test(name) ? { name: new RegExp(`^${name}\\b`) } : { name, exact: true });

export const panel = (page: Page) => page.getByRole('complementary', { name: 'Answers' });

/** Takes a tool from the bench, or from what has no place on it. */
export async function takeTool(page: Page, hand: Pick<Hand, 'press'>, tool: string): Promise<void> {
  const key = bench(page, tool);
  if (await key.isVisible()) {
    if ((await key.getAttribute('aria-pressed')) !== 'true') await hand.press(key);
    return;
  }
  await hand.press(bench(page, 'More'));
  await hand.press(page.getByRole('dialog', { name: 'More' }).getByRole('button', { name: tool, exact: true }));
}

/** Takes a tool and chooses what it makes next. On the bench a press on the tool in hand opens what it offers. */
export async function inHand(page: Page, hand: Pick<Hand, 'press'>, tool: string, choice: string): Promise<void> {
  await takeTool(page, hand, tool);
  const key = bench(page, tool);
  if (await key.isVisible()) await hand.press(key);
  else {
    await hand.press(bench(page, 'More'));
    await hand.press(page.getByRole('dialog', { name: 'More' }).getByRole('button', { name: 'In hand' }));
  }
  const tray = page.getByRole('region', { name: 'In hand' });
  await hand.press(tray.getByRole('button', { name: choice, exact: true }).first());
  const close = tray.getByRole('button', { name: 'Close' });
  if (await close.isVisible()) await hand.press(close);
}

export const onPlan = (page: Page, x: number, y: number): Promise<At> => pxOf(page, { x, y, z: 0 });

export async function tapPlan(
  page: Page,
  hand: Hand,
  ...places: readonly (readonly [number, number])[]
): Promise<void> {
  for (const [x, y] of places) await hand.tap(await onPlan(page, x, y));
}

/** Brings a place of a pane to its middle, so near that a px is so many mm. On a face: along it, and up. */
export const look = (page: Page, x: number, y: number, mmPerPx: number, pane: PaneName = 'plan'): Promise<void> =>
  page.evaluate(({ x, y, mmPerPx, pane }) => window.__kickset?.editor?.setCamera(pane, { centre: [x, y], mmPerPx }), {
    x,
    y,
    mmPerPx,
    pane,
  });

/** A place of the plan lies in its pane and nothing lies over it. */
export async function expectInSight(page: Page, x: number, y: number): Promise<void> {
  const at = await onPlan(page, x, y);
  const seen = await page.evaluate(
    ({ x, y }) => document.elementFromPoint(x, y)?.closest('[data-pane="plan"]') !== null,
    at,
  );
  expect(seen, `${Math.round(at.x)}, ${Math.round(at.y)} px`).toBe(true);
}

export function tailOf(plan: Plan, point: string, connection: string): Xyz {
  const place = connectionPlace(plan, point, connection);
  if (!place) throw new Error(`no ${connection} at ${point}`);
  return place.at;
}

export function nodeAt(plan: Plan, node: string): Xyz {
  const record = plan.nodes[node];
  const place = record && nodePlace(plan, record);
  if (!place) throw new Error(`no node ${node}`);
  return place.at;
}

/** The only record of its kind. */
export function only<T>(records: Readonly<Record<string, T>>): T {
  const [first, ...others] = Object.values(records);
  if (first === undefined || others.length > 0) throw new Error(`${others.length + (first ? 1 : 0)} records, not one`);
  return first;
}

export type SheetStop = 'low' | 'half' | 'full';

/** On a phone: pulls the sheet to a stop, a tap on its bar at a time. Elsewhere the panel stands open. */
export async function pullSheet(page: Page, hand: Pick<Hand, 'press'>, to: SheetStop): Promise<void> {
  if ((page.viewportSize()?.width ?? 0) >= 700) return;
  const bar = page.getByRole('button', { name: /(Raise|Lower) the sheet$/ });
  for (let i = 0; i < 3 && (await panel(page).getAttribute('data-stop')) !== to; i++) await hand.press(bar);
  await expect(panel(page)).toHaveAttribute('data-stop', to);
}

/** Opens a chapter of the panel by its row, where it is not the one that stands open. */
export async function openChapter(page: Page, hand: Pick<Hand, 'press'>, title: string): Promise<void> {
  await pullSheet(page, hand, 'full');
  const heading = panel(page).getByRole('heading', { name: title, level: 2, exact: true });
  if (!(await heading.isVisible())) {
    const rows = panel(page).getByRole('navigation', { name: 'Chapters' });
    const name = page.locator('.chapter-name').getByText(title, { exact: true });
    const row = rows.getByRole('button').filter({ has: name });
    if (!(await row.isVisible())) await hand.press(rows.getByRole('button', { name: /^All chapters/ }));
    await hand.press(row);
  }
  await expect(heading).toBeVisible();
}

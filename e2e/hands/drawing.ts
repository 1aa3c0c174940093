import type { Page } from '@playwright/test';
import { connectionPlace } from '../../src/geometry/hosting.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Xyz } from '../../src/plan/records/parts.ts';
import type { Hand } from './hand.ts';
import { type PaneName, pxOf } from './model.ts';
import type { At } from './touch.ts';

/** A key of the bench. Those of undo and redo go on with what they would do. */
export const bench = (page: Page, name: string) =>
  page
    .getByRole('toolbar', { name: 'Tools' })
    .getByRole('button', /^(Undo|Redo)$/.test(name) ? { name: new RegExp(`^${name}:`) } : { name, exact: true });

export const panel = (page: Page) => page.getByRole('complementary', { name: 'Answers' });

/** Takes a tool and opens what it offers: a press on the key of the tool in hand. */
export async function inHand(page: Page, tool: string, choice: string): Promise<void> {
  const key = bench(page, tool);
  if ((await key.getAttribute('aria-pressed')) !== 'true') await key.click();
  await key.click();
  const tray = page.getByRole('region', { name: 'In hand' });
  await tray.getByRole('button', { name: choice, exact: true }).first().click();
  await tray.getByRole('button', { name: 'Close' }).click();
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

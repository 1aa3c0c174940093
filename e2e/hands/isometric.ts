import type { Locator, Page } from '@playwright/test';
import { held } from './model.ts';
import type { At } from './touch.ts';

export const pane = (page: Page): Locator => page.getByRole('region', { name: 'Isometric' });
export const stage = (page: Page): Locator => pane(page).getByRole('application');
export const key = (page: Page, name: string): Locator => pane(page).getByRole('button', { name, exact: true });
export const open = (page: Page): Locator => page.locator('.canvas-keys').getByRole('button', { name: 'Isometric' });
export const draws = (page: Page): Promise<number> =>
  stage(page)
    .locator('canvas')
    .evaluate((c: HTMLCanvasElement) => Number(c.dataset.draws));
export const picture = (page: Page): Promise<string> =>
  stage(page)
    .locator('canvas')
    .evaluate((c: HTMLCanvasElement) => c.toDataURL());

/** A place on the drawing where a tap chooses one of its legs: looked for over a net, as an eye would. */
export async function tapLeg(page: Page, tap: (at: At) => Promise<void>): Promise<string> {
  const box = await stage(page).boundingBox();
  if (!box) throw new Error('no isometric');
  for (const v of [0.5, 0.45, 0.55, 0.4, 0.6, 0.35]) {
    for (const u of [0.5, 0.6, 0.4, 0.7, 0.3, 0.8]) {
      await tap({ x: box.x + box.width * u, y: box.y + box.height * v });
      const [first] = (await held(page)).selection;
      if (first?.map === 'legs') return first.id;
    }
  }
  throw new Error('no leg under any place');
}

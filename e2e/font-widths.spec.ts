import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';

interface Widths {
  readonly family: string;
  /** Weight to character to advance in em. */
  readonly advances: Readonly<Record<string, Readonly<Record<string, number>>>>;
}

const file = new URL('../shared/fonts/hanken-grotesk.json', import.meta.url);
const widths = JSON.parse(readFileSync(file, 'utf8')) as Widths;

// Advances are kept in whole font units, a thousandth of an em; a browser may round a weight between masters the other way.
const oneFontUnit = 0.0011;

test('the font that is shipped is as wide as the table that text is measured by', async ({ page }) => {
  await page.goto('/');
  const off = await page.evaluate(
    async ({ table, within }) => {
      const context = document.createElement('canvas').getContext('2d');
      if (context === null) throw new Error('no canvas');
      const wrong: string[] = [];
      for (const [weight, advances] of Object.entries(table.advances)) {
        const font = `${weight} 1000px "${table.family}"`;
        const loaded = await document.fonts.load(font, 'A');
        if (loaded.length === 0) throw new Error(`${font} is not on the page`);
        context.font = font;
        context.fontKerning = 'none';
        for (const [character, advance] of Object.entries(advances)) {
          const measured = context.measureText(character).width / 1000;
          if (Math.abs(measured - advance) > within) wrong.push(`${weight} ${character}: ${measured}, not ${advance}`);
        }
      }
      return wrong;
    },
    { table: widths, within: oneFontUnit },
  );
  expect(off).toEqual([]);
});

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { themeProperties } from '../../src/view/look/theme-properties.ts';

const view = fileURLToPath(new URL('../../src/view', import.meta.url));
const sheets = readdirSync(view, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.css'))
  .map((path) => ({ path, text: readFileSync(join(view, path), 'utf8') }));

const channel = (c: number): number => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((i) => channel(Number.parseInt(hex.slice(i, i + 2), 16) / 255));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(a: string, b: string): number {
  const [hi = 0, lo = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (hi + 0.05) / (lo + 0.05);
}

describe.each(['day', 'night'] as const)('the %s theme', (theme) => {
  const properties = themeProperties(theme);
  const of = (name: string): string => properties.get(name) ?? 'missing';

  test('has every colour that a style sheet asks for', () => {
    const own = new Set(sheets.flatMap(({ text }) => [...text.matchAll(/^\s*(--[\w-]+):/gm)].map((m) => m[1])));
    const missing = sheets.flatMap(({ path, text }) =>
      [...text.matchAll(/var\((--[\w-]+)/g)]
        .map((m) => m[1] ?? '')
        .filter((name) => !properties.has(name) && !own.has(name))
        .map((name) => `${path}: ${name}`),
    );
    expect(missing).toEqual([]);
  });

  test('is readable: text of every ink on every surface it stands on', () => {
    for (const surface of ['--paper', '--panel', '--raised']) {
      for (const ink of ['--ink1', '--ink2', '--ink3', '--accent', '--stop-line', '--check-line', '--cant-tell-line']) {
        expect(contrast(of(ink), of(surface)), `${ink} on ${surface}`).toBeGreaterThanOrEqual(4.5);
      }
    }
    for (const [ink, ground] of [
      ['--on-accent', '--accent'],
      ['--ink1', '--tint'],
      ['--ink1', '--stop-tint'],
      ['--ink1', '--check-tint'],
      ['--ink2', '--note-tint'],
      ['--ink2', '--cant-tell-tint'],
      ['--ink1', '--desk'],
      ['--ink2', '--desk'],
    ] as const) {
      expect(contrast(of(ink), of(ground)), `${ink} on ${ground}`).toBeGreaterThanOrEqual(4.5);
    }
  });
});

test('no style sheet holds a colour of its own', () => {
  const own = sheets.flatMap(({ path, text }) =>
    [...text.matchAll(/#[0-9a-f]{3,8}\b|rgba?\(/gi)].map((m) => `${path}: ${m[0]}`),
  );
  expect(own).toEqual([]);
});

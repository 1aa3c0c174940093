import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { styleOf } from '../../src/drawing/look/style-of.ts';
import { paint } from '../../src/drawing/paint/paint-canvas.ts';
import { themeProperties } from '../../src/view/look/theme-properties.ts';

const view = fileURLToPath(new URL('../../src/view', import.meta.url));
const sheets = readdirSync(view, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.css'))
  .map((path) => ({ path, text: readFileSync(join(view, path), 'utf8') }));

const SYSTEM = /^(Canvas|CanvasText|Highlight|HighlightText|none|\d+(\.\d+)?px)$/;

describe('where less motion is asked for', () => {
  test('everything that moves does so by one of the four times that are nought then', () => {
    const own = sheets.flatMap(({ path, text }) =>
      [...text.matchAll(/(?:^|[\s;{])(transition|animation)(?:-duration)?:([^;}]*)[;}]/g)].flatMap(([, , value = '']) =>
        value
          .split(/,(?![^(]*\))/)
          .filter((part) => part.trim() !== 'none' && !/var\(--(press|fold|wall|arrive)\)/.test(part))
          .map((part) => `${path}: ${part.trim()}`),
      ),
    );
    expect(own).toEqual([]);
    const base = sheets.find((s) => s.path === join('look', 'base.css'))?.text ?? '';
    const reduced = /prefers-reduced-motion: reduce\) \{([\s\S]*?\n\})/.exec(base)?.[1] ?? '';
    for (const time of ['press', 'fold', 'wall', 'arrive']) expect(reduced).toMatch(new RegExp(`--${time}: 0ms`));
  });
});

describe('with the colours of the device', () => {
  test('every colour of a style sheet is one of them', () => {
    const wrong = [...themeProperties('forced')].filter(([, value]) => !SYSTEM.test(value));
    expect(wrong).toEqual([]);
  });

  test('no letter has the colour of its own ground', () => {
    const of = (name: string) => themeProperties('forced').get(name);
    for (const outcome of ['stop', 'check', 'note', 'cant-tell'])
      expect(of(`--${outcome}-letter`), outcome).not.toBe(of(`--${outcome}-fill`));
    for (const ink of ['--ink1', '--ink3', '--service-gas', '--wall-edge']) expect(of(ink)).toBe('CanvasText');
  });

  test('the drawing is painted with them, a chosen pipe between two edges', () => {
    const look = styleOf('forced');
    for (const ink of ['service:gas', 'service:hot', 'wallEdge', 'dimension', 'anything']) {
      expect(look.ink(ink)).toBe('CanvasText');
    }
    const strokes: [unknown, number][] = [];
    const ctx = new Proxy({} as Record<string, unknown>, {
      get: (own, name) =>
        name === 'stroke'
          ? () => strokes.push([own.strokeStyle, Number(own.lineWidth)])
          : (own[String(name)] ?? (() => undefined)),
      set: (own, name, value) => {
        own[String(name)] = value;
        return true;
      },
    });
    const frame = { perMm: 1, perPaperMm: 4, origin: [0, 0], turnDeg: 0, leastPen: 1, medium: 'screen' } as const;
    const style = { ink: 'chosen', pen: 3, dash: [], fit: false, cap: 'round' } as const;
    paint(
      ctx as never,
      [
        {
          t: 'line',
          pts: [
            [0, 0],
            [100, 0],
          ],
          style,
        },
      ],
      frame,
      'forced',
    );
    expect(strokes.map(([ink]) => ink)).toEqual(['Highlight', 'Canvas']);
    expect(strokes[0]![1]).toBeGreaterThan(strokes[1]![1]);
    strokes.length = 0;
    paint(
      ctx as never,
      [
        {
          t: 'line',
          pts: [
            [0, 0],
            [100, 0],
          ],
          style,
        },
      ],
      frame,
      'day',
    );
    expect(strokes).toHaveLength(1);
  });
});

import { servicesInOrder } from '../catalogue/services.ts';
import type { Fragment, Item, LineStyle, Vec } from './display-list.ts';
import { legStyle } from './pipes/leg-style.ts';

const BAR: LineStyle = { ink: 'ink1', pen: 0.25, dash: [], fit: false };
const words = (at: Vec, text: string, offsetMm: Vec, align: 'left' | 'middle' = 'left', strong = false): Item => ({
  t: 'text',
  at,
  text,
  size: 'flagSecond',
  weight: strong ? 600 : 400,
  align,
  ink: 'ink2',
  turnDeg: 0,
  halo: false,
  offsetMm,
});

const BAR_HIGH_MM = 1.2;
/** Pieces of a scale bar in metres, by how small the scale is. */
const pieceM = (scale: number): number => (scale <= 25 ? 0.5 : scale <= 100 ? 1 : 5);

/** A bar of four pieces by which the scale of a print is checked. `at` is its left end. */
export function scaleBar(at: Vec, scale: number): Item[] {
  const piece = pieceM(scale) * 1000;
  const high = BAR_HIGH_MM * scale;
  const items: Item[] = [];
  for (let i = 0; i < 4; i++) {
    const [x, y] = [at[0] + i * piece, at[1]];
    const ring: Vec[] = [
      [x, y],
      [x + piece, y],
      [x + piece, y + high],
      [x, y + high],
    ];
    items.push({ t: 'area', rings: [ring], fill: i % 2 === 0 ? 'ink' : 'paper', edge: BAR });
  }
  for (let i = 0; i <= 4; i++) {
    const figure = (i * pieceM(scale)).toString();
    items.push(words([at[0] + i * piece, at[1]], i === 4 ? `${figure} m` : figure, [0, -2.6], 'middle'));
  }
  return items;
}

/** `turnDeg`: by how much the house lies turned. */
export const northMark = (at: Vec, turnDeg: number): Item => ({ t: 'mark', mark: 'north', at, turnDeg, ink: 'ink1' });

const KEY_ROW_MM = 5;
const KEY_LINE_MM = 16;

/** The lines that fragments use, one row each from `at` down: the line as new, its letters, its name. */
export function keyOf(fragments: readonly Fragment[], at: Vec, scale: number): Item[] {
  const used = new Set(fragments.flatMap((f) => f.wishes.flatMap((w) => (w.w === 'tag' ? [w.letters] : []))));
  return servicesInOrder()
    .filter((s) => used.has(s.tag))
    .flatMap((s, row): Item[] => {
      const y = at[1] - row * KEY_ROW_MM * scale;
      const line: Vec[] = [
        [at[0], y],
        [at[0] + KEY_LINE_MM * scale, y],
      ];
      const end = line[1] as Vec;
      return [
        { t: 'line', pts: line, style: legStyle(s.style, 'new', false) },
        words(end, s.tag, [2, 0], 'left', true),
        words(end, s.label, [9, 0]),
      ];
    });
}

import type { Bar } from '../../report/section.ts';
import type { Prim } from '../paint/prim.ts';
import { BLACK, box, filled, rule, SHEET_TEXT, WHITE, words } from './ink.ts';

/** The line ends at this much of the limit. */
const TOP = 1.5;
const HIGH_MM = 2.6;
const HATCH_MM = 1;

/** Slants over a stretch of the bar: what lies past the limit. */
function hatched(x: number, y: number, w: number): Prim[] {
  const prims: Prim[] = [filled({ x, y, w, h: HIGH_MM }, WHITE)];
  for (let s = -HIGH_MM; s < w; s += HATCH_MM) {
    const from = Math.max(s, 0);
    const upTo = Math.min(s + HIGH_MM, w);
    if (upTo > from) prims.push(rule([x + from, y + HIGH_MM - (from - s)], [x + upTo, y + HIGH_MM - (upTo - s)], 0.2));
  }
  return [...prims, box({ x, y, w, h: HIGH_MM }, 0.25)];
}

/** A figure from lowest to highest on a line from 0 to 1.5 of its limit, the limit as a post. `y`: upper edge of the post. */
export function gasBar(bar: Bar, x: number, y: number, w: number): { readonly prims: Prim[]; readonly h: number } {
  const { figure, limit, state } = bar;
  const top = limit !== null && limit > 0 ? limit * TOP : Math.max(figure.hi ?? figure.lo, 1e-6) * 1.2;
  const at = (n: number): number => x + w * Math.min(1, Math.max(0, n / top));
  const line = y + 2 * HIGH_MM;
  const prims: Prim[] = [rule([x, line], [x + w, line], 0.25)];
  for (const n of limit === null ? [0] : [0, limit * 0.5, limit, limit * TOP]) {
    const align = n === 0 ? 'left' : n >= top ? 'right' : 'middle';
    const px = at(n);
    prims.push(rule([px, line], [px, line + 0.9], 0.25));
    prims.push(words(String(Number(n.toPrecision(3))), { x: px, y: line + 2.6, size: SHEET_TEXT.caption, align }));
  }
  const low = at(figure.lo);
  const up = line - HIGH_MM;
  if (figure.hi === null) {
    prims.push(
      rule([low, up], [low, line], 0.7),
      rule([low, up + HIGH_MM / 2], [x + w, up + HIGH_MM / 2], 0.5, [0.5, 0.9]),
    );
  } else {
    const high = Math.max(at(figure.hi), low + 0.4);
    const past = limit === null ? high : Math.min(high, Math.max(low, at(limit)));
    const solid = state === 'stop' ? low : state === 'check' ? past : high;
    if (solid > low) prims.push(filled({ x: low, y: up, w: solid - low, h: HIGH_MM }, BLACK));
    if (high > solid) prims.push(...hatched(solid, up, high - solid));
  }
  if (limit !== null) prims.push(rule([at(limit), y], [at(limit), line], 0.7));
  return { prims, h: 2 * HIGH_MM + 4.2 };
}

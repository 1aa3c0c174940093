import type { SymbolPart } from './define-point.ts';
import { letter, line, rect, ring } from './symbol-parts.ts';

/** Half the length and half the height of a mark, in mm of paper. */
const L = 2.2;
const H = 1.3;

/** Two triangles tip to tip. */
export const valveMark: readonly SymbolPart[] = [
  line(-L, -H, L, H),
  line(-L, H, L, -H),
  line(-L, -H, -L, H),
  line(L, -H, L, H),
];
/** A lever across the top of what is under it. */
export const leverMark: readonly SymbolPart[] = [line(0, 0, 0, 1.8 * H), line(-0.5 * L, 1.8 * H, L, 1.8 * H)];
/** One triangle against a bar: flow goes from the triangle to the bar. */
export const checkMark = (x: number): readonly SymbolPart[] => [
  line(x - H, -H, x + H, 0),
  line(x - H, H, x + H, 0),
  line(x - H, -H, x - H, H),
  line(x + H, -H, x + H, H),
];
/** A box in the line with letters. */
export const boxMark = (text: string): readonly SymbolPart[] => [rect(-L, -H, 2 * L, 2 * H), letter(0, 0, text)];
export const ringMark = (text: string): readonly SymbolPart[] => [ring(0, 0, 1.6), letter(0, 0, text)];
export const barMark = (x: number): SymbolPart => line(x, -H, x, H);
/** A stem downwards with what hangs on it. */
export const tailMark: readonly SymbolPart[] = [line(0, 0, 0, -2 * H), line(-0.5 * H, -2 * H, 0.5 * H, -2 * H)];

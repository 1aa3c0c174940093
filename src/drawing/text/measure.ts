import font from '../../../shared/fonts/hanken-grotesk.json';

/** Vertical figures of the one font, in em. */
export const FONT = {
  family: font.family,
  ascent: font.ascent,
  descent: font.descent,
  capHeight: font.capHeight,
} as const;

export type Weight = 400 | 600;

const advances: Readonly<Record<string, Readonly<Record<string, number>>>> = font.advances;
const missing: Readonly<Record<string, number>> = font.missing;

/** Width of one line of text at a size, in the unit of the size. No kerning, no ligatures: painters must set both off. */
export function textWidth(text: string, size: number, weight: Weight): number {
  const table = advances[weight] ?? {};
  const lost = missing[weight] ?? 0.5;
  let em = 0;
  for (const char of text) em += table[char] ?? lost;
  return em * size;
}

/** From the middle of a line of text, in height, down to its baseline: half the height of a capital. */
export const baselineDrop = (size: number): number => (FONT.capHeight / 2) * size;

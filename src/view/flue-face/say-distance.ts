import type { FlueDistance } from '../../report/flue-face.ts';
import { STATE_WORD, sayWithUnit } from '../panels/rows/figures.ts';

/** "140 mm found, 300 mm wanted": one distance in a breath, for who hears it. */
export function sayDistance({ label, found, wanted, state }: FlueDistance): string {
  const held = wanted === null ? '' : `, ${sayWithUnit(wanted)} wanted`;
  const word = STATE_WORD[state] === '' ? '' : `: ${STATE_WORD[state]}`;
  return `${label}${word}, ${sayWithUnit(found)} found${held}`;
}

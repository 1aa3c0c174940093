import { type Quantity, sayFigures } from '../../../report/quantity.ts';
import type { State } from '../../../report/section.ts';

/** Superscripts of the units the engine writes in plain letters. */
export function sayUnit(unit: string): string {
  return unit
    .replace(/\bm3\b/g, 'm³')
    .replace(/\bm2\b/g, 'm²')
    .replace(/^l$/, 'litres')
    .replace(/^l\//, 'litres/');
}

/** "0.50 to 0.75 mbar"; empty for a figure that is not there. */
export function sayWithUnit(q: Quantity | null): string {
  if (q === null) return '';
  return q.unit === '' ? sayFigures(q) : `${sayFigures(q)} ${sayUnit(q.unit)}`;
}

export const STATE_WORD: Readonly<Record<State, string>> = {
  pass: 'passes',
  stop: 'stop',
  check: 'check',
  note: 'note',
  cantTell: "can't tell",
  none: '',
};

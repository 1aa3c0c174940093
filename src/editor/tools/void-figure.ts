import type { Ask, KeyInput } from '../editor-api.ts';

/** A size that is asked for, with keys for the usual ones. */
export interface SizeQuestion {
  readonly title: string;
  readonly figure: string;
  readonly keys: readonly number[];
  /** What was told the last time: Enter takes it again. */
  readonly last: number | null;
  /** What the key says that tells nothing, as Enter does without a figure; null where something must be told. */
  readonly without: string | null;
}

const UNKNOWN = 'unknown';
const MOST_DIGITS = 4;

export function sizeAsk({ title, figure, keys, last, without }: SizeQuestion): Ask {
  const enter = figure !== '' ? figure : last !== null ? `${last}, as last` : null;
  const sizes = keys.map((mm) => ({ key: `size ${mm}`, label: String(mm), on: figure === '' && mm === last }));
  return {
    title,
    figure,
    unit: 'mm',
    says: [],
    rows: [sizes, ...(without === null ? [] : [[{ key: UNKNOWN, label: without }]])],
    enter,
  };
}

/** What a key did to a figure. `told` null: nobody knows it. */
export type Read =
  | { readonly is: 'none' }
  | { readonly is: 'back' }
  | { readonly is: 'typing'; readonly figure: string }
  | { readonly is: 'told'; readonly mm: number | null };

/**
 * Reads one key of a size question. A figure typed that is no more than the number of keys means that key: 2 and Enter
 * is the second one.
 */
export function figureKey(input: KeyInput, figure: string, keys: readonly number[], last: number | null): Read {
  const { key } = input;
  const named = /^size (\d+)$/.exec(key);
  if (named) return { is: 'told', mm: Number(named[1]) };
  if (key === UNKNOWN) return { is: 'told', mm: null };
  if (/^\d{1,2}$/.test(key)) {
    return { is: 'typing', figure: (figure + key).replace(/^0+/, '').slice(0, MOST_DIGITS) };
  }
  if (key === 'Backspace') return figure === '' ? { is: 'back' } : { is: 'typing', figure: figure.slice(0, -1) };
  if (key === 'Escape') return figure === '' ? { is: 'back' } : { is: 'typing', figure: '' };
  if (key !== 'Enter') return { is: 'none' };
  if (figure === '') return { is: 'told', mm: last };
  const mm = Number(figure);
  return { is: 'told', mm: keys[mm - 1] ?? mm };
}

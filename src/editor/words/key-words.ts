import { DIRECTIONS } from './pad.ts';
import { HEIGHT_WORDS, type HeightWord } from './word-heights.ts';

const MOST_DIGITS = 6;

/** "digit 4", "4" or "00". */
export const digitOf = (key: string): string | undefined =>
  /^(?:digit )?(\d)$/.exec(key)?.[1] ?? (key === '00' ? '00' : undefined);

export const withDigit = (typed: string, digit: string): string =>
  (typed + digit).replace(/^0+/, '').slice(0, MOST_DIGITS);

export const heightWordOf = (key: string): HeightWord | undefined =>
  HEIGHT_WORDS.find((w) => w === key || (w === 'off floor' && key.endsWith(' off floor')));

export const directionOf = (key: string): (typeof DIRECTIONS)[number] | undefined => DIRECTIONS.find((d) => d === key);

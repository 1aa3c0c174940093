import type { Fragment, Wish } from '../display-list.ts';
import type { Fineness } from './fineness.ts';
import { type FlagLines, flagsOf } from './flag-wishes.ts';
import { placeFlag } from './flags.ts';
import type { Page } from './page.ts';
import type { Placed } from './tags.ts';

export interface ThingName {
  readonly fragment: Fragment;
  readonly wish: Extract<Wish, { w: 'name' }>;
}

/** What is only said in passing, as a fall, may cover less than what a thing is. */
const IN_PASSING = 4;
const LITTLE = 6.5;

/** On a screen no slant is longer than the eye follows: nearer by there is room for the words. Straight ones have no such end. */
const FAR_MM = 42;

function mostOf(fineness: Fineness, rank: number): number | undefined {
  if (fineness === 'coarse') return LITTLE;
  if (rank < IN_PASSING) return undefined;
  return fineness === 'usual' ? LITTLE : 2 * LITTLE;
}

/** Flags, and the names of things that had no room for them inside. `flagged`: whose fragments have one. */
export function placeFlags(
  page: Page,
  outside: readonly ThingName[],
): { placed: Placed[]; flagged: ReadonlySet<Fragment> } {
  const { fragments, paper, to, sizes, fineness } = page;
  const mm = { whatMm: sizes.flag, howMm: sizes.flagSecond };
  const far = fineness === 'close' ? Number.POSITIVE_INFINITY : FAR_MM;
  const placed: Placed[] = [];
  const flagged = new Set<Fragment>();
  for (const { fragment, wish } of outside) {
    const lines: FlagLines = wish.second === null ? [wish.text] : [wish.text, wish.second];
    const one = placeFlag({ id: fragment.id, at: wish.at, clearMm: 0 }, { lines, ...mm }, paper, to, undefined, far);
    if (one) placed.push(one);
  }
  for (const { fragment, wish, says } of flagsOf(fragments, paper, fineness)) {
    const { at, spread, clearMm = 0, along } = wish;
    for (const lines of says) {
      const most = mostOf(fineness, wish.rank);
      const one = placeFlag({ id: fragment.id, at, spread, clearMm, along }, { lines, ...mm }, paper, to, most, far);
      if (!one) continue;
      placed.push(one);
      flagged.add(fragment);
      break;
    }
  }
  return { placed, flagged };
}

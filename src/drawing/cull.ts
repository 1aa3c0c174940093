import RBush from 'rbush';
import type { Box, Fragment } from './display-list.ts';

interface Entry extends Box {
  readonly fragment: Fragment;
  rank: number;
}

/** Fragments by where they are, in the order they were given. */
export interface FragmentIndex {
  readonly tree: RBush<Entry>;
  readonly size: number;
}

export interface Culled {
  readonly fragments: readonly Fragment[];
  /** How many fragments were looked at to find them. */
  readonly visited: number;
}

interface Built extends FragmentIndex {
  readonly of: readonly Fragment[];
  readonly entries: Map<Fragment, Entry>;
}

/** Indexes of the lists that were asked about last. A list that grew out of one of them takes its index over. */
let kept: Built[] = [];
const MOST_KEPT = 4;
/** With more new fragments than this part of a list, an index made anew is no slower. */
const MOST_NEW = 0.25;
let put = 0;

/** How many fragments were put in an index since the start: for tests that count. */
export const indexedSoFar = (): number => put;

const entryOf = (fragment: Fragment, rank: number): Entry => ({ ...fragment.box, fragment, rank });

function build(of: readonly Fragment[]): Built {
  const entries = new Map(of.map((fragment, rank): [Fragment, Entry] => [fragment, entryOf(fragment, rank)]));
  put += entries.size;
  return { of, entries, tree: new RBush<Entry>().load([...entries.values()]), size: of.length };
}

function carriedOn({ tree, entries }: Built, of: readonly Fragment[], fresh: readonly Fragment[]): Built {
  for (const fragment of fresh) {
    const made = entryOf(fragment, 0);
    tree.insert(made);
    entries.set(fragment, made);
  }
  put += fresh.length;
  of.forEach((fragment, rank) => {
    const entry = entries.get(fragment);
    if (entry) entry.rank = rank;
  });
  if (entries.size > of.length) {
    const still = new Set(of);
    for (const [fragment, entry] of entries) {
      if (still.has(fragment)) continue;
      tree.remove(entry);
      entries.delete(fragment);
    }
  }
  return { of, tree, entries, size: of.length };
}

/** The index of a list of fragments: one list is indexed once, and a list like the last one only in what is new. */
export function fragmentIndex(fragments: readonly Fragment[]): FragmentIndex {
  const known = kept.find((k) => k.of === fragments);
  if (known) return known;
  let made: Built | undefined;
  for (const was of kept) {
    const fresh = fragments.filter((f) => !was.entries.has(f));
    if (fresh.length > fragments.length * MOST_NEW) continue;
    made = carriedOn(was, fragments, fresh);
    kept = kept.filter((k) => k !== was);
    break;
  }
  made ??= build(fragments);
  kept = [made, ...kept].slice(0, MOST_KEPT);
  return made;
}

/**
 * Fragments that touch a box of the plane, in painter's order. Marks have their size on paper: give a box that is wider
 * than the view by that much (`marginMm` of the plane).
 */
export function cull(fragments: readonly Fragment[], box: Box, marginMm = 0): Culled {
  const wide = {
    minX: box.minX - marginMm,
    minY: box.minY - marginMm,
    maxX: box.maxX + marginMm,
    maxY: box.maxY + marginMm,
  };
  const found = fragmentIndex(fragments).tree.search(wide);
  found.sort((a, b) => a.rank - b.rank);
  return { fragments: found.map((e) => e.fragment), visited: found.length };
}

import RBush from 'rbush';
import type { Box, Fragment } from './display-list.ts';

interface Entry extends Box {
  readonly fragment: Fragment;
  readonly rank: number;
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

const indexes = new WeakMap<readonly Fragment[], FragmentIndex>();

/** The index of a list of fragments; one list is indexed once. */
export function fragmentIndex(fragments: readonly Fragment[]): FragmentIndex {
  const known = indexes.get(fragments);
  if (known) return known;
  const tree = new RBush<Entry>();
  tree.load(fragments.map((fragment, rank): Entry => ({ ...fragment.box, fragment, rank })));
  const index = { tree, size: fragments.length };
  indexes.set(fragments, index);
  return index;
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

import RBush from 'rbush';
import { type Box3, overlaps } from './boxes.ts';

export interface Boxed {
  readonly box: Box3;
}

/** How much was asked and how much had to be looked at: the cost of a question must not grow with the house. */
export interface IndexCounts {
  queries: number;
  candidates: number;
}

export interface BoxIndex<T extends Boxed> {
  /** Everything whose box meets this one, touching included, in the order it was given. */
  search(box: Box3): T[];
  readonly size: number;
  readonly counts: IndexCounts;
}

interface Placed<T> {
  readonly order: number;
  readonly entry: T;
}

class Tree<T extends Boxed> extends RBush<Placed<T>> {
  override toBBox(item: Placed<T>) {
    return item.entry.box;
  }
  override compareMinX(a: Placed<T>, b: Placed<T>) {
    return a.entry.box.minX - b.entry.box.minX;
  }
  override compareMinY(a: Placed<T>, b: Placed<T>) {
    return a.entry.box.minY - b.entry.box.minY;
  }
}

/** What an index is asked of. Built once, never changed, so many may ask it. */
export interface BoxTree<T extends Boxed> {
  readonly size: number;
  readonly near: (box: Box3) => readonly Placed<T>[];
}

export function boxTree<T extends Boxed>(entries: readonly T[]): BoxTree<T> {
  const tree = new Tree<T>();
  tree.load(entries.map((entry, order) => ({ order, entry })));
  return { size: entries.length, near: (box) => tree.search(box) };
}

/** A tree in plan with a sieve by height, since houses are wide and have few storeys. It counts for itself only. */
export function askBoxes<T extends Boxed>(tree: BoxTree<T>): BoxIndex<T> {
  const counts: IndexCounts = { queries: 0, candidates: 0 };
  return {
    size: tree.size,
    counts,
    search(box) {
      const near = tree.near(box);
      counts.queries += 1;
      counts.candidates += near.length;
      return near
        .filter((p) => overlaps(p.entry.box, box))
        .sort((a, b) => a.order - b.order)
        .map((p) => p.entry);
    },
  };
}

export const createBoxIndex = <T extends Boxed>(entries: readonly T[]): BoxIndex<T> => askBoxes(boxTree(entries));

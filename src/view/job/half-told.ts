import { createStore } from 'zustand/vanilla';
import type { Told } from './line-form.tsx';

/** A line of the job card while it is typed: which one (null: a new one), what it began with, and what stands in its boxes. */
export interface HalfTold {
  readonly at: number | null;
  readonly start: Told;
  readonly typed: Told;
}

/** Lines that are not kept yet, by job and list. Looking at another chapter on the way to the meter and back loses none. */
export const halfTold = createStore<{ readonly lines: ReadonlyMap<string, HalfTold> }>(() => ({ lines: new Map() }));

/** Null puts the line away. */
export function tellHalf(key: string, line: HalfTold | null): void {
  halfTold.setState(({ lines }) => {
    const next = new Map(lines);
    if (line === null) next.delete(key);
    else next.set(key, line);
    return { lines: next };
  });
}

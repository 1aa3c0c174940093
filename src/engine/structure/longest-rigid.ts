import { exact, type Quantity } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';

/** Straight room in line with the holes beyond the last joist at one end, mm, to the next thing in the way. */
export interface FeedEnd {
  readonly roomMm: number;
  /** Nothing but the wall or edge of the void stands beyond: with a hole there whole lengths can be fed in. */
  readonly open: boolean;
}

export interface RigidAsk {
  /** Length of the straight pipe between its ends. */
  readonly pipeMm: number;
  /** Clear between neighbouring joists that it passes, one for each bay. */
  readonly baysMm: readonly number[];
  readonly ends: readonly [FeedEnd, FeedEnd];
}

export interface RigidAnswer {
  /** Longest straight piece that can be brought in line with the holes. */
  readonly longest: Quantity;
  readonly from: 'bay' | 'a' | 'b';
  /** Joints in the straight where no piece may be longer. */
  readonly joints: number;
  readonly fits: boolean;
  readonly working: Working;
}

/**
 * A straight piece goes into a row of holes only from a place where the whole of it lies in line with them: between
 * two joists, or beyond the last one at either end. The longest of these decides; what is longer needs joints.
 */
export function longestRigid(ask: RigidAsk): RigidAnswer {
  const places = [
    ...ask.baysMm.map((mm) => ({ from: 'bay' as const, mm })),
    { from: 'a' as const, mm: ask.ends[0].roomMm },
    { from: 'b' as const, mm: ask.ends[1].roomMm },
  ];
  const best = places.reduce((most, p) => (p.mm > most.mm ? p : most));
  const longest = exact(Math.max(0, best.mm), 'mm', 0);
  const joints = best.mm > 0 ? Math.max(0, Math.ceil(ask.pipeMm / best.mm - 1e-9) - 1) : 0;
  return {
    longest,
    from: best.from,
    joints,
    fits: ask.pipeMm <= best.mm,
    working: {
      title: 'Longest piece that can be got in',
      steps: [
        ...(ask.baysMm.length > 0
          ? [{ label: 'Clear between two joists', result: exact(Math.max(...ask.baysMm), 'mm', 0), cites: [] }]
          : []),
        ...ask.ends.map((e, i) => ({
          label: `Beyond the ${i === 0 ? 'first' : 'last'} joist, in line`,
          how: e.open ? 'to the edge of the void' : 'to the next joist',
          result: exact(Math.round(e.roomMm), 'mm', 0),
          cites: [],
        })),
        { label: 'Straight to be put in', result: exact(ask.pipeMm, 'mm', 0), cites: [] },
      ],
      result: longest,
      missing: [],
      assumed: [],
    },
  };
}

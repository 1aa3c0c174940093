import { exact, type Quantity } from '../../report/quantity.ts';
import type { Working, WorkingStep } from '../../report/working.ts';

export interface BoxedPipe {
  readonly name: string;
  readonly odMm: number;
  readonly insulationMm: number;
  readonly gas: boolean;
}

/** Least clear distances, mm, surface to surface with lagging. */
export interface BoxGaps {
  readonly between: number;
  /** Of gas to any other pipe, bare to bare. */
  readonly gas: number;
  /** Over pipe and lagging, across and out from the wall; half of it at each side. */
  readonly over: number;
  readonly board: number;
}

export interface SmallestBox {
  readonly innerWidth: Quantity;
  readonly innerDepth: Quantity;
  /** In a corner: one side board and the front. Standing on a flat wall: two side boards. */
  readonly outerInCorner: Quantity;
  readonly outerOnWall: Quantity;
  readonly outerDepth: Quantity;
  /** Middle of each pipe from the inside of the first side. */
  readonly middles: readonly number[];
  readonly working: Working;
}

const across = (p: BoxedPipe): number => p.odMm + 2 * p.insulationMm;

/** Clear between the surfaces of two neighbours, lagging left out of both. */
function bareGap(a: BoxedPipe, b: BoxedPipe, gaps: BoxGaps): number {
  const lagged = gaps.between + a.insulationMm + b.insulationMm;
  return a.gas || b.gas ? Math.max(lagged, gaps.gas) : lagged;
}

/** Inside of the smallest box for pipes in one row along a wall, in the order given. Throws on none. */
export function smallestBox(pipes: readonly BoxedPipe[], gaps: BoxGaps): SmallestBox {
  const first = pipes[0];
  if (!first) throw new RangeError('no pipe to put a box round');
  const side = gaps.over / 2;
  const middles = [side + across(first) / 2];
  const steps: WorkingStep[] = [];
  for (const [i, next] of pipes.entries()) {
    const last = pipes[i - 1];
    if (!last) continue;
    const gap = bareGap(last, next, gaps);
    middles.push((middles[i - 1] ?? 0) + last.odMm / 2 + gap + next.odMm / 2);
    steps.push({
      label: `${last.name} to ${next.name}`,
      how: `bare pipe to bare pipe`,
      result: exact(gap, 'mm', 0, 'practice'),
      cites: [],
    });
  }
  const end = pipes[pipes.length - 1] ?? first;
  const width = (middles[middles.length - 1] ?? 0) + across(end) / 2 + side;
  const depth = Math.max(...pipes.map(across)) + gaps.over;
  const mm = (n: number): Quantity => exact(n, 'mm', 0, 'practice');
  return {
    innerWidth: mm(width),
    innerDepth: mm(depth),
    outerInCorner: mm(width + gaps.board),
    outerOnWall: mm(width + 2 * gaps.board),
    outerDepth: mm(depth + gaps.board),
    middles,
    working: { title: 'Smallest box', steps, result: mm(width), missing: [], assumed: [] },
  };
}

import { dot3 } from '../../geometry/vec.ts';
import { angleClass, tolerance, turnBetween } from '../../network/angles.ts';
import { into, type Network } from '../../network/network.ts';
import type { Drain, DrainStep } from './drains.ts';

/** Turns on the way, elbows and pulled bends alike; a stretch nobody can see gives a range. */
export interface BendsAlong {
  readonly lo: number;
  readonly hi: number;
  /** Vertices at which it turns, in order. */
  readonly at: readonly string[];
}

function turns(turnDeg: number, kinds: readonly string[]): boolean {
  return angleClass(turnDeg, tolerance(kinds)) !== 0;
}

/** Does the pipe turn where it leaves or meets a thing? Not where the thing says nothing of the way it faces. */
function turnsAtEnd(network: Network, vertex: string, step: DrainStep): boolean {
  const facing = network.vertices.get(vertex)?.facing ?? null;
  const pipe = into(step.edge, vertex);
  if (!facing || !pipe) return false;
  const deg = (Math.acos(Math.max(-1, Math.min(1, dot3(facing, pipe)))) * 180) / Math.PI;
  return turns(deg, [step.edge.tube.kind]);
}

function turnsBetween(before: DrainStep, after: DrainStep): boolean {
  const [one, other] = [into(before.edge, before.to), into(after.edge, after.from)];
  return !!one && !!other && turns(turnBetween(one, other), [before.edge.tube.kind, after.edge.tube.kind]);
}

/** Every elbow or bend from the thing the water leaves to the thing it ends in. */
export function bendsAlong(network: Network, drain: Drain): BendsAlong {
  const { steps } = drain;
  const [first, last] = [steps[0], steps[steps.length - 1]];
  const at: string[] = [];
  if (first && turnsAtEnd(network, first.from, first)) at.push(first.from);
  for (const [i, step] of steps.entries()) {
    const next = steps[i + 1];
    if (next && turnsBetween(step, next)) at.push(step.to);
  }
  if (last && turnsAtEnd(network, last.to, last)) at.push(last.to);
  const unseen = steps.reduce(
    (sum, s) => ({ lo: sum.lo + (s.edge.bends?.lo ?? 0), hi: sum.hi + (s.edge.bends?.hi ?? 0) }),
    { lo: 0, hi: 0 },
  );
  return { lo: at.length + unseen.lo, hi: at.length + unseen.hi, at };
}

import { fittingAt } from './fitting-at.ts';
import type { Network } from './network.ts';
import { orderedLegs, type Step } from './runs.ts';

/** Turns in a stretch of pipe. `unseen` bounds those in pipe nobody can see; `unresolved` turns have no class. */
export interface BendCount {
  readonly total90: number;
  readonly total45: number;
  readonly unseen: { readonly lo: number; readonly hi: number };
  readonly unresolved: number;
}

/** Pipe between two places that come apart, as a fitter could draw it out or clear it. */
export interface BetweenOpenable extends BendCount {
  readonly from: string;
  readonly to: string;
  readonly edges: readonly string[];
}

export interface RunBends extends BendCount {
  readonly betweenOpenable: readonly BetweenOpenable[];
}

const NONE: BendCount = { total90: 0, total45: 0, unseen: { lo: 0, hi: 0 }, unresolved: 0 };

const plus = (a: BendCount, b: BendCount): BendCount => ({
  total90: a.total90 + b.total90,
  total45: a.total45 + b.total45,
  unseen: { lo: a.unseen.lo + b.unseen.lo, hi: a.unseen.hi + b.unseen.hi },
  unresolved: a.unresolved + b.unresolved,
});

/** The turn a run makes at a vertex. `before` is null where the run begins there, `after` where it ends. */
function turnAt(network: Network, vertex: string, before: string | null, after: string | null): BendCount {
  const fitting = fittingAt(network, vertex);
  if (fitting.is === 'elbow' || fitting.is === 'bend' || fitting.is === 'joint') {
    if (fitting.degrees === 90) return { ...NONE, total90: 1 };
    return fitting.degrees === 45 ? { ...NONE, total45: 1 } : NONE;
  }
  if (fitting.is === 'unresolved') return { ...NONE, unresolved: 1 };
  if (fitting.is !== 'tee' || before === null || after === null) return NONE;
  if (fitting.guessed) return { ...NONE, unseen: { lo: 0, hi: 1 } };
  if (fitting.ends.includes(before) && fitting.ends.includes(after)) return NONE;
  return fitting.degrees === 90 ? { ...NONE, total90: 1 } : { ...NONE, total45: 1 };
}

function comesApart(network: Network, vertex: string): boolean {
  const v = network.vertices.get(vertex);
  if (!v) return false;
  return v.point !== null || v.items.some((id) => network.kinds.opens(network.plan.items[id]?.kind ?? ''));
}

function stepBends(network: Network, step: Step): BendCount {
  const bends = network.edges.get(step.edge)?.bends;
  return bends ? { ...NONE, unseen: { lo: bends.lo, hi: bends.hi } } : NONE;
}

/** Turns of a run along its told way, whole and between the places that come apart. Edges off that way are not counted. */
export function bendCount(network: Network, run: string): RunBends {
  const { steps } = orderedLegs(network, run);
  let total = NONE;
  let part = NONE;
  let from = steps[0]?.from ?? '';
  let edges: string[] = [];
  const betweenOpenable: BetweenOpenable[] = [];
  for (const [i, step] of steps.entries()) {
    const entering = i === 0 ? turnAt(network, step.from, null, step.edge) : NONE;
    const leaving = turnAt(network, step.to, step.edge, steps[i + 1]?.edge ?? null);
    const here = plus(entering, plus(stepBends(network, step), leaving));
    total = plus(total, here);
    part = plus(part, here);
    edges.push(step.edge);
    if (i < steps.length - 1 && !comesApart(network, step.to)) continue;
    betweenOpenable.push({ ...part, from, to: step.to, edges });
    [part, from, edges] = [NONE, step.to, []];
  }
  return { ...total, betweenOpenable };
}

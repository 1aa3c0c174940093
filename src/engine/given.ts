import { circuitsOf } from '../network/circuit-parts.ts';
import { buildNetwork } from '../network/graph.ts';
import type { Network } from '../network/network.ts';
import type { Trace } from '../network/trace.ts';
import { traceSystem } from '../network/trace-system.ts';
import type { Case, Plan } from '../plan/plan.ts';
import { findJoistMeetings, type JoistMeeting } from './building/joist-cuts.ts';
import { findVoidParts, type VoidPart } from './building/void-parts.ts';
import type { Counts } from './clearance/counts.ts';
import { type Crossing, findCrossings } from './clearance/crossings.ts';
import { type Clash, findClashes } from './clearance/find-clashes.ts';
import { indexPipes, type Pipe, type PipeIndex } from './clearance/pipes.ts';
import { sectionFittings } from './gas-system/section-fittings.ts';
import { type GasSystem, solveGas } from './gas-system/solve-gas.ts';

/** One plan in one case, and what several rules ask of it: each part is worked out once, when first asked for. */
export interface Given {
  readonly plan: Plan;
  readonly case: Case;
  readonly network: Network;
  readonly traces: readonly Trace[];
  readonly gas: GasSystem;
  readonly pipes: readonly Pipe[];
  readonly pipeIndex: PipeIndex;
  readonly clashes: readonly Clash[];
  readonly crossings: readonly Crossing[];
  /** Live legs in standing voids, part by part. */
  readonly voidParts: readonly VoidPart[];
  /** New legs at joists. */
  readonly joistMeetings: readonly JoistMeeting[];
  readonly counts: Counts;
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

export function give(plan: Plan, chosen: Case): Given {
  const counts: Counts = { boxQueries: 0, distances: 0 };
  const network = buildNetwork(plan, chosen);
  const traces = once(() => circuitsOf(network).map((c) => traceSystem(network, c)));
  const gas = once(() => {
    const trace = traces().find((t) => t.circuit === 'gas') ?? traceSystem(network, 'gas');
    return solveGas(network, trace, sectionFittings(network, trace));
  });
  const index = once(() => indexPipes(network, counts));
  const clashes = once(() => findClashes(network, index(), counts));
  const crossings = once(() => findCrossings(network, index().pipes, counts));
  const voidParts = once(() => findVoidParts(network, index().pipes, counts));
  const joistMeetings = once(() => findJoistMeetings(plan, voidParts()));
  return {
    plan,
    case: chosen,
    network,
    counts,
    get traces() {
      return traces();
    },
    get gas() {
      return gas();
    },
    get pipes() {
      return index().pipes;
    },
    get pipeIndex() {
      return index();
    },
    get crossings() {
      return crossings();
    },
    get voidParts() {
      return voidParts();
    },
    get joistMeetings() {
      return joistMeetings();
    },
    get clashes() {
      return clashes();
    },
  };
}

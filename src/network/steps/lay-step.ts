import { nodePlace } from '../../geometry/places.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import {
  changedIds,
  fresh,
  itemsAlong,
  type Laid,
  type LayOptions,
  laid,
  NotLaid,
  nodeAt,
  type PlacedLeg,
  partOf,
  placedLeg,
  withFates,
  withNeighbours,
} from './edit.ts';
import { evenFall, isDrain, isUpright, mustDrain } from './falls.ts';
import { shift } from './shift.ts';
import { comesBack, type Step, shapeFault, stepShape } from './step-shape.ts';

/** Out, over and back: the ends of the leg stay, and four pieces more lie between them. */
function hump(plan: Plan, placed: PlacedLeg, corners: readonly Xyz[], options: LayOptions): Plan {
  const { leg, storey } = placed;
  const nodes = { ...plan.nodes };
  const legs = { ...plan.legs };
  const next: Plan = { ...plan, nodes, legs };
  const line = corners.map((at) => {
    const id = fresh(next, options.ids, 'n');
    nodes[id] = nodeAt(plan, id, leg.a, storey, at, leg.option);
    return id;
  });
  const stops = [leg.a, ...line, leg.b];
  const parts = stops.slice(1).map((to, i) => {
    const id = i === 0 ? leg.id : fresh(next, options.ids, 'l');
    legs[id] = partOf(leg, id, stops[i] ?? leg.a, to);
    return id;
  });
  const last = parts.at(-1) ?? leg.id;
  return {
    ...next,
    nodes: { ...nodes },
    legs: { ...legs },
    items: itemsAlong(plan, leg.id, leg.b, last),
    options: withFates(plan, leg.id, parts.slice(1)),
  };
}

function at(plan: Plan, node: string): Xyz {
  const record = plan.nodes[node];
  const place = record && nodePlace(plan, record)?.at;
  if (!place) throw new NotLaid('An end of that leg has no height.');
  return place;
}

/** A set or kick: one part of the leg goes aside, with all beyond it. A pipe that falls goes on falling through it. */
function set(plan: Plan, placed: PlacedLeg, step: Step, toward: 'a' | 'b', options: LayOptions): Plan {
  const { corners } = stepShape({ ...step, toward }, placed.a, placed.b);
  const [first, last] = corners;
  if (!first || !last) throw new NotLaid('A step needs an offset.');
  const [stays, goes] = toward === 'b' ? [first, last] : [last, first];
  const { plan: after, near, far } = shift(plan, placed, { toward, stays, goes, by: step.offset }, options);
  const { leg, storey } = placed;
  if (!isDrain(plan, leg, options.runsDownhill) || Math.abs(step.offset.z) > COINCIDENT_MM) return after;
  if (isUpright(placed.a, placed.b)) return after;
  const ids = toward === 'b' ? [leg.a, near, far, leg.b] : [leg.a, far, near, leg.b];
  const even = evenFall(ids.map((id) => at(after, id)));
  const nodes = { ...after.nodes };
  for (const [i, id] of ids.entries()) {
    const place = even[i];
    if (place && i > 0 && i < ids.length - 1) nodes[id] = nodeAt(after, id, id, storey, place, leg.option);
  }
  return { ...after, nodes };
}

function stepped(plan: Plan, step: Step, options: LayOptions): Plan {
  const placed = placedLeg(plan, step.leg);
  const { a, b, lengthMm } = placed;
  const drains = isDrain(plan, placed.leg, options.runsDownhill);
  const able = (toward: 'a' | 'b'): void => {
    const fault = shapeFault({ ...step, toward }, lengthMm, a, b);
    if (fault !== null) throw new NotLaid(fault);
    if (drains) mustDrain(step, placed, toward);
  };
  if (comesBack(step.kind)) {
    able('b');
    const { corners } = stepShape(step, a, b);
    const level = drains && !isUpright(a, b) && Math.abs(step.offset.z) <= COINCIDENT_MM;
    return hump(plan, placed, level ? evenFall([a, ...corners, b]).slice(1, -1) : corners, options);
  }
  const ways = step.toward ? [step.toward] : (['b', 'a'] as const);
  let why = '';
  for (const toward of ways) {
    try {
      able(toward);
      return set(plan, placed, step, toward, options);
    } catch (cause) {
      if (!(cause instanceof NotLaid)) throw cause;
      // What stood in the way of the first way is said: the second was not asked for.
      if (why === '') why = cause.message;
    }
  }
  throw new NotLaid(why);
}

/**
 * The plan with a step in one of its legs. The run stays joined and keeps its id, tails stay where they are, and what runs
 * downhill still does; or why not, in words. Nothing is written to the plan that is given.
 */
export function layStep(plan: Plan, step: Step, options: LayOptions): Laid {
  return laid(() => {
    const next = stepped(plan, step, options);
    return { plan: next, touched: withNeighbours(plan, changedIds(plan, next)) };
  });
}

import { nodePlace } from '../../geometry/places.ts';
import { distance3, dot3, sub3, unit3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Leg } from '../../plan/records/pipework.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { incidence } from '../displace/incidence.ts';
import { otherNode } from '../displace/law.ts';
import { sameWay } from './nest.ts';

/** A run from one end to the other, straight on where it branches. */
export interface Chain {
  readonly run: string;
  readonly nodes: readonly string[];
  readonly places: readonly Xyz[];
  readonly legs: readonly string[];
  /** Something else hangs on that node, or stands in it: another pipe, a valve. */
  readonly busy: readonly boolean[];
}

function legsOfRun(plan: Plan, run: string): Leg[] {
  return Object.values(plan.legs).filter((l) => l.run === run);
}

/** The legs of a run in a row from where it was drawn first; undefined where an end of one has no height. */
export function chainOf(plan: Plan, run: string): Chain | undefined {
  const legs = legsOfRun(plan, run);
  const at = new Map<string, Leg[]>();
  for (const leg of legs) for (const n of [leg.a, leg.b]) at.set(n, [...(at.get(n) ?? []), leg]);
  const placeOf = (id: string): Xyz | undefined => {
    const node = plan.nodes[id];
    return node && nodePlace(plan, node)?.at;
  };
  const ends = [...at].filter(([, on]) => on.length === 1);
  const first = ends.find(([n, on]) => on[0]?.a === n)?.[0] ?? ends[0]?.[0];
  if (first === undefined) return undefined;
  const nodes = [first];
  const told: Leg[] = [];
  const places = [placeOf(first)];
  for (;;) {
    const here = nodes.at(-1) as string;
    const open = (at.get(here) ?? []).filter((l) => !told.includes(l));
    const [from, to] = [places.at(-2), places.at(-1)];
    const straight = (l: Leg): number => {
      const on = placeOf(otherNode(l, here));
      return from && to && on ? dot3(unit3(sub3(to, from)), unit3(sub3(on, to))) : 0;
    };
    const next = open.sort((a, b) => straight(b) - straight(a) || (a.id < b.id ? -1 : 1))[0];
    if (!next) break;
    told.push(next);
    nodes.push(otherNode(next, here));
    places.push(placeOf(nodes.at(-1) as string));
  }
  const known = places.flatMap((p) => p ?? []);
  if (known.length !== places.length || told.length === 0) return undefined;
  const inc = incidence(plan);
  const ids = new Set(told.map((l) => l.id));
  const busy = nodes.map(
    (n) => inc.legsAt(n).some((l) => !ids.has(l.id)) || inc.stretchesAt(n).length > 0 || inc.itemsAt(n).length > 0,
  );
  return { run, nodes, places: known, legs: told.map((l) => l.id), busy };
}

/** Numbers of the nodes of a chain at which it turns, both ends among them; legs of no length are passed over. */
export function cornersOf({ places }: Chain): number[] {
  const kept: number[] = [];
  for (const [i, p] of places.entries()) {
    const [last, before] = [kept.at(-1), kept.at(-2)];
    if (last !== undefined && distance3(places[last] as Xyz, p) < COINCIDENT_MM) {
      if (i === places.length - 1) kept[kept.length - 1] = i;
      continue;
    }
    if (last !== undefined && before !== undefined) {
      const [b, l] = [places[before] as Xyz, places[last] as Xyz];
      if (sameWay(unit3(sub3(l, b)), unit3(sub3(p, l)))) kept.pop();
    }
    kept.push(i);
  }
  return kept;
}

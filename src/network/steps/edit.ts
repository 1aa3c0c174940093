import { nodePlace } from '../../geometry/places.ts';
import { add3, distance3, scale3, sub3 } from '../../geometry/vec.ts';
import type { IdMaker } from '../../plan/ids.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef, Xyz } from '../../plan/records/parts.ts';
import type { Leg, PlanNode } from '../../plan/records/pipework.ts';
import { COINCIDENT_MM, quantise } from '../../plan/units.ts';
import { incidence } from '../displace/incidence.ts';
import { raised } from '../displace/told.ts';

/** Why a step, drop or new way cannot be laid. Thrown inside and turned into the answer there. */
export class NotLaid extends Error {}

/** The plan as it would be, and what is drawn anew for it; or why not, in words. */
export type Laid =
  | { readonly ok: true; readonly plan: Plan; readonly touched: ReadonlySet<string> }
  | { readonly ok: false; readonly why: string };

export interface LayOptions {
  readonly ids: IdMaker;
  readonly runsDownhill: (service: string) => boolean;
}

export function laid(work: () => { plan: Plan; touched: ReadonlySet<string> }): Laid {
  try {
    return { ok: true, ...work() };
  } catch (cause) {
    if (cause instanceof NotLaid) return { ok: false, why: cause.message };
    throw cause;
  }
}

/** A leg with both ends in the house. */
export interface PlacedLeg {
  readonly leg: Leg;
  readonly a: Xyz;
  readonly b: Xyz;
  readonly storey: string;
  readonly lengthMm: number;
}

export function placedLeg(plan: Plan, id: string): PlacedLeg {
  const leg = plan.legs[id];
  if (!leg) throw new NotLaid('That leg is no longer there.');
  const [na, nb] = [plan.nodes[leg.a], plan.nodes[leg.b]];
  const [pa, pb] = [na && nodePlace(plan, na), nb && nodePlace(plan, nb)];
  if (!pa || !pb) throw new NotLaid('That leg has no place yet: an end of it has no height.');
  const lengthMm = distance3(pa.at, pb.at);
  if (lengthMm <= COINCIDENT_MM) throw new NotLaid('That leg has no length.');
  return { leg, a: pa.at, b: pb.at, storey: pa.storey, lengthMm };
}

export const alongPlaced = ({ a, b, lengthMm }: PlacedLeg, mm: number): Xyz =>
  add3(a, scale3(sub3(b, a), mm / lengthMm));

/** A node's own height as a reference: that of its tail where it is on one. */
function heightOf(node: PlanNode): HeightRef {
  if (node.place.on === 'storey') return node.place.height;
  return { from: 'connection', of: node.place.point, mm: 0, connection: node.place.connection };
}

/** A fresh id that is free in the plan. */
export function fresh(plan: Plan, ids: IdMaker, prefix: 'n' | 'l'): string {
  for (;;) {
    const id = ids.next(prefix);
    if (!(id in plan.nodes) && !(id in plan.legs)) return id;
  }
}

/** A node at a place, its height told from whatever the height of the node `beside` is told from. */
export function nodeAt(
  plan: Plan,
  id: string,
  beside: string,
  storey: string,
  at: Xyz,
  option: string | null,
): PlanNode {
  const node = plan.nodes[beside];
  const z = node && nodePlace(plan, node)?.at.z;
  if (!node || z === undefined) throw new NotLaid('An end of that leg has no height.');
  const height = raised({ ...heightOf(node) }, at.z - z);
  const place = { on: 'storey', storey, x: quantise(at.x), y: quantise(at.y), height } as const;
  return { id, place, turn: null, option };
}

/** Kept on a later part of something that was split; the file format keeps fields it does not list. */
type Part = Leg & { readonly from?: string };

/** Part of a leg between two nodes: all that was said of the leg goes for it too. */
export function partOf(leg: Leg, id: string, a: string, b: string): Part {
  const copy = { ...leg, id, a, b, tube: { ...leg.tube }, insulation: leg.insulation && { ...leg.insulation } };
  return id === leg.id ? copy : { ...copy, from: leg.id };
}

/** What an option says of a leg goes for its parts too. */
export function withFates(plan: Plan, of: string, parts: readonly string[]): Plan['options'] {
  const options = { ...plan.options };
  for (const option of Object.values(options)) {
    const fate = option.fates[of];
    if (fate === undefined) continue;
    options[option.id] = { ...option, fates: { ...option.fates, ...Object.fromEntries(parts.map((p) => [p, fate])) } };
  }
  return options;
}

/** Changed records with the pipes of the plan before that meet them and what stands on those: all that is drawn anew. */
export function withNeighbours(plan: Plan, ids: Iterable<string>): ReadonlySet<string> {
  const found = new Set(ids);
  const at = incidence(plan);
  for (const id of [...found]) {
    const leg = plan.legs[id];
    if (leg) found.add(leg.a).add(leg.b);
  }
  for (const id of [...found]) {
    for (const record of [...at.legsAt(id), ...at.stretchesAt(id), ...at.itemsAt(id)]) found.add(record.id);
  }
  return found;
}

/** Records that are another one than before. */
export function changedIds(before: Plan, after: Plan): Set<string> {
  const ids = new Set<string>();
  for (const map of ['nodes', 'legs', 'stretches', 'items'] as const) {
    if (before[map] === after[map]) continue;
    for (const [id, record] of Object.entries(after[map])) if (before[map][id] !== record) ids.add(id);
    for (const id of Object.keys(before[map])) if (!(id in after[map])) ids.add(id);
  }
  return ids;
}

/** A node put into a leg at a place along it, or the end that is there already. */
export function splitAt(plan: Plan, id: string, alongMm: number, ids: IdMaker): { plan: Plan; node: string } {
  const placed = placedLeg(plan, id);
  const { leg, storey, lengthMm } = placed;
  if (alongMm < COINCIDENT_MM) return { plan, node: leg.a };
  if (alongMm > lengthMm - COINCIDENT_MM) return { plan, node: leg.b };
  const [node, rest] = [fresh(plan, ids, 'n'), fresh(plan, ids, 'l')];
  const made = nodeAt(plan, node, leg.a, storey, alongPlaced(placed, alongMm), leg.option);
  return {
    node,
    plan: {
      ...plan,
      nodes: { ...plan.nodes, [node]: made },
      legs: { ...plan.legs, [id]: { ...leg, b: node }, [rest]: partOf(leg, rest, node, leg.b) },
      items: itemsAlong(plan, id, leg.b, rest),
      options: withFates(plan, id, [rest]),
    },
  };
}

/** Items on an end of a leg that pointed along it point along another one. */
export function itemsAlong(plan: Plan, leg: string, node: string, now: string): Plan['items'] {
  const turned = incidence(plan)
    .itemsAt(node)
    .filter((i) => i.along === leg);
  if (turned.length === 0) return plan.items;
  return { ...plan.items, ...Object.fromEntries(turned.map((i) => [i.id, { ...i, along: now }])) };
}

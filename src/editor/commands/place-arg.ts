import * as v from 'valibot';
import { nodePlace } from '../../geometry/places.ts';
import { distance3, dot3, sub3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef } from '../../plan/records/parts.ts';
import { heightRef, id, mm } from '../../plan/records/parts.ts';
import type { Leg, PlanNode } from '../../plan/records/pipework.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { CommandContext } from './define-command.ts';
import { refuse } from './define-command.ts';
import { servicesAt } from './legs-at.ts';
import { splitLeg } from './split-leg.ts';

/** Where a run starts, turns or ends: open space, a tail, a node that is there, or a place along a leg (a tee). */
export const placeArg = v.variant('at', [
  v.object({ at: v.literal('free'), storey: id<'storey'>(), x: mm, y: mm, height: heightRef }),
  v.object({ at: v.literal('connection'), point: id<'point'>(), connection: id<'connection'>() }),
  v.object({ at: v.literal('node'), node: id<'node'>() }),
  v.object({ at: v.literal('leg'), leg: id<'leg'>(), alongMm: mm }),
]);
export type PlaceArg = v.InferOutput<typeof placeArg>;

/** Height of a node as a reference: its own, or that of its tail. */
export function heightOf(node: PlanNode): HeightRef {
  if (node.place.on === 'storey') return node.place.height;
  return { from: 'connection', of: node.place.point, mm: 0, connection: node.place.connection };
}

/** The same reference moved up by `by` mm, with its bounds. */
export function raised(height: HeightRef, by: number): HeightRef {
  if (Math.abs(by) < COINCIDENT_MM) return { ...height };
  const next: HeightRef = { ...height, mm: height.mm + by };
  if (height.assumed) next.assumed = { lo: height.assumed.lo + by, hi: height.assumed.hi + by };
  return next;
}

function connectionNode(draft: Plan, point: string, connection: string, service: string, ctx: CommandContext): string {
  const p = draft.points[point] ?? refuse('That point is no longer there.');
  const c = p.connections.find((x) => x.id === connection) ?? refuse(`${p.name} has no such connection.`);
  if (c.service !== service)
    refuse(`The ${c.label} connection of ${p.name} is for ${c.service}, this run is ${service}.`);
  const there = Object.values(draft.nodes).find(
    (n) =>
      n.place.on === 'connection' &&
      n.place.point === point &&
      n.place.connection === connection &&
      (n.option === null || n.option === ctx.option),
  );
  if (there) return there.id;
  const node = ctx.ids.next('n');
  const option =
    p.option === null ? ctx.option : (ctx.option ?? refuse(`${p.name} belongs to an option, not to the survey.`));
  draft.nodes[node] = { id: node, place: { on: 'connection', point, connection }, turn: null, option };
  return node;
}

/** Splits the leg at a place along it, or gives the end that is there already. */
export function nodeOnLeg(draft: Plan, leg: Leg, alongMm: number, ctx: CommandContext): string {
  const a = draft.nodes[leg.a];
  const b = draft.nodes[leg.b];
  const pa = a && nodePlace(draft, a);
  const pb = b && nodePlace(draft, b);
  if (!a || !pa || !pb) return refuse('That leg has no place yet: an end of it has no height.');
  const full = distance3(pa.at, pb.at);
  if (alongMm < COINCIDENT_MM) return leg.a;
  if (alongMm > full - COINCIDENT_MM) return leg.b;
  const t = alongMm / full;
  const at = { x: pa.at.x + (pb.at.x - pa.at.x) * t, y: pa.at.y + (pb.at.y - pa.at.y) * t };
  return splitLeg(draft, leg, { storey: pa.storey, ...at, height: raised(heightOf(a), (pb.at.z - pa.at.z) * t) }, ctx);
}

/** How far along a leg, from its `a` end, the place nearest to `at` lies. */
export function alongLeg(plan: Plan, leg: Leg, at: { x: number; y: number; z: number }): number | undefined {
  const a = plan.nodes[leg.a];
  const b = plan.nodes[leg.b];
  const pa = a && nodePlace(plan, a);
  const pb = b && nodePlace(plan, b);
  if (!pa || !pb) return undefined;
  const way = sub3(pb.at, pa.at);
  const full = dot3(way, way);
  return full === 0 ? 0 : Math.min(1, Math.max(0, dot3(sub3(at, pa.at), way) / full)) * Math.sqrt(full);
}

/** The node at a place, made where there is none. Refuses a tail, a node or a leg of another service. */
export function nodeFor(draft: Plan, place: PlaceArg, service: string, ctx: CommandContext): string {
  if (place.at === 'connection') return connectionNode(draft, place.point, place.connection, service, ctx);
  if (place.at === 'free') {
    if (!draft.storeys[place.storey]) refuse('That floor is no longer there.');
    const node = ctx.ids.next('n');
    const { storey, x, y, height } = place;
    draft.nodes[node] = { id: node, place: { on: 'storey', storey, x, y, height }, turn: null, option: ctx.option };
    return node;
  }
  if (place.at === 'leg') {
    const leg = draft.legs[place.leg] ?? refuse('That leg is no longer there.');
    const of = draft.runs[leg.run]?.service;
    if (of !== service) refuse(`That pipe is ${of ?? 'of no service'}, this run is ${service}: they cannot be joined.`);
    return nodeOnLeg(draft, leg, place.alongMm, ctx);
  }
  const node = draft.nodes[place.node] ?? refuse('That place is no longer there.');
  const other = [...servicesAt(draft, node.id)].find((s) => s !== service);
  if (other !== undefined) refuse(`A ${other} pipe stands there, this run is ${service}: they cannot be joined.`);
  return node.id;
}

import { floorZ } from '../../geometry/heights.ts';
import { pointFrame } from '../../geometry/hosting.ts';
import { nodePlace } from '../../geometry/places.ts';
import { toLocal } from '../../geometry/point-box.ts';
import { withChanges } from '../../network/displace/changes.ts';
import { followHosts } from '../../network/displace/displace.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef } from '../../plan/records/parts.ts';
import type { Connection, PlanNode, Point } from '../../plan/records/pipework.ts';
import { type CommandContext, refuse } from '../commands/define-command.ts';
import {
  type Mirror,
  mirroredOpening,
  mirroredPlace,
  mirroredVoid,
  mirroredWall,
  partnerOf,
  shownTail,
} from './reflect.ts';
import { roomsWithin } from './rooms-within.ts';

/** What is mirrored, by id. Runs go whole, with their corners and valves. */
export interface ToMirror {
  readonly walls: readonly string[];
  readonly points: readonly string[];
  readonly voids: readonly string[];
  readonly rooms: readonly string[];
  readonly runs: readonly string[];
}

interface Work {
  readonly before: Plan;
  /** The plan as a mirror shows it, tails and all; its maps are this work's own. */
  readonly mid: Plan;
  readonly by: Mirror;
  readonly copy: boolean;
  readonly ctx: CommandContext;
  /** What a record is called afterwards: its copy, or itself. */
  readonly names: Map<string, string>;
  named(prefix: string, id: string): string;
}

const MAPS = ['walls', 'openings', 'points', 'voids', 'rooms', 'runs', 'nodes', 'legs', 'stretches', 'items'] as const;

function workOf(by: Mirror, copy: boolean, ctx: CommandContext): Work {
  const { before } = ctx;
  const own = Object.fromEntries(MAPS.map((map) => [map, { ...before[map] }]));
  const names = new Map<string, string>();
  return {
    before,
    mid: { ...before, ...own },
    by,
    copy,
    ctx,
    names,
    named(prefix, id) {
      const name = names.get(id) ?? (copy ? ctx.ids.next(prefix) : id);
      names.set(id, name);
      return name;
    },
  };
}

const optionOf = <T extends { readonly option: Point['option'] }>({ copy, ctx }: Work, record: T): Point['option'] =>
  copy ? (ctx.option as Point['option']) : record.option;

function building(work: Work, chosen: ToMirror): void {
  const { before, mid, by } = work;
  for (const id of chosen.walls) {
    const wall = before.walls[id] ?? refuse('Some of it is no longer there.');
    const name = work.named('w', id);
    mid.walls[name] = { ...mirroredWall(wall, by), id: name as typeof wall.id, option: optionOf(work, wall) };
  }
  for (const opening of Object.values(before.openings)) {
    const wall = work.names.get(opening.wall);
    if (wall === undefined) continue;
    const id = work.named('o', opening.id) as typeof opening.id;
    const option = optionOf(work, opening);
    mid.openings[id] = { ...mirroredOpening(opening), id, wall: wall as typeof opening.wall, option };
  }
  for (const id of chosen.voids) {
    const was = before.voids[id] ?? refuse('Some of it is no longer there.');
    const name = work.named('v', id);
    mid.voids[name] = { ...mirroredVoid(was, by), id: name as typeof was.id, option: optionOf(work, was) };
  }
  const walls = chosen.walls.flatMap((id) => before.walls[id] ?? []);
  const rooms = work.copy ? [] : [...new Set([...chosen.rooms, ...roomsWithin(before, walls)])];
  for (const id of rooms) {
    const room = before.rooms[id];
    if (room) mid.rooms[id] = { ...room, seed: { ...room.seed, ...by.place(room.seed) } };
  }
}

/** A tail as a mirror shows it; where another of its service stands in its place, it takes that one's. */
const asShown = (point: Point, tail: Connection): Connection => (partnerOf(point, tail) ? tail : shownTail(tail));

function points(work: Work, chosen: ToMirror): void {
  const { before, mid, by } = work;
  for (const id of chosen.points) {
    const point = before.points[id] ?? refuse('Some of it is no longer there.');
    const name = work.named('p', id) as typeof point.id;
    const place = mirroredPlace(before, mid, point, by, work.names);
    const connections = point.connections.map((c) => asShown(point, c));
    mid.points[name] = { ...point, id: name, place, connections, option: optionOf(work, point) };
  }
}

/** The tail that a pipe is told to afterwards. */
function tailAfter(plan: Plan, point: string, connection: string): string {
  const record = plan.points[point];
  const tail = record?.connections.find((c) => c.id === connection);
  return (record && tail && partnerOf(record, tail)?.id) ?? connection;
}

/** A height told from something that was mirrored too is told from where that is now. */
function retold(work: Work, height: HeightRef): HeightRef {
  const of = height.of === null ? undefined : work.names.get(height.of);
  if (of === undefined || height.of === null) return height;
  if (height.connection === undefined) return { ...height, of };
  return { ...height, of, connection: tailAfter(work.before, height.of, height.connection) };
}

function nodePlaceAfter(work: Work, node: PlanNode): PlanNode['place'] {
  const { place } = node;
  if (place.on === 'storey') return { ...place, ...work.by.place(place), height: retold(work, place.height) };
  const point = work.names.get(place.point);
  if (point !== undefined) {
    const connection = tailAfter(work.before, place.point, place.connection);
    return { ...place, point: point as typeof place.point, connection: connection as typeof place.connection };
  }
  // What it met stays behind, so it ends in the open.
  const at = nodePlace(work.before, node) ?? refuse('An end of a pipe has no height yet, and so no place.');
  const storey = at.storey as Point['storey'];
  const mm = (at.at.z - (floorZ(work.before, at.storey) ?? 0)) as Point['size']['heightMm'];
  return { on: 'storey', storey, ...work.by.place(at.at), height: { from: 'floor', of: at.storey, mm } };
}

const pipesOf = (plan: Plan) => [...Object.values(plan.legs), ...Object.values(plan.stretches)];

/** Corners that pipe which stays shares with pipe that goes cannot be in both places. */
function nothingTorn(work: Work, runs: ReadonlySet<string>, nodes: ReadonlySet<string>): void {
  if (work.copy) return;
  const torn = pipesOf(work.before).find((p) => !runs.has(p.run) && (nodes.has(p.a) || nodes.has(p.b)));
  if (!torn) return;
  const name = work.before.runs[torn.run]?.name;
  refuse(`${name || 'Another run'} joins what is chosen. Choose it too, or make a copy.`);
}

function pipework(work: Work, chosen: ToMirror): ReadonlySet<string> {
  const { before, mid } = work;
  const runs = new Set(chosen.runs);
  const nodes = new Set(pipesOf(before).flatMap((p) => (runs.has(p.run) ? [p.a as string, p.b as string] : [])));
  nothingTorn(work, runs, nodes);
  for (const id of runs) {
    const run = before.runs[id] ?? refuse('Some of it is no longer there.');
    const name = work.named('r', id) as typeof run.id;
    mid.runs[name] = { ...run, id: name, option: optionOf(work, run) };
  }
  for (const id of nodes) {
    const node = before.nodes[id] ?? refuse('Some of it is no longer there.');
    const name = work.named('n', id) as typeof node.id;
    mid.nodes[name] = { ...node, id: name, place: nodePlaceAfter(work, node), option: optionOf(work, node) };
  }
  if (work.copy) copyPipes(work, runs, nodes);
  return nodes;
}

function copyPipes(work: Work, runs: ReadonlySet<string>, nodes: ReadonlySet<string>): void {
  const { before, mid } = work;
  const told = <T extends string>(id: T): T => (work.names.get(id) ?? id) as T;
  for (const leg of Object.values(before.legs)) {
    if (!runs.has(leg.run)) continue;
    const id = work.named('l', leg.id) as typeof leg.id;
    mid.legs[id] = { ...leg, id, run: told(leg.run), a: told(leg.a), b: told(leg.b), option: optionOf(work, leg) };
  }
  for (const one of Object.values(before.stretches)) {
    if (!runs.has(one.run)) continue;
    const id = work.named('u', one.id) as typeof one.id;
    mid.stretches[id] = { ...one, id, run: told(one.run), a: told(one.a), b: told(one.b), option: optionOf(work, one) };
  }
  for (const item of Object.values(before.items)) {
    if (!nodes.has(item.node)) continue;
    const id = work.named('i', item.id) as typeof item.id;
    const along = item.along !== null && work.names.has(item.along) ? told(item.along) : null;
    mid.items[id] = { ...item, id, node: told(item.node), along, option: optionOf(work, item) };
  }
}

/** A tail of a pipe that stays: it holds on where it was, until the point it met is followed to its new place. */
interface Held {
  readonly node: string;
  readonly point: string;
  readonly hold: Connection;
  readonly tail: Connection;
}

function heldTails(work: Work, chosen: ToMirror, gone: ReadonlySet<string>): Held[] {
  if (work.copy) return [];
  const points = new Set(chosen.points);
  return Object.values(work.before.nodes).flatMap((node): Held[] => {
    const { place } = node;
    if (place.on !== 'connection' || !points.has(place.point) || gone.has(node.id)) return [];
    const point = work.before.points[place.point];
    const id = tailAfter(work.before, place.point, place.connection);
    const tail = point?.connections.find((c) => c.id === id);
    const shown = work.mid.points[place.point];
    const frame = shown && pointFrame(work.mid, shown);
    const was = nodePlace(work.before, node)?.at;
    if (!tail || !frame || !was) return [];
    const hold = { ...tail, id: `held ${node.id}` as Connection['id'], at: toLocal(frame, was) as Connection['at'] };
    return [{ node: node.id, point: place.point, hold, tail }];
  });
}

/** Tails as they are made, and as a mirror would show them: what is between, the pipes make up. */
function joined(work: Work, chosen: ToMirror, held: readonly Held[]): Plan {
  const { mid, before } = work;
  const real: Record<string, Point> = {};
  const [shownPoints, madePoints, nodes] = [{ ...mid.points }, { ...mid.points }, { ...mid.nodes }];
  for (const id of chosen.points) {
    const name = work.names.get(id) ?? id;
    const [shown, point] = [mid.points[name], before.points[id]];
    if (!shown || !point) continue;
    const own = held.filter((h) => h.point === id);
    real[name] = { ...shown, connections: point.connections };
    shownPoints[name] = { ...shown, connections: [...shown.connections, ...own.map((h) => h.hold)] };
    const arrived = own.map((h) => ({ ...h.hold, at: h.tail.at }));
    madePoints[name] = { ...shown, connections: [...point.connections, ...arrived] };
  }
  for (const { node, hold } of held) {
    const record = nodes[node];
    if (record?.place.on === 'connection') nodes[node] = { ...record, place: { ...record.place, connection: hold.id } };
  }
  const was = { ...mid, points: shownPoints, nodes };
  const is = { ...mid, points: madePoints, nodes };
  const answer = followHosts(was, is, { ids: work.ctx.ids, holdSeen: false });
  if (!answer.ok) return refuse(answer.why);
  const plan = withChanges(is, answer.changes);
  const after = { ...plan.nodes };
  for (const { node, tail } of held) {
    const record = after[node];
    if (record?.place.on === 'connection') after[node] = { ...record, place: { ...record.place, connection: tail.id } };
  }
  return { ...plan, points: { ...plan.points, ...real }, nodes: after };
}

/**
 * The plan with things mirrored, or copied so, and what each is called then. Appliances are not turned inside out: they keep
 * the hand they are made with, and their pipes are joined to the tails where those are.
 */
export function mirrorThings(
  chosen: ToMirror,
  by: Mirror,
  copy: boolean,
  ctx: CommandContext,
): { readonly plan: Plan; readonly names: ReadonlyMap<string, string> } {
  const work = workOf(by, copy, ctx);
  building(work, chosen);
  points(work, chosen);
  const nodes = pipework(work, chosen);
  return { plan: joined(work, chosen, heldTails(work, chosen, nodes)), names: work.names };
}

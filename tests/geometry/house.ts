import { emptyPlan } from '../../src/plan/empty-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Opening, Room, Void, Wall } from '../../src/plan/records/building.ts';
import type { HeightRef } from '../../src/plan/records/parts.ts';
import type { PlanNode, Point } from '../../src/plan/records/pipework.ts';

export type Pair = readonly [number, number];
export const xy = ([x, y]: Pair) => ({ x, y });
export const datum = (mm: number): HeightRef => ({ from: 'datum', of: null, mm });
export const GROUND = 'g';

export const emptyHouse = (): Plan =>
  emptyPlan({ id: 'p', name: 'test', storey: GROUND, option: 'A', ceilingMm: 2400, buildUpMm: 240 });

/** A storey at the datum, 2400 high, with whatever is put in. */
export function house(parts: {
  readonly walls?: readonly Wall[];
  readonly openings?: readonly Opening[];
  readonly rooms?: readonly Room[];
  readonly voids?: readonly Void[];
  readonly points?: readonly Point[];
  readonly nodes?: readonly PlanNode[];
}): Plan {
  const byId = <T extends { readonly id: string }>(of: readonly T[] = []) =>
    Object.fromEntries(of.map((t) => [t.id, t]));
  return {
    ...emptyHouse(),
    walls: byId(parts.walls),
    openings: byId(parts.openings),
    rooms: byId(parts.rooms),
    voids: byId(parts.voids),
    points: byId(parts.points),
    nodes: byId(parts.nodes),
  };
}

export function wall(id: string, a: Pair, b: Pair, thicknessMm = 100, more: Partial<Wall> = {}): Wall {
  const rest = { construction: 'block', heightMm: null, option: null, sureness: 'seen' as const };
  return { id, storey: GROUND, a: xy(a), b: xy(b), thicknessMm, ...rest, ...more };
}

export function opening(
  id: string,
  on: string,
  alongMm: number,
  widthMm: number,
  more: Partial<Opening> = {},
): Opening {
  const heights = { sillMm: 0, headMm: 2000 };
  const rest = {
    name: '',
    from: 'a' as const,
    opens: true,
    hinge: null,
    swings: null,
    option: null,
    sureness: 'seen' as const,
  };
  return { id, wall: on, kind: 'door', alongMm, widthMm, ...heights, ...rest, ...more };
}

export function room(id: string, seed: Pair, more: Partial<Room> = {}): Room {
  const rest = { name: id, use: '', heated: null, floorMm: null, ceilingMm: null, finishes: '', escapeRoute: null };
  return { id, storey: GROUND, seed: xy(seed), ...rest, ...more };
}

export function space(
  id: string,
  outline: readonly Pair[],
  zFrom: number | null,
  zTo: number | null,
  more: Partial<Void> = {},
): Void {
  return {
    id,
    storey: GROUND,
    name: id,
    kind: 'floor',
    outline: outline.map(xy),
    holes: [],
    bottom: zFrom === null ? null : datum(zFrom),
    top: zTo === null ? null : datum(zTo),
    joists: null,
    bearings: [],
    ventilated: null,
    mayBeCut: null,
    option: null,
    sureness: 'seen',
    ...more,
  };
}

export function node(id: string, [x, y]: Pair, height: HeightRef): PlanNode {
  return { id, place: { on: 'storey', storey: GROUND, x, y, height }, turn: null, option: null };
}

export function at(id: string, point: string, connection: string): PlanNode {
  return { id, place: { on: 'connection', point, connection }, turn: null, option: null };
}

export function box(
  id: string,
  place: Point['place'],
  size: readonly [number, number, number],
  more: Partial<Point> = {},
): Point {
  const [widthMm, depthMm, heightMm] = size;
  return {
    id,
    kind: 'boiler',
    kindVersion: 1,
    name: id,
    storey: GROUND,
    place,
    size: { widthMm, depthMm, heightMm },
    connections: [
      { id: 'gas', service: 'gas', label: 'Gas', size: '22', at: { x: 0, y: 50, z: 0 }, facing: 'down' },
      { id: 'flow', service: 'heatingFlow', label: 'Flow', size: '22', at: { x: -100, y: 50, z: 40 }, facing: 'down' },
    ],
    fields: {},
    thing: null,
    option: null,
    sureness: 'seen',
    ...more,
  };
}

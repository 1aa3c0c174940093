import { connectionPlace } from '../../geometry/hosting.ts';
import { nodePlace } from '../../geometry/places.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef, Xy } from '../../plan/records/parts.ts';
import { heightOf, type PlaceArg, raised } from '../commands/place-arg.ts';
import type { InHand } from '../editor-api.ts';
import { type Direction, wayOf } from './told-run.ts';

/** Where the next leg starts: a tail before there is a run, a node after. */
export type Base =
  | { readonly is: 'tail'; readonly point: string; readonly connection: string }
  | { readonly is: 'node'; readonly node: string; readonly run: string | null };

interface Here {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly storey: string;
  readonly height: HeightRef;
}

export function hereOf(plan: Plan, base: Base): Here | undefined {
  if (base.is === 'tail') {
    const place = connectionPlace(plan, base.point, base.connection);
    const storey = plan.points[base.point]?.storey;
    if (!place || storey === undefined) return undefined;
    const height: HeightRef = { from: 'connection', of: base.point, mm: 0, connection: base.connection };
    return { ...place.at, storey, height };
  }
  const node = plan.nodes[base.node];
  const place = node && nodePlace(plan, node);
  return place && { ...place.at, storey: place.storey, height: heightOf(node) };
}

/** Where a leg of a told length and way ends: level legs keep the height they are at, uprights go by their length. */
export function placeBy(
  here: Here,
  dir: Direction,
  facing: Xy,
  lengthMm: number,
  turnDeg?: number,
): PlaceArg | undefined {
  const { x, y, storey, height } = here;
  if (dir === 'up') return { at: 'free', storey, x, y, height: raised(height, lengthMm) };
  if (dir === 'down') return { at: 'free', storey, x, y, height: raised(height, -lengthMm) };
  const way = wayOf(dir, facing, turnDeg);
  return way ? { at: 'free', storey, x: x + way.x * lengthMm, y: y + way.y * lengthMm, height } : undefined;
}

export const placeAt = (here: Here, height: HeightRef): PlaceArg => ({
  at: 'free',
  storey: here.storey,
  x: here.x,
  y: here.y,
  height,
});

/** The command that lays one leg from the base. */
export function legCommand(
  base: Base,
  to: PlaceArg,
  inHand: InHand,
  service: string,
): { command: string; args: unknown } {
  const { tube, joining, turns } = inHand;
  if (base.is === 'node' && base.run !== null) {
    return { command: 'run.extend', args: { run: base.run, from: base.node, tube, path: [to] } };
  }
  const start: PlaceArg =
    base.is === 'tail'
      ? { at: 'connection', point: base.point, connection: base.connection }
      : { at: 'node', node: base.node };
  return { command: 'run.start', args: { service, joining, turns, tube, path: [start, to] } };
}

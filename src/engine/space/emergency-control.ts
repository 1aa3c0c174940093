import { flatBox } from '../../geometry/boxes.ts';
import { floorZ } from '../../geometry/heights.ts';
import { intoWall, wallLength } from '../../geometry/wall-frame.ts';
import type { Item } from '../../plan/records/pipework.ts';
import { constant } from '../../reference/figure.ts';
import { between, type Quantity } from '../../report/quantity.ts';
import type { Given } from '../given.ts';
import { roomRound, type Side } from './clear-space.ts';
import { type Sited, site, standing } from './sited.ts';
import { wallsIn } from './walls-round.ts';

/** How the gas of a meter is shut off in a hurry. */
export interface EmergencyControl {
  readonly meter: Sited;
  readonly reached: boolean | null;
  readonly turns: boolean | null;
  /** Underside of the meter above the floor, mm; null where it hangs outside or its height is not known. */
  readonly high: Quantity | null;
  /** What is clear in front of it; null outside. */
  readonly front: Side | null;
  /** It stands apart from every wall that is drawn. */
  readonly remote: boolean;
}

const REMOTE_MM = constant('emergency-control', 'remote', 'mm');

function highOf(given: Given, { point, body, room, face }: Sited): Quantity | null {
  const floor = face && floorZ(given.plan, room?.id ?? point.storey);
  if (floor === null || floor === undefined) return null;
  const { zLo, zHi, origin } = body.frame;
  return between(zLo - floor, zHi - floor, 'mm', 0, 'derived', origin.z - floor);
}

/** Does any wall of the storey come near it? Where none is drawn at all nothing is known of where it stands. */
function standsApart(given: Given, { point, middle, face }: Sited): boolean {
  if (face || point.place.on === 'wall') return false;
  const near = wallsIn(given, point.storey, flatBox([middle], REMOTE_MM)).some((wall) => {
    const { u, v } = intoWall(wall, { ...middle, z: 0 });
    const beyond = Math.max(-u, u - wallLength(wall), 0);
    return Math.hypot(beyond, Math.max(0, Math.abs(v) - wall.thicknessMm / 2)) <= REMOTE_MM;
  });
  return !near && Object.values(given.plan.walls).some((w) => given.network.alive.has('walls', w.id));
}

const told = (value: unknown): boolean | null => (typeof value === 'boolean' ? value : null);

/** One for each meter. Empty where this job lays no gas pipe: what is there is then not its business. */
export function emergencyControls(given: Given): readonly EmergencyControl[] {
  const kept = known.get(given);
  if (kept) return kept;
  const lays = [...given.network.edges.values()].some((e) => e.service === 'gas' && e.state === 'new');
  const meters = lays ? standing(given, 'gas-meter').flatMap((p) => site(given, p) ?? []) : [];
  const made = meters.map((meter): EmergencyControl => {
    const { controlReached, controlTurns } = meter.point.fields;
    return {
      meter,
      reached: told(controlReached),
      turns: told(controlTurns),
      high: highOf(given, meter),
      front: roomRound(given, meter)?.sides.find((s) => s.id === 'front') ?? null,
      remote: standsApart(given, meter),
    };
  });
  known.set(given, made);
  return made;
}

const known = new WeakMap<Given, readonly EmergencyControl[]>();

/** Emergency controls drawn on the pipe itself, with the run they stand on. */
export function controlValves(given: Given): readonly { readonly item: Item; readonly run: string }[] {
  const { network, plan } = given;
  return Object.values(plan.items).flatMap((item) => {
    if (item.kind !== 'emergency-control-valve' || !network.alive.has('items', item.id)) return [];
    const vertex = network.vertices.get(network.vertexOf.get(item.node) ?? '');
    const run = network.edges.get(vertex?.edges[0] ?? '')?.run;
    return run === undefined ? [] : [{ item, run }];
  });
}

import { ceilingZ } from '../../geometry/heights.ts';
import { insideOutline, type Outline, toEdge } from '../../geometry/outlines.ts';
import type { RoomFace } from '../../geometry/rooms.ts';
import { wallHeights } from '../../geometry/wall-frame.ts';
import { constant, figure } from '../../reference/figure.ts';
import { between, exact, type Quantity } from '../../report/quantity.ts';
import type { Given } from '../given.ts';
import { openingsOf } from './obstacles.ts';
import { byFace, type Sited, site, standing } from './sited.ts';
import { wallsRound } from './walls-round.ts';

export type AlarmAsk = 'walls' | 'ceiling' | 'heads' | 'nearest' | 'furthest';

/** Where each is measured to, inside a sentence. */
export const SAY_ALARM: Readonly<Record<AlarmAsk, string>> = {
  walls: 'from the nearest wall',
  ceiling: 'below the ceiling',
  heads: 'above the tops of doors and windows',
  nearest: 'along the floor from what it watches',
  furthest: 'along the floor from what it watches',
};

/** One distance of an alarm beside what is wanted of it, both in mm. */
export interface AlarmDistance {
  readonly ask: AlarmAsk;
  readonly found: Quantity;
  readonly wanted: Quantity;
  readonly wantedIs: 'atLeast' | 'atMost';
  /** By the whole of what it may be: a height that was only assumed is no fault. */
  readonly ok: boolean;
}

const AT_CEILING_MM = constant('alarm-place', 'at the ceiling', 'mm');

export type AlarmOn = 'wall' | 'ceiling' | 'shelf';

const over = (given: Given, { point, room }: Sited): number | undefined =>
  ceilingZ(given.plan, room?.id ?? point.storey);

/** As told, else by how it is drawn: on its wall, at the ceiling, or standing on something. */
export function alarmOn(given: Given, alarm: Sited): AlarmOn {
  const { on } = alarm.point.fields;
  if (on === 'wall' || on === 'ceiling' || on === 'shelf') return on;
  if (alarm.point.place.on === 'wall') return 'wall';
  const ceiling = over(given, alarm);
  return ceiling !== undefined && ceiling - alarm.body.box.maxZ <= AT_CEILING_MM ? 'ceiling' : 'shelf';
}

/** How far apart two bodies stand along the floor, mm; 0 where one is over the other. */
function apart(a: Outline, b: Outline): number {
  if (a.some((p) => insideOutline(p, b)) || b.some((p) => insideOutline(p, a))) return 0;
  return Math.min(...a.map((p) => toEdge(p, b)), ...b.map((p) => toEdge(p, a)));
}

function held(ask: AlarmAsk, found: Quantity, row: string, wantedIs: 'atLeast' | 'atMost'): AlarmDistance[] {
  const wanted = figure('alarm-place', row, 'mm');
  if (wanted.is !== 'known') return [];
  const ok = wantedIs === 'atLeast' ? (found.hi ?? found.lo) >= wanted.lo : found.lo <= wanted.lo;
  return [{ ask, found, wanted, wantedIs, ok }];
}

/** Highest top of a door or window in the walls round the room, above the datum; null where there is none. */
function topOfOpenings(given: Given, { point, face }: Sited): number | null {
  if (!face) return null;
  const tops = wallsRound(given, point.storey, face).flatMap((wall) => {
    const heights = wallHeights(given.plan, wall);
    const all = openingsOf(given, wall.id).filter((o) => o.kind === 'door' || o.kind === 'window');
    return heights ? all.map((o) => heights.bottom + o.headMm) : [];
  });
  return tops.length === 0 ? null : Math.max(...tops);
}

function onWall(given: Given, alarm: Sited): AlarmDistance[] {
  const { frame, local } = alarm.body;
  const ceiling = over(given, alarm);
  if (ceiling === undefined) return [];
  const drawn = ceiling - frame.origin.z - local.maxZ;
  const [up, down] = [frame.zHi - frame.origin.z, frame.origin.z - frame.zLo];
  const below = between(Math.max(0, drawn - up), Math.max(0, drawn + down), 'mm', 0, 'derived', Math.max(0, drawn));
  const held1 = held('ceiling', below, 'below ceiling', 'atLeast');
  const heads = topOfOpenings(given, alarm);
  const clear = held1[0]?.wanted.lo ?? 0;
  // Where a head leaves no room under the ceiling for both, only the ceiling is asked about.
  if (heads === null || heads + local.maxZ > ceiling - clear) return held1;
  const above = frame.origin.z - heads;
  const found = between(above - down, above + up, 'mm', 0, 'derived', above);
  const wanted = exact(0, 'mm', 0, held1[0]?.wanted.sureness ?? 'page');
  return [...held1, { ask: 'heads', found, wanted, wantedIs: 'atLeast', ok: above + up >= 0 }];
}

function onCeiling({ middle, face }: Sited): AlarmDistance[] {
  if (!face) return [];
  const mm = Math.min(...[face.outline, ...face.holes].map((o) => toEdge(middle, o)));
  return held('walls', exact(mm, 'mm', 0), 'from walls', 'atLeast');
}

/** Every distance of an alarm to what it watches, its ceiling and its walls. */
export function alarmDistances(given: Given, alarm: Sited, appliance: Sited): AlarmDistance[] {
  const mm = exact(apart(alarm.body.footprint, appliance.body.footprint), 'mm', 0);
  const on = alarmOn(given, alarm);
  return [
    ...held('nearest', mm, 'nearest', 'atLeast'),
    ...held('furthest', mm, 'furthest', 'atMost'),
    ...(on === 'wall' ? onWall(given, alarm) : on === 'ceiling' ? onCeiling(alarm) : []),
  ];
}

/** What a new appliance has for an alarm. */
export interface Watched {
  readonly appliance: Sited;
  readonly is: 'none' | 'here' | 'elsewhere' | 'unclear';
  /** The best placed in its room, else any. */
  readonly alarm: Sited | null;
  readonly distances: readonly AlarmDistance[];
}

/** Appliances that stay where they are and burn gas; cookers and hobs are left out by the amendment. */
const FIXED = ['boiler', 'gas-fire'];

interface Alarms {
  readonly all: readonly Sited[];
  readonly in: ReadonlyMap<RoomFace | null, readonly Sited[]>;
}

function watch(given: Given, appliance: Sited, alarms: Alarms): Watched {
  const { storey } = appliance.point;
  const faults = (all: readonly AlarmDistance[]): number => all.filter((d) => !d.ok).length;
  const here = appliance.face ? (alarms.in.get(appliance.face) ?? []) : [];
  const [best] = here
    .map((alarm) => ({ alarm, distances: alarmDistances(given, alarm, appliance) }))
    .sort((a, b) => faults(a.distances) - faults(b.distances));
  if (best) return { appliance, is: 'here', ...best };
  // Where no walls close a room round the appliance nobody can tell what is in it.
  const unclear = appliance.face ? undefined : alarms.all.find((a) => a.point.storey === storey);
  if (unclear) return { appliance, is: 'unclear', alarm: unclear, distances: [] };
  const [other] = alarms.all;
  return { appliance, is: other ? 'elsewhere' : 'none', alarm: other ?? null, distances: [] };
}

const known = new WeakMap<Given, readonly Watched[]>();

/** Each appliance that this job sets, with the alarm that watches it. */
export function watched(given: Given): readonly Watched[] {
  const kept = known.get(given);
  if (kept) return kept;
  const fresh = FIXED.flatMap((kind) => standing(given, kind)).filter((p) => given.network.alive.state(p.id) === 'new');
  const all = fresh.length === 0 ? [] : standing(given, 'co-alarm').flatMap((p) => site(given, p) ?? []);
  const alarms = { all, in: byFace(all) };
  const made = fresh.flatMap((p) => site(given, p) ?? []).map((a) => watch(given, a, alarms));
  known.set(given, made);
  return made;
}

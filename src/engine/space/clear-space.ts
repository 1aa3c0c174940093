import { ceilingZ, floorZ } from '../../geometry/heights.ts';
import { toHouse } from '../../geometry/hosting.ts';
import { insideOutline } from '../../geometry/outlines.ts';
import { roofPlaneZ } from '../../geometry/roofs.ts';
import { constant, type Figure, figure } from '../../reference/figure.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import type { Given } from '../given.ts';
import { limitFor } from '../limits.ts';
import { clipTo } from './clip.ts';
import { type Obstacle, obstaclesRound } from './obstacles.ts';
import type { Sited } from './sited.ts';
import { roofsIn } from './solid-things.ts';

export type SideId = 'front' | 'left' | 'right' | 'above' | 'below' | 'door';

/** What is clear on one side of a case: found and wanted in mm, and what stands there. `lo` of found is without bound
 * above where nothing was met as far as it was looked. */
export interface Side {
  readonly id: SideId;
  readonly found: Quantity;
  readonly wanted: Quantity | null;
  readonly fromSheet: boolean;
  readonly by: Obstacle | { readonly say: string; readonly is: 'floor' | 'ceiling' | 'roof' } | null;
}

const LOOKED_MM = constant('working-room', 'looked', 'mm');
/** Less than a thing may touch by: what only stands flush beside a case is not in front of it. */
const HAIR_MM = 1;

const ASKED: Readonly<Record<SideId, { row: string; field: string }>> = {
  front: { row: 'front', field: 'clearFrontMm' },
  door: { row: 'door', field: 'clearDoorMm' },
  left: { row: 'sides', field: 'clearSidesMm' },
  right: { row: 'sides', field: 'clearSidesMm' },
  above: { row: 'above', field: 'clearAboveMm' },
  below: { row: 'below', field: 'clearBelowMm' },
};

export const generalRoom = (side: SideId): Figure => figure('working-room', ASKED[side].row, 'mm');

function wantedOn(given: Given, { point }: Sited, side: SideId): { wanted: Quantity | null; fromSheet: boolean } {
  const told = point.fields[ASKED[side].field];
  if (typeof told === 'number') return { wanted: exact(told, 'mm', 0, 'page'), fromSheet: true };
  const limit = limitFor(given.plan, `working-room-${ASKED[side].row}`, point.id, generalRoom(side));
  return { wanted: limit?.figure ?? null, fromSheet: limit?.overridden != null };
}

interface Nearest {
  readonly mm: number;
  readonly by: Side['by'];
}

/** Nearest of some obstacles along one axis of the case, over the width and height that the case takes up there. */
function nearest(boiler: Sited, obstacles: readonly Obstacle[], side: 'front' | 'left' | 'right'): Nearest | null {
  const { minX, maxX, maxY, maxZ } = boiler.body.local;
  const far = LOOKED_MM * 2;
  const strip =
    side === 'front'
      ? { minX: minX + HAIR_MM, maxX: maxX - HAIR_MM, minY: maxY / 2, maxY: far }
      : side === 'left'
        ? { minX: -far, maxX: 0, minY: HAIR_MM, maxY: maxY - HAIR_MM }
        : { minX: 0, maxX: far, minY: HAIR_MM, maxY: maxY - HAIR_MM };
  let found: Nearest | null = null;
  for (const o of obstacles) {
    if (o.top <= HAIR_MM || o.bottom >= maxZ - HAIR_MM) continue;
    const part = clipTo(o.outline, strip);
    if (part.length < 3) continue;
    const mm =
      side === 'front'
        ? Math.min(...part.map((p) => p.y)) - maxY
        : side === 'left'
          ? minX - Math.max(...part.map((p) => p.x))
          : Math.min(...part.map((p) => p.x)) - maxX;
    if (!found || mm < found.mm) found = { mm: Math.max(0, mm), by: o };
  }
  return found;
}

/** Lowest thing over the case, or highest under it, among what was drawn there. */
function upright(boiler: Sited, obstacles: readonly Obstacle[], side: 'above' | 'below'): Nearest | null {
  const { minX, maxX, maxY, maxZ } = boiler.body.local;
  const shadow = { minX: minX + HAIR_MM, maxX: maxX - HAIR_MM, minY: HAIR_MM, maxY: maxY - HAIR_MM };
  let found: Nearest | null = null;
  for (const o of obstacles) {
    // Pipes drop from a case and boxes hide them: neither is looked at over or under it.
    if (o.is !== 'point') continue;
    const mm = side === 'above' ? o.bottom - maxZ : -o.top;
    if ((side === 'above' ? o.top <= maxZ : o.bottom >= 0) || clipTo(o.outline, shadow).length < 3) continue;
    if (!found || mm < found.mm) found = { mm: Math.max(0, mm), by: o };
  }
  return found;
}

/** The ceiling or the lowest roof over any corner of a case. */
function overCase(given: Given, { point, body, room }: Sited): { z: number; by: Side['by'] } | null {
  const ceiling = ceilingZ(given.plan, room?.id ?? point.storey);
  let lowest: { z: number; by: Side['by'] } | null =
    ceiling === undefined ? null : { z: ceiling, by: { say: 'the ceiling', is: 'ceiling' } };
  for (const roof of roofsIn(given, point.storey, body.box)) {
    for (const corner of body.footprint) {
      const z = insideOutline(corner, roof.outline) ? roofPlaneZ(given.plan, roof, corner) : undefined;
      if (z !== undefined && (!lowest || z < lowest.z)) lowest = { z, by: { say: 'the roof', is: 'roof' } };
    }
  }
  return lowest;
}

const nearer = (a: Nearest | null, b: Nearest | null): Nearest | null => (!a ? b : !b || a.mm <= b.mm ? a : b);

function foundOf(near: Nearest | null, lo: number, hi: number): Quantity {
  const base = { unit: 'mm', digits: 0, sureness: 'derived' } as const;
  if (!near || near.mm > LOOKED_MM) return { ...base, lo: LOOKED_MM, hi: null, value: null };
  return { ...base, lo: Math.max(0, near.mm + lo), hi: Math.max(0, near.mm + hi), value: near.mm };
}

export interface RoomRound {
  readonly boiler: Sited;
  readonly sides: readonly Side[];
  readonly obstacles: readonly Obstacle[];
}

const known = new WeakMap<Sited, RoomRound>();

/** What is clear round a case that stands in a closed space; null where no room is closed round it. */
export function roomRound(given: Given, boiler: Sited): RoomRound | null {
  if (!boiler.face) return null;
  const kept = known.get(boiler);
  if (kept) return kept;
  const obstacles = obstaclesRound(given, boiler, LOOKED_MM);
  const solid = obstacles.filter((o) => o.is !== 'door');
  const { frame, local } = boiler.body;
  const top = toHouse(frame, { x: 0, y: 0, z: local.maxZ }).z;
  const over = overCase(given, boiler);
  const floor = floorZ(given.plan, boiler.room?.id ?? boiler.point.storey);
  const above = nearer(upright(boiler, solid, 'above'), over && { mm: Math.max(0, over.z - top), by: over.by });
  const under =
    floor === undefined
      ? null
      : { mm: Math.max(0, frame.origin.z - floor), by: { say: 'the floor', is: 'floor' as const } };
  const below = nearer(upright(boiler, solid, 'below'), under);
  // A case whose height was assumed may stand higher or lower than drawn.
  const [down, up] = [frame.zLo - frame.origin.z, frame.zHi - frame.origin.z];
  const side = (id: SideId, near: Nearest | null, lo = 0, hi = 0): Side => ({
    id,
    found: foundOf(near, lo, hi),
    ...wantedOn(given, boiler, id),
    by: near && near.mm <= LOOKED_MM ? near.by : null,
  });
  const front = nearest(boiler, solid, 'front');
  const door = nearest(
    boiler,
    obstacles.filter((o) => o.is === 'door'),
    'front',
  );
  const sides = [
    side('front', front),
    // Only a door nearer than the room to work in is one that has to be opened for it.
    ...(door && door.mm < (wantedOn(given, boiler, 'front').wanted?.lo ?? 0) ? [side('door', door)] : []),
    side('left', nearest(boiler, solid, 'left')),
    side('right', nearest(boiler, solid, 'right')),
    side('above', above, -up, -down),
    side('below', below, down, up),
  ];
  const made = { boiler, sides, obstacles };
  known.set(boiler, made);
  return made;
}

/** Short of what is wanted by how many mm, by the figure drawn; 0 or less where it is enough. */
export const shortBy = ({ found, wanted }: Side): number => (wanted ? wanted.lo - (found.value ?? found.lo) : 0);

export type SideState = 'pass' | 'check' | 'stop' | 'none';

/** Short of its own sheet is a stop; of a general figure, or by a height that was assumed, a check. */
export function stateOf(side: Side): SideState {
  if (!side.wanted) return 'none';
  if (shortBy(side) <= 0) return 'pass';
  return side.fromSheet && side.found.hi !== null && side.found.hi < side.wanted.lo ? 'stop' : 'check';
}

export const SAY_SIDE: Readonly<Record<SideId, string>> = {
  front: 'in front',
  door: 'to the door in front',
  left: 'to its left',
  right: 'to its right',
  above: 'above it',
  below: 'below it',
};

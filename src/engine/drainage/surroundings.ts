import { between, clipToArea, type Part, shared } from '../../geometry/outlines.ts';
import { roomFaces } from '../../geometry/rooms.ts';
import { distance3 } from '../../geometry/vec.ts';
import { voidFinder } from '../../geometry/void-stretches.ts';
import { wallFinder } from '../../geometry/wall-crossings.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xy, Xyz } from '../../plan/records/parts.ts';
import { standingBuilding } from '../clearance/crossings.ts';
import type { Given } from '../given.ts';
import type { DrainStep } from './drains.ts';

/** What is round a part of a pipe. `wall`: inside a wall. `maybeCold`: a floor void of the lowest floor nobody told of. */
export type Round = 'room' | 'cold' | 'maybeCold' | 'outside' | 'wall';

export interface RoundPart {
  readonly round: Round;
  readonly fromMm: number;
  readonly toMm: number;
  /** The room or void that makes it cold. */
  readonly of: string | null;
}

interface Layer {
  readonly storey: string;
  readonly bottom: number;
  readonly top: number;
}

/** Storeys from floor to floor: what lies between a ceiling and the floor above belongs to the one above. */
function layers(plan: Plan): Layer[] {
  const order = Object.values(plan.storeys).sort((a, b) => a.floorMm - b.floorMm);
  return order.map((s, i) => {
    const below = order[i - 1];
    const bottom = below
      ? Math.min(s.floorMm - s.buildUpMm, below.floorMm + below.ceilingMm)
      : Number.NEGATIVE_INFINITY;
    return { storey: s.id, bottom, top: s.floorMm + s.ceilingMm };
  });
}

interface PlanBox {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

function planBox(of: readonly Xy[]): PlanBox {
  const [xs, ys] = [of.map((p) => p.x), of.map((p) => p.y)];
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
}

const touch = (a: PlanBox, b: PlanBox): boolean =>
  a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;

interface Zone extends RoundPart {
  readonly rank: number;
}

/** Of zones that lie over each other the higher rank says what is there. */
const RANK = { outside: 0, wall: 1, room: 2, maybeCold: 3, cold: 4 } as const;

function paint(lengthMm: number, zones: readonly Zone[]): RoundPart[] {
  const cuts = [...new Set([0, lengthMm, ...zones.flatMap((z) => [z.fromMm, z.toMm])])]
    .filter((c) => c >= 0 && c <= lengthMm)
    .sort((a, b) => a - b);
  const parts: RoundPart[] = [];
  for (const [i, fromMm] of cuts.entries()) {
    const toMm = cuts[i + 1];
    if (toMm === undefined || toMm - fromMm < 0.5) continue;
    const middle = (fromMm + toMm) / 2;
    const best = zones
      .filter((z) => z.fromMm <= middle && z.toMm >= middle)
      .reduce<Zone | undefined>((a, b) => (a && a.rank >= b.rank ? a : b), undefined);
    const next = { round: best?.round ?? ('outside' as const), of: best?.of ?? null };
    const last = parts[parts.length - 1];
    if (last && last.round === next.round && last.of === next.of) parts[parts.length - 1] = { ...last, toMm };
    else parts.push({ ...next, fromMm, toMm });
  }
  return parts;
}

export interface Surroundings {
  /** False where no room is closed in on any floor: then nothing tells inside from outside. */
  readonly told: boolean;
  /** Parts of a piece in the way the water goes; null where it has no place or nothing is told. */
  parts(step: DrainStep): readonly RoundPart[] | null;
}

const known = new WeakMap<Given, Surroundings>();

/** Tells inside, outside and unheated apart, for many pieces of one plan. */
export function surroundings(given: Given): Surroundings {
  const found = known.get(given) ?? look(given);
  known.set(given, found);
  return found;
}

function look(given: Given): Surroundings {
  const { plan, network } = given;
  const standing = standingBuilding(network);
  const voids = voidFinder(plan, standing);
  const walls = wallFinder(plan, standing);
  const levels = layers(plan);
  const lowest = levels[0]?.storey;
  const faces = new Map(
    levels.map(
      (l) =>
        [
          l.storey,
          roomFaces(plan, l.storey, standing).faces.map((face) => ({ face, box: planBox(face.outline) })),
        ] as const,
    ),
  );
  const told = [...faces.values()].some((f) => f.length > 0);

  const rooms = (a: Xyz, b: Xyz, lengthMm: number): Zone[] =>
    levels.flatMap((level) => {
      const upright = between(a.z, b.z, level.bottom, level.top);
      if (!upright) return [];
      const near = planBox([a, b]);
      const met = (faces.get(level.storey) ?? []).filter(({ box }) => touch(box, near));
      return met.flatMap(({ face }) =>
        clipToArea(a, b, face.outline, face.holes).flatMap((flat): Zone[] => {
          const part = shared(flat, upright);
          if (!part) return [];
          const cold = face.rooms.find((r) => plan.rooms[r]?.heated === false) ?? null;
          return [zone(cold === null ? 'room' : 'cold', part, lengthMm, cold)];
        }),
      );
    });
  const spaces = (a: Xyz, b: Xyz): Zone[] =>
    voids.spaces({ a, b }).flatMap((s): Zone[] => {
      const space = plan.voids[s.void];
      if (!space) return [];
      if (space.kind !== 'floor' && space.kind !== 'ceiling') return [];
      const under = space.kind === 'floor' && space.storey === lowest;
      const round = !under || space.ventilated === false ? 'room' : space.ventilated === true ? 'cold' : 'maybeCold';
      return [{ round, of: round === 'room' ? null : space.id, fromMm: s.fromMm, toMm: s.toMm, rank: RANK[round] }];
    });
  const inWalls = (a: Xyz, b: Xyz): Zone[] =>
    walls
      .crossings(a, b, null)
      .map((c) => ({ round: 'wall', of: c.wall, fromMm: c.fromMm, toMm: c.toMm, rank: RANK.wall }));
  return {
    told,
    parts({ a, b, edge }) {
      if (!told || !a || !b || edge.kind !== 'leg') return null;
      const lengthMm = distance3(a.at, b.at);
      return paint(lengthMm, [...rooms(a.at, b.at, lengthMm), ...spaces(a.at, b.at), ...inWalls(a.at, b.at)]);
    },
  };
}

const zone = (round: Round, [from, to]: Part, lengthMm: number, of: string | null): Zone => ({
  round,
  of,
  fromMm: from * lengthMm,
  toMm: to * lengthMm,
  rank: RANK[round],
});

import { pointKinds } from '../../src/catalogue/point-kinds.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Reading } from '../../src/plan/records/basis.ts';
import type { Opening, Void, Wall } from '../../src/plan/records/building.ts';
import type { HeightRef, HostedPlace } from '../../src/plan/records/parts.ts';
import type { Joining, Leg, Point } from '../../src/plan/records/pipework.ts';

export const floor = (of: string, mm: number): HeightRef => ({ from: 'floor', of, mm });
export const ceiling = (of: string, mm: number): HeightRef => ({ from: 'ceiling', of, mm });
export const datum = (mm: number): HeightRef => ({ from: 'datum', of: null, mm });
export const voidTop = (of: string, mm: number): HeightRef => ({ from: 'voidTop', of, mm });
export const voidBottom = (of: string, mm: number): HeightRef => ({ from: 'voidBottom', of, mm });
export const beside = (of: string, connection: string, mm: number): HeightRef => ({
  from: 'connection',
  of,
  mm,
  connection,
});

type Pair = readonly [number, number];
const xy = ([x, y]: Pair) => ({ x, y });
export const outlineOf = (...corners: Pair[]) => corners.map(xy);

/** A corner of a run: free in a storey, at a connection, or a node that is there already. */
export type Corner =
  | { readonly name?: string; readonly at: Pair; readonly height: HeightRef; readonly storey?: string }
  | { readonly name?: string; readonly point: string; readonly connection: string }
  | { readonly node: string };

export interface RunTold {
  readonly id: string;
  readonly service: string;
  readonly name: string;
  readonly joining: Joining;
  readonly turns?: 'elbow' | 'bend';
  readonly sureness?: Leg['sureness'];
  readonly tube: Leg['tube'];
  /** Tube of single legs where the run changes size, by place in the row. */
  readonly tubes?: Readonly<Record<number, Leg['tube']>>;
  readonly insulation?: Leg['insulation'];
  readonly corners: readonly Corner[];
}

export interface StretchTold {
  readonly id: string;
  readonly from: Corner;
  readonly to: Corner;
  readonly lengthMm: Pair;
  readonly bends: Pair;
  readonly tube: Leg['tube'];
}

export const copper = (size: string | null): Leg['tube'] => ({ kind: 'copper', size });

/** A figure read on the day of the survey; its kind where the sums use it. */
export const read = (
  kind: string | null,
  what: string,
  value: number,
  unit: string,
  place: string,
  note = '',
  point?: string,
): Reading => ({
  what,
  value,
  unit,
  on: '2026-05-01',
  place,
  note,
  ...(kind === null ? {} : { kind }),
  ...(point === undefined ? {} : { point }),
});

/** Name of the node at a connection: every pipe that meets there shares it. */
export const atConnection = (point: string, connection: string): string => `${point}.${connection}`;

/** Adds records to a plan the way a survey is told: wall by wall, point by point, run by run. */
export function houseKit(plan: Plan, storey: string, option: string) {
  const nodeFor = (corner: Corner, run: string, index: number, of: string | null, on: string): string => {
    if ('node' in corner) return corner.node;
    if ('point' in corner) {
      const id = corner.name ?? atConnection(corner.point, corner.connection);
      const place = { on: 'connection' as const, point: corner.point, connection: corner.connection };
      // It stands as long as its point does: pipes of several options may meet at one that was surveyed.
      plan.nodes[id] ??= { id, place, turn: null, option: plan.points[corner.point]?.option ?? null };
      return id;
    }
    const id = corner.name ?? `${run}.${index}`;
    const place = {
      on: 'storey' as const,
      storey: corner.storey ?? on,
      x: corner.at[0],
      y: corner.at[1],
      height: corner.height,
    };
    plan.nodes[id] = { id, place, turn: null, option: of };
    return id;
  };

  return {
    wall(
      id: string,
      a: Pair,
      b: Pair,
      thicknessMm: number,
      construction: string,
      on = storey,
      of: Wall['option'] = null,
      more: Partial<Pick<Wall, 'party' | 'fire' | 'leafMm' | 'heightMm'>> = {},
    ) {
      const body = { a: xy(a), b: xy(b), thicknessMm, construction, heightMm: null };
      plan.walls[id] = { id, storey: on, ...body, ...more, option: of, sureness: 'seen' };
    },
    opening(
      wall: string,
      id: string,
      told: Partial<Opening> & Pick<Opening, 'kind' | 'name' | 'alongMm' | 'widthMm' | 'headMm'>,
    ) {
      const rest = {
        from: 'a' as const,
        sillMm: 0,
        opens: true,
        hinge: null,
        swings: null,
        option: null,
        sureness: 'seen' as const,
      };
      plan.openings[id] = { id, wall, ...rest, ...told };
    },
    room(
      id: string,
      name: string,
      use: string,
      seed: Pair,
      more: { heated?: boolean; ceilingMm?: number; finishes?: string } = {},
      on = storey,
    ) {
      const heights = { floorMm: null, ceilingMm: more.ceilingMm ?? null };
      const rest = { heated: more.heated ?? null, ...heights, finishes: more.finishes ?? '', escapeRoute: null };
      plan.rooms[id] = { id, storey: on, seed: xy(seed), name, use, ...rest };
    },
    space(told: Omit<Void, 'storey' | 'holes' | 'bearings' | 'option' | 'sureness'> & Partial<Void>) {
      plan.voids[told.id] = { storey, holes: [], bearings: [], option: null, sureness: 'seen', ...told };
    },
    /** Connections and fields that are not told are those the kind has when it is new. */
    point(told: Pick<Point, 'id' | 'kind' | 'name' | 'place' | 'size'> & Partial<Point>) {
      const kind = pointKinds.get(told.kind);
      if (!kind) throw new Error(`${told.id}: no point of kind ${told.kind}`);
      const fields = { ...kind.defaults, ...told.fields };
      const connections = told.connections ?? kind.connections(told.size, fields);
      const { id, name, place, size } = told;
      const own = { id, kind: kind.id, kindVersion: kind.version, name, storey: told.storey ?? storey, place, size };
      const rest = { thing: null, option: told.option ?? null, sureness: told.sureness ?? ('seen' as const) };
      plan.points[id] = { ...own, connections, fields, ...rest };
    },
    run(told: RunTold, of: string | null = option, on = storey) {
      const { id, service, name, joining } = told;
      plan.runs[id] = { id, service, name, joining, turns: told.turns ?? 'elbow', option: of };
      // A run told in two parts goes on counting.
      const first = Object.values(plan.legs).filter((l) => l.run === id).length;
      const ids = told.corners.map((corner, i) => nodeFor(corner, id, i, of, on));
      ids.slice(1).forEach((b, i) => {
        const leg = `${id}-${first + i + 1}`;
        const tube = told.tubes?.[i] ?? told.tube;
        const ends = { run: id, a: ids[i] ?? b, b };
        const rest = { insulation: told.insulation ?? null, option: of, sureness: told.sureness ?? ('seen' as const) };
        plan.legs[leg] = { id: leg, ...ends, tube, ...rest };
      });
    },
    /** Pipe of a surveyed run that nobody can see. */
    unseen(run: string, stretches: readonly StretchTold[]) {
      for (const s of stretches) {
        const a = nodeFor(s.from, run, 0, null, storey);
        const b = nodeFor(s.to, run, 1, null, storey);
        const bounds = {
          lengthMm: { lo: s.lengthMm[0], hi: s.lengthMm[1] },
          bends: { lo: s.bends[0], hi: s.bends[1] },
        };
        plan.stretches[s.id] = { id: s.id, run, a, b, ...bounds, tube: s.tube, option: null };
      }
    },
  };
}
export type HouseKit = ReturnType<typeof houseKit>;

/** On a wall's side, set along from its end a. */
export function onWall(
  wall: string,
  side: 'left' | 'right',
  alongMm: number,
  height: HeightRef,
  standOffMm = 0,
): HostedPlace {
  return { on: 'wall', wall, side, from: 'a', alongMm, standOffMm, height };
}

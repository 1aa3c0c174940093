import type { Plan } from '../../src/plan/plan.ts';
import type { HeightRef } from '../../src/plan/records/parts.ts';
import { ceiling, floor, type HouseKit, outlineOf, voidBottom } from './house-kit.ts';
import { FIRST, GROUND } from './semi-building.ts';

type Pair = readonly [number, number];
/** Underside and top of the joists, and the underside of the deck. */
export const JOISTS = { bottom: 2413, top: 2613, deck: 2618 } as const;
export const FRONT = 'AV1';
export const REAR = 'AV2';

/** A height as it would be measured: in the floor from the underside of its joists, elsewhere from the floor below. */
export function semiHeight(y: number, z: number): { storey: string; height: HeightRef } {
  if (z > JOISTS.deck) return { storey: FIRST, height: floor(FIRST, z - 2640) };
  if (z < JOISTS.bottom) return { storey: GROUND, height: floor(GROUND, z) };
  return { storey: FIRST, height: voidBottom(y < 4100 ? FRONT : REAR, z - JOISTS.bottom) };
}

const line = ([ax, ay]: Pair, [bx, by]: Pair) => ({ a: { x: ax, y: ay }, b: { x: bx, y: by } });

function firstFloor(k: HouseKit): void {
  const part = (id: string, name: string, from: number, to: number, holes: ReturnType<typeof outlineOf>[]) =>
    k.space({
      id,
      name,
      kind: 'floor',
      storey: FIRST,
      outline: outlineOf([250, from], [8100, from], [8100, to], [250, to]),
      holes,
      bottom: ceiling(GROUND, 13),
      top: floor(FIRST, -22),
      joists: {
        kind: 'solid',
        wayDeg: 90,
        centresMm: 400,
        first: { x: 450, y: from },
        depthMm: 200,
        breadthMm: 47,
        bottom: voidBottom(id, 0),
        spanMm: to - from,
        exceptions: [],
      },
      bearings: [line([250, from], [8100, from]), line([250, to], [8100, to])],
      ventilated: true,
      mayBeCut: true,
    });
  const stairs = outlineOf([300, 900], [1150, 900], [1150, 3600], [300, 3600]);
  part(FRONT, 'First floor at the front', 300, 4050, [stairs]);
  part(REAR, 'First floor at the back', 4150, 6900, []);
}

function solid(k: HouseKit): void {
  k.space({
    id: 'AV3',
    name: 'Ground floor, solid concrete',
    kind: 'slab',
    outline: outlineOf([250, 300], [8100, 300], [8100, 6900], [250, 6900]),
    bottom: floor(GROUND, -150),
    top: floor(GROUND, 0),
    joists: null,
    ventilated: false,
    mayBeCut: false,
    sureness: 'assumed',
  });
}

/** Trusses, 97 deep and 600 apart: their chords are never cut. */
function roof(plan: Plan): void {
  const rafters = { centresMm: 600, depthMm: 97, breadthMm: 35 };
  const half = (id: string, from: Pair, to: Pair, ridge: readonly [Pair, Pair]) => {
    const [a, b] = outlineOf(from, to);
    if (!a || !b) return;
    const outline = outlineOf(from, to, ...ridge);
    const eaves = { a, b, height: floor(FIRST, 2400) };
    plan.roofs[id] = { id, storey: FIRST, outline, eaves, pitchDeg: 35, rafters, sureness: 'assumed' };
  };
  const ridge: readonly [Pair, Pair] = [
    [8400, 3600],
    [0, 3600],
  ];
  half('roof-south', [0, 0], [8400, 0], ridge);
  half('roof-north', [8400, 7200], [0, 7200], [ridge[1], ridge[0]]);
}

export function semiFloors(plan: Plan, k: HouseKit): void {
  solid(k);
  firstFloor(k);
  roof(plan);
}

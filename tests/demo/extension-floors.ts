import type { HeightRef } from '../../src/plan/records/parts.ts';
import { FIRST, GROUND } from './extension-building.ts';
import { ceiling, floor, type HouseKit, outlineOf, voidBottom } from './house-kit.ts';

type Pair = readonly [number, number];
const line = ([ax, ay]: Pair, [bx, by]: Pair) => ({ a: { x: ax, y: ay }, b: { x: bx, y: by } });

/** Under the old house, in the roof of the extension, in the floor upstairs, and what is to be cast. */
export const UNDER = 'DV1';
export const ROOF = 'DV2';
export const UPSTAIRS = 'DV3';
export const SLAB = 'DV4';
/** Ceiling of the extension, and underside of the joists upstairs. */
const CEILING = 2400;
const FLOOR_JOISTS = 2413;

/** A height as it would be measured: in a void from its underside, elsewhere from the floor. */
export function extensionHeight(y: number, z: number): { storey: string; height: HeightRef } {
  if (z < FLOOR_JOISTS) return { storey: GROUND, height: floor(GROUND, z) };
  if (y < 8000) return { storey: FIRST, height: voidBottom(UPSTAIRS, z - FLOOR_JOISTS) };
  return { storey: GROUND, height: voidBottom(ROOF, z - CEILING) };
}

/** Outside walls and the wall between front and back, each with the face the joists end at. */
const BEARINGS = [300, 3950, 4050, 7700].map((y) => line([300, y], [6700, y]));
const MAIN = outlineOf([300, 300], [6700, 300], [6700, 7700], [300, 7700]);

export function extensionFloors(k: HouseKit): void {
  const solid = { kind: 'solid' as const, exceptions: [] };
  const first = { x: 500, y: 300 };
  k.space({
    id: UNDER,
    name: 'Crawl space',
    kind: 'floor',
    outline: MAIN,
    bottom: floor(GROUND, -622),
    top: floor(GROUND, -22),
    joists: {
      ...solid,
      wayDeg: 90,
      centresMm: 400,
      first,
      depthMm: 150,
      breadthMm: 50,
      bottom: voidBottom(UNDER, 450),
      spanMm: 3650,
    },
    bearings: BEARINGS,
    ventilated: true,
    mayBeCut: true,
  });
  k.space({
    id: ROOF,
    name: 'Extension roof, warm deck',
    kind: 'ceiling',
    outline: outlineOf([2300, 8000], [6700, 8000], [6700, 14300], [2300, 14300]),
    bottom: ceiling(GROUND, 0),
    top: ceiling(GROUND, 235),
    joists: {
      ...solid,
      wayDeg: 0,
      centresMm: 450,
      first: { x: 2300, y: 8300 },
      depthMm: 195,
      breadthMm: 50,
      bottom: voidBottom(ROOF, 40),
      spanMm: 4400,
    },
    bearings: [line([2300, 8000], [2300, 14300]), line([6700, 8000], [6700, 14300])],
    ventilated: null,
    mayBeCut: true,
  });
  k.space({
    id: UPSTAIRS,
    name: 'First floor',
    kind: 'floor',
    storey: FIRST,
    outline: MAIN,
    bottom: ceiling(GROUND, 13),
    top: floor(FIRST, -22),
    joists: {
      ...solid,
      wayDeg: 90,
      centresMm: 400,
      first,
      depthMm: 200,
      breadthMm: 47,
      bottom: voidBottom(UPSTAIRS, 0),
      spanMm: 3650,
    },
    bearings: BEARINGS,
    ventilated: true,
    mayBeCut: true,
  });
  k.space({
    id: SLAB,
    name: 'Extension slab',
    kind: 'slab',
    outline: outlineOf([2300, 8000], [6700, 8000], [6700, 14300], [2300, 14300]),
    bottom: floor(GROUND, -315),
    top: floor(GROUND, 0),
    joists: null,
    ventilated: false,
    mayBeCut: null,
    layers: [
      { what: 'screed', thicknessMm: 65 },
      { what: 'insulation', thicknessMm: 100 },
      { what: 'concrete', thicknessMm: 150 },
    ],
    pourDate: '2026-06-15',
  });
}

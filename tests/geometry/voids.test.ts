import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { joistLines } from '../../src/geometry/joist-lines.ts';
import { clipToArea, insideArea } from '../../src/geometry/outlines.ts';
import {
  voidFinder,
  voidHeights,
  voidStretches,
  voidsAt,
  voidsWithoutHeight,
} from '../../src/geometry/void-stretches.ts';
import type { Joists, Void } from '../../src/plan/records/building.ts';
import type { HeightRef } from '../../src/plan/records/parts.ts';
import { datum, GROUND, house, type Pair, space, xy } from './house.ts';

const p = (x: number, y: number, z: number) => ({ x, y, z });
const SQUARE: Pair[] = [
  [0, 0],
  [4000, 0],
  [4000, 3000],
  [0, 3000],
];
const joists = (more: Partial<Joists> = {}): Joists => ({
  kind: 'solid',
  wayDeg: 90,
  centresMm: 400,
  first: { x: 200, y: 0 },
  depthMm: 200,
  breadthMm: 50,
  bottom: datum(2413),
  spanMm: null,
  exceptions: [],
  ...more,
});
const floorVoid = (more: Partial<Void> = {}) => space('v', SQUARE, 2400, 2620, { joists: joists(), ...more });
const run = (v: Void, a: [number, number, number], b: [number, number, number]) =>
  voidStretches(house({ voids: [v] }), { a: p(...a), b: p(...b) });

describe('pipe in a void', () => {
  it('is the part inside the outline and between the heights', () => {
    expect(run(floorVoid(), [-500, 1000, 2500], [1500, 1000, 2500])).toMatchObject([
      { void: 'v', fromMm: 500, toMm: 2000, lengthMm: 1500 },
    ]);
    expect(run(floorVoid(), [1000, 1000, 500], [1000, 1000, 2500])).toMatchObject([{ fromMm: 1900, toMm: 2000 }]);
    expect(run(floorVoid(), [-500, 1000, 2300], [1500, 1000, 2300])).toEqual([]);
    expect(run(floorVoid(), [-500, 1000, 2500], [-100, 1000, 2500])).toEqual([]);
  });

  it('leaves the void at a hole and comes back', () => {
    const hole = SQUARE.map(([x, y]) => xy([1000 + x / 4, 500 + y / 4]));
    const found = run(floorVoid({ holes: [hole] }), [0, 1000, 2500], [4000, 1000, 2500]);
    expect(found.map((s) => [s.fromMm, s.toMm])).toEqual([
      [0, 1000],
      [2000, 4000],
    ]);
  });

  it('meets every joist in its way, over the breadth of the timber', () => {
    const [found] = run(floorVoid(), [0, 1000, 2500], [1400, 1000, 2500]);
    expect(found?.joists.map((j) => j.index)).toEqual([0, 1, 2, 3]);
    expect(found?.joists[1]).toMatchObject({
      at: p(600, 1000, 2500),
      fromMm: 575,
      toMm: 625,
      angleDeg: 90,
      passes: 'through',
      aboveBottomMm: 87,
    });
    expect(found?.joists[3]).toMatchObject({ fromMm: 1375, toMm: 1400 });
  });

  it('passes over and under the timber', () => {
    const at = (z: number) => run(floorVoid(), [300, 1000, z], [900, 1000, z])[0]?.joists[0]?.passes;
    expect(at(2405)).toBe('under');
    expect(at(2500)).toBe('through');
    expect(at(2615)).toBe('over');
  });

  it('cannot tell where the timber is not known', () => {
    const blind = floorVoid({ joists: joists({ bottom: null }) });
    expect(run(blind, [300, 1000, 2500], [900, 1000, 2500])[0]?.joists[0]).toMatchObject({
      passes: null,
      aboveBottomMm: null,
    });
    const deep = floorVoid({ joists: joists({ depthMm: null }) });
    expect(run(deep, [300, 1000, 2500], [900, 1000, 2500])[0]?.joists[0]).toMatchObject({
      passes: null,
      aboveBottomMm: 87,
    });
  });

  it('along a joist meets it on its whole way, and between two it meets none', () => {
    const [inside] = run(floorVoid(), [610, 500, 2500], [610, 2500, 2500]);
    expect(inside?.joists).toMatchObject([{ index: 1, fromMm: 0, toMm: 2000, angleDeg: 0 }]);
    expect(run(floorVoid(), [400, 500, 2500], [400, 2500, 2500])[0]?.joists).toEqual([]);
  });

  it('knows joists that were moved, and ones that are not there', () => {
    const v = floorVoid({
      joists: joists({
        exceptions: [
          { index: 1, offsetMm: 90, what: 'moved for the old stair' },
          { index: 2, offsetMm: 0, what: 'missing' },
        ],
      }),
    });
    const [found] = run(v, [0, 1000, 2500], [1500, 1000, 2500]);
    expect(found?.joists.map((j) => [j.index, Math.round(j.at.x), j.what])).toEqual([
      [0, 200, ''],
      [1, 690, 'moved for the old stair'],
      [3, 1400, ''],
    ]);
  });

  it('knows its place in the span, from bearings, from the span told, or from the outline', () => {
    const across: [[number, number, number], [number, number, number]] = [
      [500, 900, 2500],
      [700, 900, 2500],
    ];
    const first = (v: Void) => run(v, ...across)[0]?.joists[0];
    expect(first(floorVoid())).toMatchObject({ toNearEndMm: 900, spanMm: 3000, ends: 'outline' });
    expect(first(floorVoid({ joists: joists({ spanMm: 2800 }) }))).toMatchObject({
      toNearEndMm: 800,
      spanMm: 2800,
      ends: 'span',
    });
    const bearings = [
      { a: { x: 0, y: 50 }, b: { x: 4000, y: 50 } },
      { a: { x: 0, y: 1500 }, b: { x: 4000, y: 1500 } },
      { a: { x: 0, y: 2950 }, b: { x: 4000, y: 2950 } },
    ];
    expect(first(floorVoid({ bearings }))).toMatchObject({ toNearEndMm: 600, spanMm: 1450, ends: 'bearings' });
  });

  it('counts joists towards rising y where they run along x', () => {
    const v = floorVoid({ joists: joists({ wayDeg: 0, first: { x: 0, y: 300 } }) });
    expect(run(v, [1000, 0, 2500], [1000, 1200, 2500])[0]?.joists.map((j) => [j.index, Math.round(j.at.y)])).toEqual([
      [0, 300],
      [1, 700],
      [2, 1100],
    ]);
  });

  it('draws each joist as far as the outline reaches, in two where a hole parts it', () => {
    expect(joistLines(floorVoid())).toHaveLength(10);
    expect(joistLines(floorVoid())[0]).toMatchObject({ index: 0, a: { x: 200 }, b: { x: 200 } });
    const hole = [xy([500, 1000]), xy([700, 1000]), xy([700, 2000]), xy([500, 2000])];
    expect(joistLines(floorVoid({ holes: [hole] })).filter((j) => j.index === 1)).toHaveLength(2);
  });

  it('asks once for each piece', () => {
    const finder = voidFinder(house({ voids: [floorVoid()] }));
    finder.stretches({ a: p(0, 0, 0), b: p(1, 1, 1) });
    finder.stretches({ a: p(9000, 0, 0), b: p(9001, 1, 1) });
    expect(finder.counts).toEqual({ queries: 2, candidates: 1 });
  });
});

describe('heights of a void', () => {
  const ceiling: HeightRef = { from: 'ceiling', of: GROUND, mm: -250 };

  it('are its own where told', () => {
    expect(voidHeights(house({}), floorVoid())).toEqual({ bottom: 2400, top: 2620, told: true });
  });

  it('come from the storey for a floor, and up to the ceiling for a false ceiling', () => {
    expect(voidHeights(house({}), space('f', SQUARE, null, null))).toEqual({ bottom: -240, top: 0, told: false });
    const false_ = space('c', SQUARE, null, null, { kind: 'ceiling', bottom: ceiling });
    expect(voidHeights(house({}), false_)).toEqual({ bottom: 2150, top: 2400, told: false });
  });

  it('are not guessed for a slab, nor for a ceiling with no underside', () => {
    const slab = space('s', SQUARE, null, null, { kind: 'slab' });
    const blind = space('c', SQUARE, null, null, { kind: 'ceiling' });
    const plan = house({ voids: [slab, blind] });
    expect(voidsWithoutHeight(plan)).toEqual(['c', 's']);
    expect(voidStretches(plan, { a: p(0, 1, 2300), b: p(4000, 1, 2300) })).toEqual([]);
    expect(voidsAt(plan, p(100, 100, 2390))).toEqual([]);
  });

  it('hold a place', () => {
    const plan = house({ voids: [floorVoid()] });
    expect(voidsAt(plan, p(100, 100, 2500))).toEqual(['v']);
    expect(voidsAt(plan, p(100, 100, 2700))).toEqual([]);
    expect(voidsAt(plan, p(-100, 100, 2500))).toEqual([]);
    expect(voidsAt(plan, p(100, 100, 2500), new Set())).toEqual([]);
  });
});

describe('a line in an area', () => {
  const n = fc.integer({ min: -500, max: 4500 });
  const bent = [
    [0, 0],
    [4000, 0],
    [4000, 3000],
    [2500, 3000],
    [2500, 1000],
    [1500, 1000],
    [1500, 3000],
    [0, 3000],
  ].map(([x, y]) => xy([x ?? 0, y ?? 0]));
  const hole = [xy([300, 300]), xy([700, 300]), xy([500, 800])];

  it('has its parts inside and the gaps between them outside', () => {
    fc.assert(
      fc.property(n, n, n, n, (x1, y1, x2, y2) => {
        const [a, b] = [xy([x1, y1]), xy([x2, y2])];
        const parts = clipToArea(a, b, bent, [hole]);
        const at = (t: number) => xy([x1 + (x2 - x1) * t, y1 + (y2 - y1) * t]);
        const edges = [0, ...parts.flat(), 1];
        for (const [i, from] of edges.entries()) {
          const to = edges[i + 1];
          if (to === undefined || to - from < 1e-6) continue;
          expect(insideArea(at((from + to) / 2), bent, [hole])).toBe(i % 2 === 1);
        }
      }),
      { numRuns: 500 },
    );
  });
});

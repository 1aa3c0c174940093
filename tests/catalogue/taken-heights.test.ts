import { describe, expect, it } from 'vitest';
import { assumptions } from '../../src/catalogue/assumptions.ts';
import { makePoint } from '../../src/catalogue/make-point.ts';
import { pointKinds } from '../../src/catalogue/point-kinds.ts';

const place = { on: 'storey', x: 1000, y: 2000, angleDeg: 0 } as const;

/** Height over its floor of a new point that nobody told one: taken, lowest, highest. */
function taken(kind: string): readonly number[] {
  const { height } = makePoint(kind, { id: 'p1', storey: 's1', place, option: null }).place;
  return [height.mm, height.assumed?.lo ?? height.mm, height.assumed?.hi ?? height.mm];
}

/** What an engineer expects of an ordinary house, over the finished floor. */
const ORDINARY = [
  ['its floor', 0, 0, 0, ['bath', 'boundary', 'condensate-pump', 'cooker', 'gas-fire', 'soil-stack', 'stairs']],
  ['the ceiling', 2400, 2400, 2400, ['beam', 'eaves', 'gutter', 'hatch', 'roof-window']],
  ['the eyes of who stands before it', 1250, 1100, 1400, ['boiler']],
  ['a meter cupboard', 700, 300, 1100, ['gas-meter', 'bonding-clamp']],
  ['the top of a skirting', 150, 100, 150, ['join-point', 'old-tails']],
  ['under a hob', 800, 700, 900, ['hob']],
  ['inside a sink unit', 500, 300, 600, ['sink-taps', 'sink-waste']],
  ['under a basin', 550, 450, 600, ['basin-taps']],
  ['beside a bath', 300, 150, 500, ['bath-taps']],
  ['the reach of who showers', 1100, 1000, 1200, ['shower-valve']],
  ['under a radiator', 150, 100, 200, ['radiator']],
  ['the floor of a cupboard or a board on it', 0, 0, 100, ['cylinder', 'preheat-vessel']],
  ['over a cylinder', 1400, 900, 1800, ['tundish', 'zone-valves', 'diverting-valve', 'mixing-valve', 'inlet-group']],
  ['the ground outside, or a step below it', 0, -150, 50, ['gully', 'soakaway']],
  ['under a sink or behind the front door', 300, 100, 600, ['stop-tap']],
  ['a fuse board by new and old rules', 1650, 1350, 1950, ['consumer-unit']],
  ['a meter that is read standing', 1350, 900, 1800, ['electricity-meter']],
  ['sockets by new and old rules', 450, 300, 450, ['socket']],
  ['a hand', 1200, 1000, 1350, ['switch', 'thermostat', 'receiver']],
  ['over a door, under the ceiling', 2150, 2000, 2250, ['co-alarm']],
  ['over heads, outside', 2100, 1800, 2300, ['flue-terminal']],
] as const;

describe('a thing that nobody told a height', () => {
  it.each(ORDINARY)('is taken to be at %s: %s, from %s to %s', (_, mm, lo, hi, kinds) => {
    for (const kind of kinds) expect(taken(kind), kind).toEqual([mm, lo, hi]);
  });

  it('keeps its doubt inside the room, and what is taken inside its doubt', () => {
    for (const kind of pointKinds.keys()) {
      const [mm = Number.NaN, lo = 0, hi = 0] = taken(kind);
      expect(mm, kind).toBeGreaterThanOrEqual(lo);
      expect(mm, kind).toBeLessThanOrEqual(hi);
      expect(hi, kind).toBeLessThanOrEqual(assumptions().ceilingMm);
    }
  });
});

describe('an empty page takes for granted', () => {
  const a = assumptions();

  it('rooms 2.4 m high over a floor of 250, with pipes under the boards', () => {
    expect([a.ceilingMm, a.buildUpMm]).toEqual([2400, 250]);
    expect(a.inVoid).toEqual({ mm: 2350, lo: 2300, hi: 2400 });
  });

  it('tails, a meter, a worktop and a pipe along the foot of a wall', () => {
    expect(a.boilerTail).toEqual({ mm: 1250, lo: 1100, hi: 1400 });
    expect(a.meter).toEqual({ mm: 700, lo: 300, hi: 1100 });
    expect(a.skirting).toEqual({ mm: 150, lo: 150, hi: 150 });
    expect(a.worktop).toEqual({ mm: 900, lo: 900, hi: 900 });
    expect(a.offFloorMm).toBe(150);
  });

  it('a partition of 100, pipes 30 off it, and drains that turn just under their tail', () => {
    expect([a.wallThicknessMm, a.standOffMm]).toEqual([100, 30]);
    expect(a.underTailMm).toEqual({ condensate: 50, boilerRelief: 50, discharge: 300 });
  });

  it('a door of 2 ft 6 by 6 ft 6, a window over a worktop, an archway, a vent under the ceiling', () => {
    expect(a.openings.door).toEqual({ widthMm: 762, sillMm: 0, headMm: 1981 });
    expect(a.openings.window).toEqual({ widthMm: 1200, sillMm: 900, headMm: 2100 });
    expect(a.openings.archway).toEqual({ widthMm: 900, sillMm: 0, headMm: 2050 });
    expect(a.openings.vent).toEqual({ widthMm: 230, sillMm: 2000, headMm: 2150 });
  });
});

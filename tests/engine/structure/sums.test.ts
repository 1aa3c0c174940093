import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sideBySide } from '../../../src/engine/building/heat-beside-cold.ts';
import { longestRigid } from '../../../src/engine/structure/longest-rigid.ts';
import { layerAt, layerKind } from '../../../src/engine/structure/slab-layer.ts';
import { voidVentCm2 } from '../../../src/engine/structure/void-vent.ts';

describe('longest piece that can be got in', () => {
  const ends = (a: number, b: number, open = false) =>
    [
      { roomMm: a, open },
      { roomMm: b, open },
    ] as const;

  test('the longest of bay and ends decides', () => {
    const ask = { pipeMm: 2000, baysMm: [350, 400], ends: ends(275, 350) };
    expect(longestRigid(ask)).toMatchObject({ from: 'bay', fits: false, joints: 4, longest: { value: 400 } });
    expect(longestRigid({ ...ask, ends: ends(275, 900) })).toMatchObject({ from: 'b', joints: 2 });
    expect(longestRigid({ ...ask, ends: ends(2000, 0) })).toMatchObject({ from: 'a', fits: true, joints: 0 });
  });

  test('its joints and pieces make up the pipe', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9000 }), fc.integer({ min: 100, max: 900 }), (pipeMm, bay) => {
        const { joints, longest } = longestRigid({ pipeMm, baysMm: [bay], ends: ends(0, 0) });
        expect((joints + 1) * longest.lo).toBeGreaterThanOrEqual(pipeMm - 1e-6);
        expect(joints * longest.lo).toBeLessThan(pipeMm);
      }),
    );
  });

  test('with no room anywhere nothing fits', () => {
    expect(longestRigid({ pipeMm: 500, baysMm: [0], ends: ends(0, 0) }).fits).toBe(false);
  });
});

describe('ventilation of a void', () => {
  test('none, its own section, 500 cm2, and a share again: by the step it lies in', () => {
    expect(voidVentCm2(0.009).lo).toBe(0);
    expect(voidVentCm2(0.01).lo).toBe(0);
    expect(voidVentCm2(0.02).lo).toBeCloseTo(200, 6);
    expect(voidVentCm2(0.05).lo).toBeCloseTo(500, 6);
    expect(voidVentCm2(3).lo).toBe(500);
    expect(voidVentCm2(15).lo).toBeCloseTo(1000, 3);
    expect(voidVentCm2(0.02).sureness).toBe('memory');
  });

  test('a larger void never needs less', () => {
    const m2 = fc.double({ min: 0, max: 30, noNaN: true });
    fc.assert(
      fc.property(m2, m2, (a, b) => {
        expect(voidVentCm2(Math.max(a, b)).lo).toBeGreaterThanOrEqual(voidVentCm2(Math.min(a, b)).lo - 1e-3);
      }),
    );
  });
});

describe('layers of a slab', () => {
  const layers = [
    { what: 'Sand and cement screed', thicknessMm: 65 },
    { what: 'insulation', thicknessMm: 100 },
    { what: 'Concrete', thicknessMm: 150 },
  ];

  test('by depth from the top, none below the last', () => {
    expect([0, 40, 100, 200].map((d) => layerAt(layers, d)?.layer.what)).toEqual([
      'Sand and cement screed',
      'Sand and cement screed',
      'insulation',
      'Concrete',
    ]);
    expect(layerAt(layers, 400)).toBeNull();
    expect(layers.map((l) => layerKind(l.what))).toEqual(['screed', 'other', 'concrete']);
  });
});

describe('side by side', () => {
  const along = (y: number, from: number, to: number, z = 0) => ({ a: { x: from, y, z }, b: { x: to, y, z } });

  test('the way a pipe was drawn does not matter', () => {
    const number = fc.integer({ min: 0, max: 5000 });
    fc.assert(
      fc.property(number, number, number, number, (a, b, c, d) => {
        fc.pre(a !== b && c !== d);
        const one = sideBySide(along(0, a, b), along(150, c, d));
        const other = sideBySide(along(0, b, a), along(150, d, c));
        expect(one === null).toBe(other === null);
        if (!one || !other) return;
        expect(one.apartMm).toBeCloseTo(150, 6);
        expect(other.besideMm).toBeCloseTo(one.besideMm, 6);
      }),
    );
  });

  test('upright, square across and one past the other are not', () => {
    expect(sideBySide(along(0, 0, 1000), along(100, 2000, 3000))).toBeNull();
    expect(sideBySide(along(0, 0, 1000), { a: { x: 500, y: -500, z: 0 }, b: { x: 500, y: 500, z: 0 } })).toBeNull();
    const up = { a: { x: 0, y: 0, z: 0 }, b: { x: 0, y: 0, z: 1000 } };
    expect(sideBySide(up, { a: { x: 100, y: 0, z: 0 }, b: { x: 100, y: 0, z: 1000 } })).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { backToBackFault, chaseFaults } from '../../src/engine/structure/chase-faults.ts';
import { chaseLimits } from '../../src/engine/structure/chase-limits.ts';
import { spacingFault } from '../../src/engine/structure/cut-spacing.ts';
import { bandsFromOneEnd, type Cut, cutLimits } from '../../src/engine/structure/joist-limits.ts';
import { constant } from '../../src/reference/figure.ts';
import { table } from '../../src/reference/tables.ts';

const limits = (cut: Cut, span: number, depth: number, id = 'joist-limits') => cutLimits(table(id), cut, span, depth);

describe('building control page on notches and holes in solid joists', () => {
  it('bands at spans of 3000 and 4000', () => {
    const printed: readonly (readonly [number, readonly [number, number], readonly [number, number]])[] = [
      [3000, [210, 750], [750, 1200]],
      [4000, [280, 1000], [1000, 1600]],
    ];
    for (const [span, notch, hole] of printed) {
      const [n, h] = [limits('notch', span, 200), limits('hole', span, 200)];
      expect([n.fromMm, n.toMm].map((mm) => Math.round(mm ?? 0))).toEqual(notch);
      expect([h.fromMm, h.toMm].map((mm) => Math.round(mm ?? 0))).toEqual(hole);
    }
  });

  it('hole and notch at depths of 150, 200 and 250', () => {
    const printed: readonly (readonly [number, number, number])[] = [
      [150, 37.5, 18.8],
      [200, 50, 25.0],
      [250, 62.5, 31.3],
    ];
    for (const [depth, hole, notch] of printed) {
      expect(limits('hole', 3000, depth).mostMm?.value).toBeCloseTo(hole, 6);
      // Printed to a tenth, half up.
      expect(Math.abs((limits('notch', 3000, depth).mostMm?.value ?? 0) - notch)).toBeLessThanOrEqual(0.051);
    }
  });

  it('deeper timber stops at 65 and 35', () => {
    for (const depth of [275, 300]) expect(limits('hole', 4000, depth).mostMm?.value).toBe(65);
    expect(limits('notch', 4000, 275).mostMm?.value).toBeCloseTo(34.375, 6);
    expect(limits('notch', 4000, 300).mostMm?.value).toBe(35);
  });

  it('both ends count: at 4000 holes from the one end are at 1000 to 1600 and 2400 to 3000', () => {
    const bands = bandsFromOneEnd(limits('hole', 4000, 200), 4000);
    expect(bands.map((b) => b.map(Math.round))).toEqual([
      [1000, 1600],
      [2400, 3000],
    ]);
  });

  it('centres of three diameters of the larger', () => {
    const hole = (alongMm: number, mm: number) => ({ as: 'hole' as const, alongMm, lo: mm, hi: mm });
    expect(spacingFault(hole(1000, 30), hole(1119, 40), 3, 100)?.outcome).toBe('stop');
    expect(spacingFault(hole(1000, 30), hole(1120, 40), 3, 100)).toBeNull();
  });
});

describe('what the sources say differently stays apart', () => {
  it('house-building standard: notches at 0.1 to 0.2 of span and 0.15 of depth; of holes it was not read', () => {
    const notch = limits('notch', 4000, 200, 'joist-limits-house-builder');
    expect([notch.fromMm, notch.toMm, notch.mostMm?.value]).toEqual([400, 800, 30]);
    const hole = limits('hole', 4000, 200, 'joist-limits-house-builder');
    expect([hole.fromMm, hole.toMm, hole.mostMm]).toEqual([null, null, null]);
  });

  it('standard specification 670: 100 from hole to notch; textbook: none in 100 or less; house-building standard: engineer past 250', () => {
    expect(constant('joist-general', 'hole to notch', 'mm')).toBe(100);
    expect(constant('joist-general', 'shallow', 'mm')).toBe(100);
    expect(constant('joist-general', 'deep', 'mm')).toBe(250);
    expect(constant('joist-general', 'hole to notch, stricter', 'share')).toBe(1);
  });
});

describe('standard specification, clause 650: chases in masonry', () => {
  it('upright a third of the leaf, level a sixth and no longer than a metre', () => {
    expect(chaseLimits('vertical', 102.5).depth?.value).toBeCloseTo(102.5 / 3, 6);
    expect(chaseLimits('vertical', 102.5).length).toBeNull();
    expect(chaseLimits('horizontal', 102.5).depth?.value).toBeCloseTo(102.5 / 6, 6);
    expect(chaseLimits('horizontal', 102.5).length?.value).toBe(1000);
  });

  it('a third, a sixth and a metre are still allowed, a millimetre more is a fault', () => {
    const ask = { way: 'vertical' as const, depthMm: 34, lengthMm: 5000, leafMm: 102, hollow: false };
    const kinds = (over: Partial<Parameters<typeof chaseFaults>[0]>) =>
      chaseFaults({ ...ask, ...over }).map((f) => f.kind);
    expect([kinds({}), kinds({ depthMm: 35 })]).toEqual([[], ['depth']]);
    const level = { way: 'horizontal' as const, depthMm: 17, lengthMm: 1000 };
    expect([kinds(level), kinds({ ...level, depthMm: 18 }), kinds({ ...level, lengthMm: 1001 })]).toEqual([
      [],
      ['depth'],
      ['length'],
    ]);
  });

  it('never back to back: offset by the thickness of the wall; one hole of 300 each way', () => {
    expect(backToBackFault(0, 215)?.kind).toBe('backToBack');
    expect(backToBackFault(214, 215)?.wanted?.value).toBe(215);
    expect(backToBackFault(215, 215)).toBeNull();
    expect(constant('wall-chases', 'hole', 'mm')).toBe(300);
  });

  it('one sixth and not the one sixteenth that some pages print', () => {
    expect(constant('wall-chases', 'horizontal', 'share')).toBeCloseTo(1 / 6, 9);
    expect(table('wall-chases').notes.join()).toContain('one sixteenth');
  });

  it('hollow blocks never, a leaf nobody described cannot be told', () => {
    const ask = { way: 'vertical' as const, depthMm: 1, lengthMm: 0, leafMm: 100, hollow: false };
    expect(chaseFaults(ask)).toEqual([]);
    expect(chaseFaults({ ...ask, hollow: true }).map((f) => f.kind)).toEqual(['hollow']);
    expect(chaseFaults({ ...ask, leafMm: null }).map((f) => f.kind)).toEqual(['notTold']);
    expect(chaseFaults({ ...ask, hollow: null })[0]?.missing).toHaveLength(1);
  });
});

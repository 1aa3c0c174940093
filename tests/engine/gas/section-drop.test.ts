import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pathDrop } from '../../../src/engine/gas/path-drop.ts';
import { sectionDrop } from '../../../src/engine/gas/section-drop.ts';
import { between } from '../../../src/report/quantity.ts';
import { flowOf, m3PerH, section } from './ask.ts';

describe('section drop', () => {
  it('on a listed length and flow the table says exactly its loss', () => {
    expect(sectionDrop(section('22', 12, 0, m3PerH(3.9))).table).toMatchObject({ lo: 1, hi: 1, value: 1 });
    expect(sectionDrop(section('22', 6, 0, m3PerH(3.9))).table).toMatchObject({ lo: 0.5, hi: 0.5 });
  });

  it('between columns the length is linear in the flow, and the stepped reading is a note', () => {
    const found = sectionDrop(section('22', 12, 0, m3PerH(3.2)));
    expect(found.table?.value).toBeCloseTo(12 / 17.5, 9);
    expect(found.notes.join()).toContain('15 m column');
    expect(found.notes.join()).toContain((12 / 15).toFixed(2));
  });

  it('over the first column the table has no figure and the physics answers alone', () => {
    const found = sectionDrop(section('15', 4, 0, m3PerH(3.5)));
    expect(found.table).toBeNull();
    expect(found.drop).toEqual({ ...found.physical, sureness: found.drop.sureness });
    expect(found.notes.join()).toContain('first column (3 m)');
    expect(found.drop.lo).toBeGreaterThan(4 / 3);
  });

  it('holds both methods, and its single figure', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 20, noNaN: true }),
        fc.double({ min: 0.1, max: 60, noNaN: true }),
        fc.constantFrom('15', '22', '28'),
        (q, m, size) => {
          const { drop, table, physical } = sectionDrop(section(size, m, 0, m3PerH(q)));
          if (drop.hi === null) return;
          expect(drop.lo).toBeLessThanOrEqual(physical?.lo ?? 0);
          expect(drop.hi).toBeGreaterThanOrEqual(physical?.hi ?? Number.POSITIVE_INFINITY);
          if (table) expect(drop.hi).toBeGreaterThanOrEqual(table.hi ?? 0);
          if (table && table.value !== null) expect(drop.lo).toBeLessThanOrEqual(table.lo);
          expect(drop.value).not.toBeNull();
          expect(drop.value ?? -1).toBeGreaterThanOrEqual(drop.lo);
          expect(drop.value ?? 99).toBeLessThanOrEqual(drop.hi);
        },
      ),
    );
  });

  it('more flow or more length never loses less', () => {
    const size = fc.constantFrom('10', '12', '15', '22', '28', '35');
    const q = fc.double({ min: 0, max: 15, noNaN: true });
    const m = fc.double({ min: 0, max: 40, noNaN: true });
    fc.assert(
      fc.property(size, q, q, m, m, (s, q1, q2, m1, m2) => {
        const few = sectionDrop(section(s, Math.min(m1, m2), 1, m3PerH(Math.min(q1, q2)))).drop;
        const many = sectionDrop(section(s, Math.max(m1, m2), 1, m3PerH(Math.max(q1, q2)))).drop;
        expect(many.lo).toBeGreaterThanOrEqual(few.lo - 1e-9);
        if (few.hi !== null && many.hi !== null) expect(many.hi).toBeGreaterThanOrEqual(few.hi - 1e-9);
        if (few.value !== null && many.value !== null) expect(many.value).toBeGreaterThanOrEqual(few.value - 1e-9);
      }),
      { numRuns: 500 },
    );
  });

  it('an interval holds every figure inside it', () => {
    const q = fc.double({ min: 0.1, max: 8, noNaN: true });
    const m = fc.double({ min: 0.5, max: 30, noNaN: true });
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(q, q, m, m, share, share, (q1, q2, m1, m2, a, b) => {
        const flow = between(Math.min(q1, q2), Math.max(q1, q2), 'm3/h', 2);
        const length = between(Math.min(m1, m2), Math.max(m1, m2), 'm', 1);
        const wide = sectionDrop(section('22', 0, 2, flow, { lengthM: length })).drop;
        const inFlow = flow.lo + a * ((flow.hi ?? 0) - flow.lo);
        const inLength = length.lo + b * ((length.hi ?? 0) - length.lo);
        const one = sectionDrop(section('22', inLength, 2, m3PerH(inFlow))).drop;
        expect(one.lo).toBeGreaterThanOrEqual(wide.lo - 1e-9);
        expect(one.hi ?? 99).toBeLessThanOrEqual((wide.hi ?? 99) + 1e-9);
      }),
      { numRuns: 300 },
    );
  });

  it('a larger tube never loses more', () => {
    for (const q of [0.5, 1, 2, 3, 4, 6]) {
      const [a, b, c] = ['15', '22', '28'].map((s) => sectionDrop(section(s, 10, 2, m3PerH(q))).drop);
      expect(b?.value ?? 99).toBeLessThan(a?.value ?? 0);
      expect(c?.value ?? 99).toBeLessThan(b?.value ?? 0);
    }
  });
});

describe('what is not known', () => {
  it('an unknown size leaves the low side only and is named', () => {
    const found = sectionDrop(section(null, 5, 2, m3PerH(3), { label: 'old pipe' }));
    expect(found.drop).toMatchObject({ lo: 0, hi: null, value: null });
    expect(found.working).toMatchObject({ result: null, missing: ['the size of a pipe (old pipe)'] });
  });

  it('with it the whole path is only known from below, by its other sections', () => {
    const whole = pathDrop('gas', [
      sectionDrop(section('22', 10, 0, m3PerH(3))),
      sectionDrop(section(null, 5, 0, m3PerH(3), { label: 'old pipe' })),
    ]);
    expect(whole.drop.lo).toBeGreaterThan(0.4);
    expect(whole.drop.hi).toBeNull();
    expect(whole.working.missing).toEqual(['the size of a pipe (old pipe)']);
  });

  it('an open length, an open flow, a tube with no bore: low side only', () => {
    const open = { hi: null, value: null };
    const long = sectionDrop(section('22', 0, 0, m3PerH(3), { lengthM: between(5, null, 'm', 1) }));
    expect(long.drop).toMatchObject(open);
    expect(long.drop.lo).toBeGreaterThan(0.2);
    expect(long.working.missing).toEqual(['length of gas']);
    const full = sectionDrop(section('22', 5, 0, between(3, null, 'm3/h', 2)));
    expect(full.drop).toMatchObject(open);
    expect(full.drop.lo).toBeGreaterThan(0.2);
    expect(sectionDrop(section('32', 5, 0, m3PerH(3), { tubeKind: 'pe' })).drop).toMatchObject({ lo: 0, ...open });
    expect(sectionDrop(section('22', 5, 0, m3PerH(3), { tubeKind: 'csst' })).working.missing).toEqual([
      'dimensions of corrugated stainless 22',
    ]);
  });

  it('an edition that is not here is missing, and no other one stands in', () => {
    const found = sectionDrop(
      section('22', 5, 0, m3PerH(3), { editions: { 'gas-discharge-copper': 'gas-discharge-copper-2031' } }),
    );
    expect(found.drop.hi).toBeNull();
    expect(found.working.missing.join()).toContain('pinned');
    const fittings = sectionDrop(section('22', 5, 1, m3PerH(3), { editions: { 'gas-fittings': 'gas-fittings-2031' } }));
    expect(fittings.drop.hi).toBeNull();
    expect(fittings.working.missing).toEqual(['length to add for elbow90 of 22x0.9']);
  });

  it('past the law of friction there is a low side, and it is large', () => {
    const found = sectionDrop(section('15', 3, 0, m3PerH(400)));
    expect(found.drop.hi).toBeNull();
    expect(found.drop.lo).toBeGreaterThan(10);
    expect(found.working.missing.join()).toContain('friction');
  });

  it('no flow loses nothing', () => {
    expect(sectionDrop(section('22', 5, 2, m3PerH(0))).drop).toMatchObject({ lo: 0, hi: 0, value: 0 });
  });
});

describe('how sure', () => {
  it('a sum is as sure as its least sure figure', () => {
    expect(sectionDrop(section('22', 5, 2, m3PerH(3))).drop.sureness).toBe('derived');
    expect(sectionDrop(section('35', 5, 2, m3PerH(3))).drop.sureness).toBe('memory');
    expect(sectionDrop(section('20', 5, 0, m3PerH(3), { tubeKind: 'steel' })).drop.sureness).toBe('memory');
  });

  it('35 has no row in the table: the physics stands alone and says so', () => {
    const found = sectionDrop(section('35', 20, 0, m3PerH(6)));
    expect(found.table).toBeNull();
    expect(found.drop.hi).not.toBeNull();
    expect(found.notes.join()).toContain('no row for 35');
  });

  it('every line of the working that comes from a table cites it', () => {
    const { working } = sectionDrop(section('22', 5, 2, flowOf(30)));
    const cited = working.steps.flatMap((s) => s.cites.map((c) => c.table));
    expect(cited).toEqual(
      expect.arrayContaining([
        'gas-fittings-2015',
        'gas-discharge-copper',
        'gas-physical-model',
        'gas-physical-error',
        'gas-properties',
        'tube-copper',
      ]),
    );
  });
});

describe('propane', () => {
  it('goes by the physics alone; at one flow it loses more than natural gas, at one heat input less', () => {
    const natural = sectionDrop(section('15', 10, 0, m3PerH(1.2))).drop;
    const propane = sectionDrop(section('15', 10, 0, m3PerH(1.2), { gas: 'propane' }));
    expect(propane.table).toBeNull();
    expect(propane.notes.join()).toContain('propane');
    expect(propane.drop.lo).toBeGreaterThan(natural.lo);
    const sameHeat = sectionDrop(section('15', 10, 0, m3PerH((1.2 * 38.7) / 93.1), { gas: 'propane' })).drop;
    expect(sameHeat.value ?? 99).toBeLessThan(natural.value ?? 0);
  });
});

describe('fitting counts as a range', () => {
  it('an unseen stretch with one to three bends lies between', () => {
    const some = (count: number | { lo: number; hi: number | null }) =>
      sectionDrop(section('22', 5, 0, m3PerH(3), { fittings: [{ class: 'bend90', count }] }));
    const range = some({ lo: 1, hi: 3 });
    expect(range.effectiveLength).toMatchObject({ lo: 5.3, hi: expect.closeTo(5.9, 9) });
    expect(range.drop.lo).toBeCloseTo(some(1).drop.lo, 12);
    expect(range.drop.hi).toBeCloseTo(some(3).drop.hi ?? 0, 12);
    expect(some({ lo: 1, hi: null }).drop.hi).toBeNull();
  });
});

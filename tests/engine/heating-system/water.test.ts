import { describe, expect, it } from 'vitest';
import { evaluate, give } from '../../../src/engine/evaluate.ts';
import { example } from '../../../src/engine/example.ts';
import { drainDowns } from '../../../src/engine/heating-system/drain-down.ts';
import { unvalved } from '../../../src/engine/heating-system/isolating.ts';
import { vesselChecks } from '../../../src/engine/heating-system/vessel-check.ts';
import { waterContents } from '../../../src/engine/heating-system/water-content.ts';
import { put, type WaterHouse, waterHouse } from '../../../src/engine/rules/heating/water-houses.ts';
import type { Plan } from '../../../src/plan/plan.ts';

const AFTER = { option: 'A', when: 'after' } as const;
const content = (plan: Plan) => {
  const [first] = waterContents(give(plan, AFTER));
  if (!first) throw new Error('no system');
  return first;
};
const drain = (how: WaterHouse, change: (plan: Plan) => void = () => {}) => {
  const plan = waterHouse(how);
  change(plan);
  const [first] = drainDowns(give(plan, AFTER));
  if (!first) throw new Error('no system');
  return first;
};
const vessel = (how: WaterHouse) => vesselChecks(give(waterHouse(how), AFTER))[0];
const at = (point: string, connection: string) => ({ point, connection }) as const;
const nodeOf = (plan: Plan, run: string, at: number): string => {
  const legs = Object.values(plan.legs).filter((l) => l.run === run);
  return [legs[0]?.a ?? '', ...legs.map((l) => l.b)][at] ?? '';
};
/** Litres in a metre of copper 22 x 0.9. */
const PER_M = (Math.PI / 4) * 20.2 ** 2 * 1e-3;

describe('what a system holds', () => {
  it('is one system, flow and return, boiler and radiator, each with its water', () => {
    const c = content(waterHouse({ boiler: { waterLitres: 2.5 }, radiator: { litres: 6 } }));
    expect(waterContents(give(waterHouse(), AFTER))).toHaveLength(1);
    expect(c.parts.map((p) => p.holder).sort()).toEqual(['boiler', 'pipe', 'pipe', 'radiator']);
    const metres = [...c.system.edges].reduce((m, e) => m + (e.lengthMm.value ?? Number.NaN), 0) / 1000;
    expect(c.litres.value).toBeCloseTo(2.5 + 6 + metres * PER_M, 6);
    expect(c.parts.every((p) => !p.assumed)).toBe(true);
  });

  it('takes what is usual where no sheet was read, and says so', () => {
    const c = content(waterHouse());
    const of = (holder: string) => c.parts.find((p) => p.holder === holder);
    expect(of('boiler')).toMatchObject({ litres: { lo: 1, hi: 4 }, assumed: true });
    expect(of('radiator')).toMatchObject({ litres: { lo: 5, hi: 6 }, assumed: true });
  });

  it('a coil holds 2 to 10 litres until its sheet is read, and its cylinder none of the heating water', () => {
    const house = (fields: Plan['points'][string]['fields']) =>
      example()
        .point('boiler', 'b', [0, 0, 1300], { type: 'system' })
        .point('cylinder', 'c', [4000, 0, 0], { litres: 210, ...fields })
        .run('f', 'heatingFlow', [at('b', 'flow'), [1000, 0, 900], at('c', 'coilFlow')])
        .run('k', 'heatingReturn', [at('c', 'coilReturn'), [1000, 200, 300], at('b', 'return')]).plan;
    const coil = (fields: Plan['points'][string]['fields']) =>
      content(house(fields)).parts.find((p) => p.holder === 'coil');
    expect(coil({})).toMatchObject({ litres: { lo: 2, hi: 10 }, assumed: true });
    expect(coil({ coilLitres: 5 })).toMatchObject({ litres: { value: 5 }, assumed: false });
  });

  it('goes by litres told behind old tails, else by their heat, else is open above', () => {
    expect(content(waterHouse({ tails: { litresBehind: 80, heatingKw: 9 } })).litres.hi).toBeLessThan(90);
    expect(
      content(waterHouse({ tails: { heatingKw: 9 } })).parts.find((p) => p.holder === 'behind')?.litres,
    ).toMatchObject({
      lo: 54,
      hi: 108,
    });
    const open = content(waterHouse({ tails: {} }));
    expect(open.litres.hi).toBeNull();
    expect(open.missing).toEqual(['what lies behind the old pipe']);
  });
});

describe('the vessel', () => {
  it('is wanted larger the more the system holds, and is held against what is there', () => {
    const [small, large] = [40, 400].map((litresBehind) =>
      vessel({ boiler: { vesselLitres: 8, waterLitres: 2 }, tails: { litresBehind } }),
    );
    expect(small?.verdict).toBe('pass');
    expect(large?.verdict).toBe('small');
    expect(large?.wanted?.lo ?? 0).toBeGreaterThan(small?.wanted?.hi ?? 0);
  });

  it('is for water that is filled at 10 degrees and gets to 80, or hotter where the job is designed so', () => {
    expect(vessel({})).toMatchObject({ coldC: 10, hotC: 80, grows: expect.closeTo(0.02872, 5) });
    const plan = waterHouse();
    Object.assign(plan.basis, { designFlowC: 85, designReturnC: 65 });
    expect(vesselChecks(give(plan, AFTER))[0]).toMatchObject({ hotC: 85, grows: expect.closeTo(0.0321, 5) });
  });

  it('nobody looked at is not known; a boiler without one and none drawn is too small', () => {
    expect(vessel({})).toMatchObject({ verdict: 'cantTell', missing: ['the vessel built into the boiler'] });
    expect(vessel({ boiler: { vesselLitres: 0 } })?.verdict).toBe('small');
  });

  it('stands above or below the highest water: metres from its tail to the top of the radiator', () => {
    // Its tail lies at 1300, the radiator reaches from 150 to 750: the highest water is the pipe.
    expect(vessel({ overMm: 2500 })?.staticM.value).toBeCloseTo(1.2, 3);
    expect(vessel({})?.staticM.value).toBe(0);
    expect(vessel({ overMm: 7300 })?.pressures.chargeBar.value).toBeCloseTo(6 * 0.098 + 0.3, 3);
  });
});

describe('air and dips', () => {
  it('air: over the ceiling it stays above the boiler tail, with its litres', () => {
    const { highs } = drain({ overMm: 2500 });
    expect(highs).toMatchObject([{ run: 'f', depthMm: expect.closeTo(1200, 3) }]);
    expect(drain({ overMm: 2500, onFlow: 'air-vent' }).highs).toEqual([]);
    // A vent that stands lower than the top leaves it.
    const low = drain({ overMm: 2500 }, (plan) => put(plan, 'v', nodeOf(plan, 'k', 1), 'air-vent'));
    expect(low.highs).toHaveLength(1);
  });

  it('water: under the floor it stays below the tails, in flow and return, until a cock stands there', () => {
    const { lows, stays } = drain({ underMm: -400 });
    expect(lows.map((l) => l.run).sort()).toEqual(['f', 'k']);
    expect(lows.every((l) => l.depthMm > 500)).toBe(true);
    // Nothing drawn drains it, so it is not split into what runs out and what stays.
    expect(stays).toBe(0);
    const one = drain({ underMm: -400, onFlow: 'drain-cock' });
    expect(one.lows.map((l) => l.run)).toEqual(['k']);
    expect(one.lowestCock?.place?.at.z).toBe(-400);
    expect(one.runsOut?.hi ?? 0).toBeCloseTo((one.content.litres.hi ?? 0) - one.stays, 6);
  });

  it('what stays is what the dip holds below its lip', () => {
    const one = drain({ underMm: -400, onFlow: 'drain-cock' });
    const return22 = one.lows[0]?.litres ?? Number.NaN;
    expect(one.stays).toBeCloseTo(return22, 6);
    // Its level part lies at -400, its lip is the tail of the radiator.
    const flat = one.content.system.edges.filter((e) => e.run === 'k' && Math.abs(e.intoA?.z ?? 1) < 0.01);
    const level = flat.reduce((m, e) => m + e.lengthMm.lo, 0) / 1000;
    expect(return22).toBeGreaterThan(level * PER_M);
    const whole = one.content.system.edges.filter((e) => e.run === 'k').reduce((m, e) => m + e.lengthMm.lo, 0) / 1000;
    expect(return22).toBeLessThan(whole * PER_M);
  });

  it('nothing is said of old pipe', () => {
    const { highs, lows } = drain({ overMm: 2500, option: null });
    expect([...highs, ...lows]).toEqual([]);
  });
});

describe('valves', () => {
  const open = (kinds: readonly [string, number, string][]) => {
    const plan = waterHouse();
    for (const [i, [run, at, kind]] of kinds.entries()) put(plan, `x${i}`, nodeOf(plan, run, at), kind);
    const given = give(plan, AFTER);
    return waterContents(given)
      .flatMap((c) => unvalved(given, c.system))
      .map((u) => u.tails.length);
  };

  it('a boiler is shut off by a valve on each tail, before a tee or another thing', () => {
    expect(open([])).toEqual([2]);
    expect(open([['f', 1, 'isolation-valve']])).toEqual([1]);
    expect(
      open([
        ['f', 1, 'isolation-valve'],
        ['k', 2, 'isolation-valve'],
      ]),
    ).toEqual([]);
    expect(open([['f', 1, 'air-vent']])).toEqual([2]);
  });
});

describe('in the report', () => {
  const report = (how: WaterHouse) => evaluate(waterHouse(how), AFTER);
  const water = (how: WaterHouse) =>
    report(how).findings.filter((f) =>
      ['heating/vessel', 'heating/high-point', 'heating/low-point', 'heating/filter'].includes(f.rule),
    );

  it('an ordinary, good installation is not spoken of', () => {
    expect(water({ boiler: { vesselLitres: 8 }, onReturn: 'filter' })).toEqual([]);
  });

  it('two dips are one finding, and the other is counted', () => {
    const found = water({ boiler: { vesselLitres: 8 }, onReturn: 'filter', underMm: -400 });
    expect(found).toMatchObject([{ rule: 'heating/low-point', more: 1 }]);
  });

  it('a dip that holds less than a litre is listed and no finding', () => {
    const found = water({ boiler: { vesselLitres: 8 }, onReturn: 'filter', underMm: -400, onFlow: 'drain-cock' });
    const litres = drain({ underMm: -400, onFlow: 'drain-cock' }).lows[0]?.litres ?? 0;
    expect(litres).toBeGreaterThan(1);
    expect(found).toMatchObject([{ rule: 'heating/low-point', more: 0, found: { value: expect.closeTo(litres, 1) } }]);
    const thin = waterHouse({ boiler: { vesselLitres: 8 }, onReturn: 'filter', underMm: -400, onFlow: 'drain-cock' });
    for (const leg of Object.values(thin.legs)) leg.tube.size = '10x0.6';
    expect(evaluate(thin, AFTER).findings.filter((f) => f.rule === 'heating/low-point')).toEqual([]);
    expect(drainDowns(give(thin, AFTER))[0]?.lows[0]?.litres).toBeLessThan(1);
  });

  it('tells the cold fill beside what is usual in a house of two storeys', () => {
    const rows = report({}).sections.find((s) => s.id === 'heating-water')?.rows ?? [];
    expect(JSON.stringify(rows)).toContain('1.0 to 1.5 is usual');
  });

  it('has a chapter with the litres as its answer, before the work too', () => {
    const chapter = report({ boiler: { waterLitres: 2 }, radiator: { litres: 6 } }).sections.find(
      (s) => s.id === 'heating-water',
    );
    expect(chapter?.title).toBe('Heating water');
    expect(chapter?.answer).toMatch(/^\d+ litres$/);
    const before = evaluate(waterHouse({ option: null }), { option: null, when: 'before' });
    expect(before.sections.find((s) => s.id === 'heating-water')?.state).toBe('none');
  });
});

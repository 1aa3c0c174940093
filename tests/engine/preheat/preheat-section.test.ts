import { describe, expect, it } from 'vitest';
import { evaluate, give } from '../../../src/engine/evaluate.ts';
import { preheatsOf } from '../../../src/engine/preheat/preheats.ts';
import { GOOD, preheatHouse } from '../../../src/engine/rules/preheat/houses.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import type { Row } from '../../../src/report/section.ts';

const AFTER = { option: 'A', when: 'after' } as const;
const rowsOf = (plan: Plan): readonly Row[] =>
  evaluate(plan, AFTER).sections.find((s) => s.id === 'preheat')?.rows ?? [];
const verdict = (rows: readonly Row[], label: string): string =>
  rows.flatMap((r) => (r.kind === 'verdict' && r.label.startsWith(label) ? [r.say] : []))[0] ?? '';

describe('the chapter on preheat', () => {
  const told = { highestC: 90, hotC: 65, lukewarmC: 35, coldC: 12 };

  it('tells of a vessel ahead of a cylinder what the shower gets in each state', () => {
    const rows = rowsOf(preheatHouse({ vessel: told, basis: { coldC: 12, hotC: 60 } }));
    expect(verdict(rows, 'At its high limit, 90')).toMatch(/at 90 °C\. Its coil has nothing to add\. .* gets 90 °C/);
    expect(verdict(rows, 'At its high limit')).toMatch(/scalds/);
    expect(verdict(rows, 'Hot, 65')).toMatch(/gets 65 °C, 53 % hot to 47 % cold at 40 °C/);
    expect(verdict(rows, 'Lukewarm, 35')).toMatch(/at 35 °C\. Its coil heats it to 60 °C/);
    expect(verdict(rows, 'Cold, 12')).toMatch(/at 12 °C\. Its coil heats it to 60 °C/);
    const cold = rows.find((r) => r.kind === 'fact' && r.label === 'Cold');
    expect(cold).toMatchObject({ say: expect.stringMatching(/^balanced at the shower valve/) });
    expect(rows.some((r) => r.kind === 'assumed')).toBe(false);
  });

  it('names what was taken as usual', () => {
    const rows = rowsOf(preheatHouse());
    expect(rows.find((r) => r.kind === 'assumed')).toMatchObject({ say: expect.stringMatching(/hot 60.*lukewarm 30/) });
  });

  it('follows a diverting valve past a combi, through the mixing valve that both ways share', () => {
    const plan = preheatHouse({
      heater: 'boiler',
      heaterFields: { inletMaxC: 60, hotLPerMin: 12 },
      vessel: told,
      diverting: { sendsAboveC: 48 },
      outlet: { setC: 46, ...GOOD },
    });
    const [preheat] = preheatsOf(give(plan, AFTER));
    expect(preheat?.past?.valve?.id).toBe('ov');
    expect(preheat?.past?.bare).toEqual([]);
    expect(preheat?.outletValve?.id).toBe('ov');
    const rows = rowsOf(plan);
    expect(verdict(rows, 'Hot')).toMatch(/sends it past the boiler\. .* gets 46 °C/);
    expect(verdict(rows, 'Lukewarm')).toMatch(/To the boiler at 35 °C\. The burner heats it/);
    const power = rows.flatMap((r) => (r.kind === 'sum' && r.label.endsWith('lukewarm') ? [r.result?.unit] : []));
    expect(power).toEqual(['kW']);
  });

  it('says nothing of a house without one', () => {
    const plan = preheatHouse();
    delete plan.points.p;
    for (const run of ['v', 'w3']) {
      delete plan.runs[run];
      for (const leg of Object.values(plan.legs)) if (leg.run === run) delete plan.legs[leg.id];
    }
    expect(evaluate(plan, AFTER).sections.some((s) => s.id === 'preheat')).toBe(false);
  });

  it('says so where what a vessel feeds is not drawn', () => {
    const plan = preheatHouse();
    delete plan.runs.w3;
    for (const leg of Object.values(plan.legs)) if (leg.run === 'w3') delete plan.legs[leg.id];
    expect(verdict(rowsOf(plan), 'Where it goes')).toMatch(/not drawn/);
  });
});

describe('safety valve of a preheat vessel', () => {
  it('is asked for a tundish of its own like any other unvented vessel', () => {
    const { findings } = evaluate(preheatHouse(), AFTER);
    const asked = findings.filter((f) => f.rule === 'discharge/tundish').flatMap((f) => f.ids);
    expect(asked).toContain('p');
  });

  describe('pressure lost on the way', () => {
    const at = { heater: 'boiler', heaterFields: { hotLPerMin: 12 } } as const;
    const lost = (plan: Plan) => {
      const row = rowsOf(plan).find((r) => r.kind === 'fact' && r.label === 'Pressure lost on the way');
      if (row?.kind !== 'fact' || !row.figure) throw new Error('no such row');
      return { lo: row.figure.lo, hi: row.figure.hi, say: row.say ?? '' };
    };

    it('is open above while nobody read what vessel and valve lose, and names them', () => {
      const { hi, say } = lost(preheatHouse({ ...at, mixing: { setC: 28, ...GOOD } }));
      expect(hi).toBeNull();
      expect(say).toContain('the preheat vessel, whose Kv is not told');
      expect(say).toContain('the mixing valve, whose Kv is not told');
      expect(evaluate(preheatHouse(at), AFTER).findings.some((f) => f.title.includes('Kv'))).toBe(false);
    });

    it('counts them by their Kv, and fittings of the pipes between', () => {
      const bare = lost(preheatHouse(at));
      const told = lost(preheatHouse({ ...at, vessel: { kv: 2 } }));
      // 12 litres a minute are 0.72 m3/h: (0.72 / 2)^2 bar of cold water, density beside 1000 left out.
      expect(told.lo - bare.lo).toBeCloseTo(0.1296, 2);
      expect(told.say).toMatch(
        /^at 12 litres a minute in the preheat vessel and the pipes between and their fittings$/,
      );
      expect(told.hi).not.toBeNull();
      const both = lost(preheatHouse({ ...at, vessel: { kv: 2 }, mixing: { setC: 28, kv: 1.2, ...GOOD } }));
      const one = lost(preheatHouse({ ...at, vessel: { kv: 2 }, mixing: { setC: 28, ...GOOD } }));
      expect(both.lo - one.lo).toBeCloseTo(0.36, 2);
    });
  });

  it("goes by the figure of the sheet that is kept beside the plan before the heater's own field", () => {
    const inlet = (plan: Plan) => evaluate(plan, AFTER).findings.find((f) => f.rule === 'preheat/inlet-limit');
    const hot = { heater: 'boiler', vessel: { highestC: 75 }, heaterFields: { inletMaxC: 30 } } as const;
    const plan = preheatHouse(hot);
    expect(inlet(plan)).toMatchObject({ outcome: 'stop', limit: { id: 'inlet-temperature', scope: 'h', unit: '°C' } });
    const own = {
      id: 'o',
      limit: 'inlet-temperature',
      scope: 'h',
      value: 80,
      unit: '°C',
      note: 'its sheet',
      page: '9',
    };
    plan.overrides.o = own;
    expect(inlet(plan)).toBeUndefined();
    plan.overrides.o = { ...own, value: 60 };
    expect(inlet(plan)).toMatchObject({ outcome: 'stop', wanted: { lo: 60 } });
    plan.overrides.o = { ...own, scope: 'another' };
    expect(inlet(plan)).toMatchObject({ wanted: { lo: 30 } });
  });
});

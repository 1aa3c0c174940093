import { describe, expect, it } from 'vitest';
import { evaluate, give } from '../../../src/engine/evaluate.ts';
import { preheatHouse } from '../../../src/engine/rules/preheat/houses.ts';
import { combiHouse, cylinderHouse, setItem } from '../../../src/engine/rules/supply/houses.ts';
import { arrivingBar, inletsOfVessels } from '../../../src/engine/supply/inlets.ts';
import { mixersOf } from '../../../src/engine/supply/mixers.ts';
import { pointsOn, wayTo } from '../../../src/engine/supply/way-back.ts';
import type { Plan } from '../../../src/plan/plan.ts';

const AFTER = { option: 'A', when: 'after' } as const;
const balanceOf = (plan: Plan) => mixersOf(give(plan, AFTER)).find((m) => m.point.id === 'sh')?.balance;
const inletOf = (plan: Plan) => inletsOfVessels(give(plan, AFTER))[0];

describe('the way of the water', () => {
  it('goes back through cylinder, vessel and group to the main, in the way it flows', () => {
    const plan = preheatHouse();
    const given = give(plan, AFTER);
    const way = wayTo(given, plan.points.sh as Plan['points'][string], 'hot');
    expect(pointsOn(way).map((p) => p.id)).toEqual(['g', 'p', 'h']);
    expect(way.origin).toMatchObject({ is: 'main', point: { id: 's' } });
  });

  it('stops where nothing more is drawn, and never goes round', () => {
    const plan = cylinderHouse();
    for (const leg of Object.values(plan.legs)) if (leg.run === 'm') delete plan.legs[leg.id];
    const way = wayTo(give(plan, AFTER), plan.points.c as Plan['points'][string], 'coldIn');
    expect(way.origin.is).toBe('unseen');
    expect(pointsOn(way).map((p) => p.id)).toEqual(['g']);
  });

  it('ends on a vessel that feeds itself', () => {
    const plan = cylinderHouse({ valves: [] });
    const last = Object.values(plan.legs).find((l) => l.run === 'm');
    const hot = Object.values(plan.legs).find((l) => l.run === 'h');
    if (!last || !hot) throw new Error('as drawn');
    // The cylinder's own hot is taken to its cold.
    plan.legs[last.id] = { ...last, a: hot.b };
    for (const run of Object.values(plan.runs)) run.service = 'hot';
    expect(() => wayTo(give(plan, AFTER), plan.points.c as Plan['points'][string], 'coldIn')).not.toThrow();
  });
});

describe('balanced cold', () => {
  it('is cold from the reducer that feeds the hot, even where the group is all that is drawn', () => {
    expect(balanceOf(cylinderHouse())).toMatchObject({ is: 'balanced', by: { id: 'g', setBar: 3 } });
    const plan = cylinderHouse();
    for (const leg of Object.values(plan.legs)) if (leg.run === 'm') delete plan.legs[leg.id];
    expect(balanceOf(plan)).toMatchObject({ is: 'balanced', by: { id: 'g' } });
  });

  it('is no cold straight from the main beside it, nor one that passes another reducer', () => {
    expect(balanceOf(cylinderHouse({ cold: 'main' }))).toMatchObject({
      is: 'unlike',
      hot: { id: 'g' },
      cold: { id: null },
    });
    const plan = cylinderHouse();
    const [, bend] = Object.values(plan.legs)
      .filter((l) => l.run === 'k')
      .map((l) => l.a);
    setItem(plan, 'r', bend, 'pressure-reducer', { setBar: 2 });
    expect(balanceOf(plan)).toMatchObject({ is: 'unlike', cold: { id: 'r', setBar: 2 } });
  });

  it('tells cold that comes off behind the check valve, and cold that comes off behind the heater', () => {
    const behind = mixersOf(give(cylinderHouse({ cold: 'behindCheck' }), AFTER))[0];
    expect(behind).toMatchObject({ balance: { is: 'balanced' }, behindCheck: true });
    expect(mixersOf(give(cylinderHouse(), AFTER))[0]?.behindCheck).toBe(false);
    expect(balanceOf(cylinderHouse({ cold: 'hot' }))).toMatchObject({ is: 'afterHeater', heater: { id: 'c' } });
  });

  it('of a combi is the main on both sides, and not told where one is not drawn', () => {
    expect(balanceOf(combiHouse())).toMatchObject({ is: 'balanced', by: { id: null } });
    expect(balanceOf(cylinderHouse({ cold: 'none' }))).toEqual({ is: 'unseen' });
    expect(balanceOf(cylinderHouse({ vessel: { unvented: false } }))).toMatchObject({ is: 'vented' });
  });
});

describe('the cold of an unvented vessel', () => {
  it('passes what its group holds, or what is drawn in the pipe', () => {
    expect(inletOf(cylinderHouse())?.has).toEqual({
      strainer: 'there',
      reducer: 'there',
      check: 'there',
      relief: 'there',
    });
    const bare = inletOf(cylinderHouse({ valves: ['pressure-reducer'], cold: 'main' }));
    expect(bare?.has).toEqual({ strainer: 'missing', reducer: 'there', check: 'missing', relief: 'unseen' });
  });

  it('lacks nothing for sure where a part of the way was not seen', () => {
    const plan = cylinderHouse({ valves: [], cold: 'main' });
    const legs = Object.values(plan.legs).filter((l) => l.run === 'm');
    const [first] = legs;
    if (!first) throw new Error('as drawn');
    delete plan.legs[first.id];
    plan.stretches.u = {
      id: 'u',
      run: 'm',
      a: first.a,
      b: first.b,
      lengthMm: { lo: 500, hi: 900 },
      bends: { lo: 0, hi: 2 },
      tube: first.tube,
      option: null,
    };
    expect(inletOf(plan)?.has.reducer).toBe('unseen');
  });

  it('arrives at the least of the main and every reducer that is set', () => {
    const given = give(cylinderHouse({ standing: 6 }), AFTER);
    const inlet = inletsOfVessels(given)[0];
    if (!inlet) throw new Error('as drawn');
    expect(arrivingBar(given, inlet.way)?.bar).toBe(3);
    const weak = give(cylinderHouse({ standing: 2 }), AFTER);
    expect(arrivingBar(weak, inletsOfVessels(weak)[0]?.way ?? inlet.way)).toEqual({ bar: 2, by: 'the main' });
  });

  it('stands in its chapter with what the vessel grows by', () => {
    const report = evaluate(cylinderHouse({ vessel: { litres: 180, expansion: 'vessel' } }), AFTER);
    const section = report.sections.find((s) => s.id === 'cold-supply');
    const row = section?.rows.find((r) => r.kind === 'sum');
    expect(row).toMatchObject({ result: { unit: 'litres' } });
    if (row?.kind === 'sum') expect(row.result?.lo).toBeCloseTo(180 * 0.01679, 1);
    expect(section?.answer).toBe('1 of 1 balanced');
  });
});

describe('an ordinary good house', () => {
  it('is left in peace', () => {
    const preheat = preheatHouse({ vessel: { highestC: 75 }, heaterFields: { inletMaxC: 80 } });
    for (const plan of [cylinderHouse(), combiHouse(), preheat]) {
      const said = evaluate(plan, AFTER).findings.filter((f) => /^(supply|preheat)\//.test(f.rule));
      expect(said.map((f) => f.rule)).toEqual([]);
    }
  });
});

describe('highest inlet pressure', () => {
  it('goes by the figure of the sheet that is kept beside the plan', () => {
    const plan = cylinderHouse({ standing: 6, group: { setBar: 4 }, vessel: { inletMaxBar: 3.5 } });
    const found = () => evaluate(plan, AFTER).findings.find((f) => f.rule === 'supply/inlet-pressure');
    expect(found()).toMatchObject({ outcome: 'stop', limit: { id: 'inlet-pressure', scope: 'c', unit: 'bar' } });
    plan.overrides.o = {
      id: 'o',
      limit: 'inlet-pressure',
      scope: 'c',
      value: 5,
      unit: 'bar',
      note: 'its sheet',
      page: '4',
    };
    expect(found()).toBeUndefined();
  });
});

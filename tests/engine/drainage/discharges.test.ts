import { describe, expect, it } from 'vitest';
import { leastSize, sizeChoices } from '../../../src/engine/drainage/discharge-size.ts';
import { discharges, outletOf } from '../../../src/engine/drainage/discharges.ts';
import { pipeSize } from '../../../src/engine/drainage/tundish-pipe-size.ts';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { give } from '../../../src/engine/given.ts';
import { away, vessel } from '../../../src/engine/rules/discharge/houses.ts';
import type { Case, Plan } from '../../../src/plan/plan.ts';
import { between, exact } from '../../../src/report/quantity.ts';

const AFTER: Case = { option: 'A', when: 'after' };
const of = (plan: Plan) => discharges(give(plan, AFTER));
const drainsIn = (plan: Plan) => evaluate(plan, AFTER).findings.filter((f) => f.topic === 'drains');

describe('who lets out into what', () => {
  it('a drawn pipe tells it, and so does what the tundish says', () => {
    const drawn = of(vessel().plan);
    expect(drawn.vessels.flatMap((v) => drawn.tundishesOf(v).map((t) => t.id))).toEqual(['t']);
    const said = of(vessel({ tundish: null }).point('tundish', 't', [0, -400, 900], { serves: 'c' }).plan);
    expect(said.vessels.flatMap((v) => said.tundishesOf(v).map((t) => t.id))).toEqual(['t']);
  });

  it('the expansion valve of the inlet group may share the tundish, and nothing is said of it', () => {
    const e = vessel();
    e.point('inlet-group', 'ig', [-1000, -200, 1000]);
    e.run(
      'x',
      'discharge',
      [
        { point: 'ig', connection: 'relief' },
        [-1100, -245, 1200],
        [-375, -245, 1190],
        { point: 't', connection: 'in' },
      ],
      { size: '15x0.7' },
    );
    const found = of(e.plan);
    expect(found.valvePipes.map((p) => [p.from?.id, p.to?.id]).sort()).toEqual([
      ['c', 't'],
      ['ig', 't'],
    ]);
    expect(drainsIn(e.plan)).toEqual([]);
  });

  it('a tundish of a boiler only is not sized by the table of vessels', () => {
    const e = vessel({ tundish: null, fields: { unvented: false } });
    e.point('boiler', 'b', [2000, 0, 1300]).point('tundish', 't', [2184, -51, 900]);
    e.run(
      'p',
      'boilerRelief',
      [
        { point: 'b', connection: 'relief' },
        { point: 't', connection: 'in' },
      ],
      { size: '15x0.7' },
    );
    e.run('d', 'discharge', [{ point: 't', connection: 'out' }, [2184, -81, 700], [5000, -81, 680]], {
      size: '15x0.7',
    });
    const found = of(e.plan);
    expect(found.tundishPipes).toMatchObject([{ boilersOnly: true }]);
    expect(drainsIn(e.plan).map((f) => [f.rule, f.outcome])).toEqual([['discharge/end', 'cantTell']]);
  });

  it('of several outlets the greatest decides, and one nobody read leaves it open', () => {
    const outlets = ['G1/2', 'G3/4', 'G1'];
    const v = (valveOutlet: string | null) =>
      ({ ...vessel().plan.points.c, fields: { valveOutlet } }) as Plan['points'][string];
    expect(outletOf([v('G1/2'), v('G3/4')], outlets)).toBe('G3/4');
    expect(outletOf([v('G1/2'), v(null)], outlets)).toBeNull();
    expect(outletOf([], outlets)).toBeNull();
  });
});

describe('sizes', () => {
  const sizeOf = (plan: Plan) => {
    const [pipe] = of(plan).tundishPipes;
    if (!pipe) throw new Error('no pipe from a tundish');
    return pipeSize(pipe);
  };

  it('where it changes size the smallest decides for the whole way', () => {
    const plan = away();
    const leg = plan.legs['d2.1'];
    if (leg) leg.tube = { kind: 'copper', size: '28x0.9' };
    expect(sizeOf(plan)).toMatchObject({ drawn: 22 });
  });

  it('smaller than the table begins never passes, larger than it ends carries what its last row does', () => {
    expect(sizeOf(away({ words: { size: '15x0.7' } }))).toMatchObject({ drawn: 15, verdict: 'stop' });
    expect(sizeOf(away({ words: { size: '42x1.2' } }))).toMatchObject({ drawn: 42, own: undefined, verdict: 'pass' });
  });

  it('a length that is only bounded gives a bounded answer', () => {
    const ask = (lo: number, hi: number | null) => ({
      outlet: 'G1/2',
      lengthM: between(lo, hi, 'm', 1),
      bends: { lo: 1, hi: 3 },
    });
    expect(sizeChoices(ask(5, 7))[0]).toMatchObject({
      verdict: 'check',
      total: { lo: 5.8, hi: expect.closeTo(9.4, 9), value: null },
    });
    expect(leastSize(ask(5, 7))?.size).toBe(28);
    expect(sizeChoices(ask(5, null))[0]).toMatchObject({ verdict: 'cantTell', leftM: null });
    expect(leastSize({ ...ask(5, 6), outlet: 'G2' })).toBeUndefined();
  });

  it('more bends or metres never make a smaller size do', () => {
    let last = 0;
    for (let m = 0; m < 24; m++) {
      const size =
        leastSize({ outlet: 'G1/2', lengthM: exact(m, 'm', 1), bends: { lo: 2, hi: 2 } })?.size ??
        Number.POSITIVE_INFINITY;
      expect(size).toBeGreaterThanOrEqual(last);
      last = size;
    }
  });
});

describe('an ordinary, good installation', () => {
  it('is left in peace', () => {
    expect(drainsIn(away())).toEqual([]);
  });
});

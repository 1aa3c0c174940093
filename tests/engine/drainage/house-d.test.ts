import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { example } from '../../../src/engine/example.ts';
import type { Case, Plan } from '../../../src/plan/plan.ts';

const AFTER: Case = { option: 'A', when: 'after' };
const WASTE = { kind: 'waste', size: '32', joining: 'solvent', insulationMm: 19 } as const;

/** The extension of house D with its side door, and the first way for condensate: along the outside wall. */
function alongTheWall(): Plan {
  const e = example();
  const corners = [
    [2150, 8000],
    [6850, 8000],
    [6850, 14450],
    [2150, 14450],
  ] as const;
  corners.forEach((a, i) => {
    e.wall(`w${i}`, a, corners[(i + 1) % corners.length] ?? a, { thicknessMm: 300 });
  });
  e.opening('dd3', 'w1', 1900, 900, { headMm: 2100 });
  e.point('gully', 'D-FG', [7122.5, 7525, -200], { drains: 'foul', trapped: true });
  return e.run(
    'D-k1',
    'condensate',
    [[6600, 13490, 1150], [7060, 13490, 1129], [7060, 7400, 855], { point: 'D-FG', connection: 'condensate' }],
    WASTE,
  ).plan;
}

describe('house D, condensate along the outside wall', () => {
  const found = evaluate(alongTheWall(), AFTER).findings;
  const of = (rule: string) => found.filter((f) => f.rule === rule);

  it('stops at the side door, which it crosses about a metre up', () => {
    const [hit, ...rest] = of('building/across-opening');
    expect(rest).toEqual([]);
    expect(hit).toMatchObject({ outcome: 'stop', ids: ['D-k1', 'dd3'] });
    expect(hit?.at?.z).toBeGreaterThan(967);
    expect(hit?.at?.z).toBeLessThan(1008);
  });

  it('is 7.1 m outside against 3, and falls 45 mm in a metre', () => {
    expect(of('condensate/outside')).toMatchObject([
      { outcome: 'check', found: { lo: expect.closeTo(7.1, 1) }, wanted: { lo: 3 } },
    ]);
    expect(of('condensate/fall')).toMatchObject([{ outcome: 'check', found: { value: expect.closeTo(45, 1) } }]);
  });

  it('is wide enough, lagged, and ends in a foul gully', () => {
    for (const rule of ['condensate/bore', 'condensate/insulation', 'condensate/end']) expect(of(rule)).toEqual([]);
  });

  it('the rainwater gully beside the boiler is refused', () => {
    const plan = alongTheWall();
    const gully = plan.points['D-FG'];
    if (gully) gully.fields.drains = 'surface';
    expect(evaluate(plan, AFTER).findings.filter((f) => f.rule === 'condensate/end')).toMatchObject([
      { outcome: 'stop', ids: ['D-FG', 'D-k1'] },
    ]);
  });
});

describe('a limit from the sheet of the boiler', () => {
  it('goes before both editions of the fall', () => {
    const plan = example().point('boiler', 'b', [0, 0, 1300]).point('standpipe', 's', [1156, -150, 0]);
    plan.run(
      'k',
      'condensate',
      [
        { point: 'b', connection: 'condensate' },
        [156, -180, 1000],
        [1156, -180, 970],
        { point: 's', connection: 'in' },
      ],
      {
        kind: 'plastic-overflow',
        size: '21.5',
        joining: 'solvent',
      },
    );
    const falls = (p: Plan) =>
      evaluate(p, AFTER)
        .findings.filter((f) => f.rule === 'condensate/fall')
        .map((f) => f.outcome);
    expect(falls(plan.plan)).toEqual(['stop']);
    const own = {
      id: 'o',
      limit: 'condensate-fall',
      scope: 'b',
      value: 25,
      unit: 'mm/m',
      note: 'its own trap',
      page: '12',
    };
    plan.plan.overrides.o = own;
    expect(falls(plan.plan)).toEqual([]);
  });
});

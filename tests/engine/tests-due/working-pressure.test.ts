import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { combiHouse, cylinderHouse } from '../../../src/engine/rules/supply/houses.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { sayFigures } from '../../../src/report/quantity.ts';

/** Part and test pressure of every water test that is due, as the section says it. */
function due(plan: Plan): [string, string][] {
  const rows = evaluate(plan, { option: 'A', when: 'after' }).sections.find((s) => s.id === 'tests')?.rows ?? [];
  return rows.flatMap((r, i): [string, string][] => {
    if (r.kind !== 'heading' || r.label !== 'Water pressure test') return [];
    const next = rows[i + 1];
    if (next?.kind === 'sum') return [[r.say, `${next.result ? sayFigures(next.result) : ''} | ${next.how}`]];
    return [[r.say, next?.kind === 'fact' ? (next.say ?? '') : '']];
  });
}

describe('pressure of a water test', () => {
  it('is of the main before a reducer and of the reducer behind it', () => {
    // 1.5 x 3.4 before, 1.5 x 3 behind: hot, cold to the vessel and balanced cold alike.
    expect(due(cylinderHouse({ standing: 3.4 }))).toEqual([
      ['Hot and cold, from the main', '5.1 | 1.5 x 3.4 bar'],
      ['Hot and cold, behind the cold inlet group', '4.5 | 1.5 x 3.0 bar, as the cold inlet group is set'],
    ]);
  });

  it('is the reducer alone where all new pipe lies behind it', () => {
    const plan = cylinderHouse({ standing: 3.4 });
    for (const leg of Object.values(plan.legs)) if (leg.run === 'm') leg.option = null;
    for (const run of Object.values(plan.runs)) if (run.id === 'm') run.option = null;
    expect(due(plan)).toEqual([['Hot and cold', '4.5 | 1.5 x 3.0 bar, as the cold inlet group is set']]);
  });

  it('is of the main where that is less than the reducer lets by, or where the reducer is not read', () => {
    expect(due(cylinderHouse({ standing: 2.5 }))).toEqual([['Hot and cold', '3.8 | 1.5 x 2.5 bar']]);
    expect(due(cylinderHouse({ standing: 3.4, group: { setBar: null } }))).toEqual([
      ['Hot and cold', '5.1 | 1.5 x 3.4 bar'],
    ]);
  });

  it('is not told before the reducer while nobody read the main, but is told behind it', () => {
    const [main, behind] = due(cylinderHouse());
    expect(main?.[1]).toContain('which is not told');
    expect(behind?.[1]).toContain('1.5 x 3.0 bar');
  });

  it('goes by the reading of the day before what the stop tap says', () => {
    const plan = combiHouse();
    const stop = plan.points.s;
    if (stop) stop.fields.standingBar = 2;
    plan.job.readings = [
      { kind: 'mains-standing', what: 'standing pressure', value: 4, unit: 'bar', on: null, place: '', note: '' },
    ];
    expect(due(plan)).toEqual([['Hot and cold', '6.0 | 1.5 x 4.0 bar']]);
    expect(due(combiHouse({ reducer: true })).map(([part]) => part)).toEqual([
      'Hot and cold, from the main',
      'Hot and cold, behind a pressure reducing valve',
    ]);
  });
});

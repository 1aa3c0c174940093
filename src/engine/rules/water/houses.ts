import type { Plan } from '../../../plan/plan.ts';
import type { Point } from '../../../plan/records/pipework.ts';
import { type ExamplePlan, example, type RunWords } from '../../example.ts';

/** A new combi, and taps of one kind so many metres of hot pipe away. */
export function hotTo(metres: number, words: RunWords = {}, kind = 'basin-taps', fields: Point['fields'] = {}) {
  return example()
    .point('boiler', 'combi', [0, 0, 1300])
    .point(kind, 'tap', [metres * 1000, 0, 550], fields)
    .run(
      'hot',
      'hot',
      [{ point: 'combi', connection: 'hot' }, [metres * 1000 - 100, -300, 500], { point: 'tap', connection: 'hot' }],
      { size: '15x0.7', ...words },
    ).plan;
}

type Told = Partial<Record<'mains-standing' | 'mains-flowing' | 'mains-flow', number>>;
const UNIT = { 'mains-standing': 'bar', 'mains-flowing': 'bar', 'mains-flow': 'litres a minute' } as const;

/** Readings of the water in a plan. */
export function measured(plan: Plan, told: Told): Plan {
  plan.job.readings = (Object.keys(told) as (keyof Told)[]).map((kind) => ({
    what: kind,
    kind,
    value: told[kind] ?? null,
    unit: UNIT[kind],
    on: null,
    place: 'kitchen tap',
    note: '',
  }));
  return plan;
}

/** A new combi and nothing else, with what its sheet says. */
export const combi = (fields: Point['fields'] = {}): ExamplePlan =>
  example().point('boiler', 'combi', [0, 0, 1300], { hotLPerMin: 12, ...fields });

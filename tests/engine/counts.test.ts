import { beforeEach, describe, expect, test, vi } from 'vitest';
import { copiesFor, copiesOf } from '../../src/cli/bench/copies.ts';
import type { Counts } from '../../src/engine/clearance/counts.ts';
import { evaluate } from '../../src/engine/evaluate.ts';
import type { Case, Plan } from '../../src/plan/plan.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { demoNames, demoPlan } from './demo-file.ts';

const NONE = { lookUps: 0, networks: 0, gas: 0 };
const work = vi.hoisted(() => ({ lookUps: 0, networks: 0, gas: 0, given: [] as Counts[] }));

vi.mock('../../src/reference/figure.ts', async (original) => {
  const real = await original<typeof import('../../src/reference/figure.ts')>();
  const counted =
    <A extends unknown[], R>(of: (...args: A) => R) =>
    (...args: A): R => {
      work.lookUps += 1;
      return of(...args);
    };
  return { ...real, figure: counted(real.figure), word: counted(real.word), constant: counted(real.constant) };
});
vi.mock('../../src/network/graph.ts', async (original) => {
  const real = await original<typeof import('../../src/network/graph.ts')>();
  return {
    ...real,
    buildNetwork: (...args: Parameters<typeof real.buildNetwork>) => {
      work.networks += 1;
      return real.buildNetwork(...args);
    },
  };
});
vi.mock('../../src/engine/gas-system/solve-gas.ts', async (original) => {
  const real = await original<typeof import('../../src/engine/gas-system/solve-gas.ts')>();
  return {
    ...real,
    solveGas: (...args: Parameters<typeof real.solveGas>) => {
      work.gas += 1;
      return real.solveGas(...args);
    },
  };
});

vi.mock('../../src/engine/given.ts', async (original) => {
  const real = await original<typeof import('../../src/engine/given.ts')>();
  return {
    ...real,
    give: (...args: Parameters<typeof real.give>) => {
      const given = real.give(...args);
      // What stood before may be asked for beside it: all of it is work.
      work.given.push(given.counts);
      return given;
    },
  };
});

beforeEach(() => Object.assign(work, NONE, { given: [] }));

const caseOf = (plan: Plan): Case => ({ option: Object.keys(plan.options)[0] ?? null, when: 'after' });

/** Work of one evaluation, for each leg of the plan. */
function workOf(plan: Plan) {
  const legs = Object.keys(plan.legs).length;
  Object.assign(work, NONE, { given: [] });
  const report = evaluate(plan, caseOf(plan));
  const boxQueries = work.given.reduce((sum, c) => sum + c.boxQueries, 0);
  const distances = work.given.reduce((sum, c) => sum + c.distances, 0);
  return {
    legs,
    boxQueries: boxQueries / legs,
    distances: distances / legs,
    lookUps: work.lookUps / legs,
    findings: report.findings.length / legs,
  };
}

/** Rules that speak of the whole plan at once, or ask once what is to be looked at in many places. */
const ONCE: ReadonlySet<string> = new Set([
  'gas/meter-capacity',
  'building/through-wall',
  'water/mains',
  'discharge/end',
  'safety/bonding',
]);

const within = (a: number, b: number, share: number): void => {
  expect(b).toBeGreaterThan(0);
  expect(Math.abs(a / b - 1)).toBeLessThanOrEqual(share);
};

describe.each(demoNames)('the house %s over and over', (name) => {
  const house = demoPlan(name);
  const [one, some, many] = [1, copiesFor(house, 1000), copiesFor(house, 3000)].map((n) => copiesOf(house, n)) as [
    Plan,
    Plan,
    Plan,
  ];

  test('is a sound plan of about a thousand and three thousand legs', () => {
    expect(danglingReferences(some)).toEqual([]);
    within(Object.keys(some.legs).length, 1000, 0.1);
    within(Object.keys(many.legs).length, 3000, 0.1);
  });

  test('asks as much of each leg at three thousand as at one thousand', { timeout: 60_000 }, () => {
    const [a, b] = [workOf(some), workOf(many)];
    within(b.boxQueries, a.boxQueries, 0.1);
    // A house whose pipes lie well apart has no distance to work out at all.
    if (a.distances > 0 || name === 'flat') within(b.distances, a.distances, 0.1);
    else expect(b.distances).toBe(0);
    within(b.lookUps, a.lookUps, 0.1);
  });

  // Many houses are one job to the engine, so their meters are told of together and not house by house.
  test('finds of each house what it finds of one', { timeout: 60_000 }, () => {
    const each = (plan: Plan) => evaluate(plan, caseOf(plan)).findings.filter((f) => !ONCE.has(f.rule));
    expect(each(some)).toHaveLength(each(one).length * copiesFor(house, 1000));
  });
});

test('one evaluation builds one network and solves gas once, however many rules ask for them', () => {
  const plan = demoPlan('flat');
  evaluate(plan, caseOf(plan));
  expect([work.networks, work.gas]).toEqual([1, 1]);
});

test('a plan without gas solves none', () => {
  const plan = demoPlan('flat');
  evaluate({ ...plan, runs: {}, legs: {}, stretches: {}, nodes: {}, items: {} }, caseOf(plan));
  expect(work.networks).toBe(1);
});

// The spine's gates on the largest of the houses, twenty times over, joists, rooms, roofs and drains and all.
describe('the house with a rear extension, twenty times', () => {
  const house = demoPlan('extension');
  const [five, twenty] = [copiesOf(house, 5), copiesOf(house, 20)];

  test('is a sound plan of thousands of legs', () => {
    expect(danglingReferences(twenty)).toEqual([]);
    expect(Object.keys(twenty.legs).length).toBeGreaterThan(4000);
    expect(Object.values(twenty.voids).filter((space) => space.joists !== null).length).toBeGreaterThanOrEqual(60);
  });

  test('asks as much of each leg as five of it do', { timeout: 60_000 }, () => {
    const [few, many] = [workOf(five), workOf(twenty)];
    within(many.boxQueries, few.boxQueries, 0.1);
    within(many.distances, few.distances, 0.1);
    within(many.lookUps, few.lookUps, 0.1);
  });

  test('answers for each house where water can run, and no more', { timeout: 60_000 }, () => {
    const reach = (plan: Plan) => evaluate(plan, caseOf(plan)).reach.length;
    expect(reach(twenty)).toBe(20 * reach(house));
  });
});

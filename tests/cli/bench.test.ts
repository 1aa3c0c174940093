import { describe, expect, test } from 'vitest';
import { copiesFor, copiesOf } from '../../src/cli/bench/copies.ts';
import { type Duel, fight, median, sample } from '../../src/cli/bench/duel.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { demoNames, demoPlan } from '../engine/demo-file.ts';

const duels = Object.values(
  import.meta.glob<Duel>('../../src/cli/bench/duels/*.duel.ts', { eager: true, import: 'default' }),
);

/** A clock that only work moves, and work that takes so many ms on it. */
function workshop() {
  let time = 0;
  const order: string[] = [];
  const work = (name: string, costs: () => number) => () => {
    order.push(name);
    time += costs();
  };
  return { now: () => time, work, order };
}

describe('timing', () => {
  test('median of an odd and an even number', () => {
    expect(median([3, 1, 2])).toBe(2);
    expect(median([4, 1, 2, 3])).toBe(2.5);
    expect(() => median([])).toThrow('nothing was measured');
  });

  test('quick work is timed in batches, and one that is disturbed does not show', () => {
    const { now, work, order } = workshop();
    expect(
      sample(
        work('x', () => 0.5),
        now,
      ),
    ).toBe(0.5);
    expect(order.length).toBeGreaterThan(60);
    const disturbed = workshop();
    expect(
      sample(
        disturbed.work('x', () => (disturbed.order.length === 2 ? 400 : 50)),
        disturbed.now,
      ),
    ).toBe(50);
  });

  test('slow work is taken once', () => {
    const { now, work, order } = workshop();
    expect(
      sample(
        work('x', () => 900),
        now,
      ),
    ).toBe(900);
    expect(order).toHaveLength(1);
  });

  test('a duel takes both in turn, and its ratio does not follow the machine', () => {
    const { now, work, order } = workshop();
    // Every call is slower than the one before, as on a machine that gets hot.
    const heat = () => 1 + order.length / 20;
    const prepare = () => ({ ours: work('ours', () => 2000 * heat()), peer: work('peer', () => 1000 * heat()) });
    let settled = 0;
    const outcome = fight({ id: 'x', ours: '', peer: '', atMost: 1, prepare }, 6, now, () => settled++);
    expect(settled).toBe(order.length);
    expect(order.slice(4)).toEqual(Array.from({ length: 3 }, () => ['ours', 'peer', 'peer', 'ours']).flat());
    expect(outcome.value).toBeGreaterThan(1.9);
    expect(outcome.value).toBeLessThan(2.1);
    expect(outcome.held).toBe(false);
    expect(outcome.lo).toBeLessThanOrEqual(outcome.value);
  });

  test('a duel may tell another figure of the ratio', () => {
    const { now, work } = workshop();
    const prepare = () => ({ ours: work('ours', () => 900), peer: work('peer', () => 100) });
    const figure = { name: 'exponent', of: (ratio: number) => Math.log(ratio) / Math.log(3) };
    const outcome = fight({ id: 'x', ours: '', peer: '', figure, atMost: 2.1, prepare }, 5, now);
    expect(outcome).toMatchObject({ figure: 'exponent', held: true, oursMs: 900, peerMs: 100 });
    expect(outcome.value).toBeCloseTo(2);
  });
});

describe('the duels', () => {
  test('are told apart', () => {
    expect(duels.length).toBeGreaterThan(5);
    expect(new Set(duels.map((d) => d.id)).size).toBe(duels.length);
  });

  test.each(duels.map((d) => [d.id, d] as const))('%s: both do what they say', { timeout: 60_000 }, (_id, duel) => {
    const { ours, peer } = duel.prepare();
    expect(ours()).toBeTruthy();
    expect(peer()).toBeTruthy();
  });
});

describe('copies of a house', () => {
  test.each(demoNames)('%s over and over is sound, and each as it was', (name) => {
    const house = demoPlan(name);
    const three = copiesOf(house, 3);
    expect(danglingReferences(three)).toEqual([]);
    for (const map of ['legs', 'points', 'walls', 'openings', 'stretches', 'items', 'nodes'] as const) {
      expect(Object.keys(three[map])).toHaveLength(3 * Object.keys(house[map]).length);
    }
    expect(copiesFor(house, 1)).toBe(1);
    expect(house).toEqual(demoPlan(name));
  });
});

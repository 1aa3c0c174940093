import { describe, expect, it } from 'vitest';
import { condensateDrains } from '../../../src/engine/drainage/condensate-drains.ts';
import { give } from '../../../src/engine/given.ts';
import { bareVoid, outward, room } from '../../../src/engine/rules/condensate/houses.ts';
import type { Case, Plan } from '../../../src/plan/plan.ts';
import type { Void } from '../../../src/plan/records/building.ts';

const AFTER: Case = { option: 'A', when: 'after' };
const rounds = (plan: Plan) =>
  condensateDrains(give(plan, AFTER)).flatMap((d) => d.steps.map((s) => (s.parts ?? []).map((p) => p.round)));

const under = (change: Partial<Void>, z = -40) => {
  const e = room();
  e.plan.voids.v = bareVoid('v', change);
  return e.run(
    'k',
    'condensate',
    [
      [-2000, -1500, z],
      [-1000, -1500, z - 60],
    ],
    { kind: 'waste', size: '32', joining: 'solvent' },
  ).plan;
};

describe('inside, outside, unheated', () => {
  it('out of the room, through the wall, into the open', () => {
    expect(rounds(outward())).toEqual([['room', 'wall', 'outside'], ['outside']]);
  });

  it('metres are counted from the face of the wall', () => {
    const [drain] = condensateDrains(give(outward({ outM: 2 }), AFTER));
    // 1950 beyond the face at 50, as long as the slope makes it, and 600 down.
    expect(drain?.coldM?.lo).toBeCloseTo(Math.hypot(1950, (1950 * 280) / 2800) / 1000 + 0.6, 2);
    expect(drain?.coldM?.hi).toBe(drain?.coldM?.lo);
  });

  it('a room told to be unheated is as cold as outside, one nobody asked about is not', () => {
    const plan = (heated: boolean | null) =>
      room(heated).run(
        'k',
        'condensate',
        [
          [-2000, -1500, 900],
          [-1000, -1500, 840],
        ],
        { kind: 'waste', size: '32', joining: 'solvent' },
      ).plan;
    expect(rounds(plan(false))).toEqual([['cold']]);
    expect(rounds(plan(null))).toEqual([['room']]);
  });

  it('under the lowest floor it goes by the air that blows there', () => {
    expect(rounds(under({ kind: 'floor', ventilated: true }))).toEqual([['cold']]);
    expect(rounds(under({ kind: 'floor', ventilated: null }))).toEqual([['maybeCold']]);
    expect(rounds(under({ kind: 'floor', ventilated: false }))).toEqual([['room']]);
  });

  it('in the slab of the house it is inside; above the top ceiling only a void makes it so', () => {
    expect(rounds(under({ kind: 'slab' }))).toEqual([['room']]);
    expect(rounds(under({ kind: 'slab' }, 2700))).toEqual([['outside']]);
    const attic = { from: 'datum', of: null } as const;
    expect(
      rounds(under({ kind: 'ceiling', bottom: { ...attic, mm: 2400 }, top: { ...attic, mm: 2800 } }, 2700)),
    ).toEqual([['room']]);
  });
});

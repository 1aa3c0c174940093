import { describe, expect, it } from 'vitest';
import { aliveIn } from '../../src/network/cases.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { house } from './house.ts';

const before = { option: 'o', when: 'before' } as const;
const after = { option: 'o', when: 'after' } as const;

/** Old run n1-n2-n3, a branch n2-n4, and a new leg n3-n5 of option o. */
function moved(fates: Plan['options'][string]['fates']): Plan {
  const h = house();
  h.run('old').run('branch').run('new', 'gas', { option: 'o' });
  for (const [i, id] of ['n1', 'n2', 'n3', 'n4', 'n5'].entries()) h.node(id, [i * 1000, 0, 0]);
  h.plan.nodes.n5!.option = 'o';
  h.leg('a', 'old', 'n1', 'n2')
    .leg('b', 'old', 'n2', 'n3')
    .leg('c', 'branch', 'n2', 'n4')
    .leg('d', 'new', 'n3', 'n5', { option: 'o' });
  h.item('valve', 'n4', 'gas-cock');
  h.plan.options.o!.fates = fates;
  return h.plan;
}

const standing = (plan: Plan, c: Parameters<typeof aliveIn>[1], map: 'legs' | 'nodes' | 'items') =>
  Object.keys(plan[map]).filter((id) => aliveIn(plan, c).has(map, id));

describe('what stands in a case', () => {
  it('keeps surveyed pipe before, whatever its fate, and shows new pipe only after', () => {
    const plan = moved({ branch: 'strip', b: 'cap' });
    expect(standing(plan, before, 'legs')).toEqual(['a', 'b', 'c']);
    expect(standing(plan, after, 'legs')).toEqual(['a', 'd']);
    expect(standing(moved({}), after, 'legs')).toEqual(['a', 'b', 'c', 'd']);
  });

  it('takes legs, items and nodes with their run', () => {
    const plan = moved({ branch: 'strip' });
    expect(aliveIn(plan, after).state('c')).toBe('strip');
    expect(standing(plan, after, 'items')).toEqual([]);
    expect(standing(plan, before, 'items')).toEqual(['valve']);
    expect(standing(plan, after, 'nodes')).toEqual(['n1', 'n2', 'n3', 'n5']);
    expect(standing(plan, before, 'nodes')).toEqual(['n1', 'n2', 'n3', 'n4']);
  });

  it('lets a leg have another fate than its run', () => {
    const plan = moved({ old: 'strip', a: 'keep' });
    expect(standing(plan, after, 'legs')).toEqual(['a', 'c', 'd']);
  });

  it('does not mix options', () => {
    const plan = moved({});
    plan.options.p = { id: 'p', name: 'B', note: '', fates: { a: 'strip' } };
    expect(standing(plan, { option: 'p', when: 'after' }, 'legs')).toEqual(['b', 'c']);
    expect(aliveIn(plan, { option: 'p', when: 'after' }).state('d')).toBeNull();
    expect(standing(plan, { option: null, when: 'after' }, 'legs')).toEqual(['a', 'b', 'c']);
  });

  it('keeps a node that was placed alone', () => {
    const h = house().node('lone', [0, 0, 0]);
    expect(aliveIn(h.plan, after).has('nodes', 'lone')).toBe(true);
    expect(aliveIn(h.plan, after).has('nodes', 'nowhere')).toBe(false);
  });

  it('takes an opening with its wall', () => {
    const { plan } = house();
    const wall = {
      storey: 's',
      a: { x: 0, y: 0 },
      b: { x: 3000, y: 0 },
      thicknessMm: 100,
      construction: '',
      heightMm: null,
    };
    plan.walls.w = { id: 'w', ...wall, option: null, sureness: 'seen' };
    plan.openings.d = {
      id: 'd',
      wall: 'w',
      kind: 'door',
      name: '',
      from: 'a',
      alongMm: 500,
      widthMm: 800,
      sillMm: 0,
      headMm: 2000,
      opens: true,
      hinge: null,
      swings: null,
      option: null,
      sureness: 'seen',
    };
    plan.options.o!.fates = { w: 'strip' };
    expect(aliveIn(plan, before).has('openings', 'd')).toBe(true);
    expect(aliveIn(plan, after).has('openings', 'd')).toBe(false);
  });
});

import { describe, expect, it } from 'vitest';
import { pointKinds } from '../../src/catalogue/point-kinds.ts';
import { inOrder, isUnderside, swapped, withTail } from '../../src/view/things/tail-order.ts';

const kind = pointKinds.get('boiler');
const tails = kind ? kind.connections(kind.size, kind.defaults) : [];
const ids = (of: readonly { readonly id: string }[]) => of.map((t) => t.id);

describe('tails of a thing', () => {
  it('stand from left to right', () => {
    expect(ids(inOrder([...tails].reverse()))).toEqual(ids(tails));
    expect(isUnderside(tails)).toBe(true);
    const cylinder = pointKinds.get('cylinder');
    expect(cylinder && isUnderside(cylinder.connections(cylinder.size, cylinder.defaults))).toBe(false);
  });

  it('change places with a neighbour, and the places stay', () => {
    const next = swapped(tails, 'gas', -1);
    expect(ids(inOrder(next)).slice(0, 4)).toEqual(['flow', 'gas', 'hot', 'cold']);
    expect(inOrder(next).map((t) => t.at)).toEqual(inOrder(tails).map((t) => t.at));
    expect(swapped(tails, 'flow', -1)).toEqual(tails);
    expect(swapped(swapped(tails, 'gas', 1), 'gas', -1)).toEqual(tails);
  });

  it('get a further one inside the case, under an id of its own', () => {
    const more = withTail(withTail(tails, 'gas', 400, 300), 'gas', 400, 300);
    expect(ids(more).slice(-2)).toEqual(['gas2', 'gas3']);
    for (const t of more) expect(Math.abs(t.at.x)).toBeLessThanOrEqual(200);
    expect(withTail([], 'cold', 400, 300)[0]).toMatchObject({ id: 'cold', label: 'Cold', at: { y: 150 } });
  });
});

import { describe, expect, it } from 'vitest';
import { edition, editionsOf } from '../../src/reference/tables.ts';

describe('editions', () => {
  it('takes the default where none is pinned, and the pinned one where one is', () => {
    expect(edition('gas-fittings', {})?.id).toBe('gas-fittings-2015');
    expect(edition('gas-fittings', { 'gas-fittings': 'gas-fittings-older' })?.id).toBe('gas-fittings-older');
  });

  it('never lets another edition stand in for a pinned one that is not here', () => {
    expect(edition('gas-fittings', { 'gas-fittings': 'gas-fittings-2031' })).toBeUndefined();
    expect(edition('gas-fittings', { 'gas-fittings': 'gas-pressure-limit-2015' })).toBeUndefined();
  });

  it('throws on a topic no table has', () => {
    expect(() => edition('no-such-topic', {})).toThrow('no-such-topic');
    expect(editionsOf('gas-fittings').map((t) => t.id)).toEqual(['gas-fittings-2015', 'gas-fittings-older']);
  });
});

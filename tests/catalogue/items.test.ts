import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { itemKinds, itemsFor, makeItem } from '../../src/catalogue/items.ts';
import { services } from '../../src/catalogue/services.ts';
import { item as itemSchema } from '../../src/plan/records/pipework.ts';

const kinds = [...itemKinds.values()].map((k) => [k.id, k] as const);

describe('kinds of item', () => {
  it('has what a boiler move needs in line', () => {
    for (const id of [
      'isolation-valve',
      'gas-cock',
      'drain-cock',
      'air-vent',
      'filter',
      'check-valve',
      'double-check',
      'filling-loop',
      'pressure-reducer',
      'strainer',
      'union',
      'test-point',
      'emergency-control-valve',
      'stop-end',
    ]) {
      expect(itemKinds.has(id), id).toBe(true);
    }
  });

  it.each(kinds)('%s makes an item that the file format takes', (id) => {
    const made = makeItem(id, { id: 'i1', node: 'n1', option: null });
    expect(v.safeParse(itemSchema, made).issues).toBeUndefined();
  });

  it.each(kinds)('%s is of known services, stands somewhere, has a mark and a name for the list', (_id, kind) => {
    for (const s of kind.services) expect(services.has(s), s).toBe(true);
    expect(kind.stands.length).toBeGreaterThan(0);
    expect(kind.mark.length).toBeGreaterThan(0);
    expect(kind.listName).toMatch(/^[a-z]/);
    expect(Object.keys(kind.defaults).sort()).toEqual(kind.fields.map((f) => f.key).sort());
  });

  it('offers only what fits the service and the place', () => {
    const gas = itemsFor('gas', 'inline').map((k) => k.id);
    expect(gas).toContain('gas-cock');
    expect(gas).not.toContain('isolation-valve');
    expect(gas).not.toContain('stop-end');
    expect(itemsFor('gas', 'end').map((k) => k.id)).toContain('stop-end');
  });

  it('refuses a kind that is not there', () => {
    expect(() => makeItem('whistle', { id: 'i', node: 'n', option: null })).toThrow('whistle');
  });
});

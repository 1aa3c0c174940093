import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { services, servicesInOrder } from '../../src/catalogue/services.ts';

const tokens: { service: Record<string, { tag: string }> } = JSON.parse(
  readFileSync(new URL('../../shared/look/tokens.json', import.meta.url), 'utf8'),
);

describe('services', () => {
  it('are the eleven of a boiler move', () => {
    expect([...services.keys()].sort()).toEqual([
      'balancedCold',
      'boilerRelief',
      'cold',
      'condensate',
      'discharge',
      'flue',
      'gas',
      'heatingFlow',
      'heatingReturn',
      'hot',
      'preheated',
    ]);
  });

  it.each([...services.values()].map((s) => [s.id, s] as const))(
    '%s has a line in the look and its letters',
    (_id, s) => {
      expect(tokens.service[s.style]?.tag.split(', ')).toContain(s.tag);
    },
  );

  it('are told apart by their letters', () => {
    const tags = [...services.values()].map((s) => s.tag);
    expect(new Set(tags).size).toBe(tags.length);
  });

  it('come in an order of their own, each once', () => {
    const order = servicesInOrder().map((s) => s.order);
    expect(new Set(order).size).toBe(order.length);
    expect(servicesInOrder()[0]?.id).toBe('gas');
  });

  it('run downhill where nothing pushes them', () => {
    const down = [...services.values()].filter((s) => s.runsDownhill).map((s) => s.id);
    expect(down.sort()).toEqual(['boilerRelief', 'condensate', 'discharge']);
  });
});

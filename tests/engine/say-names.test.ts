import { describe, expect, it } from 'vitest';
import { midSentence, sentence } from '../../src/engine/say-names.ts';

describe('a name inside a sentence', () => {
  it.each([
    ['En-suite shower', 'en-suite shower'],
    ['New combi', 'new combi'],
    ['Boiler', 'boiler'],
    ['Boiler, kitchen', 'boiler, kitchen'],
    ['Élan bath', 'élan bath'],
    ['WC', 'WC'],
    ['B2 meter', 'B2 meter'],
    ['T-piece', 'T-piece'],
    ['D2, main cylinder', 'D2, main cylinder'],
    ['X-Ray room', 'X-Ray room'],
    ['South-West bedroom', 'South-West bedroom'],
    ['', ''],
  ])('%s', (name, inside) => {
    expect(midSentence(name)).toBe(inside);
  });

  it('has its capital again where it begins one', () => {
    expect(sentence(midSentence('En-suite shower'))).toBe('En-suite shower');
  });
});

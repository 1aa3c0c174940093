import { describe, expect, it } from 'vitest';
import type { FittingKind } from '../../src/catalogue/define-fitting.ts';
import { fittingKinds } from '../../src/catalogue/fittings.ts';

const kind = (id: string): FittingKind => {
  const found = fittingKinds.get(id);
  if (!found) throw new Error(id);
  return found;
};

describe('kinds of fitting', () => {
  it('are named in counter words', () => {
    expect(kind('elbow90').label({ joining: 'endFeed', sizes: ['22'] })).toBe('end feed elbow');
    expect(kind('elbow45').label({ joining: 'press', sizes: ['22'] })).toBe('press 45 elbow');
    expect(kind('coupler').label({ joining: 'compression', sizes: ['15'] })).toBe('compression straight coupler');
    expect(kind('tap-connector').size({ joining: 'endFeed', sizes: ['15', '1/2'] })).toBe('15 x 1/2');
  });

  it.each([
    [['22', '22', '22'], 'end feed equal tee', '22'],
    [['22', '22', '15'], 'end feed reduced branch tee', '22 x 22 x 15'],
    [['22', '15', '22'], 'end feed reduced end tee', '22 x 15 x 22'],
    [['22', '15', '15'], 'end feed tee, end and branch reduced', '22 x 15 x 15'],
    [['15', '15', '22'], 'end feed pendant tee', '15 x 15 x 22'],
    [['28', '22', '15'], 'end feed tee, all ends different', '28 x 22 x 15'],
  ])('tee %j is said and sized in trade order', (sizes, label, size) => {
    expect(kind('tee').label({ joining: 'endFeed', sizes })).toBe(label);
    expect(kind('tee').size({ joining: 'endFeed', sizes })).toBe(size);
    expect(kind('tee').ends({ joining: 'endFeed', sizes })).toHaveLength(3);
  });

  it('a fitting reducer goes into a socket of the larger size', () => {
    expect(kind('reducer').ends({ joining: 'endFeed', sizes: ['28', '22'] })).toEqual([
      { form: 'spigot', size: '28', joining: 'endFeed' },
      { form: 'socket', size: '22', joining: 'endFeed' },
    ]);
  });

  it('a bend is bought from nobody', () => {
    expect(kind('bend90').bought).toBe(false);
    expect(kind('bend90').ends({ joining: 'endFeed', sizes: ['22'] })).toEqual([]);
  });

  it('every bought piece has an end to mate with', () => {
    for (const k of fittingKinds.values()) {
      if (!k.bought) continue;
      const ends = k.ends({ joining: 'endFeed', sizes: ['22', '15', '15'] });
      expect(ends.length, k.id).toBeGreaterThan(0);
      for (const e of ends) expect(e.size).not.toBe('');
    }
  });
});

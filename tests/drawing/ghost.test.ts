import { describe, expect, test } from 'vitest';
import { fragments } from '../../src/drawing/fragments.ts';
import { ghostsOf } from '../../src/drawing/ghost/ghost.ts';
import type { Case } from '../../src/plan/plan.ts';
import { demo } from './demo.ts';

const plan = demo('two-storey');
const [low, high] = Object.values(plan.storeys).sort((a, b) => a.floorMm - b.floorMm);
const option = Object.keys(plan.options)[0] ?? null;
const AFTER: Case = { option, when: 'after' };
const BEFORE: Case = { option: null, when: 'before' };
const view = (storey: string | undefined) => ({ kind: 'plan', storey: storey ?? '' }) as const;

describe('what is shown faint', () => {
  const below = fragments(plan, view(low?.id), AFTER, { stripped: false });
  const ghosts = ghostsOf(below);
  const items = ghosts.flatMap((g) => g.items);

  test('walls, things and pipes of the floor below are there', () => {
    expect(high).toBeDefined();
    const maps = new Set(ghosts.map((g) => g.fragment.map));
    for (const map of ['walls', 'openings', 'points', 'stretches', 'legs']) expect([...maps]).toContain(map);
    const upright = below.find((f) => f.layer === 'item' && f.items.some((i) => i.t === 'mark' && i.mark === 'rise'));
    expect(ghosts.some((g) => g.fragment === upright)).toBe(true);
  });

  test('everything is one hairline in one tint: one grain, no fill, no words, nothing hollow', () => {
    expect(items.length).toBeGreaterThan(20);
    for (const item of items) {
      expect(item.t).not.toBe('text');
      if (item.t === 'area') expect([item.fill, item.edge?.ink]).toEqual(['none', 'ink3']);
      else if (item.t === 'mark') expect([item.ink, ['rise', 'drop'].includes(item.mark)]).toEqual(['ink3', true]);
      else if (item.t !== 'text') {
        expect(item.style.ink).toBe('ink3');
        expect(Math.max(...item.style.dash)).toBeLessThan(0.9);
        expect(item.style.pen).toBeLessThan(0.3);
        expect(item.style.core ?? item.style.strike).toBeUndefined();
      }
    }
  });

  test('a fragment has one ghost, whoever asks', () => {
    const again = ghostsOf(below);
    expect(again.every((g, i) => g === ghosts[i])).toBe(true);
  });

  test('of another case only what is not drawn anyway', () => {
    const here = fragments(plan, view(low?.id), AFTER, { stripped: false });
    const ids = new Set(here.map((f) => f.id));
    const before = ghostsOf(fragments(plan, view(low?.id), BEFORE, { stripped: false }), here);
    const alone = ghostsOf(fragments(plan, view(low?.id), BEFORE, { stripped: false }));
    expect(before.length).toBeLessThan(alone.length);
    expect(before.some((g) => ids.has(g.fragment.id) && g.fragment.layer !== 'wall')).toBe(false);
  });
});

import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { annotate } from '../../src/drawing/annotate.ts';
import type { View } from '../../src/drawing/display-list.ts';
import { drawSvg } from '../../src/drawing/draw-svg.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import { ribbon } from '../../src/drawing/ribbon.ts';
import { buildNetwork } from '../../src/network/graph.ts';
import type { Case, Plan } from '../../src/plan/plan.ts';
import { demo } from './demo.ts';

/** Plans with records left out at random: half of what is left leans on something that is gone. */
function holed(plan: Plan, keep: (map: string, id: string) => boolean): Plan {
  const maps = Object.entries(plan).map(([name, value]) => {
    const isMap = typeof value === 'object' && value !== null && name !== 'basis' && name !== 'job';
    if (!isMap) return [name, value];
    return [name, Object.fromEntries(Object.entries(value as object).filter(([id]) => keep(name, id)))];
  });
  return Object.fromEntries(maps) as Plan;
}

const PLANS = { flat: demo('flat'), 'two-storey': demo('two-storey') };
const CASES: readonly Case[] = [
  { option: 'A', when: 'after' },
  { option: 'A', when: 'before' },
  { option: null, when: 'before' },
];

test('whatever is missing, drawing gives a drawing and never throws', () => {
  fc.assert(
    fc.property(
      fc.constantFrom<keyof typeof PLANS>('flat', 'two-storey'),
      fc.integer({ min: 1, max: 1e9 }),
      fc.integer({ min: 2, max: 12 }),
      fc.constantFrom(...CASES),
      (name, seed, one, chosen) => {
        const whole = PLANS[name];
        let at = seed;
        const plan = holed(whole, () => {
          at = (at * 48271) % 2147483647;
          return at % one !== 0;
        });
        const views: View[] = [
          ...Object.keys(whole.storeys).map((storey): View => ({ kind: 'plan', storey })),
          ...Object.keys(whole.walls)
            .slice(0, 3)
            .map((wall): View => ({ kind: 'face', wall, side: 'left' })),
        ];
        for (const view of views) {
          const all = fragments(plan, view, chosen);
          const list = annotate(all, { plan, view, mmPerPaperMm: 50 });
          expect(list.items.length).toBeGreaterThanOrEqual(all.length);
          for (const f of all) for (const edge of Object.values(f.box)) expect(Number.isFinite(edge)).toBe(true);
        }
        const [storey = ''] = Object.keys(whole.storeys);
        const [run = null] = Object.keys(whole.runs);
        ribbon(plan, buildNetwork(plan, chosen), {
          storey,
          at: { x: 1000, y: 1000 },
          run,
          widthMm: 500,
          mmPerPaperMm: 20,
          levels: [],
        });
      },
    ),
    { numRuns: 40 },
  );
});

test('no figure of a drawing is not a number', () => {
  for (const name of ['flat', 'two-storey'] as const) {
    const plan = PLANS[name];
    for (const storey of Object.keys(plan.storeys)) {
      const svg = drawSvg(plan, { kind: 'plan', storey }, CASES[0] as Case, 'day');
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    }
  }
});

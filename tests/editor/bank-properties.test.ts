import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { nodePlace } from '../../src/geometry/places.ts';
import { add3 } from '../../src/geometry/vec.ts';
import type { Xyz } from '../../src/plan/records/parts.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { leastGapOf, somePath } from '../network/bank-drawn.ts';
import { bytesOf, endsOf, FIVE, lineOf, membersOf, place, planOf, radiusOf, withBoiler } from './bank-job.ts';

type Step =
  | { readonly is: 'spacing'; readonly mm: number }
  | { readonly is: 'order'; readonly by: number }
  | { readonly is: 'height'; readonly mm: number }
  | { readonly is: 'peel'; readonly who: number; readonly mm: number };

const step: fc.Arbitrary<Step> = fc.oneof(
  fc.record({ is: fc.constant('spacing' as const), mm: fc.integer({ min: 50, max: 130 }) }),
  fc.record({ is: fc.constant('order' as const), by: fc.nat(20) }),
  fc.record({ is: fc.constant('height' as const), mm: fc.integer({ min: 100, max: 2600 }) }),
  fc.record({ is: fc.constant('peel' as const), who: fc.nat(5), mm: fc.constantFrom(100, 150, 200) }),
);

/** Two neighbours of the row change places, or the whole row is turned about. */
function reordered(members: readonly string[], by: number): string[] {
  if (by % 4 === 0) return [...members].reverse();
  const i = by % (members.length - 1);
  return members.map((m, k) => (k === i ? members[i + 1] : k === i + 1 ? members[i] : m) ?? m);
}

test('changes of a bank keep its ends and its members apart, or are refused in words; undo gives every byte back', () => {
  const said = { ran: 0, refused: 0 };
  fc.assert(
    fc.property(
      somePath,
      fc.constantFrom(0, 90, 180, 270),
      fc.tuple(fc.integer({ min: 700, max: 2000 }), fc.integer({ min: -900, max: 900 })),
      fc.subarray([...FIVE], { minLength: 2 }),
      fc.constantFrom('level', 'upright'),
      fc.array(step, { minLength: 1, maxLength: 4 }),
      (drawn, angle, [dx, dy], services, row, steps) => {
        const path = drawn.map((p) => add3(p, { x: 0, y: 0, z: 2300 }));
        const last = path.at(-1) as Xyz;
        const { editor, boiler } = withBoiler({ x: last.x + dx, y: last.y + dy, z: last.z - 900 }, angle);
        const told = { members: membersOf(services), spacingMm: 75, row, path: path.map(place) };
        const out = editor.run('bank.lay', { ...told, end: { point: boiler } });
        if (!out.ok) {
          expect(out.why).toMatch(/leave more room|further apart|crosses itself/);
          return;
        }
        const [group, ...runs] = out.made as string[];
        const ends = runs.map((r) => endsOf(planOf(editor), r));
        expect(ends.map((e) => e[1])).not.toContain('open');
        for (const s of steps) {
          const before = planOf(editor);
          const members = before.groups[group as string]?.members;
          if (!members) return;
          const change =
            s.is === 'spacing'
              ? { spacingMm: s.mm }
              : s.is === 'order'
                ? { order: reordered(members, s.by) }
                : { height: { from: 'floor', of: 'ground', mm: s.mm } };
          const done =
            s.is === 'peel'
              ? editor.run('bank.peel', { group, run: members[s.who % members.length], asideMm: s.mm })
              : editor.run('bank.set', { group, ...change });
          const plan = planOf(editor);
          if (!done.ok) {
            said.refused++;
            expect(done.why).toMatch(/^[A-Z].*\.$/);
            expect(plan).toBe(before);
            continue;
          }
          said.ran++;
          const about = JSON.stringify([path, angle, dx, dy, services, row, steps, s]);
          expect(danglingReferences(plan)).toEqual([]);
          expect(
            runs.map((r) => endsOf(plan, r)),
            about,
          ).toEqual(ends);
          // One that was taken out is a pipe like any other.
          const still = runs.filter((r) => plan.groups[group as string]?.members.includes(r) ?? s.is === 'peel');
          const gap = leastGapOf(
            still.map((r) => lineOf(plan, r)),
            still.map((r) => radiusOf(plan, r)),
          );
          expect(gap, about).toBeGreaterThan(-0.6);
          for (const leg of Object.values(plan.legs)) {
            const [a, b] = [plan.nodes[leg.a], plan.nodes[leg.b]];
            expect(a && b && nodePlace(plan, a) && nodePlace(plan, b), about).toBeTruthy();
          }
          const next = plan;
          expect(editor.undo().ok).toBe(true);
          expect(bytesOf(planOf(editor))).toBe(bytesOf(before));
          expect(editor.redo().ok).toBe(true);
          expect(planOf(editor)).toEqual(next);
        }
      },
    ),
    { numRuns: 36, seed: 4 },
  );
  expect(said.ran, 'changes that were made').toBeGreaterThan(40);
  expect(said.refused / (said.ran + said.refused), 'share that was refused').toBeLessThan(0.25);
}, 120_000);

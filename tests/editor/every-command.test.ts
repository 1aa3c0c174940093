import * as fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { commands } from '../../src/editor/commands/commands.ts';
import type { Command } from '../../src/editor/commands/define-command.ts';
import type { Editor } from '../../src/editor/editor-api.ts';
import { type Plan, planSchema } from '../../src/plan/plan.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { quantise } from '../../src/plan/units.ts';
import { blank, editorOf } from './hand.ts';
import { rngOf } from './rng.ts';

const all = [...commands.values()] as unknown as readonly Command[];

/** Makes things first, so that there is something for every command to change. */
const SEEDING = ['wall.add', 'wall.add', 'point.add', 'point.add', 'run.start', 'run.start', 'room.add', 'void.add'];
const more = [
  ...SEEDING,
  'opening.add',
  'item.add',
  'stretch.add',
  'run.extend',
  'storey.add',
  'thing.set',
  'group.set',
  'permission.set',
  'reading.set',
  'holdPoint.set',
  'blob.set',
  'blob.set',
  'bank.lay',
];

function play(editor: Editor, id: string, seed: number): { ran: boolean; refused: boolean } {
  const command = commands.get(id) as unknown as Command;
  const args = command.example(editor.store.getState().plan, rngOf(seed));
  if (args === null) return { ran: false, refused: false };
  return { ran: true, refused: !editor.run(id, args).ok };
}

const plans = new Map<number, Plan>();

/** A plan grown by commands, half of it surveyed and half new. */
function grown(seed: number): Plan {
  const there = plans.get(seed);
  if (there) return there;
  const editor = editorOf(blank());
  const rng = rngOf(seed);
  editor.setCase({ option: 'A', when: 'before' });
  for (const id of more) play(editor, id, rng.below(1e9));
  editor.setCase({ option: 'A', when: 'after' });
  for (const id of [...more, 'acknowledgement.set', 'override.set', 'listEdit.set', 'blob.set', 'fate.set']) {
    play(editor, id, rng.below(1e9));
  }
  const { plan } = editor.store.getState();
  plans.set(seed, plan);
  return plan;
}

function lengths(value: unknown, key = ''): number[] {
  if (typeof value === 'number') return /^[xyz]$|mm$/i.test(key) && key !== 'mmPerPixel' ? [value] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([k, entry]) => (k === 'fields' ? [] : lengths(entry, k)));
}

describe('every command', () => {
  test('is in the registry under the name of its file', () => {
    expect(all.length).toBeGreaterThan(50);
  });

  test.each(all.map((c) => [c.id, c] as const))(
    '%s undoes to what was there, and leaves nothing dangling',
    (id, command) => {
      let changed = 0;
      fc.assert(
        fc.property(fc.nat(), fc.boolean(), (seed, after) => {
          const start = grown(seed % 25);
          const editor = editorOf(start);
          editor.setCase({ option: 'A', when: after ? 'after' : 'before' });
          const args = command.example(start, rngOf(seed));
          if (args === null) return;
          expect(v.safeParse(command.args, args).issues, 'its own example fits its schema').toBeUndefined();
          const said = JSON.stringify(start);
          const outcome = editor.run(id, args);
          const { plan, history } = editor.store.getState();
          expect(JSON.stringify(start), 'the plan before is never written to').toBe(said);
          if (!outcome.ok) {
            expect(plan).toBe(start);
            expect(outcome.why).toMatch(/^[A-Z].*\.$|\(/);
            return;
          }
          expect(danglingReferences(plan)).toEqual([]);
          expect(v.safeParse(planSchema, plan).issues).toBeUndefined();
          for (const mm of lengths(plan)) expect(mm).toBe(quantise(mm));
          if (plan === start) return;
          changed++;
          expect(history.undo).toHaveLength(1);
          expect(editor.undo().ok).toBe(true);
          expect(editor.store.getState().plan).toEqual(start);
          expect(editor.redo().ok).toBe(true);
          expect(editor.store.getState().plan).toEqual(plan);
        }),
        { numRuns: 25, seed: 7 },
      );
      expect(changed, 'it changed something at least once').toBeGreaterThan(0);
    },
  );

  test('a long row of them undoes to the first plan', () => {
    fc.assert(
      fc.property(fc.nat(), (seed) => {
        const editor = editorOf(blank());
        const start = editor.store.getState().plan;
        const rng = rngOf(seed);
        for (let i = 0; i < 120; i++) {
          play(editor, rng.pick(i < 20 ? more : all.map((c) => c.id)) ?? '', rng.below(1e9));
          expect(danglingReferences(editor.store.getState().plan)).toEqual([]);
        }
        while (editor.store.getState().history.undo.length > 0) expect(editor.undo().ok).toBe(true);
        expect(editor.store.getState().plan).toEqual(start);
      }),
      { numRuns: 12, seed: 11 },
    );
  });
});

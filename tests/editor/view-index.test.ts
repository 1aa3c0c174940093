import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { commands } from '../../src/editor/commands/commands.ts';
import type { Command } from '../../src/editor/commands/define-command.ts';
import { entriesOf } from '../../src/editor/hit/entries.ts';
import { type Entry, gather } from '../../src/editor/hit/pipework-entries.ts';
import { viewIndex } from '../../src/editor/hit/view-index.ts';
import { workPlane } from '../../src/editor/input/work-plane.ts';
import { aliveIn } from '../../src/network/cases.ts';
import { drawn } from './drawn.ts';
import { rngOf } from './rng.ts';

const EVERYWHERE = { minX: -1e9, minY: -1e9, maxX: 1e9, maxY: 1e9 };
const sorted = (entries: Iterable<Entry>) =>
  [...entries].sort((a, b) => (`${a.kind}/${a.owner}/${a.id}` < `${b.kind}/${b.owner}/${b.id}` ? -1 : 1));

describe('the index of a view', () => {
  test('put right after each step, it is what it would be if it were built anew', () => {
    const ids = [...commands.keys()];
    fc.assert(
      fc.property(fc.nat(), (seed) => {
        const rng = rngOf(seed);
        const { editor } = drawn();
        for (let i = 0; i < 40; i++) {
          const { plan, panes, chosen } = editor.store.getState();
          const { view } = panes.plan;
          const shown = viewIndex(plan, view, chosen)!;
          const anew = entriesOf(gather(plan, view, workPlane(plan, view)!, aliveIn(plan, chosen)));
          expect(sorted(shown.near(EVERYWHERE))).toEqual(sorted(anew));
          const command = commands.get(rng.pick(ids) ?? '') as unknown as Command;
          const args = command.example(plan, rng);
          if (args) editor.run(command.id, args);
          else editor.undo();
        }
      }),
      { numRuns: 12, seed: 3 },
    );
  });
});

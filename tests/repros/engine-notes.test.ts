import { expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import type { Row } from '../../src/report/section.ts';
import { demoPlan } from '../engine/demo-file.ts';

const rows = (name: string): readonly Row[] =>
  evaluate(demoPlan(name), { option: 'A', when: 'after' }).sections.find((s) => s.id === 'gas-drop')?.rows ?? [];

// Two sections of one path each gave the same note, and nobody could tell which was of which.
test('a note says of which section it is, where there are several', () => {
  const notes = rows('two-storey').flatMap((r) => (r.kind === 'note' && /15 m column/.test(r.say) ? [r.say] : []));
  expect(notes).toEqual([
    'Gas meter to tee, 22: stepping to the 15 m column instead of reading between columns gives 0.11 mbar.',
    'Tee to New boiler, 22: stepping to the 15 m column instead of reading between columns gives 0.52 mbar.',
  ]);
});

// "1.7 m = 1.7 m at 3.50 m3/h": a length to which nothing was added was set equal to itself.
test('a length with no fittings on it is said once', () => {
  const how = rows('two-storey').flatMap((r) => (r.kind === 'sum' ? [r.how] : []));
  expect(how[0]).toBe('1.7 m at 3.50 m3/h');
  expect(how[1]).toMatch(/^5\.5 m \+ .* = 7\.8 to 8\.5 m at 2\.85 m3\/h$/);
});

import { judgedTests } from './judged-tests.ts';

/**
 * Tests that say what is right of the world: worked examples, published figures, what rules say of their examples, what
 * the engine says of the demo houses, what is taken of a thing nobody measured. None of them compares a table with
 * itself. Left out are those that count, compare with stored drawings, or ask a second program: too slow for every number.
 */
import.meta.glob(['../published/*.test.ts', '../catalogue/*.test.ts', '!../published/networks*.test.ts'], {
  eager: true,
});
// Slower ones after those that name figures, so that a change is mostly noticed before them.
import.meta.glob(
  [
    '../network/*.test.ts',
    '../engine/**/*.test.ts',
    '!../engine/counts.test.ts',
    '!../engine/evaluate.test.ts',
    '!../engine/rule-drawings.test.ts',
    '!../engine/finding-keys.test.ts',
    '!../engine/screen-words.test.ts',
    '!../engine/hydraulics/against-program.test.ts',
  ],
  { eager: true },
);

export const all = judgedTests();

import { judgedTests } from './judged-tests.ts';

/**
 * Tests that say what is right of the world: worked examples, published figures, what rules say of their examples, what
 * the engine says of the demo houses. None of them compares a table with itself.
 */
import.meta.glob(
  [
    '../published/*.test.ts',
    '../engine/**/*.test.ts',
    '!../engine/counts.test.ts',
    '!../engine/evaluate.test.ts',
    '!../engine/rule-drawings.test.ts',
    '!../engine/finding-keys.test.ts',
    '!../engine/screen-words.test.ts',
    '!../published/networks*.test.ts',
  ],
  { eager: true },
);

export const all = judgedTests();

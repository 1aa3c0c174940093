import { describe, expect, test } from 'vitest';
import { slideIn } from '../../src/view/bench/keep-asked-in-view.ts';

const LENGTH = 700;
const EDGE = 30;

describe('what is being made is slid into sight', () => {
  test('what is in sight is left where it is', () => {
    expect(slideIn([EDGE, 300, LENGTH - EDGE], LENGTH)).toBe(0);
  });

  test.each([[[-50, 100]], [[650, 720]], [[2000, 2100]]])(
    '%j comes inside the edges, and no further than needed',
    (at) => {
      const by = slideIn(at, LENGTH) ?? Number.NaN;
      for (const px of at) {
        expect(px + by).toBeGreaterThanOrEqual(EDGE);
        expect(px + by).toBeLessThanOrEqual(LENGTH - EDGE);
      }
      const past = Math.max(EDGE - Math.min(...at), Math.max(...at) - (LENGTH - EDGE));
      expect(Math.abs(by)).toBeLessThanOrEqual(past + LENGTH / 10);
    },
  );

  test('what is longer than the pane cannot be slid in', () => {
    expect(slideIn([0, 690], LENGTH)).toBeUndefined();
  });
});

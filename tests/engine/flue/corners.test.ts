import { expect, test } from 'vitest';
import { cornersOf } from '../../../src/engine/flue/corners-near.ts';

/** A terminal's own frame: the face along x, the outside at y above 0. */
const RING = [
  { x: -1000, y: 0 },
  { x: 2000, y: 0 },
  { x: 2000, y: -4000 },
  { x: -1000, y: -4000 },
];

test('a face ends where the house turns away', () => {
  expect(cornersOf(RING, 50)).toEqual([
    { x: -1000, inside: false },
    { x: 2000, inside: false },
  ]);
  expect(cornersOf([...RING].reverse(), 50)).toEqual(cornersOf(RING, 50));
});

test('a wing that comes forward makes an inside corner', () => {
  const ring = [...RING.slice(0, 1), { x: 800, y: 0 }, { x: 800, y: 3000 }, { x: 2000, y: 3000 }, ...RING.slice(2)];
  expect(cornersOf(ring, 50)).toEqual([
    { x: -1000, inside: false },
    { x: 800, inside: true },
  ]);
});

test('a small step, and a place in the middle of a straight edge, are no corners', () => {
  const stepped = [...RING.slice(0, 1), { x: 700, y: 0 }, { x: 700, y: 30 }, { x: 2000, y: 30 }, ...RING.slice(2)];
  expect(cornersOf(stepped, 50).map((c) => c.x)).toEqual([-1000, 2000]);
});

test('nothing where no edge passes the terminal', () => {
  const away = RING.map((p) => ({ x: p.x + 5000, y: p.y }));
  expect(cornersOf(away, 50)).toEqual([]);
});

import type { Item, LineStyle, Vec } from '../display-list.ts';
import type { UnrolledPiece } from './ribbon-run.ts';
import type { Figure } from './room-for-words.ts';

const LINE: LineStyle = { ink: 'dimension', pen: 0.18, dash: [], fit: false };
/** A part of the run under this has no distance of its own. */
const LEAST_MM = 20;

/** Distances between the turns of the run, along the foot of the section. */
export function chainOf(pieces: readonly UnrolledPiece[], x: (mm: number) => number, z: number, k: number) {
  const stops = new Set<number>();
  for (const p of pieces) {
    if (p.upTo[0] - p.from[0] < LEAST_MM) continue;
    stops.add(Math.round(p.from[0]));
    stops.add(Math.round(p.upTo[0]));
  }
  const sorted = [...stops].sort((a, b) => a - b).filter((s, i, all) => i === 0 || s - (all[i - 1] ?? 0) >= LEAST_MM);
  const items: Item[] = sorted.map((s) => ({
    t: 'line',
    pts: [
      [x(s), z],
      [x(s), z],
    ],
    offsetsMm: [
      [-0.7, -0.7],
      [0.7, 0.7],
    ],
    style: { ...LINE, pen: 0.35 },
  }));
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (first !== undefined && last !== undefined && last > first) {
    items.push({
      t: 'line',
      pts: [
        [x(first), z],
        [x(last), z],
      ],
      style: LINE,
    });
  }
  const figures = sorted.slice(1).flatMap((s, i): Figure[] => {
    const before = sorted[i] ?? 0;
    const text = Math.round(s - before).toString();
    const fits = x(s) - x(before) > (text.length * 1.9 + 1) * k;
    const middle: Vec = [(x(before) + x(s)) / 2, z];
    return fits ? [{ at: middle, text, strong: false, ink: 'ink2', tries: [{ off: [0, 1.9], align: 'middle' }] }] : [];
  });
  return { items, figures };
}

import type { Vec } from '../display-list.ts';

/** Where a label may stand beside a thing, in paper mm from it: the near end of its first line, and its leader. */
export interface Candidate {
  readonly end: Vec;
  readonly align: 'left' | 'right' | 'middle';
  readonly leader: readonly Vec[];
  readonly length: number;
}

/** Flat piece at either end of a leader. */
const FLAT_MM = 2;
const REACHES_MM = [4, 8, 13, 19, 26, 34];
const KICK_MM = 4;

/** Eight sides at growing reach. A leader is flat, one piece at 45 degrees, flat; or straight. */
export function* sides(clear: number): Generator<Candidate> {
  const start = clear + FLAT_MM;
  for (const reach of REACHES_MM) {
    for (const sx of [1, -1]) {
      const align = sx > 0 ? 'left' : 'right';
      const straight: Vec = [sx * (start + reach), 0];
      yield { end: straight, align, leader: [[sx * clear, 0], straight], length: start + reach };
      for (const sy of [1, -1]) {
        const bend: Vec = [sx * (start + reach), sy * reach];
        const end: Vec = [bend[0] + sx * FLAT_MM, bend[1]];
        const leader: Vec[] = [[sx * clear, 0], [sx * start, 0], bend, end];
        yield { end, align, leader, length: start + reach * 1.5 + FLAT_MM };
      }
    }
    for (const sy of [1, -1]) {
      for (const sx of [1, -1]) {
        const kick = Math.min(reach, KICK_MM);
        const end: Vec = [sx * kick, sy * (start + reach)];
        const leader: Vec[] = [
          [0, sy * clear],
          [0, sy * start],
          [sx * kick, sy * (start + kick)],
        ];
        if (reach > kick) leader.push(end);
        yield { end, align: sx > 0 ? 'left' : 'right', leader, length: start + reach };
      }
    }
  }
}

/** Close by, without a leader: over, under, right, left. */
export function* close(clear: number, lineMm: number): Generator<Candidate> {
  for (const more of [0.8, 2.5, 4.5, 7]) {
    const off = clear + more + lineMm / 2;
    yield { end: [0, off], align: 'middle', leader: [], length: more };
    yield { end: [0, -off], align: 'middle', leader: [], length: more };
    yield { end: [off, 0], align: 'left', leader: [], length: more };
    yield { end: [-off, 0], align: 'right', leader: [], length: more };
  }
}

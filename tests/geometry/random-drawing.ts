import type { Wall } from '../../src/plan/records/building.ts';
import { type Pair, wall } from './house.ts';

interface Rect {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export interface Drawing {
  readonly walls: readonly Wall[];
  /** Clear area of each room, mm2. */
  readonly areas: readonly number[];
  readonly seeds: readonly Pair[];
}

/** Numbers from 0 up to 1, the same for the same start. */
export function numbers(start: number): () => number {
  let n = (start ^ 0x9e3779b9) >>> 0;
  return () => {
    n = (Math.imul(n ^ (n >>> 15), n | 1) + 0x6d2b79f5) >>> 0;
    return ((n ^ (n >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * A rectangle of outer walls parted again and again by partitions that are drawn the way people draw them: now to the
 * face of the wall they meet, now to its centreline, now a little short of it or into it.
 */
export function randomDrawing(start: number, turnDeg = 0): Drawing {
  const next = numbers(start);
  const within = (lo: number, hi: number) => Math.round(lo + next() * (hi - lo));
  const [outer, inner] = [within(200, 350), within(70, 120)];
  const [w, h] = [within(5000, 12000), within(5000, 12000)];
  const angle = (turnDeg * Math.PI) / 180;
  const turned = (x: number, y: number): Pair => [
    x * Math.cos(angle) - y * Math.sin(angle),
    x * Math.sin(angle) + y * Math.cos(angle),
  ];
  const walls: Wall[] = [];
  const add = (x0: number, y0: number, x1: number, y1: number, thick: number) =>
    walls.push(wall(`w${walls.length}`, turned(x0, y0), turned(x1, y1), thick));
  add(0, 0, w, 0, outer);
  add(w, 0, w, h, outer);
  add(w, h, 0, h, outer);
  add(0, h, 0, 0, outer);

  const rooms: Rect[] = [];
  /** Where a partition that should reach the face at `face` is drawn to; `into` is the way into that wall. */
  const drawnTo = (face: number, into: 1 | -1, thick: number) => face + into * within(-14, thick / 2);
  const part = (r: Rect, deep: number, sides: readonly [number, number, number, number]): void => {
    const [sw, se, ss, sn] = sides;
    const across = next() < 0.5;
    const [lo, hi] = across ? [r.x0 + 1200, r.x1 - 1200] : [r.y0 + 1200, r.y1 - 1200];
    if (deep === 0 || lo >= hi) {
      rooms.push(r);
      return;
    }
    const at = within(lo, hi);
    const [near, far] = [at - inner / 2, at + inner / 2];
    if (across) {
      add(at, drawnTo(r.y0, -1, ss), at, drawnTo(r.y1, 1, sn), inner);
      part({ ...r, x1: near }, deep - 1, [sw, inner, ss, sn]);
      part({ ...r, x0: far }, deep - 1, [inner, se, ss, sn]);
    } else {
      add(drawnTo(r.x0, -1, sw), at, drawnTo(r.x1, 1, se), at, inner);
      part({ ...r, y1: near }, deep - 1, [sw, se, ss, inner]);
      part({ ...r, y0: far }, deep - 1, [sw, se, inner, sn]);
    }
  };
  const o = outer / 2;
  part({ x0: o, y0: o, x1: w - o, y1: h - o }, 3, [outer, outer, outer, outer]);
  return {
    walls,
    areas: rooms.map((r) => (r.x1 - r.x0) * (r.y1 - r.y0)),
    seeds: rooms.map((r) => turned((r.x0 + r.x1) / 2, (r.y0 + r.y1) / 2)),
  };
}

import type { Rng } from '../../src/editor/commands/define-command.ts';

/** A small generator with a seed: the same number gives the same choices. */
export function rngOf(seed: number): Rng {
  let s = seed >>> 0;
  const next = (): number => {
    s = (s + 0x6d2b79f5) >>> 0;
    let t = Math.imul(s ^ (s >>> 15), s | 1);
    t = (t + Math.imul(t ^ (t >>> 7), t | 61)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (n: number): number => Math.floor(next() * n);
  return { below, pick: (from) => (from.length === 0 ? undefined : from[below(from.length)]) };
}

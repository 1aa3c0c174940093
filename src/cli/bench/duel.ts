/** Two ways of doing one thing, or a thing and what it is held against, timed turn by turn in the same run. */
export interface Duel {
  readonly id: string;
  readonly ours: string;
  readonly peer: string;
  /** What is told of the ratio ours / peer; left out: the ratio itself. */
  readonly figure?: { readonly name: string; readonly of: (ratio: number) => number };
  /** The figure may not be more than this; null: it is only told. */
  readonly atMost: number | null;
  /** Makes what both need, once. Throws where the two do not come to the same, so that no wrong thing is called fast. */
  readonly prepare: () => { readonly ours: () => unknown; readonly peer: () => unknown };
}

export const defineDuel = (duel: Duel): Duel => duel;

export interface Outcome {
  readonly id: string;
  readonly ours: string;
  readonly peer: string;
  readonly oursMs: number;
  readonly peerMs: number;
  readonly figure: string;
  readonly value: number;
  readonly lo: number;
  readonly hi: number;
  readonly atMost: number | null;
  readonly held: boolean;
}

/** Shortest time a sample is taken over, ms: under it the clock's own step would show. */
const SAMPLE_MS = 40;
/** Calls a sample has at least, so that one of them may be disturbed; a slow piece of work is taken once. */
const CALLS = 3;
const SLOW_MS = 700;

export function median(of: readonly number[]): number {
  const sorted = [...of].sort((a, b) => a - b);
  const [low, high] = [sorted[Math.floor((sorted.length - 1) / 2)], sorted[Math.ceil((sorted.length - 1) / 2)]];
  if (low === undefined || high === undefined) throw new RangeError('nothing was measured');
  return (low + high) / 2;
}

/** What the work gave is kept where the optimiser cannot see that nobody reads it. */
const kept: { last: unknown } = { last: null };

/** Milliseconds one call takes: the median of the calls that fill a sample. */
export function sample(work: () => unknown, now: () => number): number {
  const calls: number[] = [];
  let spent = 0;
  while (spent < SAMPLE_MS || (calls.length < CALLS && spent < SLOW_MS)) {
    const start = now();
    kept.last = work();
    calls.push(now() - start);
    spent += calls[calls.length - 1] ?? 0;
  }
  return median(calls);
}

/**
 * Runs a duel. Each round takes both, the one that goes first changing from round to round, and a ratio of its own: a
 * machine that slows down slows both. The figure is the median of the rounds, with its range.
 */
export function fight(duel: Duel, rounds: number, now: () => number): Outcome {
  const { ours, peer } = duel.prepare();
  for (const work of [ours, peer, ours, peer]) sample(work, now);
  const taken = Array.from({ length: rounds }, (_, round) => {
    const first = sample(round % 2 === 0 ? ours : peer, now);
    const second = sample(round % 2 === 0 ? peer : ours, now);
    return round % 2 === 0 ? { ours: first, peer: second } : { ours: second, peer: first };
  });
  const figure = duel.figure ?? { name: 'ratio', of: (ratio: number) => ratio };
  const figures = taken.map((t) => figure.of(t.ours / t.peer));
  const value = median(figures);
  return {
    id: duel.id,
    ours: duel.ours,
    peer: duel.peer,
    oursMs: median(taken.map((t) => t.ours)),
    peerMs: median(taken.map((t) => t.peer)),
    figure: figure.name,
    value,
    lo: Math.min(...figures),
    hi: Math.max(...figures),
    atMost: duel.atMost,
    held: duel.atMost === null || value <= duel.atMost,
  };
}

/** Two ways of doing one thing, or a thing and what it is held against, timed turn by turn in the same run. */
export interface Duel {
  readonly id: string;
  readonly ours: string;
  readonly peer: string;
  /** What is told of the ratio ours / peer; left out: the ratio itself. */
  readonly figure?: { readonly name: string; readonly of: (ratio: number) => number };
  /** The figure may not be more than this; null: it is only told. */
  readonly atMost: number | null;
  /** Work that goes on without a pause: long samples, and nothing is taken up by force between them. */
  readonly steady?: boolean;
  /** Ours should not keep a hand waiting longer than this, ms by the wall clock: told, and it fails nothing elsewhere. */
  readonly aimMs?: number;
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
  /** Steady work by the clock on the wall, ms: what a hand waits for on a machine that does nothing else. */
  readonly wallMs: number | null;
  readonly figure: string;
  readonly value: number;
  readonly lo: number;
  readonly hi: number;
  readonly atMost: number | null;
  readonly aimMs: number | null;
  readonly held: boolean;
}

/** Shortest time that the clock can be trusted with, ms: quicker work is timed in batches as long as this. */
const BATCH_MS = 5;
/** Shortest time and least number of batches of a sample, so that one may be disturbed; slow work is taken once. */
const SAMPLE_MS = 40;
const BATCHES = 3;
const SLOW_MS = 700;
/** Shortest sample of steady work, ms. */
const STEADY_MS = 1000;

export function median(of: readonly number[]): number {
  const sorted = [...of].sort((a, b) => a - b);
  const [low, high] = [sorted[Math.floor((sorted.length - 1) / 2)], sorted[Math.ceil((sorted.length - 1) / 2)]];
  if (low === undefined || high === undefined) throw new RangeError('nothing was measured');
  return (low + high) / 2;
}

/** What the work gave is kept where the optimiser cannot see that nobody reads it. */
const kept: { last: unknown } = { last: null };

/** Milliseconds one call takes: the median of the batches that fill a sample. */
export function sample(work: () => unknown, now: () => number, leastMs = SAMPLE_MS): number {
  const taken: number[] = [];
  let calls = 1;
  let spent = 0;
  while (taken.length === 0 || spent < leastMs || (taken.length < BATCHES && spent < SLOW_MS)) {
    const start = now();
    for (let i = 0; i < calls; i++) kept.last = work();
    const ms = now() - start;
    spent += ms;
    if (ms < BATCH_MS) calls *= 2;
    else taken.push(ms / calls);
  }
  return median(taken);
}

/**
 * Runs a duel. Each round takes both, the one that goes first changing from round to round, and a ratio of its own: a
 * machine that slows down slows both. `settle` is called before each sample, so that none pays for the one before it. The figure is the median of the rounds, with its range.
 */
export function fight(duel: Duel, rounds: number, now: () => number, settle: () => void = () => {}): Outcome {
  const take = (work: () => unknown): number => {
    if (!duel.steady) settle();
    return sample(work, now, duel.steady ? STEADY_MS : SAMPLE_MS);
  };
  const { ours, peer } = duel.prepare();
  for (const work of [ours, peer, ours, peer]) take(work);
  const taken = Array.from({ length: rounds }, (_, round) => {
    const first = take(round % 2 === 0 ? ours : peer);
    const second = take(round % 2 === 0 ? peer : ours);
    return round % 2 === 0 ? { ours: first, peer: second } : { ours: second, peer: first };
  });
  const wallMs = duel.steady ? sample(ours, () => performance.now(), STEADY_MS) : null;
  const figure = duel.figure ?? { name: 'ratio', of: (ratio: number) => ratio };
  const figures = taken.map((t) => figure.of(t.ours / t.peer));
  const value = median(figures);
  return {
    id: duel.id,
    ours: duel.ours,
    peer: duel.peer,
    oursMs: median(taken.map((t) => t.ours)),
    peerMs: median(taken.map((t) => t.peer)),
    wallMs,
    figure: figure.name,
    value,
    lo: Math.min(...figures),
    hi: Math.max(...figures),
    atMost: duel.atMost,
    aimMs: duel.aimMs ?? null,
    held: duel.atMost === null || value <= duel.atMost,
  };
}

/**
 * The order in which the unknowns of a symmetric net are eliminated, and where that puts entries. Found once; the
 * numbers are put in each turn.
 */
export interface Elimination {
  /** Row `i` is the unknown eliminated in turn `i`; `below[i]` are the turns of those it is tied to, rising. */
  readonly below: readonly (readonly number[])[];
  /** Turn of each unknown. */
  readonly turn: readonly number[];
  /** Entries of the factor off its diagonal. */
  readonly entries: number;
}

/** Least-tied first: dead ends and pipes in series go without leaving anything, so that a house takes linear work. */
export function planElimination(count: number, pairs: Iterable<readonly [number, number]>): Elimination {
  const ties: Set<number>[] = Array.from({ length: count }, () => new Set());
  for (const [a, b] of pairs) {
    ties[a]?.add(b);
    ties[b]?.add(a);
  }
  // Bins by number of ties. An unknown stays in old bins as well; it is passed over there when its number has changed.
  const bins: number[][] = [];
  const put = (n: number): void => {
    const size = ties[n]?.size ?? 0;
    bins[size] ??= [];
    bins[size].push(n);
  };
  for (let n = count - 1; n >= 0; n--) put(n);
  const turn = new Array<number>(count).fill(-1);
  const tied: number[][] = [];
  for (let low = 0; tied.length < count; ) {
    const n = bins[low]?.pop();
    if (n === undefined) {
      low += 1;
      continue;
    }
    const mine = ties[n];
    if (turn[n] !== -1 || !mine || mine.size !== low) continue;
    turn[n] = tied.length;
    const rest = [...mine];
    tied.push(rest);
    for (const a of rest) {
      ties[a]?.delete(n);
      for (const b of rest) if (a !== b) ties[a]?.add(b);
    }
    for (const a of rest) put(a);
    low = Math.max(0, low - 1);
  }
  const below = tied.map((rest) => rest.map((n) => turn[n] ?? 0).sort((a, b) => a - b));
  return { below, turn, entries: below.reduce((sum, b) => sum + b.length, 0) };
}

/** Fills in `diagonal[n]` and `off[k]` of `pairs[k]`, and gives the unknowns of the right side. */
export interface SymmetricSystem {
  readonly diagonal: Float64Array;
  readonly pairs: readonly (readonly [number, number])[];
  readonly off: Float64Array;
  readonly right: Float64Array;
}

/** Unknowns of a symmetric system whose diagonal outweighs its rows. `spent` counts products. */
export function eliminate(
  plan: Elimination,
  system: SymmetricSystem,
): { readonly x: Float64Array; readonly spent: number } {
  const { below, turn } = plan;
  const count = turn.length;
  const d = new Float64Array(count);
  const y = new Float64Array(count);
  const rows = below.map((b) => new Map<number, number>(b.map((t) => [t, 0])));
  for (let n = 0; n < count; n++) {
    const t = turn[n] ?? 0;
    d[t] = system.diagonal[n] ?? 0;
    y[t] = system.right[n] ?? 0;
  }
  for (const [k, [a, b]] of system.pairs.entries()) {
    const [s, t] = [turn[a] ?? 0, turn[b] ?? 0];
    const row = rows[Math.min(s, t)];
    const other = Math.max(s, t);
    row?.set(other, (row.get(other) ?? 0) + (system.off[k] ?? 0));
  }
  let spent = 0;
  for (let t = 0; t < count; t++) {
    const row = rows[t];
    const mine = below[t] ?? [];
    const pivot = d[t] ?? 1;
    for (const [i, a] of mine.entries()) {
      const share = (row?.get(a) ?? 0) / pivot;
      y[a] = (y[a] ?? 0) - share * (y[t] ?? 0);
      d[a] = (d[a] ?? 0) - share * (row?.get(a) ?? 0);
      for (let j = i + 1; j < mine.length; j++) {
        const b = mine[j] ?? 0;
        const to = rows[a];
        to?.set(b, (to.get(b) ?? 0) - share * (row?.get(b) ?? 0));
      }
      spent += mine.length - i;
    }
  }
  for (let t = count - 1; t >= 0; t--) {
    let sum = y[t] ?? 0;
    for (const [a, v] of rows[t] ?? []) sum -= v * (y[a] ?? 0);
    y[t] = sum / (d[t] ?? 1);
  }
  return { x: Float64Array.from(turn, (t) => y[t] ?? 0), spent };
}

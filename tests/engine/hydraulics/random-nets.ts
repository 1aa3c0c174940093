import type { HydraulicNet, NetLink, NetNode } from '../../../src/engine/hydraulics/hydraulic-net.ts';

const BORES = [8.8, 10.8, 13.6, 20.2, 26.2];

/** Numbers from 0 to 1, the same for the same start. */
export function numbersFrom(start: number): () => number {
  let state = start >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

export interface NetShape {
  readonly nodes: number;
  /** Links beyond those of a tree. */
  readonly rings: number;
  readonly secondSource: boolean;
  readonly pump: boolean;
}

/** A net of house pipes: a tree from the source S, with rings closed across it. */
export function randomNet(next: () => number, { nodes: count, rings, secondSource, pump }: NetShape): HydraulicNet {
  const pick = <T>(of: readonly T[]): T => of[Math.floor(next() * of.length)] as T;
  const link = (id: string, from: string, to: string, bore = pick(BORES)): NetLink => ({
    id,
    from,
    to,
    lengthM: 0.3 + next() * 9,
    boreMm: bore,
    roughnessMm: 0.0015,
    k: next() < 0.3 ? 0 : next() * 6,
  });
  const ids = Array.from({ length: count }, (_, i) => `N${i}`);
  const links: NetLink[] = pump
    ? [{ ...link('P0', 'S', 'N0', 26.2), lengthM: 0, k: 0, pump: { h0M: 4 + next() * 4, r: 0.3 + next() } }]
    : [link('L0', 'S', 'N0', 26.2)];
  for (let i = 1; i < count; i++) {
    // Mostly near the last few, as pipes run; told backwards now and then, so that flows come out below zero.
    const near = ids[Math.max(0, i - 1 - Math.floor(next() * 4))] ?? 'N0';
    const here = ids[i] ?? 'N0';
    links.push(next() < 0.8 ? link(`L${i}`, near, here) : link(`L${i}`, here, near));
  }
  for (let i = 0; i < rings; i++) {
    const [from, to] = [pick(ids), pick(ids)];
    if (from !== to) links.push(link(`R${i}`, from, to));
  }
  const share = 0.9 / count;
  const nodes: NetNode[] = [
    { id: 'S', headM: 30 },
    ...ids.map((id) => ({ id, ...(next() < 0.6 ? { demandLPerS: Math.round(next() * 2 * share * 1e4) / 1e4 } : {}) })),
  ];
  if (secondSource) {
    nodes.push({ id: 'T', headM: 28 + next() * 3 });
    links.push(link('LT', 'T', ids[count - 1] ?? 'N0'));
  }
  return { nodes, links, tC: 10 };
}

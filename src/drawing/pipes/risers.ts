import type { DrawnLeg } from './drawn-leg.ts';

/** Legs that follow one another straight at the reader: one mark for all of them. */
export interface Riser {
  /** Draws the mark. */
  readonly owner: DrawnLeg;
  readonly legs: readonly DrawnLeg[];
  /** Towards the reader, from the told start to the told end. */
  readonly from: number;
  readonly upTo: number;
  readonly startVertex: string;
  readonly endVertex: string;
}

export function risersOf(legs: readonly DrawnLeg[]): ReadonlyMap<DrawnLeg, Riser> {
  const endOn = legs.filter((leg) => leg.endOn);
  const startsAt = new Map<string, DrawnLeg[]>();
  const endsAt = new Map<string, DrawnLeg[]>();
  const push = (map: Map<string, DrawnLeg[]>, key: string, leg: DrawnLeg): void => {
    const there = map.get(key);
    if (there) there.push(leg);
    else map.set(key, [leg]);
  };
  for (const leg of endOn) {
    push(startsAt, `${leg.run} ${leg.vertexA}`, leg);
    push(endsAt, `${leg.run} ${leg.vertexB}`, leg);
  }
  const risers = new Map<DrawnLeg, Riser>();
  const before = (leg: DrawnLeg): DrawnLeg | undefined =>
    endsAt.get(`${leg.run} ${leg.vertexA}`)?.find((l) => l !== leg);
  const after = (leg: DrawnLeg): DrawnLeg | undefined =>
    startsAt.get(`${leg.run} ${leg.vertexB}`)?.find((l) => l !== leg);
  for (const leg of endOn) {
    if (risers.has(leg)) continue;
    const chain = [leg];
    const walk = (next: (l: DrawnLeg) => DrawnLeg | undefined, add: (l: DrawnLeg) => void): void => {
      for (let at = next(leg); at && !chain.includes(at) && !risers.has(at); at = next(at)) add(at);
    };
    walk(before, (l) => chain.unshift(l));
    walk(after, (l) => chain.push(l));
    const first = chain[0] as DrawnLeg;
    const last = chain.at(-1) as DrawnLeg;
    const riser: Riser = {
      owner: first,
      legs: chain,
      from: first.readerA,
      upTo: last.readerB,
      startVertex: first.vertexA,
      endVertex: last.vertexB,
    };
    for (const l of chain) risers.set(l, riser);
  }
  return risers;
}

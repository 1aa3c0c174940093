import { type Line3, segmentDistance } from '../../geometry/segments.ts';
import { distance3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { boxed, linesOf, Nearness, nearestOf } from './nearness.ts';

/** One way a member may end: its legs from its last firm corner on. */
export interface Choice {
  readonly pts: readonly Xyz[];
  readonly cost: number;
}

export interface ToFit {
  readonly radiusMm: number;
  /** Legs of it that are settled. */
  readonly firm: readonly Line3[];
  /** Cheapest first. */
  readonly choices: readonly Choice[];
}

/** Which choice each takes; or two of which no choices go together. */
export type Fitted =
  | { readonly ok: true; readonly taken: readonly number[]; readonly cost: number }
  | { readonly ok: false; readonly pair: readonly [number, number] };

/** How far apart two members are to stay by their middle lines, mm. */
export type Apart = (i: number, j: number) => number;

/** Legs of one pipe keep out of each other, but for those that only a set is between. */
function clearOfItself(firm: readonly Line3[], legs: readonly Line3[], radiusMm: number): boolean {
  const own = [...firm, ...legs];
  for (let i = firm.length; i < own.length; i++) {
    let between = 0;
    for (let j = i - 1; j >= 0; j--) {
      const [p, q] = [own[i] as Line3, own[j] as Line3];
      if (between >= 4 * radiusMm && segmentDistance(p, q).distance < 2 * radiusMm) return false;
      between += distance3(q.a, q.b);
    }
  }
  return true;
}

/** Rounding of places to tenths moves two lines by no more than this towards each other. */
const ROUNDING_MM = 0.2;

/** So many half-made rows are looked at before it is taken that there is none, and so many more for a cheaper one. */
const MOST_TRIES = 500;
const MOST_BETTER = 60;

/** Choices that keep out of what is settled, each with how near it comes to the settled legs of the others. */
interface Settled {
  readonly ownWay: readonly (readonly number[])[];
  readonly toFirm: (i: number, c: number, j: number) => number;
  readonly near: Nearness;
}

/** Measures everything that is asked of a row more than once. `farMm`: nothing is asked that is further apart. */
export function measured(all: readonly ToFit[], farMm: number): Settled {
  const lines = all.map((m) => m.choices.map((c) => boxed(linesOf(c.pts))));
  const firm = all.map((m) => boxed(m.firm));
  const ownWay = all.map((m) =>
    m.choices.flatMap((c, k) => (clearOfItself(m.firm, linesOf(c.pts), m.radiusMm) ? [k] : [])),
  );
  const toFirm = new Map<number, number>();
  const most = Math.max(1, ...all.map((m) => m.choices.length));
  return {
    ownWay,
    near: new Nearness(lines, farMm),
    toFirm(i, c, j) {
      const key = (i * most + c) * all.length + j;
      const was = toFirm.get(key);
      if (was !== undefined) return was;
      const [one, other] = [lines[i]?.[c], firm[j]];
      const mm = one && other ? nearestOf(one, other, farMm) : farMm;
      toFirm.set(key, mm);
      return mm;
    },
  };
}

/**
 * Takes a choice for each so that no two come nearer than `apart` of them by their middle lines, for the least cost found.
 * Whoever has the fewest ways left chooses next; a choice takes away those of the others that it is in the way of. What
 * costs `below` or more is not looked at.
 */
export function fitTogether(all: readonly ToFit[], settled: Settled, apart: Apart, below: number): Fitted {
  const costOf = (i: number, c: number): number => all[i]?.choices[c]?.cost ?? 0;
  const mmOf = (i: number, j: number): number => apart(i, j) - ROUNDING_MM;
  let pair: [number, number] = [0, 0];
  const open = settled.ownWay.map((own, i) =>
    own.filter((c) => {
      const against = all.findIndex((_, j) => j !== i && settled.toFirm(i, c, j) < mmOf(i, j));
      if (against >= 0) pair = [i, against];
      return against < 0;
    }),
  );
  const stuck = open.findIndex((o) => o.length === 0);
  if (stuck >= 0) return { ok: false, pair: pair[0] === stuck ? pair : [stuck, stuck] };

  let best: { taken: number[]; cost: number } | null = null;
  let tries = 0;
  let limit = MOST_TRIES;
  const go = (left: readonly (readonly number[] | null)[], taken: readonly number[], cost: number): void => {
    let next = -1;
    let least = cost;
    for (const [i, cs] of left.entries()) {
      if (!cs) continue;
      least += costOf(i, cs[0] ?? 0);
      if (next < 0 || cs.length < (left[next]?.length ?? 0)) next = i;
    }
    if (least >= (best ? best.cost - 1 : below)) return;
    if (next < 0) {
      best = { taken: [...taken], cost };
      limit = Math.min(limit, tries + MOST_BETTER);
      return;
    }
    for (const c of left[next] ?? []) {
      if (++tries > limit) return;
      let dead = -1;
      const after = left.map((cs, j) => {
        if (!cs || j === next || dead >= 0) return null;
        const mm = mmOf(next, j);
        const kept = cs.filter((d) => settled.near.of(next, c, j, d) >= mm);
        if (kept.length === 0) dead = j;
        return kept;
      });
      if (dead < 0) {
        const now = taken.map((t, k) => (k === next ? c : t));
        go(after, now, cost + costOf(next, c));
      } else pair = [next, dead];
    }
  };
  go(
    open,
    all.map(() => 0),
    0,
  );
  const found = best as { taken: number[]; cost: number } | null;
  return found ? { ok: true, ...found } : { ok: false, pair };
}

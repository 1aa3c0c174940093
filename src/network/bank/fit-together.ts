import { type Box3, boxOf, grow, overlaps } from '../../geometry/boxes.ts';
import { type Line3, segmentDistance } from '../../geometry/segments.ts';
import { distance3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';

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

export const linesOf = (pts: readonly Xyz[]): Line3[] => pts.slice(1).map((b, i) => ({ a: pts[i] as Xyz, b }));

/** Lines with the boxes about them: most pairs are told apart by those. */
export interface Lines {
  readonly all: readonly { readonly line: Line3; readonly box: Box3 }[];
  readonly box: Box3 | null;
}

export function boxed(lines: readonly Line3[]): Lines {
  const all = lines.map((line) => ({ line, box: boxOf([line.a, line.b]) }));
  return { all, box: lines.length === 0 ? null : boxOf(lines.flatMap((l) => [l.a, l.b])) };
}

/** No two of these come nearer than `mm` by their middle lines. */
export function clear(one: Lines, other: Lines, mm: number): boolean {
  if (!one.box || !other.box) return true;
  const wide = grow(one.box, mm);
  if (!overlaps(wide, other.box)) return true;
  const near = other.all.filter((q) => overlaps(wide, q.box));
  return one.all.every((p) => {
    const about = grow(p.box, mm);
    return near.every((q) => !overlaps(about, q.box) || segmentDistance(p.line, q.line).distance >= mm);
  });
}

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

/**
 * Takes a choice for each so that no two come nearer than `apart` of them by their middle lines, for the least cost found.
 * Whoever has the fewest ways left chooses next; a choice takes away those of the others that it is in the way of.
 */
export function fitTogether(all: readonly ToFit[], apart: (i: number, j: number) => number): Fitted {
  const lines = all.map((m) => m.choices.map((c) => boxed(linesOf(c.pts))));
  const firm = all.map((m) => boxed(m.firm));
  const mmOf = (i: number, j: number): number => apart(i, j) - ROUNDING_MM;
  const of = (i: number, c: number): Lines => lines[i]?.[c] ?? { all: [], box: null };
  const costOf = (i: number, c: number): number => all[i]?.choices[c]?.cost ?? 0;
  let pair: [number, number] = [0, 0];
  const open = all.map((m, i) =>
    m.choices.flatMap((choice, c) => {
      const against = firm.findIndex((f, j) => j !== i && !clear(of(i, c), f, mmOf(i, j)));
      if (against >= 0) pair = [i, against];
      return against < 0 && clearOfItself(m.firm, linesOf(choice.pts), m.radiusMm) ? [c] : [];
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
    if (best && least >= best.cost - 1) return;
    if (next < 0) {
      best = { taken: [...taken], cost };
      limit = Math.min(limit, tries + MOST_BETTER);
      return;
    }
    for (const c of left[next] ?? []) {
      if (++tries > limit) return;
      const mine = of(next, c);
      let dead = -1;
      const after = left.map((cs, j) => {
        if (!cs || j === next || dead >= 0) return null;
        const kept = cs.filter((d) => clear(mine, of(j, d), mmOf(next, j)));
        if (kept.length === 0) dead = j;
        return kept;
      });
      if (dead >= 0) {
        pair = [next, dead];
        continue;
      }
      go(
        after,
        taken.map((t, k) => (k === next ? c : t)),
        cost + costOf(next, c),
      );
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

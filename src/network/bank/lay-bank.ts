import { type Line3, segmentDistance } from '../../geometry/segments.ts';
import { add3, distance3, dot3, length3, scale3, sub3, unit3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { BankEnd, BankMember, BankTask, Laid, LaidMember, LaidPlace, Lean } from './bank.ts';
import { type Choice, type Fitted, fitTogether, measured } from './fit-together.ts';
import { boxed, linesOf, nearestOf } from './nearness.ts';
import { carriedAlong, isBack, nested, waysOf } from './nest.ts';
import { followed } from './rest.ts';
import { cornersOnly, waysTo } from './ways.ts';

/** A leg shorter than this many of its own diameters has no room for the fittings at its ends. */
const LEAST_DIAMETERS = 2;
export const leastLegMm = (radiusMm: number): number => 2 * radiusMm * LEAST_DIAMETERS;

/** Shares of the room the pipes have beside each other in the bank that are asked for past it, the most first. */
const ROOM = [1, 0.6, 0.3, 0];

type Side = 'start' | 'end';

interface Chosen {
  readonly taken: readonly (readonly Xyz[])[];
  readonly cost: number;
}

class NoWay extends Error {
  readonly pair: readonly [number, number] | null;
  constructor(words: string, pair: readonly [number, number] | null = null) {
    super(words);
    this.pair = pair;
  }
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

function crossing(members: readonly BankMember[], pair: readonly [number, number]): string {
  const [one, other] = pair.map((i) => members[i]?.name ?? 'a pipe');
  if (one === other) {
    return `${capital(one ?? '')} finds no way on from the bank: leave more room before its end, or lay it by itself.`;
  }
  return `${capital(one ?? '')} and ${other} would run into each other past the bank: leave more room there, put them in another order, or lay one of them by itself.`;
}

/** Corners of each member along the path; refuses where a turn leaves one of them no room, or the bank meets itself. */
function parallelPart(task: BankTask, ways: readonly Xyz[]): Xyz[][] {
  for (let k = 1; k < ways.length; k++) {
    if (isBack(ways[k - 1] as Xyz, ways[k] as Xyz)) throw new NoWay('A bank cannot turn straight back on itself.');
  }
  const all = task.across.map((a) => nested(task.path, ways, a));
  for (const [i, pts] of all.entries()) {
    for (const [k, way] of ways.entries()) {
      const mm = dot3(sub3(pts[k + 1] as Xyz, pts[k] as Xyz), way);
      const least = leastLegMm(task.members[i]?.radiusMm ?? 0);
      if (mm >= least) continue;
      const name = capital(task.members[i]?.name ?? 'a pipe');
      throw new NoWay(
        `${name} has no room to turn between two corners of the bank: set them ${Math.ceil(least - mm)} further apart, or the pipes nearer together.`,
      );
    }
  }
  for (const [i, one] of all.entries()) {
    for (const [j, other] of all.slice(0, i).entries()) {
      const radii = (task.members[i]?.radiusMm ?? 0) + (task.members[j]?.radiusMm ?? 0);
      if (nearestOf(boxed(linesOf(one)), boxed(linesOf(other)), radii) >= radii) continue;
      const names = `${capital(task.members[j]?.name ?? '')} and ${task.members[i]?.name ?? ''}`;
      const near = distance3(task.across[i] as Xyz, task.across[j] as Xyz) < radii;
      throw new NoWay(
        near
          ? `${names} would touch at that spacing: ${Math.ceil(radii)} between their middles is the least.`
          : `${names} would run into each other: the bank crosses itself.`,
        [j, i],
      );
    }
  }
  return all;
}

/** Rounding to tenths moves a place by less. */
const NEAR_MM = 0.25;
const STILL: Xyz = { x: 0, y: 0, z: 0 };

/** What a side can be for one member: pts lead from its last firm corner outwards. */
function choicesFor(
  end: BankEnd,
  member: BankMember,
  line: { readonly inner: Xyz; readonly outer: Xyz; readonly row: Xyz },
  steps: { readonly stepMm: number; readonly count: number },
  shared: boolean,
): Choice[] {
  const { inner, outer } = line;
  if (end.is === 'open') return [{ pts: [inner, outer], cost: 0 }];
  const way = unit3(sub3(outer, inner));
  const aside = (at: Xyz): Xyz => {
    const by = sub3(outer, at);
    return sub3(by, scale3(way, dot3(by, way)));
  };
  if (end.is === 'tail' && end.now && length3(aside(end.now.at)) < NEAR_MM) {
    const kept = followed(end.now, STILL);
    if (kept) return [{ pts: cornersOnly([inner, ...kept]), cost: 0 }];
  }
  if (end.is === 'rest') {
    const kept = followed(end.rest, aside(end.rest.at));
    if (kept && dot3(sub3(kept[0] as Xyz, inner), way) > 0) return [{ pts: [inner, ...kept], cost: 0 }];
    throw new NoWay(
      `${capital(member.name)} goes on past the bank to something that holds it: move that first, or take it out of the bank.`,
    );
  }
  const leastMm = leastLegMm(member.radiusMm);
  const backMm = Math.max(0, (distance3(inner, outer) - leastMm) * (shared ? 0.5 : 1));
  const leaving = { at: outer, way, row: line.row, backMm, leastMm, radiusMm: member.radiusMm };
  return waysTo(leaving, end.tail, steps).map(({ pts, cost }) => ({ pts: cornersOnly([inner, ...pts]), cost }));
}

/** Room between each two past the bank: as in it, but no more than between their tails. */
function wished(task: BankTask, side: Side): (i: number, j: number) => number {
  const stubs = task.members.map((m): Line3 | null => {
    const end = m[side];
    if (end.is !== 'tail') return null;
    const { at, facing } = end.tail;
    return { a: at, b: add3(at, scale3(facing, task.spacingMm)) };
  });
  return (i, j) => {
    const radii = (task.members[i]?.radiusMm ?? 0) + (task.members[j]?.radiusMm ?? 0);
    const beside = Math.min(task.spacingMm, distance3(task.across[i] as Xyz, task.across[j] as Xyz));
    const [p, q] = [stubs[i], stubs[j]];
    const tails = p && q ? segmentDistance(p, q).distance : beside;
    return Math.max(0, Math.min(beside, tails) - radii);
  };
}

function settle(task: BankTask, side: Side, lines: readonly (readonly Xyz[])[], row: Xyz, below: number): Chosen {
  const { members } = task;
  const steps = { stepMm: task.spacingMm, count: members.length };
  const toFit = members.map((m, i) => {
    const pts = lines[i] ?? [];
    const [outer, inner] = [pts.at(-1) as Xyz, pts.at(-2) as Xyz];
    const choices = choicesFor(m[side], m, { inner, outer, row }, steps, pts.length < 3);
    return { radiusMm: m.radiusMm, firm: linesOf(pts.slice(0, -1)), choices };
  });
  const wish = wished(task, side);
  const widest = Math.max(0, ...members.map((m) => m.radiusMm)) * 2 + task.spacingMm;
  const floor = toFit.reduce((sum, m) => sum + (m.choices[0]?.cost ?? 0), 0);
  if (floor >= below) throw new NoWay('Another order is shorter.');
  const settled = measured(toFit, widest);
  let failed: Fitted | null = null;
  for (const share of ROOM) {
    const apart = (i: number, j: number): number =>
      (members[i]?.radiusMm ?? 0) + (members[j]?.radiusMm ?? 0) + share * wish(i, j);
    const fitted = fitTogether(toFit, settled, apart, below);
    if (fitted.ok) {
      return { taken: toFit.map((m, i) => m.choices[fitted.taken[i] ?? 0]?.pts ?? []), cost: fitted.cost };
    }
    failed ??= fitted;
  }
  const pair = failed && !failed.ok ? failed.pair : ([0, 0] as const);
  throw new NoWay(crossing(members, pair), pair);
}

/** At the height of the bank a place leans on the bank's corner, else on the tail it leads to. */
function leaning(pts: readonly Xyz[], corner: { readonly k: number; readonly z: number }, side: Side | null) {
  return pts.map((at): LaidPlace => {
    const lean: Lean = side === null || Math.abs(at.z - corner.z) < NEAR_MM ? { corner: corner.k } : { tail: side };
    return { at, lean };
  });
}

function outwards(end: BankEnd, pts: readonly Xyz[], corner: { k: number; z: number }, side: Side): LaidPlace[] {
  if (end.is === 'open') return [];
  return leaning(pts, corner, end.is === 'tail' ? side : null);
}

/**
 * Lays a bank: every member along the path in its place across it, corners nested, then each by itself to its own end, so
 * that no two run into each other. Refuses in words, with the two members that are in each other's way. Nothing that costs
 * `below` or more past the bank is looked for.
 */
export function layBank(task: BankTask, below = Number.POSITIVE_INFINITY): Laid {
  try {
    const ways = waysOf(task.path);
    const last = task.path.length - 1;
    const all = parallelPart(task, ways);
    const on = task.across.map((a) => carriedAlong(a, ways));
    const acrossEnd = on.map((a) => a.at(-1) as Xyz);
    const ends = settle({ ...task, across: acrossEnd }, 'end', all, rowOf(acrossEnd), below);
    const lines = all.map((pts, i) => [...pts.slice(0, -2), ...(ends.taken[i] ?? [])].reverse());
    const starts = settle(task, 'start', lines, rowOf(task.across), below - ends.cost);
    const members = task.members.map((m, i): LaidMember => {
      const own = all[i] ?? [];
      const inner = own.slice(1, -1).map((at, k): LaidPlace => ({ at, lean: { corner: k + 1 } }));
      const [first, final] = [own[0] as Xyz, own[last] as Xyz];
      const [a, b] = [starts.taken[i] ?? [], ends.taken[i] ?? []];
      const middle = [
        ...(m.start.is === 'open' ? [{ at: first, lean: { corner: 0 } }] : []),
        ...inner,
        ...(m.end.is === 'open' ? [{ at: final, lean: { corner: last } }] : []),
      ];
      return {
        start: outwards(m.start, a.slice(1), { k: 0, z: first.z }, 'start').reverse(),
        middle,
        end: outwards(m.end, b.slice(1), { k: last, z: final.z }, 'end'),
      };
    });
    return { ok: true, bank: { members, cost: ends.cost + starts.cost } };
  } catch (cause) {
    if (cause instanceof NoWay) return { ok: false, why: cause.message, pair: cause.pair };
    throw cause;
  }
}

/** Way of the row, from its first member to its last. */
const rowOf = (across: readonly Xyz[]): Xyz => unit3(sub3(across.at(-1) ?? STILL, across[0] ?? STILL));

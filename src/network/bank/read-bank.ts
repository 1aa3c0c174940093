import { connectionPlace } from '../../geometry/hosting.ts';
import { pointBox } from '../../geometry/point-box.ts';
import { add3, distance3, dot3, length3, scale3, sub3, unit3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { BankEnd, Rest, Tail } from './bank.ts';
import { type Chain, chainOf, cornersOf } from './chain.ts';
import { carried, mitred, sameWay, waysOf } from './nest.ts';

/** One member as it runs now. */
export interface ReadMember {
  readonly run: string;
  readonly chain: Chain;
  /** Number in the chain of each corner of the parallel part, both its ends among them. */
  readonly corners: readonly number[];
  /** How far it lies from the middle of the bank on the first leg. */
  readonly across: Xyz;
  readonly start: BankEnd;
  readonly end: BankEnd;
}

/** The part of a bank in which its members still run beside each other, worked out from their nodes. */
export interface ReadBank {
  readonly group: string;
  readonly spacingMm: number;
  /** In the order of the group; those that have left the others are not among them. */
  readonly members: readonly ReadMember[];
  readonly path: readonly Xyz[];
}

/** So near its place in the row a pipe counts as being in it. */
const IN_ROW_MM = 1.5;
/** A stretch shorter than this is two pipes that pass each other. */
const SHARED_MM = 20;

interface Line {
  readonly chain: Chain;
  readonly corners: readonly number[];
  readonly pts: readonly Xyz[];
  readonly ways: readonly Xyz[];
}

const lineOf = (chain: Chain): Line => {
  const corners = cornersOf(chain);
  const pts = corners.map((c) => chain.places[c] as Xyz);
  return { chain, corners, pts, ways: waysOf(pts) };
};

function turned(chain: Chain): Chain {
  const back = <T>(all: readonly T[]): T[] => [...all].reverse();
  const { run, nodes, places, legs, busy } = chain;
  return { run, nodes: back(nodes), places: back(places), legs: back(legs), busy: back(busy) };
}

const flat = (v: Xyz, way: Xyz): Xyz => sub3(v, scale3(way, dot3(v, way)));
const mean = (all: readonly Xyz[]): Xyz => scale3(all.reduce(add3, { x: 0, y: 0, z: 0 }), 1 / all.length);

/** How much of one way two legs share, from and to along it. */
function sharedOf(lines: readonly Line[], legs: readonly number[], way: Xyz): { from: number; to: number } {
  let [from, to] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const [i, line] of lines.entries()) {
    const k = legs[i] ?? 0;
    from = Math.max(from, dot3(line.pts[k] as Xyz, way));
    to = Math.min(to, dot3(line.pts[k + 1] as Xyz, way));
  }
  return { from, to };
}

/** Beside one leg of the first member: the leg of another that lies where it should, or nearest to that. */
function legBeside(first: Line, k: number, other: Line, expectedMm: number): number | undefined {
  const way = first.ways[k] as Xyz;
  const found = other.ways.flatMap((w, j) => {
    if (!sameWay(way, w)) return [];
    const { from, to } = sharedOf([first, other], [k, j], way);
    const mm = length3(flat(sub3(other.pts[j] as Xyz, first.pts[k] as Xyz), way));
    return to - from < SHARED_MM || mm < 1 ? [] : [{ j, off: Math.abs(mm - expectedMm), shared: to - from }];
  });
  return found.sort((a, b) => a.off - b.off || b.shared - a.shared)[0]?.j;
}

interface Parallel {
  readonly legs: readonly number[];
  readonly count: number;
  readonly lengthMm: number;
}

/** From one leg of each that lies beside the others': how far on and back they turn together. */
function grownFrom(lines: readonly Line[], base: readonly number[]): Parallel {
  const k0 = base[0] ?? 0;
  const way = lines[0]?.ways[k0] as Xyz;
  const places = lines.map((l, i) => flat(l.pts[base[i] ?? 0] as Xyz, way));
  const middle = mean(places);
  const across = places.map((p) => sub3(p, middle));
  const step = (sign: 1 | -1): number => {
    let on = across;
    for (let n = 1; ; n++) {
      const turn = lines.map((l, i) => {
        const k = (base[i] ?? 0) + sign * n;
        return { from: l.ways[k - sign], to: l.ways[k], at: l.pts[sign > 0 ? k : k + 1] };
      });
      const [{ from, to } = { from: undefined, to: undefined }] = turn;
      if (!from || !to || !turn.every((t) => t.to && t.at && sameWay(to, t.to))) return n - 1;
      const [came, goes] = sign > 0 ? [from, to] : [scale3(from, -1), scale3(to, -1)];
      const corner = mean(turn.map((t) => t.at as Xyz));
      const nests = turn.every((t, i) => {
        const should = add3(corner, mitred(on[i] as Xyz, came, goes));
        return distance3(should, t.at as Xyz) < IN_ROW_MM;
      });
      if (!nests) return n - 1;
      on = on.map((a) => carried(a, came, goes));
    }
  };
  const [back, on] = [step(-1), step(1)];
  const shared = (n: number): number => {
    const at = base.map((k) => k + n);
    const { from, to } = sharedOf(lines, at, lines[0]?.ways[at[0] ?? 0] as Xyz);
    return to - from;
  };
  // Past the row's own end the legs may go on side by side without being beside each other.
  let [first, last] = [-back, on];
  while (first < 0 && shared(first) < SHARED_MM) first++;
  while (last > 0 && shared(last) < SHARED_MM) last--;
  let lengthMm = 0;
  for (let n = first; n <= last; n++) lengthMm += Math.max(0, shared(n));
  return { legs: base.map((k) => k + first), count: last - first + 1, lengthMm };
}

/** The longest part in which all of these run beside each other. */
function parallelOf(lines: readonly Line[], spacingMm: number): Parallel | undefined {
  const [first, ...others] = lines;
  if (!first) return undefined;
  let best: Parallel | undefined;
  for (const k of first.ways.keys()) {
    const beside = others.map((o, i) => legBeside(first, k, o, spacingMm * (i + 1)));
    if (beside.some((j) => j === undefined)) continue;
    const grown = grownFrom(lines, [k, ...beside.flatMap((j) => j ?? [])]);
    if (!best || grown.lengthMm > best.lengthMm) best = grown;
  }
  return best;
}

export function tailAt(plan: Plan, point: string, connection: string): Tail | null {
  const place = connectionPlace(plan, point, connection);
  const record = plan.points[point];
  if (!place || !record) return null;
  return { at: place.at, facing: place.facing, body: pointBox(plan, record) ?? null };
}

/** What a member does past the parallel part, on the side its chain ends on. */
function endOf(plan: Plan, line: Line, before: number, corner: number): BankEnd {
  const { chain } = line;
  const nodes = chain.nodes.slice(corner + 1);
  const at = chain.places[corner] as Xyz;
  const busy = chain.busy.slice(corner + 1);
  const last = plan.nodes[chain.nodes.at(-1) ?? ''];
  const held = (i: number): boolean => (busy[i] ?? false) || plan.nodes[nodes[i] ?? '']?.place.on === 'connection';
  const rest: Rest = { at, pts: chain.places.slice(corner + 1), holds: nodes.map((_, i) => held(i)) };
  // What stands in the last leg of the parallel part has to stay on it.
  const free = corner - before === 1 && !chain.busy[corner] && !busy.some(Boolean);
  if (last?.place.on === 'connection' && free) {
    const tail = tailAt(plan, last.place.point, last.place.connection);
    if (tail) return { is: 'tail', tail, now: rest };
  }
  if (nodes.length === 0 && !chain.busy[corner]) return { is: 'open' };
  return { is: 'rest', rest };
}

/** Reads a bank from the runs of its group; undefined where fewer than two of them have a place, or none is beside another. */
export function readBank(plan: Plan, group: string): ReadBank | undefined {
  const record = plan.groups[group];
  if (!record) return undefined;
  const chains = record.members.flatMap((run) => chainOf(plan, run) ?? []);
  const [first, ...others] = chains.map(lineOf);
  if (!first || others.length === 0) return undefined;
  // One may have been drawn the other way about, and one may have left the rest.
  const about = others.map((o, i) => {
    const back = lineOf(turned(o.chain));
    const [on, off] = [o, back].map((l) => parallelOf([first, l], record.spacingMm * (i + 1))?.lengthMm ?? 0);
    return (off ?? 0) > (on ?? 0) ? back : o;
  });
  const lines = [first, ...about];
  const together = parallelOf(lines, record.spacingMm);
  return together && together.lengthMm >= SHARED_MM
    ? assembled(plan, record, lines, together)
    : withoutStray(plan, record, lines);
}

/** Where one member has left the rest, those that still run together are the bank. */
function withoutStray(plan: Plan, record: Plan['groups'][string], lines: readonly Line[]): ReadBank | undefined {
  if (lines.length < 3) return undefined;
  const tries = lines.map((_, i) => lines.filter((__, j) => j !== i));
  const found = tries.flatMap((left) => {
    const together = parallelOf(left, record.spacingMm);
    return together && together.lengthMm >= SHARED_MM ? [{ left, together }] : [];
  });
  const best = found.sort((a, b) => b.together.lengthMm - a.together.lengthMm)[0];
  if (best) return assembled(plan, record, best.left, best.together);
  return withoutStray(plan, record, lines.slice(0, -1));
}

function assembled(
  plan: Plan,
  record: Plan['groups'][string],
  lines: readonly Line[],
  { legs, count }: Parallel,
): ReadBank {
  const at = (n: number): Xyz[] => lines.map((l, i) => l.pts[(legs[i] ?? 0) + n] as Xyz);
  const wayAt = (n: number): Xyz => lines[0]?.ways[(legs[0] ?? 0) + n] as Xyz;
  const span = (n: number) =>
    sharedOf(
      lines,
      legs.map((k) => k + n),
      wayAt(n),
    );
  const onto = (p: Xyz, way: Xyz, along: number): Xyz => add3(flat(p, way), scale3(way, along));
  const path = Array.from({ length: count + 1 }, (_, n) => mean(at(n)));
  path[0] = onto(path[0] as Xyz, wayAt(0), span(0).from);
  path[count] = onto(path[count] as Xyz, wayAt(count - 1), span(count - 1).to);
  const ways = waysOf(path);
  const members = lines.map((line, i): ReadMember => {
    const corners = Array.from({ length: count + 1 }, (_, n) => line.corners[(legs[i] ?? 0) + n] as number);
    const across = flat(sub3(line.pts[legs[i] ?? 0] as Xyz, path[0] as Xyz), ways[0] as Xyz);
    const { chain } = line;
    const last = chain.nodes.length - 1;
    const back = { ...line, chain: turned(chain) };
    return {
      run: chain.run,
      chain,
      corners,
      across,
      start: endOf(plan, back, last - (corners[1] as number), last - (corners[0] as number)),
      end: endOf(plan, line, corners[count - 1] as number, corners[count] as number),
    };
  });
  return { group: record.id, spacingMm: record.spacingMm, members, path };
}

/** Way of the row on the first leg: from its first member to its last. */
export function rowOf({ members }: ReadBank): Xyz {
  return unit3(sub3(members.at(-1)?.across ?? { x: 1, y: 0, z: 0 }, members[0]?.across ?? { x: 0, y: 0, z: 0 }));
}

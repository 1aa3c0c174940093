import { pointBox } from '../../geometry/point-box.ts';
import { distance3 } from '../../geometry/vec.ts';
import { orderedLegs } from '../../network/runs.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Given } from '../given.ts';

export interface Pair {
  readonly from: string;
  readonly to: string;
}

/** What of two cases belongs together, and what stands in one of them only. Ids in the order of the plan. */
export interface Pairs {
  readonly pairs: readonly Pair[];
  readonly gone: readonly string[];
  readonly fresh: readonly string[];
}

interface Scored extends Pair {
  /** The higher the better; below zero they have nothing to do with each other. */
  readonly score: number;
}

/** Takes the best pairs first; of equal ones the first by id. */
export function matched(
  gone: readonly string[],
  fresh: readonly string[],
  scoreOf: (from: string, to: string) => number,
): Pairs {
  const all = gone
    .flatMap((from) => fresh.map((to): Scored => ({ from, to, score: scoreOf(from, to) })))
    .filter((p) => p.score >= 0)
    .sort((a, b) => b.score - a.score || (a.from + a.to < b.from + b.to ? -1 : 1));
  const taken = new Set<string>();
  const pairs: Pair[] = [];
  for (const { from, to } of all) {
    if (taken.has(from) || taken.has(to)) continue;
    taken.add(from).add(to);
    pairs.push({ from, to });
  }
  const left = (ids: readonly string[]): string[] => ids.filter((id) => !taken.has(id));
  return { pairs, gone: left(gone), fresh: left(fresh) };
}

/** Marks of the drawing: where old pipe begins is no thing of its own. */
const MARKS: ReadonlySet<string> = new Set(['join-point', 'old-tails']);

export function placeOfPoint(given: Given, id: string): Xyz | null {
  const point = given.plan.points[id];
  return (point && pointBox(given.plan, point)?.frame.origin) ?? null;
}

/** Points that stand in one of the cases only, paired by what they are, the nearest first. */
export function pointPairs(from: Given, to: Given): Pairs {
  const only = (a: Given, b: Given): string[] =>
    Object.values(a.plan.points)
      .filter(
        ({ id, kind }) => !MARKS.has(kind) && a.network.alive.has('points', id) && !b.network.alive.has('points', id),
      )
      .map((p) => p.id);
  return matched(only(from, to), only(to, from), (f, t) => {
    const [p, q] = [from.plan.points[f], to.plan.points[t]];
    if (!p || !q || p.kind !== q.kind) return -1;
    const [a, b] = [placeOfPoint(from, f), placeOfPoint(to, t)];
    return a && b ? 1 / (1 + distance3(a, b)) : 0;
  });
}

/** The two ends of a run as a word each: the point it meets, told as its pair in the other case; else what it joins. */
function endsOf(given: Given, run: string, as: ReadonlyMap<string, string>): string[] {
  const told = orderedLegs(given.network, run);
  return [told.start, told.end].map((id) => {
    const vertex = id === null ? undefined : given.network.vertices.get(id);
    if (vertex?.point != null) return as.get(vertex.point) ?? vertex.point;
    return vertex && vertex.edges.length > 1 ? 'joins other pipe' : 'open';
  });
}

/** Shared ends count most, then a shared name. */
const END = 4;

/** Runs of two cases, paired by themselves, else by service and by what they end at. */
export function runPairs(from: Given, to: Given, points: Pairs): Pairs {
  const [old, now] = [[...from.network.edgesOfRun.keys()], [...to.network.edgesOfRun.keys()]];
  const both = old.filter((id) => to.network.edgesOfRun.has(id));
  const as = new Map(points.pairs.map((p) => [p.to, p.from]));
  const oldEnds = new Map(old.map((id) => [id, endsOf(from, id, new Map())]));
  const newEnds = new Map(now.map((id) => [id, endsOf(to, id, as)]));
  const left = (ids: readonly string[]): string[] => ids.filter((id) => !both.includes(id));
  const found = matched(left(old), left(now), (f, t) => {
    const [p, q] = [from.plan.runs[f], to.plan.runs[t]];
    if (!p || !q || p.service !== q.service) return -1;
    const open = [...(newEnds.get(t) ?? [])];
    let shared = 0;
    for (const end of oldEnds.get(f) ?? []) {
      const at = open.indexOf(end);
      if (at < 0 || end === 'open') continue;
      shared += end === 'joins other pipe' ? 1 : END;
      open.splice(at, 1);
    }
    const named = p.name !== '' && p.name === q.name ? 2 : 0;
    return shared + named > 0 ? shared + named : -1;
  });
  return { ...found, pairs: [...both.map((id) => ({ from: id, to: id })), ...found.pairs] };
}

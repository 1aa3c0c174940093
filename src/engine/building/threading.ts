import { joistsMet } from '../../geometry/joist-lines.ts';
import { clipToArea } from '../../geometry/outlines.ts';
import { pointBox, segmentToPoint } from '../../geometry/point-box.ts';
import { alongLine, type Line3 } from '../../geometry/segments.ts';
import { add3, distance3, scale3, sub3, unit3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { constant, figure } from '../../reference/figure.ts';
import type { Given } from '../given.ts';
import { type FeedEnd, longestRigid, type RigidAnswer } from '../structure/longest-rigid.ts';
import type { JoistMeeting } from './joist-cuts.ts';

/** One straight leg through a row of joists, and how it can be got in. */
export interface Threading {
  readonly meetings: readonly JoistMeeting[];
  readonly pipeMm: number;
  /** Null where the breadth of the joists is not told. */
  readonly answer: RigidAnswer | null;
  /** Where the line leaves the void, for each end that nothing bars. */
  readonly openAt: readonly Xyz[];
  /**
   * The end that would be open with the fewest joists more drilled; null where one is open, where beams
   * bar both, or where that would be as many again.
   */
  readonly drillOn: { readonly joists: number; readonly at: Xyz } | null;
}

const BEYOND_MM = constant('wall-judgement', 'beyond', 'mm');
/** Longer than any void; only so that the line leaves it at both ends. */
const FAR_MM = 100_000;

/** Must it go in straight? Coils and soft tube bend into the holes. */
export function goesInStraight(kind: string, odMm: number | null): boolean {
  const above = figure('joist-threading', kind, 'straight');
  return above.is === 'known' && (odMm === null || odMm > above.lo);
}

/** A beam just beyond the end of the void bars what would be fed in there. */
function barred(given: Given, from: Xyz, out: Xyz): boolean {
  const line: Line3 = { a: from, b: add3(from, scale3(out, BEYOND_MM)) };
  return Object.values(given.plan.points).some((p) => {
    if (p.kind !== 'beam' || !given.network.alive.has('points', p.id)) return false;
    const body = pointBox(given.plan, p);
    return body !== undefined && segmentToPoint(line, body).distance === 0;
  });
}

interface Row {
  readonly ends: readonly [FeedEnd, FeedEnd];
  readonly baysMm: readonly number[];
  readonly openAt: readonly Xyz[];
  readonly drillOn: Threading['drillOn'];
}

/** The whole row of joists on the line of a leg, from one edge of the void to the other. */
function rowOf(given: Given, meetings: readonly JoistMeeting[]): Row | null {
  const [first] = meetings;
  if (!first) return null;
  const { a, b } = first.pipe.body;
  const out = unit3(sub3(b, a));
  const [p, q] = [add3(a, scale3(out, -FAR_MM)), add3(b, scale3(out, FAR_MM))];
  const lengthMm = distance3(p, q);
  const here = (FAR_MM + (meetings[0]?.met.fromMm ?? 0)) / lengthMm;
  const part = clipToArea(p, q, first.space.outline, first.space.holes).find(([s, t]) => s <= here && here <= t);
  if (!part) return null;
  const row = joistsMet(given.plan, first.space, p, q, part);
  const mine = new Set(meetings.map((m) => m.met.index));
  const from = row.findIndex((j) => mine.has(j.index));
  const to = row.findLastIndex((j) => mine.has(j.index));
  const [start, end] = [row[from], row[to]];
  if (!start || !end) return null;
  const [before, after] = [row[from - 1], row[to + 1]];
  const edges = [part[0] * lengthMm, part[1] * lengthMm] as const;
  const [atA, atB] = [alongLine({ a: p, b: q }, part[0]), alongLine({ a: p, b: q }, part[1])];
  const free = [
    { joists: from, at: atA, barred: barred(given, atA, scale3(out, -1)) },
    { joists: row.length - 1 - to, at: atB, barred: barred(given, atB, out) },
  ].filter((end) => !end.barred);
  const open = free.filter((end) => end.joists === 0);
  const fewest = [...free].sort((m, n) => m.joists - n.joists)[0];
  return {
    ends: [
      { roomMm: start.fromMm - (before?.toMm ?? edges[0]), open: !before },
      { roomMm: (after?.fromMm ?? edges[1]) - end.toMm, open: !after },
    ],
    baysMm: row.slice(from + 1, to + 1).map((j, i) => j.fromMm - (row[from + i]?.toMm ?? j.fromMm)),
    openAt: open.map((end) => end.at),
    // Nobody drills more joists to feed a pipe in than it goes through.
    drillOn:
      open.length === 0 && fewest && fewest.joists < meetings.length ? { joists: fewest.joists, at: fewest.at } : null,
  };
}

/** Straight legs of new pipe that go through holes in two joists or more. */
export function findThreadings(given: Given): Threading[] {
  const legs = new Map<string, JoistMeeting[]>();
  for (const m of given.joistMeetings) {
    if (m.reading === null || m.reading === 'lengthwise' || m.reading.as !== 'hole') continue;
    if (!goesInStraight(m.pipe.edge.tube.kind, m.odMm)) continue;
    const key = `${m.pipe.edge.id}|${m.space.id}`;
    legs.set(key, [...(legs.get(key) ?? []), m]);
  }
  return [...legs.values()].flatMap((meetings): Threading[] => {
    const [first] = meetings;
    if (!first || meetings.length < 2) return [];
    const pipeMm = distance3(first.pipe.body.a, first.pipe.body.b);
    const row = rowOf(given, meetings);
    if (!row) return [];
    const answer = first.joists.breadthMm === null ? null : longestRigid({ pipeMm, ...row });
    return [{ meetings, pipeMm, answer, openAt: row.openAt, drillOn: row.drillOn }];
  });
}

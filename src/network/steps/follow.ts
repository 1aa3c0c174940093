import { alongBetween, besideLine, nearestOnLine, plainLine } from '../../geometry/beside-line.ts';
import { grid, joistLines } from '../../geometry/joist-lines.ts';
import { openingBox } from '../../geometry/opening-box.ts';
import { insideArea } from '../../geometry/outlines.ts';
import { nodePlace } from '../../geometry/places.ts';
import { roomAt } from '../../geometry/rooms.ts';
import { segmentDistance } from '../../geometry/segments.ts';
import { add, cross, distance, dot, left, scale, sub, unit } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xy, Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { incidence } from '../displace/incidence.ts';
import { otherNode } from '../displace/law.ts';

/** What a piece of pipe goes along, and how far off it, mm. */
export interface Follow {
  readonly what: 'wall' | 'bay' | 'run';
  readonly mm: number;
}

/** Places after the first, where among them it begins to follow, and what it goes along or past, in words; or why not. */
export type Followed =
  | { readonly ok: true; readonly begins: Xyz; readonly pts: readonly Xyz[]; readonly word: string }
  | { readonly ok: false; readonly why: string };

export interface FollowAsk {
  readonly storey: string;
  /** Where the pipe is, at the height it is to go on at. */
  readonly from: Xyz;
  /** Where it was tapped. */
  readonly to: Xy;
  /** The run that is being laid: it does not follow itself. */
  readonly own: string | null;
}

const level = (line: readonly Xy[], z: number): Xyz[] => line.map(({ x, y }) => ({ x, y, z }));
/** Corners of the way on from where the pipe is, without what lies on one place. */
const onward = (from: Xyz, line: readonly Xyz[]): Xyz[] => plainLine([from, ...line], false, COINCIDENT_MM).slice(1);

/** Doors and archways whose way a line beside the walls crosses, by their names. */
function doorsPassed(plan: Plan, storey: string, line: readonly Xy[], z: number, mm: number): string[] {
  return Object.values(plan.openings).flatMap((opening) => {
    const box = openingBox(plan, opening.id);
    const wall = plan.walls[opening.wall];
    if (!box || !wall || wall.storey !== storey || z < box.bottomZ || z > box.topZ) return [];
    const way = unit(sub(wall.b, wall.a));
    const passes = line.slice(1).some((q, i) => {
      const p = line[i] ?? q;
      const [u, v] = [dot(sub(p, wall.a), way), dot(sub(q, wall.a), way)];
      const off = (r: Xy): number => Math.abs(dot(sub(r, wall.a), left(way)));
      const beside = Math.max(off(p), off(q)) <= wall.thicknessMm / 2 + mm + 1;
      return beside && Math.max(u, v) > box.fromMm + 1 && Math.min(u, v) < box.toMm - 1;
    });
    return passes ? [opening.name === '' ? `a ${opening.kind}` : opening.name] : [];
  });
}

function alongWall(plan: Plan, ask: FollowAsk, mm: number): Followed {
  const { storey, from, to } = ask;
  const room = roomAt(plan, storey, to) ?? roomAt(plan, storey, from);
  if (!room) return { ok: false, why: 'No room is closed in about that place, so there is no wall to go along.' };
  const rings = [room.outline, ...room.holes].map((outline) => insideRing(outline, room.outline === outline, mm));
  const found = rings
    .filter((ring) => ring.length > 2)
    .flatMap((ring) => {
      const at = nearestOnLine(to, ring, true);
      return at ? [{ ring, at }] : [];
    })
    .sort((p, q) => p.at.offMm - q.at.offMm)[0];
  const start = found && nearestOnLine(from, found.ring, true);
  if (!found || !start) return { ok: false, why: 'The room is too narrow for a pipe so far off its walls.' };
  const line = alongBetween(found.ring, true, start, found.at);
  const doors = doorsPassed(plan, storey, line, from.z, mm);
  const past = doors.length === 0 ? '' : `, across the way of ${doors.join(' and ')}`;
  return {
    ok: true,
    begins: { ...start.at, z: from.z },
    pts: onward(from, level(line, from.z)),
    word: `along the wall, ${mm} off${past}`,
  };
}

/** The ring so far inside a room, or so far outside a wall that stands free in it. */
function insideRing(outline: readonly Xy[], isRoom: boolean, mm: number): Xy[] {
  const area = outline.reduce((sum, p, i) => sum + cross(p, outline[(i + 1) % outline.length] ?? p), 0);
  const inward = area > 0 ? mm : -mm;
  return besideLine(outline, isRoom ? inward : -inward, true);
}

function alongBay(plan: Plan, { storey, from, to }: FollowAsk): Followed {
  const space = Object.values(plan.voids).find(
    (v) => v.storey === storey && v.joists !== null && insideArea(to, v.outline, v.holes),
  );
  const joists = space?.joists;
  if (!space || !joists) return { ok: false, why: 'No joists are told of a void there.' };
  const { way, across } = grid(joists);
  const inSpace = insideArea(from, space.outline, space.holes);
  const offsetOf = (p: Xy): number => dot(sub(p, joists.first), across);
  const offsets = [...new Set(joistLines(space).map((l) => Math.round(offsetOf(l.a) * 10) / 10))].sort((a, b) => a - b);
  // A pipe that lies among the joists already stays in its bay: leaving it would cut through one.
  const here = offsetOf(inSpace ? from : to);
  const [below, above] = [offsets.filter((o) => o <= here).at(-1), offsets.find((o) => o > here)];
  if (below === undefined || above === undefined)
    return { ok: false, why: 'That place lies between the last joist and the wall, where there is no bay.' };
  const mid = (below + above) / 2;
  const onto = (p: Xy): Xy => add(p, scale(across, mid - offsetOf(p)));
  const goes = add(onto(from), scale(way, dot(sub(to, from), way)));
  const line = [onto(from), goes];
  const begins = { ...onto(from), z: from.z };
  return { ok: true, begins, pts: onward(from, level(line, from.z)), word: 'along the joist bay, in its middle' };
}

/** The run nearest to where the pipe is, of those that are not its own; a chosen one goes first. */
function runBeside(plan: Plan, { from, own, storey }: FollowAsk, chosen: string | null): { run: string } | undefined {
  const near = Object.values(plan.legs).flatMap((leg) => {
    if (leg.run === own || (chosen !== null && leg.run !== chosen)) return [];
    const [a, b] = [plan.nodes[leg.a], plan.nodes[leg.b]];
    const [p, q] = [a && nodePlace(plan, a), b && nodePlace(plan, b)];
    if (!p || !q || p.storey !== storey) return [];
    const flat = { a: { ...p.at, z: 0 }, b: { ...q.at, z: 0 } };
    const here = { ...from, z: 0 };
    return [{ run: leg.run, offMm: segmentDistance(flat, { a: here, b: here }).distance }];
  });
  return near.sort((p, q) => p.offMm - q.offMm)[0];
}

/** Places of a run from its first end on, as far as it does not branch off itself. */
function lineOf(plan: Plan, run: string): Xyz[] {
  const at = incidence(plan);
  const legs = Object.values(plan.legs).filter((l) => l.run === run);
  const own = (node: string) => at.legsAt(node).filter((l) => l.run === run);
  const start = legs.flatMap((l) => [l.a, l.b]).find((n) => own(n).length === 1);
  const line: Xyz[] = [];
  const seen = new Set<string>();
  for (let here = start; here !== undefined && !seen.has(here); ) {
    seen.add(here);
    const node = plan.nodes[here];
    const place = node && nodePlace(plan, node)?.at;
    if (place) line.push(place);
    const on: string = here;
    const next = own(on).find((l) => !seen.has(otherNode(l, on)));
    here = next && otherNode(next, on);
  }
  return line;
}

function alongRun(plan: Plan, ask: FollowAsk, mm: number, chosen: string | null): Followed {
  const { from, to } = ask;
  const beside = runBeside(plan, ask, chosen) ?? runBeside(plan, ask, null);
  const whole = beside ? plainLine(lineOf(plan, beside.run), false, COINCIDENT_MM) : [];
  if (whole.length < 2) return { ok: false, why: 'There is no other run to go along.' };
  const [start, end] = [nearestOnLine(from, whole, false), nearestOnLine(to, whole, false)];
  if (!start || !end) return { ok: false, why: 'There is no other run to go along.' };
  const [a, b] = [whole[start.side], whole[start.side + 1]];
  const isLeft = a && b ? cross(sub(b, a), sub(from, a)) >= 0 : true;
  const line = besideLine(whole, isLeft ? mm : -mm, false);
  const [p, q] = [nearestOnLine(from, line, false), nearestOnLine(to, line, false)];
  if (!p || !q) return { ok: false, why: 'There is no other run to go along.' };
  const pts = onward(from, level(alongBetween(line, false, p, q), from.z));
  return {
    ok: true,
    begins: { ...p.at, z: from.z },
    pts,
    word: `along ${plan.runs[beside?.run ?? '']?.name || 'the other run'}, ${mm} off`,
  };
}

/** The way along something from where a pipe is to abreast of where it was tapped, all at the height it is at. */
export function followed(plan: Plan, follow: Follow, ask: FollowAsk, chosen: string | null = null): Followed {
  const found =
    follow.what === 'wall'
      ? alongWall(plan, ask, follow.mm)
      : follow.what === 'bay'
        ? alongBay(plan, ask)
        : alongRun(plan, ask, follow.mm, chosen);
  if (!found.ok) return found;
  if (found.pts.length === 0 || found.pts.every((p) => distance(p, ask.from) <= COINCIDENT_MM))
    return { ok: false, why: 'The pipe is abreast of that place already.' };
  return found;
}

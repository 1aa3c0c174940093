import { connectionPlace } from '../../geometry/hosting.ts';
import { dot3, length3, sub3, unit3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Leg } from '../../plan/records/pipework.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { Refusal } from './changes.ts';
import { otherNode, type Pipework } from './law.ts';
import { sayPoint, sayRun } from './say.ts';
import { placeNow, type Settled, wayNow } from './settle.ts';

/** Cosine above which two ways out of a place are one: a pipe inside another. */
const ONE_WAY = 0.999;

function foldsBack(pipes: Pipework, settled: Settled, leg: Leg, end: string, way: Xyz): boolean {
  return pipes.at.legsAt(end).some((old) => {
    const other = settled.legs.get(old.id) ?? old;
    if (other.id === leg.id || (other.a !== end && other.b !== end)) return false;
    const on = wayNow(pipes, settled, other, end);
    return on !== undefined && length3(on) > COINCIDENT_MM && dot3(unit3(on), unit3(way)) > ONE_WAY;
  });
}

function leavesBackwards(pipes: Pipework, end: string, was: Xyz): string | undefined {
  const place = pipes.plan.nodes[end]?.place;
  if (place?.on !== 'connection') return undefined;
  const facing = connectionPlace(pipes.plan, place.point, place.connection)?.facing;
  return facing && dot3(facing, unit3(was)) > ONE_WAY ? place.point : undefined;
}

/** A leg that was pushed past its own length: refused where it would lie in another pipe, back into a tail, or uphill. */
function checkTurned(pipes: Pipework, settled: Settled, leg: Leg, way: Xyz, was: Xyz): void {
  const { plan } = pipes;
  const law = pipes.law(leg);
  const run = sayRun(plan, leg.run);
  if (law?.downhill && law.axis === 2) throw new Refusal(`${run} cannot follow: it would no longer run downhill.`);
  for (const [end, out, before] of [
    [leg.a, way, was],
    [otherNode(leg, leg.a), { x: -way.x, y: -way.y, z: -way.z }, { x: -was.x, y: -was.y, z: -was.z }],
  ] as const) {
    const point = leavesBackwards(pipes, end, before);
    if (point !== undefined) {
      throw new Refusal(
        `${run} cannot follow: it would leave ${sayPoint(plan, point)} against the way its connection faces.`,
      );
    }
    if (foldsBack(pipes, settled, settled.legs.get(leg.id) ?? leg, end, out)) {
      throw new Refusal(
        `${run} cannot follow: the move is longer than the leg it shortens, so the pipe would double back.`,
      );
    }
  }
}

/** Throws a Refusal where a touched leg would end up in a way no pipe can be. */
export function checkLegs(pipes: Pipework, settled: Settled): void {
  for (const leg of settled.legs.values()) {
    const old = pipes.plan.legs[leg.id];
    const [a, b] = [old && pipes.place(old.a), old && pipes.place(old.b)];
    const [now, then] = [old && placeNow(pipes, settled, old.a), old && placeNow(pipes, settled, old.b)];
    if (!old || !a || !b || !now || !then) continue;
    const [was, way] = [sub3(b, a), sub3(then, now)];
    if (length3(was) > COINCIDENT_MM && length3(way) > COINCIDENT_MM && dot3(way, was) < 0) {
      checkTurned(pipes, settled, old, way, was);
    }
  }
}

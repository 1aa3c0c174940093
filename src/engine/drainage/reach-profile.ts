import { add3, distance3, dot3, scale3, sub3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { CLEAR_MM } from './reach-figures.ts';
import type { WayPiece } from './reach-net.ts';
import type { OpeningPass } from './reach-openings.ts';

/** Something on the way that the pipe cannot pass at the height it has there. */
export interface ProfileBlock {
  readonly what: 'opening' | 'floor' | 'open';
  readonly id: string | null;
  readonly at: Xyz;
  /** Height of the pipe where it meets the block, and where it leaves it. */
  readonly fromZ: number;
  readonly toZ: number;
  /** Height the pipe would need to have at the tail's end of the way to pass over it; null where it cannot. */
  readonly startZ: number | null;
}

/** How high the pipe is along a way, kept as high as it can be: it falls by the gradient, and drops only where it must. */
export interface Profile {
  readonly places: readonly Xyz[];
  readonly blocks: readonly ProfileBlock[];
  /** Above the end where it arrives; below zero: too low. */
  readonly arrivesMm: number;
  readonly lengthMm: number;
  readonly fallMm: number;
  /** Goes below the ground beside the house to pass something. */
  readonly buried: boolean;
  /** Goes under the floor to get across a room. */
  readonly under: boolean;
}

export interface ProfileAsk {
  readonly startZ: number;
  readonly mmPerM: number;
  readonly endZ: number;
  /** Finished floor, where the way runs inside. */
  readonly floorZ: number;
  /** False for water that has to be seen to run: it goes into no ground on the way. */
  readonly mayBeBuried: boolean;
}

interface Running {
  z: number;
  s: number;
  buried: boolean;
  under: boolean;
}

/** Over, under, or in the way. A drop to pass under is taken where the opening begins. */
function pass(
  hit: OpeningPass,
  piece: WayPiece,
  run: Running,
  leftMm: number,
  ask: ProfileAsk,
): 'over' | 'blocked' | { readonly dropTo: number } {
  const fall = (mm: number): number => (mm * ask.mmPerM) / 1000;
  const zIn = run.z - fall(hit.fromMm);
  const zOut = run.z - fall(hit.toMm);
  if (zOut >= hit.opening.topZ + CLEAR_MM) return 'over';
  const under = hit.opening.bottomZ - CLEAR_MM;
  if (zIn <= under) return 'over';
  const inGround = under <= ask.floorZ;
  const reaches = under >= ask.endZ + fall(leftMm - hit.fromMm);
  if ((inGround && (piece.outside !== true || !ask.mayBeBuried)) || !reaches) return 'blocked';
  return { dropTo: under };
}

const HAIR_MM = 0.5;

function segmentDistance(a: Xyz, b: Xyz, p: Xyz): number {
  const d = sub3(b, a);
  const l2 = dot3(d, d);
  const t = l2 === 0 ? 0 : Math.min(1, Math.max(0, dot3(sub3(p, a), d) / l2));
  return distance3(p, add3(a, scale3(d, t)));
}

/** Places that lie on the straight line between their neighbours say nothing. */
function withoutStraight(places: readonly Xyz[]): Xyz[] {
  const kept: Xyz[] = [];
  for (const p of places) {
    for (;;) {
      const [a, b] = [kept[kept.length - 2], kept[kept.length - 1]];
      if (!a || !b || segmentDistance(a, p, b) > HAIR_MM) break;
      kept.pop();
    }
    kept.push(p);
  }
  return kept;
}

export function profileOf(pieces: readonly WayPiece[], ask: ProfileAsk): Profile {
  const perMm = ask.mmPerM / 1000;
  const totalMm = pieces.reduce((sum, p) => sum + p.mm, 0);
  const run: Running = { z: ask.startZ, s: 0, buried: false, under: false };
  const places: Xyz[] = [];
  const blocks: ProfileBlock[] = [];
  const put = (x: number, y: number, z: number): void => {
    const last = places[places.length - 1];
    if (!last || last.x !== x || last.y !== y || last.z !== z) places.push({ x, y, z });
  };
  /** In the open a pipe goes down into the ground, or under the floor, before it leaves the wall. */
  const lieLow = (piece: WayPiece, { x, y }: { x: number; y: number }): void => {
    const lowZ = ask.floorZ - CLEAR_MM;
    if (run.z <= lowZ) return;
    const reaches = ask.mayBeBuried && lowZ >= ask.endZ + (totalMm - run.s) * perMm;
    if (!reaches) {
      const at = { x: (piece.a.x + piece.b.x) / 2, y: (piece.a.y + piece.b.y) / 2, z: run.z };
      if (!blocks.some((b) => b.what === 'open'))
        blocks.push({ what: 'open', id: null, at, fromZ: run.z, toZ: run.z - piece.mm * perMm, startZ: null });
      return;
    }
    run.z = lowZ;
    if (piece.outside === false) run.under = true;
    else run.buried = true;
    put(x, y, lowZ);
  };
  for (const piece of pieces) {
    put(piece.a.x, piece.a.y, run.z);
    const at = (mm: number): { x: number; y: number } => {
      const t = piece.mm === 0 ? 0 : mm / piece.mm;
      return { x: piece.a.x + (piece.b.x - piece.a.x) * t, y: piece.a.y + (piece.b.y - piece.a.y) * t };
    };
    if (piece.how === 'open') lieLow(piece, at(0));
    let from = run.z;
    for (const hit of piece.passes) {
      const how = pass(hit, piece, { ...run, z: from }, totalMm - run.s, ask);
      if (how === 'over') continue;
      const zIn = from - hit.fromMm * perMm;
      if (how === 'blocked') {
        const middle = at((hit.fromMm + hit.toMm) / 2);
        const zOut = from - hit.toMm * perMm;
        const startZ = hit.opening.topZ + CLEAR_MM + (run.s + hit.toMm) * perMm;
        const z = (zIn + zOut) / 2;
        blocks.push({ what: 'opening', id: hit.opening.opening, at: { ...middle, z }, fromZ: zIn, toZ: zOut, startZ });
        continue;
      }
      const { x, y } = at(hit.fromMm);
      put(x, y, zIn);
      put(x, y, how.dropTo);
      if (how.dropTo <= ask.floorZ) run.buried = true;
      from = how.dropTo + hit.fromMm * perMm;
    }
    run.z = from - piece.mm * perMm;
    run.s += piece.mm;
    if (piece.outside === false && !run.under && run.z < ask.floorZ && !blocks.some((b) => b.what === 'floor')) {
      const over = Math.max(0, Math.min(piece.mm, (from - ask.floorZ) / perMm));
      const startZ = ask.floorZ + run.s * perMm;
      blocks.push({
        what: 'floor',
        id: null,
        at: { ...at(over), z: ask.floorZ },
        fromZ: ask.floorZ,
        toZ: run.z,
        startZ,
      });
    }
    put(piece.b.x, piece.b.y, run.z);
  }
  const last = pieces[pieces.length - 1]?.b;
  if (last && run.z > ask.endZ) put(last.x, last.y, ask.endZ);
  const fallMm = totalMm * perMm;
  return {
    places: withoutStraight(places),
    blocks,
    arrivesMm: run.z - ask.endZ,
    lengthMm: totalMm,
    fallMm,
    buried: run.buried,
    under: run.under,
  };
}

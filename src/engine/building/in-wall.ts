import { tubeOdMm } from '../../catalogue/tubes.ts';
import { alongLine } from '../../geometry/segments.ts';
import { distance3 } from '../../geometry/vec.ts';
import { voidsAt } from '../../geometry/void-stretches.ts';
import { intoWall } from '../../geometry/wall-frame.ts';
import type { Wall } from '../../plan/records/building.ts';
import { constant } from '../../reference/figure.ts';
import { type Crossing, standingBuilding } from '../clearance/crossings.ts';
import type { Given } from '../given.ts';
import { goesThrough } from '../materials/sleeves.ts';
import type { ChaseWay } from '../structure/chase-limits.ts';

/** A new leg that runs along inside the body of a wall. */
export interface InWall {
  readonly crossing: Crossing;
  readonly run: string;
  readonly wall: Wall;
  readonly way: ChaseWay;
  readonly lengthMm: number;
  /** From the nearest face to the far side of the pipe with its lagging, finishes included. */
  readonly depthMm: number;
  /** Of the wall's two faces, the one it is let in from. */
  readonly side: 'left' | 'right';
  /** Along the wall, from its end `a`. */
  readonly fromMm: number;
  readonly toMm: number;
}

const UPRIGHT_DEG = constant('wall-judgement', 'upright', 'degrees');
const RUN_ON_MM = constant('wall-judgement', 'run on', 'mm');

/** What the survey calls a wall, as far as the rules go by it. */
export type Build = 'masonry' | 'cavity' | 'stud' | 'unknown';

export function buildOf(wall: Wall): Build {
  const said = wall.construction.toLowerCase();
  if (/stud|timber|plasterboard|partition board/.test(said)) return 'stud';
  if (/cavity/.test(said)) return 'cavity';
  if (/block|brick|stone|masonry|concrete|solid/.test(said)) return 'masonry';
  return 'unknown';
}

/** A chase that was drawn as a space of its own in the wall is as deep as it is drawn. */
function drawnDepth(given: Given, wall: Wall, crossing: Crossing, side: 'left' | 'right'): number | null {
  const spaces = voidsAt(given.plan, crossing.at, standingBuilding(given.network));
  const chase = spaces.map((id) => given.plan.voids[id]).find((s) => s?.kind === 'chase');
  if (!chase) return null;
  const inner = chase.outline.map((p) => {
    const { v } = intoWall(wall, { ...p, z: 0 });
    return wall.thicknessMm / 2 - (side === 'left' ? v : -v);
  });
  return Math.min(wall.thicknessMm, Math.max(...inner));
}

function toInWall(given: Given, crossing: Crossing): InWall[] {
  const wall = given.plan.walls[crossing.wall];
  const { body, edge } = crossing.pipe;
  const lengthMm = distance3(body.a, body.b);
  if (!wall || lengthMm === 0 || crossing.opening !== null || goesThrough(crossing)) return [];
  if (crossing.throughMm < RUN_ON_MM) return [];
  const at = (mm: number) => intoWall(wall, alongLine(body, mm / lengthMm));
  const [p, q, middle] = [at(crossing.fromMm), at(crossing.toMm), intoWall(wall, crossing.at)];
  const flat = Math.hypot(q.u - p.u, q.v - p.v);
  const steep = (Math.atan2(Math.abs(q.z - p.z), flat) * 180) / Math.PI;
  const side = middle.v >= 0 ? 'left' : 'right';
  const half = (tubeOdMm(edge.tube) ?? 0) / 2 + (edge.insulation?.thicknessMm ?? 0);
  const pipeDepth = wall.thicknessMm / 2 - Math.abs(middle.v) + half;
  return [
    {
      crossing,
      run: crossing.pipe.run,
      wall,
      way: steep >= UPRIGHT_DEG ? 'vertical' : 'horizontal',
      lengthMm: crossing.throughMm,
      depthMm: Math.max(pipeDepth, drawnDepth(given, wall, crossing, side) ?? 0),
      side,
      fromMm: Math.min(p.u, q.u),
      toMm: Math.max(p.u, q.u),
    },
  ];
}

/** New pipe that runs along or up inside walls, in the order of legs. What only crosses a wall is not among it. */
export const findInWall = (given: Given): InWall[] => given.crossings.flatMap((c) => toInWall(given, c));

/** Those of one run in one wall, together. */
export function byRunAndWall(all: readonly InWall[]): InWall[][] {
  const groups = new Map<string, InWall[]>();
  for (const w of all) {
    const key = `${w.run}|${w.wall.id}`;
    groups.set(key, [...(groups.get(key) ?? []), w]);
  }
  return [...groups.values()];
}

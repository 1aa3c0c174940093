import { faceStretches } from '../../geometry/face-plane.ts';
import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Wall } from '../../plan/records/building.ts';
import { onFace } from '../face/face-point.ts';
import { livesOf } from '../fragments.ts';
import { pipeInView } from '../pipes/pipes-in-view.ts';
import { type FacePlane, facePlane } from '../pipes/plane.ts';
import { sayWay } from './say.ts';
import type { SheetJob } from './sheet.ts';

/** A pipe nearer to a face than this is fixed to it. */
const ON_FACE_MM = 160;

export interface Face {
  readonly wall: Wall;
  readonly side: 'left' | 'right';
  readonly title: string;
  /** The boiler hangs on it or stands before it. */
  readonly boiler: boolean;
}

/** Rooms named in a title. */
const MOST_ROOMS = 3;

const SIDES = ['left', 'right'] as const;

/** "Kitchen, wall to the north"; "outside, wall to the north" where no room lies before it. */
function titleOf(plan: Plan, wall: Wall, side: 'left' | 'right', plane: FacePlane): string {
  const stretches = faceStretches(plan, wall, side);
  const rooms = stretches.flatMap((s) => s.rooms).flatMap((id) => plan.rooms[id]?.name || []);
  const named = [...new Set(rooms)].slice(0, MOST_ROOMS).join(', ');
  const towards = sayWay(-plane.out.x, -plane.out.y);
  if (stretches.length === 0) return `outside, wall facing ${sayWay(plane.out.x, plane.out.y)}`;
  return `${named === '' ? plan.storeys[wall.storey]?.name : named}, wall to the ${towards}`;
}

function hasBoiler(plan: Plan, alive: Alive, plane: FacePlane): boolean {
  return Object.values(plan.points).some(
    (p) => p.kind === 'boiler' && alive.has('points', p.id) && onFace(plan, p, plane),
  );
}

function hasPipes(plan: Plan, alive: Alive, plane: FacePlane): boolean {
  return Object.values(plan.legs).some((leg) => {
    const drawn = pipeInView(plan, leg, plane, alive, false);
    if (!drawn || drawn.endOn) return false;
    return Math.max(drawn.readerA, drawn.readerB) <= ON_FACE_MM && Math.min(drawn.readerA, drawn.readerB) >= 0;
  });
}

/** Looked for once for each job: every face asks about every pipe. */
const found = new WeakMap<SheetJob, readonly Face[]>();

function findFaces({ plan, chosen }: SheetJob): Face[] {
  const alive = livesOf(plan, chosen);
  const faces = Object.values(plan.walls)
    .filter((wall) => alive.has('walls', wall.id))
    .flatMap((wall) =>
      SIDES.flatMap((side): Face[] => {
        const plane = facePlane(plan, wall.id, side);
        if (!plane) return [];
        const boiler = hasBoiler(plan, alive, plane);
        if (!boiler && !hasPipes(plan, alive, plane)) return [];
        return [{ wall, side, title: titleOf(plan, wall, side, plane), boiler }];
      }),
    );
  const level = (f: Face): number => plan.storeys[f.wall.storey]?.floorMm ?? 0;
  faces.sort((a, b) => level(a) - level(b) || (a.title < b.title ? -1 : a.title > b.title ? 1 : 0));
  const times = new Map<string, number>();
  return faces.map((face) => {
    const n = (times.get(face.title) ?? 0) + 1;
    times.set(face.title, n);
    return n === 1 ? face : { ...face, title: `${face.title}, ${n}` };
  });
}

/** Faces of walls that have pipes on them or the boiler before them, by floor and name; those of one name are numbered. */
export function facesOf(job: SheetJob): readonly Face[] {
  const known = found.get(job) ?? findFaces(job);
  found.set(job, known);
  return known;
}

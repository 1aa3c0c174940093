import type { Vec } from '../../drawing/display-list.ts';
import { wallSide } from '../../geometry/hosting.ts';
import { roomFaces } from '../../geometry/rooms.ts';
import { add, scale } from '../../geometry/vec.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { floorOnto } from '../input/work-plane.ts';
import { type Entry, entry, type Gather, standing } from './pipework-entries.ts';
import { voidEntries } from './void-parts.ts';

function wallRing(g: Gather, id: string, from = 0, to?: number): Vec[] {
  const wall = g.plan.walls[id];
  if (!wall) return [];
  const l = wallSide(wall, 'left');
  const r = wallSide(wall, 'right');
  const end = to ?? l.lengthMm;
  const on = (start: Xy, s: number): Xy => add(start, scale(l.along, s));
  return floorOnto(g.plane, [on(l.start, from), on(l.start, end), on(r.start, end), on(r.start, from)]);
}

export function* buildingEntries(g: Gather): Generator<Entry> {
  const { plan, view, plane } = g;
  for (const wall of Object.values(plan.walls)) {
    const life = standing(g, 'walls', wall.id);
    if (view.kind === 'face' || !life || wall.storey !== g.storey) continue;
    yield entry('wall', wall.id, { is: 'area', ring: wallRing(g, wall.id) }, life);
  }
  for (const opening of Object.values(plan.openings)) {
    const wall = plan.walls[opening.wall];
    const life = wall && standing(g, 'openings', opening.id);
    if (!wall || !life || (view.kind === 'plan' ? wall.storey !== g.storey : wall.id !== view.wall)) continue;
    const { lengthMm, start, along } = wallSide(wall, 'left');
    const near = opening.from === 'a' ? opening.alongMm : lengthMm - opening.alongMm - opening.widthMm;
    if (view.kind === 'plan') {
      yield entry(
        'opening',
        opening.id,
        { is: 'area', ring: wallRing(g, wall.id, near, near + opening.widthMm) },
        life,
      );
      continue;
    }
    const floor = plan.storeys[wall.storey]?.floorMm ?? 0;
    const s = [near, near + opening.widthMm].map((d) => plane.onto({ ...add(start, scale(along, d)), z: 0 })[0]);
    const [s0 = 0, s1 = 0] = s;
    const [z0, z1] = [floor + opening.sillMm, floor + opening.headMm];
    yield entry(
      'opening',
      opening.id,
      {
        is: 'area',
        ring: [
          [s0, z0],
          [s1, z0],
          [s1, z1],
          [s0, z1],
        ],
      },
      life,
    );
  }
  yield* voidEntries(g);
}

/** A named room by its outline, or by its seed alone where the walls do not close round it. */
export function* roomEntries(g: Gather): Generator<Entry> {
  if (g.view.kind === 'face' || g.storey === undefined) return;
  const standingWalls = { has: (id: string) => g.alive.has('walls', id) };
  const { faces, lost } = roomFaces(g.plan, g.storey, standingWalls);
  const ring = (outline: readonly Xy[]) => floorOnto(g.plane, outline);
  for (const face of faces) {
    for (const id of face.rooms)
      yield entry('room', id, { is: 'area', ring: ring(face.outline), holes: face.holes.map(ring) });
  }
  for (const id of lost) {
    const seed = g.plan.rooms[id]?.seed;
    if (seed) yield entry('room', id, { is: 'spot', at: g.plane.onto({ ...seed, z: 0 }) });
  }
}

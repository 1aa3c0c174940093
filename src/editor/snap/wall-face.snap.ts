import { wallSide } from '../../geometry/hosting.ts';
import { floorOnto, wayAsSeen } from '../input/work-plane.ts';
import { defineSnap } from './define-snap.ts';

/** The two faces of a wall. */
export default defineSnap({
  id: 'wallFace',
  priority: 60,
  find: ({ plan, plane, near }) =>
    near.flatMap((e) => {
      const wall = e.kind === 'wall' ? plan.walls[e.id] : undefined;
      if (!wall) return [];
      return (['left', 'right'] as const).flatMap((side) => {
        const { start, along } = wallSide(wall, side);
        const target = { is: 'wall', wall: wall.id, side } as const;
        const way = wayAsSeen(plane, along);
        return floorOnto(plane, [start]).map((at) => ({ is: 'line', at, way, target, word: 'face of wall' }) as const);
      });
    }),
});

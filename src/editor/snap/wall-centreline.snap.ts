import { wallSide } from '../../geometry/hosting.ts';
import { floorOnto, wayAsSeen } from '../input/work-plane.ts';
import { defineSnap } from './define-snap.ts';

export default defineSnap({
  id: 'wallCentreline',
  priority: 65,
  find: ({ plan, plane, near }) =>
    near.flatMap((e) => {
      const wall = e.kind === 'wall' ? plan.walls[e.id] : undefined;
      if (!wall) return [];
      const way = wayAsSeen(plane, wallSide(wall, 'left').along);
      const target = { is: 'wall', wall: wall.id, side: null } as const;
      return floorOnto(plane, [wall.a]).map((at) => ({ is: 'line', at, way, target, word: 'middle of wall' }) as const);
    }),
});

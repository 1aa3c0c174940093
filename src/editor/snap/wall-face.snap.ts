import { wallSide } from '../../geometry/hosting.ts';
import { defineSnap } from './define-snap.ts';

/** The two faces of a wall. */
export default defineSnap({
  id: 'wallFace',
  priority: 60,
  find: ({ plan, near }) =>
    near.flatMap((e) => {
      const wall = e.kind === 'wall' ? plan.walls[e.id] : undefined;
      if (!wall) return [];
      return (['left', 'right'] as const).map((side) => {
        const { start, along } = wallSide(wall, side);
        const target = { is: 'wall', wall: wall.id, side } as const;
        return { is: 'line', at: [start.x, start.y], way: [along.x, along.y], target, word: 'face of wall' } as const;
      });
    }),
});

import { wallSide } from '../../geometry/hosting.ts';
import { defineSnap } from './define-snap.ts';

export default defineSnap({
  id: 'wallCentreline',
  priority: 65,
  find: ({ plan, near }) =>
    near.flatMap((e) => {
      const wall = e.kind === 'wall' ? plan.walls[e.id] : undefined;
      if (!wall) return [];
      const { along } = wallSide(wall, 'left');
      const target = { is: 'wall', wall: wall.id, side: null } as const;
      return [
        { is: 'line', at: [wall.a.x, wall.a.y], way: [along.x, along.y], target, word: 'middle of wall' } as const,
      ];
    }),
});

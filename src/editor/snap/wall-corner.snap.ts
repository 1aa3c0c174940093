import { floorOnto } from '../input/work-plane.ts';
import { defineSnap } from './define-snap.ts';

/** Ends of walls on their centreline, and the four corners of their bodies. */
export default defineSnap({
  id: 'wallCorner',
  priority: 45,
  find: ({ plan, plane, near }) =>
    near.flatMap((e) => {
      const wall = e.kind === 'wall' ? plan.walls[e.id] : undefined;
      if (!wall || e.shape.is !== 'area') return [];
      const target = { is: 'wall', wall: wall.id, side: null } as const;
      const ends = floorOnto(plane, [wall.a, wall.b]).map(
        (at) => ({ is: 'place', at, target, word: 'end of wall' }) as const,
      );
      return [...ends, ...e.shape.ring.map((at) => ({ is: 'place', at, word: 'corner of wall' }) as const)];
    }),
});

import { faceStretches } from '../../geometry/face-plane.ts';
import { defineSnap } from './define-snap.ts';

/** On a wall face: the upright corners where the walls at its ends, and those that meet it, come out of it. */
export default defineSnap({
  id: 'roomCorner',
  priority: 57,
  find({ plan, plane }) {
    const wall = plane.face && plan.walls[plane.face.wall];
    if (!wall || !plane.face) return [];
    return faceStretches(plan, wall, plane.face.side)
      .flatMap(({ fromS, toS }) => [fromS, toS])
      .map((s) => ({ is: 'line', at: [s, 0], way: [0, 1], word: 'corner of the room' }) as const);
  },
});

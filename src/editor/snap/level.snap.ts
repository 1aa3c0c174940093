import { defineSnap } from './define-snap.ts';

/** On a wall face: the floor and the ceiling of each storey. */
export default defineSnap({
  id: 'level',
  priority: 55,
  find({ plan, plane }) {
    if (plane.kind !== 'face') return [];
    return Object.values(plan.storeys).flatMap((s) => [
      { is: 'line', at: [0, s.floorMm], way: [1, 0], word: 'floor' } as const,
      { is: 'line', at: [0, s.floorMm + s.ceilingMm], way: [1, 0], word: 'ceiling' } as const,
    ]);
  },
});

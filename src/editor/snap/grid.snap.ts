import { defineSnap } from './define-snap.ts';

const STEPS_MM = [50, 10] as const;
const round = (n: number, step: number): number => Math.round(n / step) * step;

/**
 * Round lengths from the datum, 50 where that is near, else 10. They are those of the house, however it is turned, so that
 * what is kept in the plan is round; on a face they go along the wall.
 */
export default defineSnap({
  id: 'grid',
  priority: 90,
  find({ at, plane, toleranceMm }) {
    const { x, y } = plane.place(at, 0);
    for (const step of STEPS_MM) {
      const on =
        plane.kind === 'plan'
          ? plane.onto({ x: round(x, step), y: round(y, step), z: 0 })
          : ([round(at[0], step), round(at[1], step)] as const);
      if (Math.hypot(on[0] - at[0], on[1] - at[1]) <= toleranceMm) {
        return [{ is: 'place', at: on, word: step === 50 ? 'grid 50' : 'grid 10' }];
      }
    }
    return [];
  },
});

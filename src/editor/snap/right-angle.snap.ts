import { defineSnap } from './define-snap.ts';

/** Along the last leg or wall, or square to it; in a face these are level and upright. */
export default defineSnap({
  id: 'rightAngle',
  priority: 50,
  find({ from, way, plane }) {
    if (!from) return [];
    const at = plane.onto(from);
    const [x, y] = way ?? [1, 0];
    return [
      { is: 'line', at, way: [x, y], word: way ? 'straight on' : 'square' },
      { is: 'line', at, way: [-y, x], word: 'right angle' },
    ];
  },
});

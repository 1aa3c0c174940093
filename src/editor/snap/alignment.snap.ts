import { defineSnap } from './define-snap.ts';

/** In line with a node placed before, level or upright on the sheet. */
export default defineSnap({
  id: 'alignment',
  priority: 70,
  find: ({ earlier, plane }) =>
    (earlier ?? []).flatMap((p) => {
      const at = plane.onto(p);
      return [
        { is: 'line', at, way: [1, 0], word: 'in line' },
        { is: 'line', at, way: [0, 1], word: 'in line' },
      ] as const;
    }),
});

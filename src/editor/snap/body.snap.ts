import { connectionPlace } from '../../geometry/hosting.ts';
import { distanceTo } from '../hit/shapes.ts';
import { defineSnap } from './define-snap.ts';

/** The box of a thing with one tail of the service in hand: that tail is meant, however far off it lies inside the box. */
export default defineSnap({
  id: 'body',
  priority: 15,
  whenAsked: true,
  find: ({ plan, near, at, service }) =>
    near.flatMap((e) => {
      if (e.kind !== 'point' || service === undefined || distanceTo(e.shape, at) > 0) return [];
      const point = plan.points[e.id];
      const [tail, ...others] = (point?.connections ?? []).filter((c) => c.service === service);
      const xyz = tail && connectionPlace(plan, e.id, tail.id)?.at;
      if (!point || !tail || !xyz || others.length > 0) return [];
      const target = { is: 'connection', point: e.id, connection: tail.id, service } as const;
      return [{ is: 'place', at, xyz, target, word: `${tail.label.toLowerCase()} of ${point.name}` } as const];
    }),
});

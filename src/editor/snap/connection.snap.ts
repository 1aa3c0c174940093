import { defineSnap } from './define-snap.ts';

/** Tails of points, of the service in hand where one is told. */
export default defineSnap({
  id: 'connection',
  priority: 10,
  find: ({ plan, near, service }) =>
    near.flatMap((e) => {
      const xyz = e.ends[0];
      if (e.kind !== 'connection' || e.owner === null || !xyz || e.shape.is !== 'spot') return [];
      if (service !== undefined && e.service !== service) return [];
      const point = plan.points[e.owner];
      const label = point?.connections.find((c) => c.id === e.id)?.label.toLowerCase() ?? 'connection';
      const target = { is: 'connection', point: e.owner, connection: e.id, service: e.service ?? '' } as const;
      return [{ is: 'place', at: e.shape.at, xyz, target, word: `${label} of ${point?.name ?? 'point'}` } as const];
    }),
});

import type { Point } from '../plan/records/pipework.ts';
import type { Part, PointKind } from './define-point.ts';
import { registry } from './registry.ts';

/** Every kind of point, sorted by id. A plan may hold kinds that are not here: such a point has only its own record. */
export const pointKinds: ReadonlyMap<string, PointKind> = registry(
  import.meta.glob<PointKind>('./points/*.point.ts', { eager: true, import: 'default' }),
);

/**
 * What a connection of a point is for the tracing. A point's own field `part` (a join somebody placed) goes first, then
 * the kind by connection, then the kind by service. Undefined: neither start nor end, the pipe is only open there.
 */
export function partOf(point: Point, connection: string): Part | undefined {
  const own = point.fields.part;
  if (own === 'source' || own === 'end') return own;
  const role = pointKinds.get(point.kind)?.role;
  const service = point.connections.find((c) => c.id === connection)?.service;
  return role?.[connection] ?? (service === undefined ? undefined : role?.[service]);
}

import type { Connection, Facing } from '../plan/records/pipework.ts';

/** A connection as a kind lists it: place in the point's own frame in mm, `size` the tube or thread it takes. */
export function tail(
  id: string,
  service: string,
  label: string,
  size: string | null,
  at: readonly [x: number, y: number, z: number],
  facing: Facing,
): Connection {
  return { id, service, label, size, at: { x: at[0], y: at[1], z: at[2] }, facing };
}

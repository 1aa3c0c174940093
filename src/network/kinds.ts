import { partOf, pointKinds } from '../catalogue/point-kinds.ts';
import { services } from '../catalogue/services.ts';
import type { Point } from '../plan/records/pipework.ts';

/** What the network asks the catalogue. Passed in, so that a test can trace kinds of its own. */
export interface Kinds {
  /** Where its service starts, or where it is used; undefined where the catalogue does not say. */
  part(point: Point, connection: string): 'source' | 'end' | undefined;
  /** What is traced together: flow and return apart, cold with balanced cold, hot with preheated. */
  circuit(service: string): string;
  runsDownhill(service: string): boolean;
  /** May come from many places to one: return, condensate, discharge. A supply never does. */
  gathers(service: string): boolean;
  /** Is this service meant for this connection? */
  takes(point: Point, connection: string, service: string): boolean;
  /** Does the way the connection faces say how the pipe must leave? Not at a place that was only marked for joining. */
  faces(point: Point): boolean;
  /** Sends what comes in one way or another, so that its ways may join a pipe that has its own source. */
  turns?(point: Point): boolean;
  /** Does this kind of item come apart, so that a pipe can be drawn out or cleared there? */
  opens(itemKind: string): boolean;
}

const OPENS: readonly string[] = ['filter', 'stop-end', 'strainer', 'union'];

const SUPPLIES: readonly string[] = ['gas', 'cold', 'hot'];

function circuitOf(service: string): string {
  const system = services.get(service)?.system;
  return system === undefined || system === 'heating' ? service : system;
}

function takes(point: Point, connection: string, service: string): boolean {
  const own = point.connections.find((c) => c.id === connection)?.service;
  if (own === undefined || circuitOf(own) === circuitOf(service)) return true;
  const part = partOf(point, connection);
  // A plain end takes whatever its kind lists, unless another of its connections is there for that: the hot outlet of a
  // heater is no place for the preheated water that feeds it.
  const elsewhere = point.connections.some(
    (c) => circuitOf(c.service) === circuitOf(service) && (part === undefined || partOf(point, c.id) === part),
  );
  const role = pointKinds.get(point.kind)?.role[service];
  return !elsewhere && role !== undefined && (part === undefined || role === part);
}

/** A service the catalogue does not know is a circuit of its own. */
export const catalogueKinds: Kinds = {
  part: partOf,
  circuit: circuitOf,
  runsDownhill: (service) => services.get(service)?.runsDownhill ?? false,
  gathers: (service) => services.has(service) && !SUPPLIES.includes(circuitOf(service)),
  takes,
  opens: (itemKind) => OPENS.includes(itemKind),
  faces: (point) => point.kind !== 'join-point',
  turns: (point) => point.kind === 'diverting-valve',
};

import { pointKinds } from '../catalogue/point-kinds.ts';
import { services } from '../catalogue/services.ts';
import type { Point } from '../plan/records/pipework.ts';

/** A service inside a sentence: "heating flow". One the catalogue does not know says its own id. */
export const saidService = (service: string): string => services.get(service)?.label.toLowerCase() ?? service;

/** A point inside a sentence: by its own name, else "the gas meter". */
export function saidPoint(point: Point): string {
  if (point.name !== '') return point.name;
  return `the ${pointKinds.get(point.kind)?.label.toLowerCase() ?? point.kind}`;
}

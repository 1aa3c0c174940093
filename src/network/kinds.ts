import { partOf } from '../catalogue/point-kinds.ts';
import { services } from '../catalogue/services.ts';
import type { Point } from '../plan/records/pipework.ts';

/** What the network asks the catalogue. Passed in, so that a test can trace kinds of its own. */
export interface Kinds {
  /** Where its service starts, or where it is used; undefined where the catalogue does not say. */
  part(point: Point, connection: string): 'source' | 'end' | undefined;
  /** What is traced together: flow and return apart, cold with balanced cold, hot with preheated. */
  circuit(service: string): string;
  runsDownhill(service: string): boolean;
}

/** A service the catalogue does not know is a circuit of its own. */
export const catalogueKinds: Kinds = {
  part: partOf,
  circuit(service) {
    const system = services.get(service)?.system;
    return system === undefined || system === 'heating' ? service : system;
  },
  runsDownhill: (service) => services.get(service)?.runsDownhill ?? false,
};

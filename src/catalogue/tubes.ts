import type { Tube } from '../plan/records/pipework.ts';
import type { TubeKind } from './define-tube.ts';
import { registry } from './registry.ts';

/** Every kind of tube, sorted by id. */
export const tubeKinds: ReadonlyMap<string, TubeKind> = registry(
  import.meta.glob<TubeKind>('./tubes/*.tube.ts', { eager: true, import: 'default' }),
);

/** "22"; "?" where nobody could read the size. A kind that is not here is said as it is written. */
export function sayTubeSize(tube: Tube): string {
  if (tube.size === null) return '?';
  return tubeKinds.get(tube.kind)?.nominal(tube.size) ?? tube.size;
}

/** Outside diameter in mm; undefined where the size is not known or its kind is not in the catalogue. */
export function tubeOdMm(tube: Tube): number | undefined {
  return tube.size === null ? undefined : tubeKinds.get(tube.kind)?.odMm(tube.size);
}

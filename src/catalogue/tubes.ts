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

/**
 * Kinds that a pipe of a service may be said to be made of, sorted by id. `surveyed`: it was there before, and may be of a kind
 * that is no longer laid. What it is made of `now` always stays among them.
 */
export function tubeKindsFor(service: string, surveyed: boolean, now: string): readonly TubeKind[] {
  return [...tubeKinds.values()].filter(
    (k) =>
      k.id === now ||
      ((surveyed || k.onlyExisting !== true) && (k.services.length === 0 || k.services.includes(service))),
  );
}

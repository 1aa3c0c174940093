import type { FittingKind } from './define-fitting.ts';
import { registry } from './registry.ts';

/** Every kind of fitting, sorted by id. */
export const fittingKinds: ReadonlyMap<string, FittingKind> = registry(
  import.meta.glob<FittingKind>('./fittings/*.fitting.ts', { eager: true, import: 'default' }),
);

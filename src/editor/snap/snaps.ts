import { registry } from '../../catalogue/registry.ts';
import type { Snap } from './define-snap.ts';

export const snaps: ReadonlyMap<string, Snap> = registry(
  import.meta.glob<Snap>('./*.snap.ts', { eager: true, import: 'default' }),
);

export const snapsInOrder: readonly Snap[] = [...snaps.values()].sort((a, b) => a.priority - b.priority);

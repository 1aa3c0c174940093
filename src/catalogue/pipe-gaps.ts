import { figure } from '../reference/figure.ts';
import { type Editions, edition } from '../reference/tables.ts';

/** Clear distance that a pipe is laid with past another, surface to surface, mm; null where the pinned edition has none. */
export interface PipeGaps {
  /** Gas past any other service. */
  readonly gas: number | null;
  readonly crossing: number | null;
  /** Nearer than this counts as touching. */
  readonly touching: number | null;
}

const least = (found: ReturnType<typeof figure>): number | null => (found.is === 'known' ? found.lo : null);

export function pipeGaps(editions: Editions): PipeGaps {
  const table = edition('gas-clearance', editions);
  return {
    gas: table ? least(figure(table, 'pipe', 'mm')) : null,
    crossing: least(figure('pipe-clearance', 'crossing', 'mm')),
    touching: least(figure('pipe-clearance', 'touching', 'mm')),
  };
}

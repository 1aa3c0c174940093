import type { Xyz } from '../../plan/records/parts.ts';
import type { Rng } from './define-command.ts';

/** A move for an example: mostly along one way, as a hand moves things. */
export function someMove(rng: Rng): Xyz {
  const by = (rng.below(600) - 300) / 7;
  const way = rng.below(4);
  if (way === 3) return { x: by, y: -by, z: 0 };
  return { x: way === 0 ? by : 0, y: way === 1 ? by : 0, z: way === 2 ? by : 0 };
}

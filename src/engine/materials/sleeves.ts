import { constant, word } from '../../reference/figure.ts';
import type { Piece } from '../../report/piece.ts';
import type { Crossing } from '../clearance/crossings.ts';
import type { Given } from '../given.ts';
import { saySize } from '../say-names.ts';

/** Square through a wall within this many degrees; a pipe that lies along inside a wall is chased, not sleeved. */
export const ACROSS_DEG = constant('pipe-judgement', 'through a wall', 'degrees');

/** A flue is made good with its own plates: no sleeve goes round it, and what it may go through is asked by its own rules. */
export const goesThrough = (c: Crossing): boolean =>
  c.opening === null && c.angleDeg >= ACROSS_DEG && c.pipe.edge.circuit !== 'flue';

/** One sleeve a hole, one tube size larger than what goes through, cut to the wall. */
export function sleevePieces(given: Given): Piece[] {
  return given.crossings.filter(goesThrough).map((c): Piece => {
    const { edge } = c.pipe;
    const label = saySize(edge.tube);
    const size = word('sleeve-sizes', label);
    const known = size.is === 'known';
    return {
      kind: 'sleeve',
      family: 'sleeve',
      name: known ? `sleeve for ${label}` : 'sleeve',
      size: known ? size.word : label,
      joining: '',
      ends: [],
      amount: 1,
      unit: 'each',
      run: edge.run,
      at: { leg: edge.id, wall: c.wall },
      note: `wall ${Math.round(c.throughMm)} thick`,
      unverified: known && size.sureness === 'memory',
      unresolved: known
        ? null
        : edge.tube.size === null
          ? 'nobody has read the size of the pipe'
          : `no table here gives a sleeve for ${label}`,
    };
  });
}

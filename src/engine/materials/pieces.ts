import { piecesOf } from '../../network/pieces.ts';
import type { Piece } from '../../report/piece.ts';
import type { Given } from '../given.ts';
import { clipPieces } from './clips.ts';
import { sleevePieces } from './sleeves.ts';

/** Lengths to a tenth of a millimetre, as the plan itself keeps them. */
const tenths = (mm: number): number => Math.round(mm * 10) / 10;

/** Pipe work of the job: what is there already is nothing to buy. */
function newPieces(given: Given): Piece[] {
  return piecesOf(given.network).flatMap(({ state, ...piece }) => (state === 'new' ? [piece] : []));
}

/** Every piece of new work, each for one place of the drawing. */
export function allPieces(given: Given): Piece[] {
  const all = [...newPieces(given), ...clipPieces(given.network), ...sleevePieces(given)];
  return all.map((p) => ({ ...p, amount: tenths(p.amount) }));
}

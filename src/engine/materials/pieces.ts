import { piecesOf } from '../../network/pieces.ts';
import type { Piece } from '../../report/piece.ts';
import type { Given } from '../given.ts';
import { clipPieces } from './clips.ts';
import { sleevePieces } from './sleeves.ts';

/** Every piece of new work, each for one place of the drawing. */
export function allPieces(given: Given): Piece[] {
  return [...piecesOf(given.network), ...clipPieces(given.network), ...sleevePieces(given)];
}

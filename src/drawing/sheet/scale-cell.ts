import { sheetFrame } from '../paint/frame.ts';
import type { Prim } from '../paint/prim.ts';
import { primsOf } from '../paint/prims-of.ts';
import { BLACK, filled, LINE, PRINT, paragraph, SHEET_TEXT, WHITE, words } from './ink.ts';
import type { Rect } from './paper.ts';
import { sayScale } from './say.ts';
import type { SheetHead } from './sheet.ts';

const PIECES_M = [5, 4, 2, 1, 0.5, 0.25, 0.2, 0.1, 0.05] as const;
const PIECES = 4;
/** Longest bar, mm of paper. */
const LONGEST_MM = 80;
const HIGH_MM = 1.2;
const NORTH_MM = 13;
/** Lower than this a cell is as wide as the sheet. */
const WIDE_UNDER_MM = 30;

/** The piece of a scale bar in metres: the longest of the round ones of which four have room. */
export function barPieceM(scale: number, roomMm = LONGEST_MM): number {
  return PIECES_M.find((m) => (PIECES * m * 1000) / scale <= roomMm + 1e-9) ?? 0.05;
}

/** A bar of four pieces in true size, with its figures under it. `x`, `y`: its upper left corner. */
function bar(x: number, y: number, scale: number, piece: number): Prim[] {
  const long = (piece * 1000) / scale;
  const prims: Prim[] = [];
  for (let i = 0; i < PIECES; i++) {
    prims.push(filled({ x: x + i * long, y, w: long, h: HIGH_MM }, i % 2 === 0 ? BLACK : WHITE, 0.2));
  }
  for (let i = 0; i <= PIECES; i++) {
    const figure = String(Number((i * piece).toFixed(2)));
    prims.push(words(i === PIECES ? `${figure} m` : figure, { x: x + i * long, y: y + 3.4, align: 'middle' }));
  }
  return prims;
}

const north = (x: number, y: number, turnDeg: number): Prim[] =>
  primsOf({ t: 'mark', mark: 'north', at: [0, 0], turnDeg, ink: 'ink1' }, sheetFrame(1, [0, 0], [x, y]), PRINT);

export const CAUTIONS = [
  'Limits compared, not approved: the registered engineer decides.',
  'Gas work by registered engineers only.',
  "Local rules and the appliance's own instructions go first.",
] as const;

/** North, the bar by which a print is checked, and the cautions every sheet carries. */
export function scaleCell(head: SheetHead, cell: Rect): Prim[] {
  const prims: Prim[] = [];
  const pad = 4;
  const turned = head.northDeg !== null;
  const x = cell.x + pad + (turned ? NORTH_MM - pad : 0);
  const w = (cell.h < WIDE_UNDER_MM ? cell.w / 2 : cell.w) + cell.x - pad - x;
  let y = cell.y + 3.4;
  if (head.scale !== null) {
    if (head.northDeg !== null) prims.push(...north(cell.x + NORTH_MM / 2, cell.y + 9, head.northDeg));
    const piece = barPieceM(head.scale, Math.min(LONGEST_MM, w - 3));
    prims.push(...bar(x + 1, y, head.scale, piece));
    const long = Number(((PIECES * piece * 1000) / head.scale).toFixed(1));
    y += 6.4;
    const said = `Scale ${sayScale(head.scale)}. Check the bar after printing: ${Number((PIECES * piece).toFixed(2))} m is ${long} mm.`;
    const line = paragraph(said, { x, y, w, weight: 600, most: 2 });
    prims.push(...line.prims);
    y += line.h + 0.6;
  } else {
    const line = paragraph('Nothing on this sheet is to scale.', { x, y, w, weight: 600 });
    prims.push(...line.prims);
    y += line.h + 1.4;
  }
  const under = [...(head.datum === null ? [] : [head.datum]), ...(head.remark === null ? [] : [head.remark])];
  const all = [...CAUTIONS, ...under];
  // A wide cell has the cautions beside the bar, a narrow one under it.
  const wide = cell.h < WIDE_UNDER_MM;
  const text = wide ? { x: cell.x + cell.w / 2, w: cell.w / 2 - pad } : { x: cell.x + pad, w: cell.w - 2 * pad };
  if (wide) y = cell.y + 2.2;
  else if (head.scale !== null) y = Math.max(y, cell.y + 14.6);
  for (const said of all) {
    if (y + SHEET_TEXT.body * LINE > cell.y + cell.h - 0.4) break;
    const line = paragraph(said, { ...text, y, most: 2 });
    prims.push(...line.prims);
    y += line.h;
  }
  return prims;
}

import type { Box } from '../display-list.ts';
import type { Prim } from '../paint/prim.ts';
import { rule, words } from './ink.ts';
import type { Rect } from './paper.ts';
import { OVER_MM, type Part, type Parting } from './parting.ts';

const PEN_MM = 0.5;
const DASH_MM = [7, 1.6, 1, 1.6] as const;

/** The strips past the match lines of a part, in mm of the plane: no label goes there. */
export function stripsOf(parting: Parting, { column, row, window }: Part, scale: number): Box[] {
  const over = OVER_MM * scale;
  const strips: Box[] = [];
  if (column > 0) strips.push({ ...window, maxX: window.minX + over });
  if (column < parting.columns - 1) strips.push({ ...window, minX: window.maxX - over });
  if (row > 0) strips.push({ ...window, minY: window.maxY - over });
  if (row < parting.rows - 1) strips.push({ ...window, maxY: window.minY + over });
  return strips;
}

/** Where the drawing goes on on another sheet: one line for each side, with the number of that sheet. */
export function matchLines(
  parting: Parting,
  part: Part,
  room: Rect,
  sheetOf: (i: number) => number | undefined,
): Prim[] {
  const index = (column: number, row: number): number => row * parting.columns + column;
  const say = (column: number, row: number): string => {
    const sheet = sheetOf(index(column, row));
    return sheet === undefined ? 'match line' : `match line: sheet ${sheet}`;
  };
  const prims: Prim[] = [];
  const [right, bottom] = [room.x + room.w, room.y + room.h];
  const upright = (x: number, textX: number, text: string): void => {
    prims.push(rule([x, room.y], [x, bottom], PEN_MM, DASH_MM));
    prims.push(
      words(text, { x: textX, y: room.y + room.h / 2, align: 'middle', weight: 600, turnDeg: -90, halo: true }),
    );
  };
  const level = (y: number, textY: number, text: string): void => {
    prims.push(rule([room.x, y], [right, y], PEN_MM, DASH_MM));
    prims.push(words(text, { x: room.x + room.w / 2, y: textY, align: 'middle', weight: 600, halo: true }));
  };
  const { column, row } = part;
  const half = OVER_MM / 2;
  if (column > 0) upright(room.x + OVER_MM, room.x + half, say(column - 1, row));
  if (column < parting.columns - 1) upright(right - OVER_MM, right - half, say(column + 1, row));
  if (row > 0) level(room.y + OVER_MM, room.y + half, say(column, row - 1));
  if (row < parting.rows - 1) level(bottom - OVER_MM, bottom - half, say(column, row + 1));
  return prims;
}

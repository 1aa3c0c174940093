import type { Box } from '../display-list.ts';
import type { Rect } from './paper.ts';

/** Paper left about a drawing at the least, for what is written along its edges. */
const AROUND_MM = 4;
/** How far a parted drawing goes on past its match line. */
export const OVER_MM = 7;

/** One sheet's window on the plane of a view, and what it has on its sides. */
export interface Part {
  readonly column: number;
  readonly row: number;
  /** In mm of the plane. */
  readonly window: Box;
}

export interface Parting {
  readonly columns: number;
  readonly rows: number;
  readonly parts: readonly Part[];
}

function along(long: number, room: number): number {
  if (long + 2 * AROUND_MM <= room) return 1;
  return Math.ceil((long + 2 * AROUND_MM) / (room - 2 * OVER_MM));
}

/** How a drawing of this box is laid on sheets at a scale: on one if it has room, else parted evenly from its middle. */
export function partingOf(box: Box, scale: number, room: Rect): Parting {
  const columns = along((box.maxX - box.minX) / scale, room.w);
  const rows = along((box.maxY - box.minY) / scale, room.h);
  const [cx, cy] = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
  const step = [(room.w - 2 * OVER_MM) * scale, (room.h - 2 * OVER_MM) * scale] as const;
  const parts: Part[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const x = cx + (column - (columns - 1) / 2) * step[0];
      const y = cy - (row - (rows - 1) / 2) * step[1];
      const [w, h] = [(room.w * scale) / 2, (room.h * scale) / 2];
      parts.push({ column, row, window: { minX: x - w, maxX: x + w, minY: y - h, maxY: y + h } });
    }
  }
  return { columns, rows, parts };
}

/** The first scale at which the drawing has room on one sheet; the last where there is none. */
export function scaleThatFits(box: Box, scales: readonly number[], room: Rect): number {
  const fits = (scale: number): boolean => partingOf(box, scale, room).parts.length === 1;
  return scales.find(fits) ?? scales.at(-1) ?? 100;
}

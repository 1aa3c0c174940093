/** px */
export const LIST = { width: 252, row: 46, gloveRow: 58, title: 30, mostRows: 6 } as const;
const AWAY_PX = 34;
const EDGE_PX = 8;

const clamp = (n: number, lo: number, hi: number): number => Math.max(lo, Math.min(n, Math.max(lo, hi)));

/** Where the list for a tap at (x, y) stands, px of its room: beside the tap, and where a page is narrow under or over it. Never on it. */
export function listPlace(
  x: number,
  y: number,
  rows: number,
  room: { readonly width: number; readonly height: number },
  rowPx: number = LIST.row,
): { readonly left: number; readonly top: number; readonly height: number } {
  const wanted = Math.min(rows, LIST.mostRows) * rowPx + LIST.title;
  const [toRight, toLeft] = [x + AWAY_PX, x - AWAY_PX - LIST.width];
  const fits = (left: number): boolean => left >= EDGE_PX && left + LIST.width <= room.width - EDGE_PX;
  const side = [toRight, toLeft].find(fits);
  if (side !== undefined) {
    const height = Math.min(wanted, room.height - 2 * EDGE_PX);
    return { left: side, top: clamp(y - height / 2, EDGE_PX, room.height - height - EDGE_PX), height };
  }
  const left = clamp(x - LIST.width / 2, EDGE_PX, room.width - LIST.width - EDGE_PX);
  const [over, under] = [y - AWAY_PX - EDGE_PX, room.height - EDGE_PX - y - AWAY_PX];
  const below = under >= wanted || under >= over;
  const height = Math.min(wanted, below ? under : over);
  return { left, top: below ? y + AWAY_PX : y - AWAY_PX - height, height };
}

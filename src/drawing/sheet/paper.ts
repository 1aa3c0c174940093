/** A box of the sheet in mm, from its upper left corner: x right, y down. */
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

export interface Paper {
  readonly id: string;
  readonly label: string;
  readonly wMm: number;
  readonly hMm: number;
}

/** Trimmed sizes of the A series, both ways. */
export const PAPERS: readonly Paper[] = [
  { id: 'A4-across', label: 'A4 across', wMm: 297, hMm: 210 },
  { id: 'A4-upright', label: 'A4 upright', wMm: 210, hMm: 297 },
  { id: 'A3-across', label: 'A3 across', wMm: 420, hMm: 297 },
  { id: 'A3-upright', label: 'A3 upright', wMm: 297, hMm: 420 },
];

export const paperOf = (id: string): Paper | undefined => PAPERS.find((p) => p.id === id);

/** The filing edge is wider, for the holes. */
const FILING_MM = 20;
const EDGE_MM = 10;
/** Rows of the title block. */
export const ROW_MM = 18;
/** North, scale bar and cautions over the rows, where the sheet is too narrow to have them beside. */
const SCALE_ROW_MM = 26;
/** Narrower than this the title block has no room beside its cells. */
const BESIDE_MM = 240;

/** Where everything of a sheet goes: its frame, the title block at the foot, the rest. */
export interface Layout {
  readonly paper: Paper;
  readonly frame: Rect;
  readonly block: Rect;
  readonly body: Rect;
  /** North and scale stand beside the cells of the title block; else over them. */
  readonly beside: boolean;
}

export function layoutOf(paper: Paper): Layout {
  const frame = { x: FILING_MM, y: EDGE_MM, w: paper.wMm - FILING_MM - EDGE_MM, h: paper.hMm - 2 * EDGE_MM };
  const beside = frame.w >= BESIDE_MM;
  const high = 2 * ROW_MM + (beside ? 0 : SCALE_ROW_MM);
  const block = { x: frame.x, y: frame.y + frame.h - high, w: frame.w, h: high };
  return { paper, frame, block, body: { ...frame, h: frame.h - high }, beside };
}

/** A box less a margin on every side. */
export const inset = (r: Rect, by: number): Rect => ({ x: r.x + by, y: r.y + by, w: r.w - 2 * by, h: r.h - 2 * by });

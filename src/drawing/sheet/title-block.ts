import type { Prim } from '../paint/prim.ts';
import { box, paragraph, rule, SHEET_TEXT, words } from './ink.ts';
import { type Layout, type Rect, ROW_MM } from './paper.ts';
import { assumptionsOf, NOT_TOLD, sayBasis, sayCase, told } from './say.ts';
import { scaleCell } from './scale-cell.ts';
import type { SheetHead, SheetJob, Standing } from './sheet.ts';

/** Pens of the frame and of the lines between cells, mm. */
const FRAME_MM = 0.7;
const CELL_MM = 0.35;
const PAD_MM = 1.6;

interface Cell {
  readonly caption: string;
  /** The first line stands out. */
  readonly lines: readonly string[];
  readonly strong?: boolean;
}

function cellPrims(cell: Cell, at: Rect): Prim[] {
  const x = at.x + PAD_MM;
  const w = at.w - 2 * PAD_MM;
  const prims: Prim[] = [words(cell.caption, { x, y: at.y + 2.4, size: SHEET_TEXT.caption })];
  let y = at.y + 4.6;
  const end = at.y + at.h - 0.8;
  for (const [i, line] of cell.lines.entries()) {
    const size = cell.strong && i === 0 ? SHEET_TEXT.title : SHEET_TEXT.body;
    const most = Math.floor((end - y) / (size * 1.4) + 1e-6);
    if (most < 1) break;
    const piece = paragraph(line, { x, y, w, size, weight: i === 0 ? 600 : 400, most });
    prims.push(...piece.prims);
    y += piece.h;
  }
  return prims;
}

/** The assumed things that have room, and where the rest stands. */
function assumedCell(job: SheetJob, standing: Standing): Cell {
  const all = assumptionsOf(job.report);
  const sheet = standing.numberOf('basis');
  const rest = sheet === undefined ? 'see the job for all' : `all of it on sheet ${sheet}`;
  const lines = all.length === 0 ? ['nothing'] : all.length === 1 ? all : [`${all.length} things, ${rest}`, ...all];
  return { caption: 'assumed and derived', lines };
}

interface Placed {
  readonly cell: Cell;
  readonly x: number;
  readonly row: number;
  readonly w: number;
}

/** The two rows of cells, `left` mm from the left edge of the block on, `w` wide in all. */
function cells(
  job: SheetJob,
  head: SheetHead,
  place: SheetPlace,
  standing: Standing,
  left: number,
  w: number,
): Placed[] {
  const { plan } = job;
  const issue = plan.job.issue;
  const unit = w / 164;
  const [assumed, basis, revision, date] = [55 * unit, 41 * unit, 33 * unit, 35 * unit];
  const x = [left, left + assumed, left + assumed + basis, left + assumed + basis + revision] as const;
  const reason = issue?.reason.trim() ? issue.reason : plan.job.reason;
  const number = issue?.number.trim() ? issue.number.trim() : 'number not told';
  return [
    { cell: assumedCell(job, standing), x: x[0], row: 0, w: assumed },
    { cell: { caption: 'basis', lines: sayBasis(plan) }, x: x[1], row: 0, w: basis },
    {
      cell: { caption: 'revision and reason', lines: [told(issue?.revision), told(reason)] },
      x: x[2],
      row: 0,
      w: revision,
    },
    { cell: { caption: 'date of issue', lines: [issue?.on ?? job.today], strong: true }, x: x[3], row: 0, w: date },
    {
      cell: { caption: 'title', lines: [told(plan.name), head.title, sayCase(plan, job.chosen)], strong: true },
      x: x[0],
      row: 1,
      w: assumed,
    },
    { cell: { caption: 'legal owner of the sheet', lines: [told(plan.job.owner)] }, x: x[1], row: 1, w: basis },
    { cell: { caption: 'created by', lines: [told(issue?.createdBy)] }, x: x[2], row: 1, w: revision / 2 },
    { cell: { caption: 'approved by', lines: [NOT_TOLD] }, x: x[2] + revision / 2, row: 1, w: revision / 2 },
    {
      cell: {
        caption: 'document type, number, sheet',
        lines: [head.documentType, number, `sheet ${place.number} of ${place.of}`],
      },
      x: x[3],
      row: 1,
      w: date,
    },
  ];
}

export interface SheetPlace {
  readonly number: number;
  readonly of: number;
}

/** Most the cells grow to on wider paper: what is told does not get longer. */
const MOST_CELLS_MM = 230;

/** Frame and title block: the fields of ISO 7200, then what the drawing rests on, then scale, north and cautions. */
export function titleBlock(
  job: SheetJob,
  layout: Layout,
  head: SheetHead,
  place: SheetPlace,
  standing: Standing,
): Prim[] {
  const { frame, block, beside } = layout;
  const w = beside ? Math.min(MOST_CELLS_MM, block.w * 0.615) : block.w;
  const left = block.x + block.w - w;
  const top = block.y + block.h - 2 * ROW_MM;
  const prims: Prim[] = [box(frame, FRAME_MM), rule([block.x, block.y], [block.x + block.w, block.y], CELL_MM * 1.4)];
  if (!beside) prims.push(rule([block.x, top], [block.x + block.w, top], CELL_MM));
  for (const placed of cells(job, head, place, standing, left, w)) {
    const at = { x: placed.x, y: top + placed.row * ROW_MM, w: placed.w, h: ROW_MM };
    prims.push(...cellPrims(placed.cell, at));
    if (placed.x > block.x + 1e-6) prims.push(rule([at.x, at.y], [at.x, at.y + at.h], CELL_MM));
  }
  prims.push(rule([left, top + ROW_MM], [block.x + block.w, top + ROW_MM], CELL_MM));
  const scale = beside
    ? { x: block.x, y: block.y, w: left - block.x, h: block.h }
    : { x: block.x, y: block.y, w: block.w, h: top - block.y };
  return [...prims, ...scaleCell(head, scale)];
}

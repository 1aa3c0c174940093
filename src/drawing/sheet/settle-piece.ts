import type { Plan } from '../../plan/plan.ts';
import { byWorst, type Finding } from '../../report/finding.ts';
import { nameFindings } from '../labels/finding-names.ts';
import type { Prim } from '../paint/prim.ts';
import { findingMark, sayFound, saySeen } from './finding-words.ts';
import { LINE, type Piece, paragraph, SHEET_TEXT } from './ink.ts';

const MARK_MM = 7;
const GAP_MM = 1.2;

const NOTHING: Piece = { prims: [], h: 0 };
const highOf = (what: Piece, how: Piece): number => Math.max(MARK_MM - 1, what.h + how.h) + GAP_MM;

interface Settle {
  readonly plan: Plan;
  /** Of the whole job, for their numbers. */
  readonly all: readonly Finding[];
  /** Of this sheet. */
  readonly here: readonly Finding[];
  /** Where the rest is told. */
  readonly sheet: number | undefined;
}

/** What is still to be settled on a sheet: mark, what, found and wanted; worst first, as many as have room. */
export function settlePiece(
  { plan, all, here, sheet }: Settle,
  x: number,
  top: number,
  w: number,
  most: number,
): Piece {
  const prims: Prim[] = [];
  const head = paragraph('To settle', { x, y: top, w, size: SHEET_TEXT.heading, weight: 600 });
  prims.push(...head.prims);
  let y = top + head.h + 0.8;
  const names = nameFindings(all);
  const sorted = [...here].sort(byWorst);
  const more = (n: number): string => `${n} more${sheet === undefined ? '' : `: sheet ${sheet}`}`;
  if (sorted.length === 0) {
    const none = paragraph('Nothing was found here.', { x, y, w });
    return { prims: [...prims, ...none.prims], h: y + none.h - top };
  }
  for (const [i, f] of sorted.entries()) {
    const text = { x: x + MARK_MM, w: w - MARK_MM };
    const what = paragraph(f.title, { ...text, y, weight: 600, most: 2 });
    const seen = saySeen(plan, f);
    const under = [sayFound(f), seen ?? ''].filter((t) => t !== '').join('. ');
    const last = i === sorted.length - 1;
    const left = most - (y - top) - (last ? 0 : SHEET_TEXT.body * LINE);
    const full = paragraph(under, { ...text, y: y + what.h, most: 2 });
    // Where there is no room for what was found, that it was found is still said.
    const how = highOf(what, full) > left ? NOTHING : full;
    const h = highOf(what, how);
    if (h > left) {
      const rest = paragraph(more(sorted.length - i), { x, y, w });
      prims.push(...rest.prims);
      y += rest.h;
      break;
    }
    prims.push(...findingMark(f.outcome, names.get(f.key) ?? '', x + 2.6, y + 2.8), ...what.prims, ...how.prims);
    y += h;
  }
  return { prims, h: y - top };
}

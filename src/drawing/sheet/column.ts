import type { Plan } from '../../plan/plan.ts';
import type { Finding } from '../../report/finding.ts';
import type { Report } from '../../report/report.ts';
import type { Fragment } from '../display-list.ts';
import type { Prim } from '../paint/prim.ts';
import { answerPiece } from './answer-piece.ts';
import { type Piece, rule } from './ink.ts';
import { keyPiece } from './key-piece.ts';
import { settlePiece } from './settle-piece.ts';
import type { Spaces } from './spaces.ts';

const GAP_MM = 3;
const PEN_MM = 0.35;
/** Of the height of a column: what the answer may take. */
const ANSWER_PART = 0.42;
/** Left for the findings at the least, under a key that is as long as it has to be. */
const SETTLE_MM = 22;

interface Beside {
  readonly plan: Plan;
  readonly report: Report;
  readonly fragments: readonly Fragment[];
  /** Findings of this sheet. */
  readonly here: readonly Finding[];
  readonly findingsSheet: number | undefined;
  /** Gas drop is told once, beside the plans. */
  readonly answer: boolean;
}

type Put = (x: number, y: number, w: number, most: number) => Piece | null;

/** Answer, key and what is to settle: one under the other, or side by side. */
export function columnPrims(what: Beside, { column, across }: Spaces): Prim[] {
  const { plan, report, fragments, here, findingsSheet } = what;
  const settle = { plan, all: report.findings, here, sheet: findingsSheet };
  const puts: readonly { readonly put: Put; readonly most: number }[] = [
    ...(what.answer
      ? [{ put: ((x, y, w, most) => answerPiece(report, x, y, w, most)) as Put, most: column.h * ANSWER_PART }]
      : []),
    { put: (x, y, w, most) => keyPiece(plan, fragments, x, y, w, most), most: column.h },
    { put: (x, y, w, most) => settlePiece(settle, x, y, w, most), most: column.h },
  ];
  const prims: Prim[] = [];
  const pad = GAP_MM;
  if (across) {
    prims.push(rule([column.x - pad, column.y - pad], [column.x + column.w + pad, column.y - pad], PEN_MM));
    const w = (column.w - (puts.length - 1) * 2 * GAP_MM) / puts.length;
    for (const [i, { put }] of puts.entries()) {
      const x = column.x + i * (w + 2 * GAP_MM);
      if (i > 0) prims.push(rule([x - GAP_MM, column.y], [x - GAP_MM, column.y + column.h], 0.2));
      prims.push(...(put(x, column.y, w, column.h)?.prims ?? []));
    }
    return prims;
  }
  prims.push(rule([column.x - pad, column.y - pad], [column.x - pad, column.y + column.h + pad], PEN_MM));
  let y = column.y;
  for (const [i, { put, most }] of puts.entries()) {
    const last = i === puts.length - 1;
    const left = column.y + column.h - y - (last ? 0 : SETTLE_MM);
    const piece = put(column.x, y, column.w, Math.min(left, most));
    if (!piece) continue;
    prims.push(...piece.prims);
    y += piece.h + GAP_MM;
    if (!last) prims.push(rule([column.x, y - GAP_MM / 2], [column.x + column.w, y - GAP_MM / 2], 0.2));
  }
  return prims;
}

import { sayFigures, sayQuantity } from '../../report/quantity.ts';
import type { Report } from '../../report/report.ts';
import type { Row } from '../../report/section.ts';
import type { Prim } from '../paint/prim.ts';
import { gasBar } from './gas-bar.ts';
import { type Piece, paragraph, SHEET_TEXT, words } from './ink.ts';

type AnswerRow = Extract<Row, { kind: 'answer' }>;
type SumRow = Extract<Row, { kind: 'sum' }>;

/** Units as they are set in print. */
const cubic = (text: string): string => text.replaceAll('m3', 'm³');

/** The first answer of the report: the appliance that decides, its figure against the limit, how it was worked out. */
export function answerPiece(report: Report, x: number, top: number, w: number, most: number): Piece | null {
  const section = report.sections.find((s) => s.rows.some((r) => r.kind === 'answer'));
  const answer = section?.rows.find((r): r is AnswerRow => r.kind === 'answer');
  if (!section || !answer) return null;
  const prims: Prim[] = [];
  let y = top;
  const put = (text: string, size: number, weight: 400 | 600, lines = 2): void => {
    const piece = paragraph(text, { x, y, w, size, weight, most: lines });
    prims.push(...piece.prims);
    y += piece.h;
  };
  put(`${section.title}, ${answer.label}`, SHEET_TEXT.heading, 600);
  y += 0.6;
  put(sayQuantity(answer.figure), SHEET_TEXT.answer, 600, 1);
  const limit = answer.bar.limit === null ? '' : `limit ${answer.bar.limit.toFixed(answer.figure.digits)}: `;
  put(`${limit}${answer.say}`, SHEET_TEXT.body, 600);
  y += 1.4;
  const bar = gasBar(answer.bar, x, y, w);
  prims.push(...bar.prims);
  y += bar.h + 0.8;
  for (const row of section.rows.filter((r): r is SumRow => r.kind === 'sum')) {
    const how = paragraph(cubic(row.how), { x, y: 0, w, most: 2 });
    if (y - top + SHEET_TEXT.body * 1.4 + how.h > most) break;
    const figure = row.result ? sayFigures(row.result) : '';
    const label = paragraph(row.label, { x, y, w: w - 20, weight: 600, most: 1 });
    prims.push(...label.prims, words(figure, { x: x + w, y: y + SHEET_TEXT.body * 0.7, weight: 600, align: 'right' }));
    y += label.h;
    put(cubic(row.how), SHEET_TEXT.body, 400);
  }
  return { prims, h: y - top };
}

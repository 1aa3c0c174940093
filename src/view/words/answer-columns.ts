import type { Report } from '../../report/report.ts';
import type { Row } from '../../report/section.ts';

type Choice = Extract<Row, { kind: 'choice' }>;
type Sum = Extract<Row, { kind: 'sum' }>;

/** One size of the route: its figures, how it stands, how much is left. */
export interface AnswerColumn {
  readonly size: string;
  readonly row: Choice;
}

/** What the words screen answers with. */
export interface WordsAnswer {
  readonly columns: readonly AnswerColumn[];
  readonly unit: string;
  readonly limit: number | null;
  readonly working: readonly Sum[];
  readonly assumed: readonly string[];
}

const GAS = 'gas-drop';
const ALL_THE_WAY = / all the way$/;
/** As many stand side by side on a phone. */
const COLUMNS = 3;

/** Three sizes in a row: the smallest that passes in the middle where there is one, else those that come nearest. */
export function nearestColumns(all: readonly AnswerColumn[]): readonly AnswerColumn[] {
  if (all.length <= COLUMNS) return all;
  const passes = all.findIndex((c) => c.row.state === 'pass');
  const chosen = all.findIndex((c) => c.row.chosen);
  const middle = passes >= 0 ? passes : chosen >= 0 ? chosen : all.length - 1;
  const from = Math.min(Math.max(middle - 1, 0), all.length - COLUMNS);
  return all.slice(from, from + COLUMNS);
}

/** The sizes of the told route with their figures; null while nothing on the page can be answered. */
export function wordsAnswer(report: Report | null): WordsAnswer | null {
  const section = report?.sections.find((s) => s.id === GAS);
  if (!section) return null;
  const columns: AnswerColumn[] = [];
  const working: Sum[] = [];
  const assumed: string[] = [];
  let limit: number | null = null;
  let unit = '';
  for (const row of section.rows) {
    if (row.kind === 'answer' && limit === null) {
      limit = row.bar.limit;
      unit = row.figure.unit;
    } else if (row.kind === 'choice' && ALL_THE_WAY.test(row.label)) {
      columns.push({ size: row.label.replace(ALL_THE_WAY, ''), row });
    } else if (row.kind === 'sum') working.push(row);
    else if (row.kind === 'assumed') assumed.push(row.say);
  }
  return { columns: nearestColumns(columns), unit, limit, working, assumed };
}

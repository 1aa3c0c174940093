import type { Row } from '../../../report/section.ts';

type Heading = Extract<Row, { kind: 'heading' }>;

/** A row as it stands, or several that are opened by their title. */
export type Shown =
  | { readonly is: 'row'; readonly row: Row }
  | { readonly is: 'fold'; readonly title: string; readonly say: string; readonly rows: readonly Row[] };

/** So many that pass, one after another, are counted instead of told. */
const MANY_PASS = 4;
/** Chapters with more rows than this keep their later workings folded. */
const LONG = 20;

const isPass = (row: Row): boolean => row.kind === 'verdict' && row.state === 'pass';
const isDetail = (row: Row): boolean => row.kind === 'sum' || row.kind === 'fact';

/** How many rows from a place on are of a kind. */
function stretch(rows: readonly Row[], from: number, is: (row: Row) => boolean): number {
  let n = 0;
  for (let row = rows[from]; row && is(row); row = rows[from + n]) n++;
  return n;
}

/**
 * Rows with what can wait folded away: verdicts that pass while others do not, and in a long chapter the workings under
 * a heading that something stands before.
 */
export function foldRows(rows: readonly Row[]): Shown[] {
  const shown: Shown[] = [];
  const long = rows.length > LONG;
  const allPass = rows.every((r) => r.kind !== 'verdict' || r.state === 'pass');
  for (let at = 0; at < rows.length; ) {
    const row = rows[at];
    if (!row) break;
    const passes = allPass ? 0 : stretch(rows, at, isPass);
    const details = row.kind === 'heading' && long && at > 1 ? stretch(rows, at + 1, isDetail) : 0;
    if (passes >= MANY_PASS) {
      shown.push({ is: 'fold', title: `${passes} pass`, say: '', rows: rows.slice(at, at + passes) });
      at += passes;
    } else if (details > 1) {
      const { label, say } = row as Heading;
      shown.push({ is: 'fold', title: label, say, rows: rows.slice(at + 1, at + 1 + details) });
      at += details + 1;
    } else {
      shown.push({ is: 'row', row });
      at++;
    }
  }
  return shown;
}

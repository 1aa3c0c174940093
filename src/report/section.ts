import type { Outcome } from './finding.ts';
import { type Quantity, roundQuantity } from './quantity.ts';
import type { Cite } from './working.ts';

/** A mark beside a figure: how it stands against its limit. `none` where it is not held against anything. */
export type State = 'pass' | Outcome | 'none';

/** The bar of an interval on a line from 0 to 1.5 of the limit, with the limit as a post. */
export interface Bar {
  readonly figure: Quantity;
  readonly limit: number | null;
  readonly state: State;
}

/**
 * Rows a panel knows how to draw, whatever section they stand in:
 * answer: one large figure with its bar; choice: one of several ways with its own small bar (sizes of a route);
 * sum: a working line (label, how, result); fact: label and figure; note: one sentence; assumed: one thing taken for granted;
 * verdict: how one thing stands, with its mark and a sentence; heading: parts what follows; line: one row of the list of pieces.
 */
export type Row =
  | {
      readonly kind: 'answer';
      readonly label: string;
      readonly of: string;
      readonly figure: Quantity;
      readonly bar: Bar;
      readonly say: string;
      readonly room: string | null;
      readonly ids: readonly string[];
    }
  | {
      readonly kind: 'choice';
      readonly label: string;
      readonly figure: Quantity | null;
      readonly bar: Bar | null;
      readonly state: State;
      readonly room: string | null;
      readonly chosen: boolean;
      /** What choosing it does: tube size for each leg named. Empty: nothing to change. */
      readonly change: readonly { readonly leg: string; readonly kind: string; readonly size: string }[];
      readonly ids: readonly string[];
    }
  | {
      readonly kind: 'sum';
      readonly label: string;
      readonly how: string;
      readonly result: Quantity | null;
      readonly cites: readonly Cite[];
      readonly ids: readonly string[];
    }
  | {
      readonly kind: 'fact';
      readonly label: string;
      readonly figure: Quantity | null;
      readonly say: string;
      readonly ids: readonly string[];
    }
  | {
      readonly kind: 'verdict';
      readonly label: string;
      readonly state: State;
      readonly say: string;
      readonly ids: readonly string[];
    }
  | { readonly kind: 'heading'; readonly label: string; readonly say: string; readonly ids: readonly string[] }
  | { readonly kind: 'note'; readonly say: string; readonly unverified: boolean; readonly cites: readonly Cite[] }
  | { readonly kind: 'assumed'; readonly say: string; readonly ids: readonly string[] };

/** A chapter of the report. `answer` is the short figure the folded panel shows. */
export interface Section {
  readonly id: string;
  readonly title: string;
  readonly order: number;
  readonly answer: string;
  readonly state: State;
  readonly rows: readonly Row[];
}

const round = (q: Quantity | null): Quantity | null => q && roundQuantity(q);
const roundBar = (bar: Bar): Bar => ({ ...bar, figure: roundQuantity(bar.figure) });

function roundRow(row: Row): Row {
  switch (row.kind) {
    case 'answer':
      return { ...row, figure: roundQuantity(row.figure), bar: roundBar(row.bar) };
    case 'choice':
      return { ...row, figure: round(row.figure), bar: row.bar && roundBar(row.bar) };
    case 'sum':
      return { ...row, result: round(row.result) };
    case 'fact':
      return { ...row, figure: round(row.figure) };
    default:
      return row;
  }
}

/** Every figure of a chapter rounded as the report prints it. */
export const roundSection = (section: Section): Section => ({ ...section, rows: section.rows.map(roundRow) });

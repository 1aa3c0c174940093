import { testKind, testLabel } from '../../catalogue/test-kinds.ts';
import { type Quantity, roundQuantity } from '../../report/quantity.ts';
import type { Row } from '../../report/section.ts';
import type { Working } from '../../report/working.ts';

/** Heads what is expected of a test. The form of a record finds its blanks by these words: title, part, label. */
export const due = (kind: string, part: string, ids: readonly string[] = []): Row => ({
  kind: 'heading',
  label: testKind(kind)?.title ?? kind,
  say: part,
  ids,
});

/** "Drop, edition 3": a blank whose expected figure differs with the edition. */
export const labelOf = (kind: string, key: string, edition: string | null = null): string =>
  edition === null ? testLabel(kind, key) : `${testLabel(kind, key)}, edition ${edition}`;

export const fact = (label: string, figure: Quantity | null, say = '', ids: readonly string[] = []): Row => ({
  kind: 'fact',
  label,
  figure: figure && roundQuantity(figure),
  say,
  ids,
});

/** The end of a sum with where it comes from; what is missing is said where it has none. */
export function worked(label: string, w: Working, how = w.steps.at(-1)?.how ?? ''): Row {
  if (w.result === null) return fact(label, null, `can't tell: ${w.missing.join(', ')}`);
  const cites = w.steps.flatMap((s) => s.cites);
  return { kind: 'sum', label, how, result: roundQuantity(w.result), cites, ids: [] };
}

export const note = (say: string, cites: Extract<Row, { kind: 'note' }>['cites'], unverified = false): Row => ({
  kind: 'note',
  say,
  unverified,
  cites,
});

import type { Quantity } from '../../../../report/quantity.ts';
import type { Row } from '../../../../report/section.ts';

/** The least room inside a box, mm: along its wall or in height, and out from the wall. */
export interface LeastBox {
  readonly acrossMm: number;
  readonly across: 'along' | 'height';
  readonly outMm: number;
}

const ALONG = 'Smallest inside, along the wall';
const HIGH = 'Smallest inside, in height';
const OUT = 'Smallest inside, out from the wall';

/** What the report says of one box: from its heading to the next. Empty where no pipe runs in it. */
export function rowsOfBox(rows: readonly Row[], id: string): readonly Row[] {
  const from = rows.findIndex((row) => row.kind === 'heading' && row.ids.includes(id));
  if (from < 0) return [];
  const rest = rows.slice(from + 1);
  const upTo = rest.findIndex((row) => row.kind === 'heading' || row.kind === 'note');
  return upTo < 0 ? rest : rest.slice(0, upTo);
}

const mostOf = (figure: Quantity): number => Math.ceil(figure.hi ?? figure.value ?? figure.lo);

function size(rows: readonly Row[], label: string): number | null {
  const row = rows.find((one) => one.kind === 'sum' && one.label === label);
  return row?.kind === 'sum' && row.result ? mostOf(row.result) : null;
}

/** Whole mm that hold the pipes even where their sizes are in doubt; null where the report does not say. */
export function leastBox(rows: readonly Row[]): LeastBox | null {
  const outMm = size(rows, OUT);
  const [along, high] = [size(rows, ALONG), size(rows, HIGH)];
  if (outMm === null) return null;
  if (along !== null) return { acrossMm: along, across: 'along', outMm };
  return high === null ? null : { acrossMm: high, across: 'height', outMm };
}

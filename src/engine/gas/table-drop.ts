import { constant } from '../../reference/figure.ts';
import { type Inverse, inverse } from '../../reference/inverse.ts';
import { type Editions, edition, editionsOf } from '../../reference/tables.ts';
import type { TubeSize } from '../../reference/tubes.ts';
import { leastSure, type Quantity, type Sureness } from '../../report/quantity.ts';
import type { Cite } from '../../report/working.ts';
import { best } from './interval.ts';

export interface TableDrop {
  /** What the table says at least and at most, mbar; `most` null where the flow lies over its first column. */
  readonly least: number;
  readonly most: number | null;
  /** Its own figure at the best single flow and length; null where it only bounds. */
  readonly value: number | null;
  /** Where the table's own figure must lie at the best single flow and length, so that another method can be held to it. */
  readonly within: { readonly lo: number; readonly hi: number | null } | null;
  readonly lowerIsBound: boolean;
  readonly upperIsBound: boolean;
  /** Loss by the stepped look-up (last listed length that still carries the flow); null outside the table. */
  readonly stepped: { readonly mbar: number; readonly atM: number } | null;
  /** Length that carries the best flow for the table's loss; else the end of the table the flow lies past. */
  readonly carriesM: number | null;
  readonly endM: number | null;
  readonly sureness: Sureness;
  readonly cite: Cite;
}

/** The lowest and highest loss, mbar, that is true of one length at one reading of a table made for `mbar`. */
function bounds(read: Inverse, m: number, mbar: number): { readonly lo: number; readonly hi: number | null } | null {
  if (read.is === 'known') return { lo: (m / read.at) * mbar, hi: (m / read.at) * mbar };
  if (read.is === 'pastLast') return { lo: 0, hi: (m / read.end) * mbar };
  if (read.is === 'beforeFirst') return { lo: (m / read.end) * mbar, hi: null };
  return null;
}

const endOf = (read: Inverse | null): number | null =>
  read?.is === 'pastLast' || read?.is === 'beforeFirst' ? read.end : null;

/**
 * Loss of a straight length of natural gas by the discharge table, mbar: the length over the length at which the
 * tube carries the flow, that length being linear in the flow between columns. A flow under the last column loses at most
 * length / last column; a flow over the first column loses at least length / first column, and has no figure.
 * Undefined where the edition has no row for the tube.
 */
export function tableDrop(
  tube: TubeSize,
  lengthM: Quantity,
  flow: Quantity,
  editions: Editions,
): TableDrop | undefined {
  const topic = `gas-discharge-${tube.kind}`;
  if (editionsOf(topic).length === 0) return undefined;
  const table = edition(topic, editions);
  if (!table) return undefined;
  const mbar = constant('gas-discharge-basis', tube.kind, 'lossMbar');
  const low = inverse(table, tube.size, flow.lo);
  const least = bounds(low, lengthM.lo, mbar);
  if (low.is === 'unknown' || !least) return undefined;
  const high = flow.hi === null ? null : inverse(table, tube.size, flow.hi);
  const q = best(flow);
  const m = best(lengthM);
  const middle = q === null ? null : inverse(table, tube.size, q);
  const within = middle === null || m === null ? null : bounds(middle, m, mbar);
  const known = middle?.is === 'known' ? middle : null;
  return {
    least: least.lo,
    most: high && lengthM.hi !== null ? (bounds(high, lengthM.hi, mbar)?.hi ?? null) : null,
    value: known && m !== null ? (m / known.at) * mbar : null,
    within,
    lowerIsBound: low.is !== 'known',
    upperIsBound: high?.is === 'pastLast',
    stepped: known && m !== null ? { mbar: (m / known.stepped) * mbar, atM: known.stepped } : null,
    carriesM: known?.at ?? null,
    endM: endOf(high) ?? endOf(middle),
    sureness: leastSure(low.sureness, lengthM.sureness, flow.sureness),
    cite: { source: table.source, clause: table.clause, table: table.id },
  };
}

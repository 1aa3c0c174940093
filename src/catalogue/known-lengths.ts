import { constant } from '../reference/figure.ts';
import { table } from '../reference/tables.ts';

export interface KnownLength {
  readonly id: string;
  readonly title: string;
  readonly widthMm: number;
  readonly heightMm: number;
}

const TABLE = 'known-lengths';

/** Things in a photo whose size is known well enough to scale it by, until one has been measured. */
export function knownLengths(): readonly KnownLength[] {
  return table(TABLE).rows.map((row) => ({
    id: row.key,
    title: row.title ?? row.key,
    widthMm: constant(TABLE, row.key, 'width'),
    heightMm: constant(TABLE, row.key, 'height'),
  }));
}

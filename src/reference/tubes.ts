import { type Figure, figure, type TableCite } from './figure.ts';
import type { Sureness, Table } from './schema/table-schema.ts';
import { tables } from './tables.ts';

export interface TubeSize {
  readonly kind: string;
  /** Id of the size within its kind, as the plan stores it: "22x0.9". */
  readonly size: string;
  /** What is said and printed: "22". */
  readonly label: string;
  readonly odMm: number;
  /** Null where no wall has been read. */
  readonly wallMm: number | null;
  readonly boreMm: number | null;
  readonly sureness: Sureness;
  readonly cite: TableCite;
}

export interface TubeKind {
  readonly kind: string;
  readonly title: string;
  /** Smallest outside diameter first; walls of one diameter in the order of the table, the usual one first. Empty where no dimensions have been read. */
  readonly sizes: readonly TubeSize[];
}

const PREFIX = 'tube-';

function sizesOf(table: Table): TubeSize[] {
  const kind = table.id.slice(PREFIX.length);
  return table.rows
    .flatMap((row) => {
      const [od, wall, bore] = ['od', 'wall', 'bore'].map((column) => figure(table, row.key, column));
      if (od?.is !== 'known') return [];
      const mm = (f: Figure | undefined): number | null => (f?.is === 'known' ? f.lo : null);
      const common = { kind, size: row.key, label: row.title ?? row.key, sureness: od.sureness, cite: od.cite };
      return [{ ...common, odMm: od.lo, wallMm: mm(wall), boreMm: mm(bore) }];
    })
    .sort((a, b) => a.odMm - b.odMm);
}

const KINDS: ReadonlyMap<string, TubeKind> = new Map(
  tables()
    .filter((t) => t.id.startsWith(PREFIX))
    .map((t) => [t.id.slice(PREFIX.length), { kind: t.id.slice(PREFIX.length), title: t.title, sizes: sizesOf(t) }]),
);

/** Every kind of tube with dimensions, one for each `tube-*` table, sorted by id. */
export const tubeKinds = (): readonly TubeKind[] => [...KINDS.values()];

/** By the size's id or its spoken label; undefined where the kind or the size is not known. */
export function tube(kind: string, size: string | null): TubeSize | undefined {
  if (size === null) return undefined;
  const sizes = KINDS.get(kind)?.sizes ?? [];
  return sizes.find((s) => s.size === size) ?? sizes.find((s) => s.label === size);
}

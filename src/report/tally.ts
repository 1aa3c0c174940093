import type { Case, Plan } from '../plan/plan.ts';
import { type Quantity, sayQuantity } from './quantity.ts';
import type { State } from './section.ts';

/** One figure of a case as it stands beside the same figure of others. */
export interface TallyFigure {
  /** The same in every case: "metres/gas". */
  readonly id: string;
  readonly group: string;
  readonly label: string;
  /** Place among the others of its group. */
  readonly order: number;
  /** Null where there is none; `say` then tells why. */
  readonly figure: Quantity | null;
  /** A few words under the figure, or in its place: "none", "by gravity, 21.5". */
  readonly say: string;
  /** `cantTell`: it is not known; `none`: held against nothing. */
  readonly state: State;
  /** Is less of it better? Null where neither is. */
  readonly less: boolean | null;
  /** Chapter of the report it comes from, by the id the panel knows it by; null where it has none. */
  readonly chapter: string | null;
  /** What it is about: runs, points, voids. */
  readonly ids: readonly string[];
}

/** The figures of one case, worked out for a comparison. */
export interface Tally {
  readonly case: Case;
  readonly figures: readonly TallyFigure[];
}

/**
 * How a figure stands among those of the other options. `best`: surely better than some and worse than none. `level`: all are
 * the same. `close`: their doubts overlap, so nobody can tell. Null: it is not a matter of better.
 */
export type Standing = 'best' | 'level' | 'close' | null;

/** One row of the table of comparison: a figure of each case, null where a case has none. */
export interface TallyRow {
  readonly id: string;
  readonly group: string;
  readonly label: string;
  readonly cells: readonly (TallyFigure | null)[];
  readonly standing: readonly Standing[];
}

const GROUPS: readonly string[] = ['Answers', 'Findings', 'Pipe', 'What shows', 'Holes', 'Work'];

/** Half of the last digit printed: figures that print the same are the same. */
const slack = (q: Quantity): number => 10 ** -q.digits / 2;
const top = (q: Quantity): number => q.hi ?? Number.POSITIVE_INFINITY;

/** Surely no worse than the other; a figure nobody bounds from above is never surely less. */
function noWorse(a: Quantity, b: Quantity, less: boolean): boolean {
  return less ? top(a) <= b.lo + slack(a) : a.lo >= top(b) - slack(a);
}

const same = (a: Quantity, b: Quantity): boolean =>
  Math.abs(a.lo - b.lo) <= slack(a) && (a.hi === b.hi || Math.abs(top(a) - top(b)) <= slack(a));

function standingsOf(cells: readonly (TallyFigure | null)[], tallies: readonly Tally[]): Standing[] {
  const none = cells.map((): Standing => null);
  const options = cells.flatMap((cell, i) => (tallies[i]?.case.when === 'after' ? [{ cell, i }] : []));
  const less = options[0]?.cell?.less ?? null;
  if (options.length < 2 || less === null) return none;
  const known = options.flatMap(({ cell, i }) => (cell?.figure ? [{ figure: cell.figure, i }] : []));
  // What is missing from one option might be the best of all.
  if (known.length < options.length) return none;
  const first = known[0];
  if (first && known.every((k) => same(k.figure, first.figure)))
    return cells.map((_, i): Standing => (known.some((k) => k.i === i) ? 'level' : null));
  const best = known.filter((k) => known.every((o) => o === k || noWorse(k.figure, o.figure, less)));
  return cells.map((_, i): Standing => {
    if (best.some((k) => k.i === i)) return 'best';
    return best.length === 0 && known.some((k) => k.i === i) ? 'close' : null;
  });
}

/** What a row tells of which things, in every case. */
const told = (row: TallyRow): string =>
  JSON.stringify([row.group, row.cells.map((c) => c && [c.figure?.lo, c.figure?.hi, c.figure?.unit, c.ids])]);

/** The worst appliance may be the boiler, and the longest wait that of the one tap: what was told is not told again. */
function once(rows: readonly TallyRow[]): TallyRow[] {
  const seen = new Set<string>();
  return rows.filter((row) => {
    const about = row.cells.some((c) => c !== null && c.figure !== null && c.ids.length > 0);
    if (row.group !== 'Answers' || !about) return true;
    const said = told(row);
    const again = seen.has(said);
    seen.add(said);
    return !again;
  });
}

/** Figures of several cases side by side, in the order they are read in. */
export function tallyRows(tallies: readonly Tally[]): TallyRow[] {
  const first = new Map<string, TallyFigure>();
  for (const f of tallies.flatMap((t) => t.figures)) if (!first.has(f.id)) first.set(f.id, f);
  const group = (f: TallyFigure): number => GROUPS.indexOf(f.group);
  const rows = [...first.values()]
    .sort((a, b) => group(a) - group(b) || a.order - b.order || (a.id < b.id ? -1 : 1))
    .map((f) => {
      const cells = tallies.map((t) => t.figures.find((other) => other.id === f.id) ?? null);
      return { id: f.id, group: f.group, label: f.label, cells, standing: standingsOf(cells, tallies) };
    });
  return once(rows);
}

/** A figure as it is printed, with its unit, and what is said under it. Either may be empty. */
export function sayTally(f: TallyFigure): { readonly figure: string; readonly under: string } {
  const { figure: q, say } = f;
  const nothing = q === null || (q.lo <= 0 && q.hi === 0 && say.startsWith('none'));
  // A lower bound of nothing says nothing.
  const unknown = f.state === 'cantTell' && (q === null || (q.hi === null && q.lo < slack(q)));
  if (unknown) return { figure: "can't tell", under: say.replace(/^can't tell(: )?/, '') };
  return nothing || q === null ? { figure: say, under: '' } : { figure: sayQuantity(q), under: say };
}

/** Something that is not the same in two cases. */
export interface Difference {
  /** What it is part of: "Gas", "Heating", "Appliances and points", "Building". */
  readonly system: string;
  readonly kind: 'new' | 'gone' | 'moved' | 'changed';
  /** "Gas to the boiler" */
  readonly name: string;
  /** "22 instead of 15, 2.1 m longer" */
  readonly say: string;
  /** What it is in either case: runs, points, walls, openings, voids, items. */
  readonly before: readonly string[];
  readonly after: readonly string[];
}

/** The port through which a comparison reaches the engine: the figures of one case, and what differs between two. */
export interface Comparer {
  readonly tally: (plan: Plan, chosen: Case) => Promise<Tally>;
  readonly differences: (plan: Plan, from: Case, to: Case) => Promise<readonly Difference[]>;
}

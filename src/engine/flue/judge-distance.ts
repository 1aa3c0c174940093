import type { Xyz } from '../../plan/records/parts.ts';
import { quantise } from '../../plan/units.ts';
import { figure } from '../../reference/figure.ts';
import { table } from '../../reference/tables.ts';
import type { FlueDistance } from '../../report/flue-face.ts';
import { againstLeast, between, roundQuantity, sayFigures } from '../../report/quantity.ts';
import type { State } from '../../report/section.ts';
import type { Given } from '../given.ts';
import { type Limit, limitFor } from '../limits.ts';
import type { Candidate } from './candidate.ts';
import type { Terminal } from './terminals.ts';

/** One distance, and what would have to be known for it to be told. */
export interface Judged extends FlueDistance {
  readonly table: Candidate['table'];
  /** "the kitchen window" */
  readonly what: string;
  readonly missing: string | null;
}

/** What the sheet of the terminal's appliance wants, else the general figure. */
function wantedFor(
  given: Given,
  t: Terminal,
  c: Candidate,
): { limit: Limit | undefined; general: ReturnType<typeof figure> } {
  const general = figure(c.table, c.row, 'mm');
  const key = `flue-${c.row}`;
  const own = limitFor(given.plan, key, t.point.id, general);
  const limit = own?.overridden || !t.appliance ? own : limitFor(given.plan, key, t.appliance.id, general);
  return { limit, general };
}

const titleOf = (c: Candidate): string => table(c.table).rows.find((r) => r.key === c.row)?.title ?? c.row;

/** "at least 75" is how a figure without an upper bound is said, so that only bounded ones come here. */
function stateOf(c: Candidate, verdict: 'pass' | 'check' | 'stop' | 'cantTell', isNew: boolean): State {
  if (verdict === 'pass') return 'pass';
  if (!isNew || c.table === 'flue-plume') return 'note';
  // Straight through a corner is shorter than the way round it.
  if (c.roundCorner) return 'check';
  return verdict;
}

/** Of a thing that lies askew in the face: how far across and how far up or down, since a tape is held along those. */
function askew({ gap, shows }: Candidate): string {
  const across = Math.abs(gap.to.x - gap.from.x);
  const up = gap.to.z - gap.from.z;
  if (shows !== 'face' || across < 1 || Math.abs(up) < 1) return '';
  return `, ${Math.round(across)} across and ${Math.round(Math.abs(up))} ${up > 0 ? 'up' : 'down'}`;
}

const place = (p: Xyz): Xyz => ({ x: quantise(p.x), y: quantise(p.y), z: quantise(p.z) });

export function judge(given: Given, t: Terminal, c: Candidate): Judged {
  const { limit, general } = wantedFor(given, t, c);
  const found = roundQuantity(between(c.gap.lo, c.gap.hi, 'mm', 0, 'derived', c.gap.mm));
  const wanted = limit ? roundQuantity(limit.figure) : null;
  const verdict = limit ? againstLeast(found, limit.figure.lo) : 'cantTell';
  // A window that may be fixed still keeps off the hole its frame is built into.
  const frame = figure('flue-distances', 'frame', 'mm');
  const open =
    c.unless !== null && verdict !== 'pass' && !(frame.is === 'known' && againstLeast(found, frame.lo) === 'stop');
  const state = open && t.isNew ? 'cantTell' : stateOf(c, verdict, t.isNew);
  const label = titleOf(c);
  const page = limit?.overridden ? `, by its sheet, page ${limit.overridden.page}` : '';
  const off =
    c.shows === 'plan' && t.body.maxY > 0 && c.gap.to.y >= t.body.maxY
      ? `, ${Math.round(c.gap.to.y)} from the wall`
      : '';
  const doubt = wanted?.sureness === 'memory' ? ', from memory' : '';
  const against = wanted ? `${sayFigures(wanted)} wanted${page}${doubt}` : 'what is wanted is not known';
  const unless = open ? `; not known ${c.unless}` : '';
  return {
    row: c.row,
    table: c.table,
    what: c.what,
    label,
    ids: c.ids,
    from: place(t.house(c.gap.from)),
    to: place(t.house(c.gap.to)),
    shows: c.shows,
    found,
    wanted,
    state,
    say: `${sayFigures(found)}: ${c.what}${off}${askew(c)}; ${against}${unless}`,
    cites: [{ source: general.cite.source, clause: general.cite.clause, table: general.cite.table }],
    missing: open ? c.unless : null,
  };
}

const RANK: readonly State[] = ['stop', 'check', 'cantTell', 'note', 'pass', 'none'];
const toSpare = (d: FlueDistance): number => d.found.lo - (d.wanted?.lo ?? 0);

/** Worst first; of equals what has least to spare, then as written. */
export const byState = (a: FlueDistance, b: FlueDistance): number =>
  RANK.indexOf(a.state) - RANK.indexOf(b.state) ||
  toSpare(a) - toSpare(b) ||
  (a.row < b.row ? -1 : a.row > b.row ? 1 : 0) ||
  (a.ids.join() < b.ids.join() ? -1 : 1);

export const worstState = (states: readonly State[]): State =>
  [...states].sort((a, b) => RANK.indexOf(a) - RANK.indexOf(b))[0] ?? 'none';

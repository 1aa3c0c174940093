import { figure, type Known, word } from '../../reference/figure.ts';
import { type Editions, edition, table, tables } from '../../reference/tables.ts';
import type { Quantity } from '../../report/quantity.ts';
import { quantityOf } from '../gas/said.ts';

/** What one standard says of one kind of tap. Flows in l/s. */
export interface DrawOff {
  readonly scale: string;
  readonly draw: string;
  readonly title: string;
  readonly units: Quantity | null;
  readonly flow: Known;
  readonly least: Known;
}

const SCALES = 'loading-units-scales';
/** Topic under which the basis of a plan pins one scale. */
const TOPIC = 'loading-units';

/** The scale a plan counts by: the one its basis pins, else the default; undefined for a pin that is not here. */
export function scaleOf(editions: Editions): string | undefined {
  const pinned = edition(TOPIC, editions);
  return table(SCALES).rows.find((r) => r.cells[0] === pinned?.id)?.key;
}

/** Flows stand beside the units in one standard, and in a table of their own in the other. */
function flowTable(scale: string): string | null {
  const own = word(SCALES, scale, 'flows');
  return own.is === 'known' ? own.word : null;
}

function read(kind: string, scale: string): DrawOff | null {
  const row = word('tap-draws', kind, scale);
  const units = word(SCALES, scale, 'table');
  const flows = flowTable(scale);
  if (row.is !== 'known' || units.is !== 'known' || flows === null) return null;
  const [flow, least, count] = [
    figure(flows, row.word, 'flow'),
    figure(flows, row.word, 'least'),
    figure(units.word, row.word, 'units'),
  ];
  if (flow.is !== 'known' || least.is !== 'known') return null;
  const title = table(units.word).rows.find((r) => r.key === row.word)?.title ?? row.word;
  return { scale, draw: row.word, title, units: count.is === 'known' ? quantityOf(count) : null, flow, least };
}

const found = new Map<string, DrawOff | null>();

/** What a scale says of a kind of point with taps; null for a kind that is no tap, or that it does not list. */
export function drawOff(kind: string, scale: string): DrawOff | null {
  const key = `${scale}|${kind}`;
  const known = found.get(key);
  if (known !== undefined) return known;
  const made = read(kind, scale);
  found.set(key, made);
  return made;
}

const TAPS: ReadonlySet<string> = new Set(
  tables()
    .find((t) => t.id === 'tap-draws')
    ?.rows.map((r) => r.key) ?? [],
);
export const isTap = (kind: string): boolean => TAPS.has(kind);

/** Pressure a kind of tap needs, kPa; null where no page says. */
export function needOf(kind: string): Known | null {
  const row = word('tap-draws', kind, 'need');
  const need = row.is === 'known' ? figure('water-pressure-needs', row.word, 'kPa') : null;
  return need?.is === 'known' ? need : null;
}

import { figure, word } from '../../reference/figure.ts';
import { table, tables } from '../../reference/tables.ts';
import { addQuantities, type Quantity } from '../../report/quantity.ts';
import type { Working, WorkingStep } from '../../report/working.ts';
import { cannot, citesOf, figures, quantityOf, step } from '../gas/said.ts';

const SCALES = 'loading-units-scales';

/** Names of the scales there are, each of which counts for itself: "BS 6700", "EN 806-3". */
export const loadingScales = (): string[] => table(SCALES).rows.map((r) => r.key);

/** Draw-offs the scale lists, as keys; none for a scale that is not here. */
export function drawOffsOf(scale: string): string[] {
  const of = word(SCALES, scale, 'table');
  return of.is === 'known' ? table(of.word).rows.map((r) => r.key) : [];
}

/** So many draw-offs of one kind, counted on one scale. */
export interface Drawn {
  readonly scale: string;
  readonly draw: string;
  readonly count: number;
}

const title = 'Loading units';
const times = (q: Quantity, n: number): Quantity => ({
  ...q,
  lo: q.lo * n,
  hi: q.hi === null ? null : q.hi * n,
  value: q.value === null ? null : q.value * n,
});
const isCount = (n: number): boolean => Number.isInteger(n) && n >= 0;

/**
 * Units of draw-offs, added. The result is in units; null where nothing is told, a draw-off has no units on the scale,
 * a count is no whole number, or two scales were mixed: units of one say nothing on the other.
 */
export function loadingUnits(drawn: readonly Drawn[]): Working {
  const [first] = drawn;
  if (!first) return cannot(title, ['any draw-off']);
  const scales = [...new Set(drawn.map((d) => d.scale))].sort();
  if (scales.length > 1) return cannot(title, [`one scale: units of ${scales.join(' and of ')} are never added`]);
  const of = word(SCALES, first.scale, 'table');
  if (of.is !== 'known' || !tables().some((t) => t.id === of.word)) return cannot(title, [`a scale ${first.scale}`]);
  const name = (draw: string): string => table(of.word).rows.find((r) => r.key === draw)?.title ?? draw;
  const missing: string[] = [];
  const parts: Quantity[] = [];
  const notes: string[] = [];
  const steps = drawn.map(({ draw, count }): WorkingStep => {
    const found = figure(of.word, draw, 'units');
    const whole = isCount(count);
    if (!whole) missing.push(`a whole number of ${name(draw)}`);
    if (found.is !== 'known') {
      missing.push(`units of ${name(draw)} on the ${first.scale} scale`);
      return step(name(draw), `${count} of it`, null);
    }
    const each = quantityOf(found);
    const all = times(each, whole ? count : 0);
    parts.push(all);
    if (found.note !== null && count > 0) notes.push(`${name(draw)}: ${found.note}`);
    return step(name(draw), `${count} x ${figures(each)}`, whole ? all : null, citesOf(found.cite));
  });
  if (missing.length > 0) return cannot(title, missing, steps);
  return { title: `${title}, ${first.scale} scale`, steps, result: addQuantities(parts), missing, assumed: notes };
}

/** Flow in l/s of so many units of one scale, read only between the points that are known of its graph. */
export function designFlow(scale: string, units: Quantity): Working {
  const name = `Design flow of loading units, ${scale} scale`;
  const of = word(SCALES, scale, 'flow');
  if (of.is !== 'known') return cannot(name, [`a graph of flow by units of the ${scale} scale`]);
  const ends = [units.lo, units.hi].map((n) => (n === null ? undefined : figure(of.word, n, 'flow')));
  const [lo, hi] = ends;
  if (lo?.is !== 'known' || hi?.is !== 'known') {
    const { from, to } = table(of.word).rowAxis;
    return cannot(name, [`the graph of flow at ${figures(units)} units: it was read from ${from} to ${to} only`]);
  }
  const best = units.value === null ? null : figure(of.word, units.value, 'flow');
  const value = best?.is === 'known' ? best.lo : null;
  const result: Quantity = { ...quantityOf(lo), hi: hi.hi, value };
  return {
    title: name,
    steps: [step('Design flow', 'straight between the points that are known', result, citesOf(lo.cite))],
    result,
    missing: [],
    assumed: [],
  };
}

import { addQuantities, between, type Quantity } from '../../report/quantity.ts';
import type { TallyFigure } from '../../report/tally.ts';
import { type Given, give } from '../given.ts';
import { drainDowns } from '../heating-system/drain-down.ts';
import { count, figureOf } from './figure-of.ts';
import { pointPairs } from './pairs.ts';

const GROUP = 'Work';

function pointRows(before: Given, after: Given): TallyFigure[] {
  const { pairs, gone, fresh } = pointPairs(before, after);
  const row = (id: string, label: string, order: number, ids: readonly string[]): TallyFigure =>
    figureOf({ id, group: GROUP, label, order, figure: count(ids.length), chapter: 'things', ids });
  return [
    row(
      'work/moved',
      'Appliances and points moved',
      0,
      pairs.map((p) => p.to),
    ),
    row('work/fresh', 'Points put in besides', 1, fresh),
    row('work/gone', 'Points taken out besides', 2, gone),
  ];
}

/** Pipe that stood before and does not stand after. */
function strippedRow(before: Given, after: Given): TallyFigure {
  const out = [...before.network.edges.values()].filter((e) => !after.network.edges.has(e.id));
  const lo = out.reduce((sum, e) => sum + e.lengthMm.lo, 0) / 1000;
  const open = out.some((e) => e.lengthMm.hi === null);
  const hi = out.reduce((sum, e) => sum + (e.lengthMm.hi ?? 0), 0) / 1000;
  const legs = out.filter((e) => e.kind === 'leg').length;
  return figureOf({
    id: 'work/stripped',
    group: GROUP,
    label: 'Old pipe taken out',
    order: 10,
    figure: between(lo, open ? null : hi, 'm', 1),
    say: out.length === 0 ? 'none' : `${out.length} ${out.length === 1 ? 'piece' : 'pieces'}, ${legs} in sight`,
    chapter: 'runs',
    ids: [...new Set(out.map((e) => e.run))].sort(),
  });
}

/** Heating that has to be emptied to join new pipe to it, and its radiators. */
function drainRows(after: Given): TallyFigure[] {
  const downs = drainDowns(after).filter((d) => d.content.system.edges.some((e) => e.state === 'new'));
  if (downs.length === 0) return [];
  const litres = downs.map((d) => d.runsOut);
  const known = litres.filter((q): q is Quantity => q !== null);
  const points = new Set(
    downs.flatMap((d) => [...d.content.system.vertices.values()].flatMap((v) => (v.point === null ? [] : [v.point]))),
  );
  const radiators = [...points].filter((id) => after.plan.points[id]?.kind === 'radiator').sort();
  const unseen = downs.some((d) => d.unseen);
  return [
    figureOf({
      id: 'work/drained',
      group: GROUP,
      label: 'Heating water run out',
      order: 40,
      figure: known.length === litres.length && known.length > 0 ? addQuantities(known) : null,
      say: known.length === litres.length ? '' : "can't tell: nothing known drains it",
      state: known.length === litres.length ? 'none' : 'cantTell',
      chapter: 'section:heating-water',
    }),
    figureOf({
      id: 'work/radiators',
      group: GROUP,
      label: 'Radiators drained',
      order: 41,
      figure: !unseen ? count(radiators.length) : radiators.length > 0 ? between(radiators.length, null, '', 0) : null,
      say: !unseen
        ? ''
        : radiators.length > 0
          ? 'and those on pipe nobody saw'
          : "can't tell: they hang on pipe nobody saw",
      state: unseen && radiators.length === 0 ? 'cantTell' : 'none',
      chapter: 'section:heating-water',
      ids: radiators,
    }),
  ];
}

/** Counts of what has to be done besides laying pipe. Nothing before the work. */
export function workFigures(given: Given): TallyFigure[] {
  if (given.case.when === 'before') return [];
  const before = give(given.plan, { option: given.case.option, when: 'before' });
  return [...pointRows(before, given), strippedRow(before, given), ...drainRows(given)];
}

import { services } from '../../catalogue/services.ts';
import type { Edge } from '../../network/network.ts';
import { between, exact, type Quantity } from '../../report/quantity.ts';
import type { Report } from '../../report/report.ts';
import type { TallyFigure } from '../../report/tally.ts';
import type { Given } from '../given.ts';
import { sayService } from '../say-names.ts';
import { figureOf } from './figure-of.ts';

const GROUP = 'Pipe';

/** Length of some pipes with its doubt, m. */
function lengthM(edges: readonly Edge[]): Quantity {
  const lo = edges.reduce((sum, e) => sum + e.lengthMm.lo, 0) / 1000;
  if (edges.some((e) => e.lengthMm.hi === null)) return between(lo, null, 'm', 1);
  return between(lo, edges.reduce((sum, e) => sum + (e.lengthMm.hi ?? 0), 0) / 1000, 'm', 1);
}

const runsOf = (edges: readonly Edge[]): string[] => [...new Set(edges.map((e) => e.run))].sort();

function metresRows(given: Given): TallyFigure[] {
  const fresh = [...given.network.edges.values()].filter((e) => e.state === 'new' && e.circuit !== 'flue');
  const used = new Set(
    Object.values(given.plan.runs).flatMap((r) => (r.option !== null && r.service !== 'flue' ? [r.service] : [])),
  );
  const all = figureOf({
    id: 'metres',
    group: GROUP,
    label: 'New pipe',
    order: 0,
    figure: lengthM(fresh),
    chapter: 'section:runs',
    ids: runsOf(fresh),
  });
  const each = [...used].map((service) => {
    const edges = fresh.filter((e) => e.service === service);
    return figureOf({
      id: `metres/${service}`,
      group: GROUP,
      label: `New pipe, ${sayService(service).toLowerCase()}`,
      order: services.get(service)?.order ?? 999,
      figure: lengthM(edges),
      say: edges.length === 0 ? 'none' : '',
      chapter: 'section:runs',
      ids: runsOf(edges),
    });
  });
  return [all, ...each];
}

/** Ends that take another: every joint has one. A piece the drawing does not decide has an unknown number of them. */
function jointRows(report: Report): TallyFigure[] {
  const made = report.pieces.filter((p) => p.family === 'fitting' || p.family === 'valve');
  const open = made.filter((p) => p.unresolved !== null).length;
  const joints = made.reduce((sum, p) => sum + p.ends.filter((e) => e.form !== 'spigot').length, 0);
  const say = open === 0 ? '' : `${open} not decided`;
  const figure = (n: number): Quantity => (open === 0 ? exact(n, '', 0) : between(n, null, '', 0));
  return [
    figureOf({
      id: 'joints',
      group: GROUP,
      label: 'Joints in fittings and valves',
      order: 1000,
      figure: figure(joints),
      say,
      chapter: 'list',
    }),
    figureOf({
      id: 'fittings',
      group: GROUP,
      label: 'Fittings and valves',
      order: 1001,
      figure: exact(made.length, '', 0),
      chapter: 'list',
    }),
  ];
}

/** New pipe by service, and what is joined in it. Nothing before the work. */
export function pipeFigures(given: Given, report: Report): TallyFigure[] {
  return given.case.when === 'before' ? [] : [...metresRows(given), ...jointRows(report)];
}

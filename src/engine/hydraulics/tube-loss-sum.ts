import { figure } from '../../reference/figure.ts';
import { table } from '../../reference/tables.ts';
import type { TubeSize } from '../../reference/tubes.ts';
import { addQuantities, between, exact, leastSure, type Quantity } from '../../report/quantity.ts';
import type { Cite, Working, WorkingStep } from '../../report/working.ts';
import { times } from '../gas/interval.ts';
import { cannot, citesOf, figures, step } from '../gas/said.ts';
import { FITTING_TABLES, type FittingBasis, fittingMetres } from './fitting-loss.ts';
import { roughnessOf, tubeLoss } from './tube-loss.ts';
import { waterAt } from './water.ts';

export interface TubeLossAsk {
  readonly tube: TubeSize;
  /** litres a minute. */
  readonly flow: number;
  readonly tC: number;
  readonly lengthM: number;
  /** Which table of fittings goes with this water. */
  readonly basis: FittingBasis;
  /** How many of each fitting, by its key in that table. */
  readonly fittings: readonly { readonly key: string; readonly count: number }[];
}

const title = 'Loss of one water pipe';
const tableCite = (id: string): Cite => {
  const { source, clause } = table(id);
  return { source, clause, table: id };
};

const multiplied = (q: Quantity, n: number): Quantity => ({
  ...q,
  lo: q.lo * n,
  hi: q.hi === null ? null : q.hi * n,
  value: q.value === null ? null : q.value * n,
});

/** Fittings as metres of straight tube; what the table lacks is named. */
function fittingSteps({ tube, basis, fittings }: TubeLossAsk, boreMm: number) {
  const missing: string[] = [];
  const id = FITTING_TABLES[basis];
  const name = (key: string): string => table(id).columns.find((c) => c.key === key)?.title ?? key;
  const steps = fittings
    .filter((f) => f.count > 0)
    .flatMap(({ key, count }): WorkingStep[] => {
      const each = fittingMetres(basis, key, boreMm);
      if (each === null) {
        missing.push(`what ${name(key)} of ${tube.label} loses in the ${basis} table`);
        return [];
      }
      const how = `${count} x ${figures(each, 2)} m of straight tube`;
      return [step(name(key), how, multiplied({ ...each, digits: 2 }, count), [tableCite(id)])];
    });
  return { steps, missing };
}

const SAID = {
  laminar: 'laminar',
  transitional: 'between laminar and turbulent',
  turbulent: 'turbulent',
} as const;

/**
 * Velocity, loss of a metre, regime, and loss in kPa of one pipe with its fittings. Null without a bore or a roughness,
 * for water that is not liquid, and for a fitting the table lacks.
 */
export function tubeLossSum(ask: TubeLossAsk): Working {
  const { tube, flow, tC, lengthM } = ask;
  const { boreMm } = tube;
  const rough = roughnessOf(tube.kind);
  const water = waterAt(tC);
  if (boreMm === null) return cannot(title, [`the bore of ${tube.kind} ${tube.label}`]);
  if (rough === null || rough.hi === null) return cannot(title, [`the roughness of ${tube.kind}`]);
  if (water === null) return cannot(title, [`liquid water at ${tC} °C`]);
  if (!(flow > 0) || !(lengthM >= 0)) return cannot(title, [flow > 0 ? 'a length' : 'a flow']);
  const flowKgPerS = (flow / 60 / 1000) * water.densityKgM3;
  const of = (roughnessMm: number) => tubeLoss({ flowKgPerS, boreMm, roughnessMm, tC });
  const [lo, hi, usual] = [of(rough.lo), of(rough.hi), of(rough.value ?? rough.lo)];
  if (!lo || !hi || !usual) return cannot(title, ['a flow that makes sense']);
  const sure = leastSure(tube.sureness, rough.sureness, table('friction-churchill').sureness);
  const value = rough.value === null ? null : usual.paPerM;
  const perM = between(lo.paPerM, hi.paPerM, 'Pa/m', 0, sure, value);
  const roughFigure = figure('roughness', tube.kind);
  const cites = citesOf(
    tableCite('friction-churchill'),
    tableCite('water-terms'),
    roughFigure.is === 'known' ? roughFigure.cite : null,
  );
  const { steps: charged, missing } = fittingSteps(ask, boreMm);
  const length = addQuantities([exact(lengthM, 'm', 2, 'page'), ...charged.flatMap((s) => s.result ?? [])]);
  const result = multiplied(times(length, perM, 'kPa', 2), 1 / 1000);
  const steps = [
    step(
      'Velocity',
      `${flow} litres a minute in a bore of ${boreMm.toFixed(1)} mm`,
      exact(usual.velocityMPerS, 'm/s', 2, tube.sureness),
      citesOf(tube.cite),
    ),
    step('Reynolds number', `water of ${tC} °C: ${SAID[usual.regime]}`, exact(usual.re, '', 0), [
      tableCite('flow-regimes'),
    ]),
    step('Loss of a metre', `roughness ${figures(rough, 4)} mm`, perM, cites),
    ...charged,
  ];
  if (missing.length > 0) return cannot(title, missing, steps);
  return {
    title,
    steps: [
      ...steps,
      ...(charged.length === 0
        ? []
        : [step('Length with its fittings', `${lengthM} m and what they stand for`, length)]),
      step('Loss', `${figures(length)} m x ${figures(perM)} Pa/m`, result),
    ],
    result,
    missing: [],
    assumed: [
      ...(usual.regime === 'transitional'
        ? ['flow between laminar and turbulent: no law of friction is sure there']
        : []),
      ...(ask.fittings.some((f) => f.count > 0) ? [] : ['no fittings were told, so none are counted']),
    ],
  };
}

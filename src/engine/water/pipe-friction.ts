import { constant } from '../../reference/figure.ts';
import { table } from '../../reference/tables.ts';
import { between, exact, leastSure, type Quantity, type Sureness } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import { cannot, citesOf, step } from '../gas/said.ts';

const TABLE = 'water-friction';
const law = (column: string): number => constant(TABLE, 'smooth', column);

/** What is asked of the friction of cold water in one pipe. */
export interface FrictionAsk {
  readonly flowLps: number;
  /** Bore in mm, and how sure it is; null where the size has none. */
  readonly boreMm: number | null;
  readonly boreSureness: Sureness;
}

/** Mean velocity in m/s of a flow (l/s) in a bore (mm). */
export const velocity = (flowLps: number, boreMm: number): number =>
  flowLps / 1000 / ((Math.PI / 4) * (boreMm / 1000) ** 2);

/** kPa a metre at a velocity (m/s) in a bore (mm): v = a d^p i^q, turned round for i in m of head a m. */
const slopeKpa = (v: number, boreMm: number): number =>
  (v / (law('factor') * boreMm ** law('borePower'))) ** (1 / law('slopePower')) * law('kPaPerMHead');

/**
 * Loss in kPa a metre, with the error of the formula. Null outside the bores and velocities the formula was held to,
 * without a bore, or at a flow that is none.
 */
export function pipeFriction({ flowLps, boreMm, boreSureness }: FrictionAsk): Working {
  const title = 'Friction of cold water';
  if (boreMm === null || !(boreMm > 0)) return cannot(title, ['a bore of the tube']);
  if (!(flowLps > 0) || !Number.isFinite(flowLps)) return cannot(title, ['a flow']);
  const v = velocity(flowLps, boreMm);
  const t = table(TABLE);
  const cites = citesOf({ source: t.source, clause: t.clause, table: t.id });
  const how = `${flowLps} l/s in a bore of ${boreMm.toFixed(1)} mm`;
  const steps = [step('Velocity', how, exact(v, 'm/s', 2, boreSureness), cites)];
  const [boreFrom, boreTo, vFrom, vTo] = ['boreFrom', 'boreTo', 'velocityFrom', 'velocityTo'].map(law) as [
    number,
    number,
    number,
    number,
  ];
  if (boreMm < boreFrom || boreMm > boreTo)
    return cannot(title, [`friction in a bore outside ${boreFrom} to ${boreTo} mm`], steps);
  if (v < vFrom || v > vTo)
    return cannot(title, [`friction at ${v.toFixed(2)} m/s: the formula is held to ${vFrom} to ${vTo} m/s`], steps);
  const loss = slopeKpa(v, boreMm);
  const sure = leastSure(t.sureness, boreSureness);
  const result: Quantity = between(
    loss * (1 + (t.methodErrorLo ?? 0)),
    loss * (1 + (t.methodErrorHi ?? 0)),
    'kPa/m',
    2,
    sure,
    loss,
  );
  return {
    title,
    steps: [...steps, step('Loss of a metre', 'smooth-pipe formula, with its error', result, cites)],
    result,
    missing: [],
    assumed: ['cold water in smooth tube'],
  };
}

import { NEW_PIPE, WHOLE } from '../../catalogue/test-kinds.ts';
import { figure } from '../../reference/figure.ts';
import { between, type Quantity, sayFigures } from '../../report/quantity.ts';
import type { Row } from '../../report/section.ts';
import type { Cite } from '../../report/working.ts';
import type { GasKind } from '../gas/heat-input.ts';
import { citesOf, quantityOf } from '../gas/said.ts';
import type { Given } from '../given.ts';
import { allowedDrop, perceptible } from './allowed-drop.ts';
import { editionsFrom, type TightnessEdition, tightnessEditions } from './edition-by-date.ts';
import type { GasInstallation } from './gas-installation.ts';
import { due, fact, labelOf, note, worked } from './row-makers.ts';

const MONTHS = 'January February March April May June July August September October November December'.split(' ');

/** "30 September 2026" of "2026-09-30", "March 2026" of "2026-03". */
function sayDay(iso: string): string {
  const [year = '', month = '', day] = iso.split('-');
  return [day === undefined ? '' : String(Number(day)), MONTHS[Number(month) - 1] ?? month, year].join(' ').trim();
}

const sayReach = ({ from, to }: TightnessEdition): string =>
  [from === null ? '' : `from ${sayDay(from)}`, to === null ? '' : `until ${sayDay(to)}`]
    .filter((t) => t !== '')
    .join(' ');

function cell(e: TightnessEdition, gas: GasKind, column: string): Quantity | null {
  const found = figure(e.table, gas, column);
  return found.is === 'known' ? quantityOf(found) : null;
}

function span(e: TightnessEdition, gas: GasKind, least: string, most: string): Quantity | null {
  const [lo, hi] = [cell(e, gas, least), cell(e, gas, most)];
  return lo && hi ? between(lo.lo, hi.lo, lo.unit, lo.digits, lo.sureness) : lo;
}

/** The steps of the test itself, the same for every part of the pipework. */
function stepsOf(e: TightnessEdition, gas: GasKind): Row[] {
  const row = (key: string, q: Quantity | null, say = ''): Row =>
    fact(labelOf('tightness', key, e.id), q, q ? say : `take it from edition ${e.id}`);
  const least = figure('gas-tightness-least-4', gas);
  const low = e.id === '4' && least.is === 'known' ? `${least.lo} mbar at least where that cannot be reached` : '';
  return [
    row('letByMbar', span(e, gas, 'letByLeast', 'letByMost')),
    row('letByMinutes', cell(e, gas, 'letByMinutes')),
    fact(labelOf('tightness', 'letByRiseMbar', e.id), null, 'none that can be perceived'),
    row('testMbar', span(e, gas, 'testLeast', 'testMost'), low),
    row('settleMinutes', cell(e, gas, 'settleMinutes')),
    row('testMinutes', cell(e, gas, 'testMinutes')),
  ];
}

function noFall(e: TightnessEdition): Row {
  const { waterGauge, electronic } = perceptible();
  const counts = `${sayFigures(waterGauge)} on a water gauge and ${sayFigures(electronic)} on an electronic one count`;
  return fact(labelOf('tightness', 'dropMbar', e.id), null, `none that can be perceived; ${counts}, unverified`);
}

/** What a tightness test of this gas pipe goes by: editions, steps, and the drop of the new part and of the whole. */
export function tightnessRows(given: Given, pipe: GasInstallation): Row[] {
  const { gas, surveyDate } = given.plan.basis;
  const editions = editionsFrom(surveyDate);
  const cites: Cite[] = citesOf(
    ...editions.map((e) => ({ source: e.table.source, clause: e.table.clause, table: e.table.id })),
  );
  const rows: Row[] = [
    due('tightness', ''),
    ...tightnessEditions().map((e) => fact(`Edition ${e.id}`, null, sayReach(e))),
    volumeRow(pipe),
    ...(pipe.assumedM3 ? [fact('Of it assumed', pipe.assumedM3, 'pipe whose length nobody saw')] : []),
    ...editions.flatMap((e) => stepsOf(e, gas)),
    note(
      `The day of the test decides the edition. Either may be worked to until ${sayDay(tightnessEditions()[0]?.to ?? '')}, only the newer one after it.`,
      citesOf({ source: 'gas-register-update-133', clause: 'dates of editions 3 and 4' }, ...cites),
    ),
  ];
  if (pipe.anyNew) rows.push(due('tightness', NEW_PIPE), ...editions.map(noFall));
  rows.push(due('tightness', WHOLE));
  for (const e of editions) {
    const drop = allowedDrop({ edition: e.id, gas, meter: pipe.meter, largestMm: pipe.largestMm });
    rows.push(worked(labelOf('tightness', 'dropMbar', e.id), drop));
  }
  return rows;
}

function volumeRow(pipe: GasInstallation): Row {
  const label = 'Installation volume';
  if (pipe.volumeM3) return fact(label, pipe.volumeM3, 'by the table, with the meter and a tenth for fittings');
  return fact(label, null, `can't tell: ${pipe.missing.join(', ')}`);
}

import { readingOf } from '../../catalogue/reading-kinds.ts';
import { againstLeast, exact, type Quantity, sayFigures, sayQuantity } from '../../report/quantity.ts';
import type { Row } from '../../report/section.ts';
import { citesOf } from '../gas/said.ts';
import type { GasAppliance } from '../gas-system/solve-gas.ts';
import type { Given } from '../given.ts';
import { editionsFrom } from './edition-by-date.ts';
import type { GasInstallation } from './gas-installation.ts';
import { onTheMeter, readOverSeconds } from './gas-rate.ts';
import { litAbove, purgeSeconds, purgeVolume } from './purge.ts';
import { due, fact, labelOf, note, worked } from './row-makers.ts';

/** Volume and time of the purge at each appliance. */
export function purgeRows(given: Given, pipe: GasInstallation, appliances: readonly GasAppliance[]): Row[] {
  const editions = editionsFrom(given.plan.basis.surveyDate);
  const rows = appliances.flatMap((a): Row[] => [
    due('purge', a.name, [a.point]),
    ...editions.flatMap((e): Row[] => {
      const volume = purgeVolume({ edition: e.id, ...pipe });
      const seconds = volume.result && a.flow ? purgeSeconds(volume.result, a.flow) : null;
      return [
        worked(labelOf('purge', 'volumeM3', e.id), volume),
        ...(seconds ? [fact(labelOf('purge', 'seconds', e.id), seconds, 'at its full rate')] : []),
      ];
    }),
  ]);
  const lit = litAbove();
  const { volumeM3 } = pipe;
  const mayBe = lit.is === 'known' && volumeM3 !== null && (volumeM3.hi === null || volumeM3.hi > lit.lo);
  if (rows.length > 0 && mayBe)
    rows.push(
      note(
        `The installation is over ${lit.lo} m3, or may be: purged gas is lit at an open burner as soon as possible.`,
        citesOf(lit.cite),
      ),
    );
  return rows;
}

/** Working pressure at the meter: of the test after the work where there is one, else as found. */
function workingAtMeter(given: Given): { readonly mbar: Quantity; readonly how: string } | null {
  const tests = given.plan.job.tests ?? [];
  const after = tests.findLast((t) => t.kind === 'gas-pressure' && typeof t.figures.workingMbar === 'number');
  const value = after?.figures.workingMbar;
  if (typeof value === 'number') return { mbar: exact(value, 'mbar', 1, 'page'), how: 'after the work' };
  const found = readingOf(given.plan, 'gas-working');
  return found ? { mbar: exact(found.value, 'mbar', 1, 'page'), how: 'as found' } : null;
}

function inletOf(a: GasAppliance, meter: Quantity): Quantity | null {
  const { drop } = a.drop;
  if (drop.hi === null) return null;
  const value = meter.value === null || drop.value === null ? null : meter.value - drop.value;
  return { ...drop, lo: meter.lo - drop.hi, hi: (meter.hi ?? meter.lo) - drop.lo, value, digits: 1 };
}

function leastRow(given: Given, a: GasAppliance, inlet: Quantity): Row[] {
  const least = given.plan.points[a.point]?.fields.leastInletMbar;
  if (typeof least !== 'number') return [];
  const wanted = exact(least, 'mbar', 1, 'page');
  const say = `expected ${sayFigures(inlet)}, wanted at least ${sayQuantity(wanted)} by its sheet`;
  return [{ kind: 'verdict', label: `Inlet of ${a.name}`, state: againstLeast(inlet, least), say, ids: [a.point] }];
}

/** What is expected at each inlet with everything burning: at the meter, less what the pipe loses. */
export function pressureRows(given: Given, appliances: readonly GasAppliance[]): Row[] {
  const at = workingAtMeter(given);
  const label = labelOf('gas-pressure', 'inletMbar');
  if (!at)
    return [due('gas-pressure', ''), fact(label, null, "can't tell: the working pressure at the meter was not read")];
  return appliances.flatMap((a): Row[] => {
    const inlet = inletOf(a, at.mbar);
    if (!inlet)
      return [due('gas-pressure', a.name, [a.point]), fact(label, null, "can't tell: its gas drop is not known")];
    const how = `${sayFigures(at.mbar)} at the meter ${at.how}, less ${sayFigures(a.drop.drop)}, everything burning`;
    return [
      due('gas-pressure', a.name, [a.point]),
      { kind: 'sum', label, how, result: inlet, cites: given.gas.cites, ids: [a.point] },
      ...leastRow(given, a, inlet),
    ];
  });
}

/** Gas rate of each appliance at its full input, and what a meter does at it. */
export function rateRows(appliances: readonly GasAppliance[]): Row[] {
  return appliances.flatMap((a): Row[] => {
    const meter = a.flow && onTheMeter(a.flow);
    if (!a.flow || !meter) return [];
    return [
      due('gas-rate', a.name, [a.point]),
      fact(
        labelOf('gas-rate', 'rateM3PerH'),
        a.flow,
        a.assumedClass ? 'of its class: its plate was not read' : 'at its full input',
      ),
      fact(labelOf('gas-rate', 'seconds'), meter.dialSeconds, 'for one cubic foot'),
      fact(labelOf('gas-rate', 'volumeM3'), meter.passedM3, `in ${readOverSeconds()} s`),
    ];
  });
}

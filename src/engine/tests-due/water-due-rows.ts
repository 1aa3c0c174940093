import { readingOf } from '../../catalogue/reading-kinds.ts';
import { figure } from '../../reference/figure.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import type { Row } from '../../report/section.ts';
import { condensateDrains } from '../drainage/condensate-drains.ts';
import { isNew } from '../drainage/drains.ts';
import { condensateFalls } from '../drainage/falls-wanted.ts';
import { citesOf, quantityOf } from '../gas/said.ts';
import type { Given } from '../given.ts';
import { sayPoint } from '../say-names.ts';
import { due, fact, labelOf, note, worked } from './row-makers.ts';
import { metalMinutes, waterTestPressure } from './water-test.ts';

const HEATING = new Set(['heatingFlow', 'heatingReturn']);
const HOT_AND_COLD = new Set(['cold', 'balancedCold', 'hot', 'preheated']);
/** Kinds nobody has read are neither: what is asked of them is asked when they are seen. */
const METAL = new Set(['copper', 'copper-imperial', 'microbore', 'steel', 'csst', 'lead']);
const PLASTIC = new Set(['plastic', 'old-plastic', 'pe']);

function newTubes(given: Given, services: ReadonlySet<string>): ReadonlySet<string> {
  const kinds = new Set<string>();
  for (const e of given.network.edges.values())
    if (e.state === 'new' && services.has(e.service)) kinds.add(e.tube.kind);
  return kinds;
}

function partRows(part: string, tubes: ReadonlySet<string>, working: Quantity | null): Row[] {
  if (tubes.size === 0) return [];
  const minutes = metalMinutes();
  const kinds = [...tubes];
  const time: Row[] = [];
  const label = labelOf('water', 'minutes');
  if (kinds.some((k) => METAL.has(k)) && minutes.is === 'known')
    time.push(fact(label, quantityOf(minutes), 'metal pipe'));
  if (kinds.some((k) => PLASTIC.has(k))) time.push(fact(label, null, 'plastic pipe: by test A or test B'));
  const test = waterTestPressure(working);
  const times = figure('water-test', 'metal', 'times');
  const pressure =
    test.result || times.is !== 'known'
      ? worked(labelOf('water', 'testBar'), test)
      : fact(
          labelOf('water', 'testBar'),
          null,
          `${times.lo} times the highest pressure it works at, which is not told`,
        );
  return [due('water', part), pressure, ...time, fact(labelOf('water', 'dropBar'), null, 'none, and no leak')];
}

/** What new water pipe is tested at, before a floor is closed over it. */
export function waterRows(given: Given): Row[] {
  const mains = readingOf(given.plan, 'mains-standing');
  const rows = [
    ...partRows('Heating', newTubes(given, HEATING), null),
    ...partRows('Hot and cold', newTubes(given, HOT_AND_COLD), mains ? exact(mains.value, 'bar', 1, 'page') : null),
  ];
  if (rows.length > 0)
    rows.push(
      note(
        'Tested before it is covered. Gauges and valves of the system may bear less: isolate them.',
        citesOf(metalMinutes().cite),
      ),
    );
  return rows;
}

/** What a boiler is set going at, as far as the job tells it. */
export function commissioningRows(given: Given): Row[] {
  const { basis, points } = given.plan;
  const fill = figure('heating-cold-fill', 'usual');
  const told = (key: string, value: number | null | undefined, unit: string): Row[] =>
    value == null
      ? []
      : [fact(labelOf('commissioning', key), exact(value, unit, 0, 'page'), 'by the basis of the job')];
  return Object.values(points).flatMap((p): Row[] => {
    if (p.kind !== 'boiler' || !given.network.alive.has('points', p.id)) return [];
    const hot = p.fields.hotLPerMin;
    return [
      due('commissioning', sayPoint(given.plan, p.id), [p.id]),
      ...told('flowC', basis.designFlowC, '°C'),
      ...told('returnC', basis.designReturnC, '°C'),
      ...(fill.is === 'known'
        ? [fact(labelOf('commissioning', 'systemBar'), quantityOf(fill), 'usual in a house of two floors')]
        : []),
      ...(typeof hot === 'number'
        ? [fact(labelOf('commissioning', 'hotLPerMin'), exact(hot, 'litres a minute', 1, 'page'), 'by its sheet')]
        : []),
      ...told('coldC', basis.coldC, '°C'),
      ...told('hotC', basis.hotC, '°C'),
      fact(labelOf('commissioning', 'ratioHigh'), null, "as the boiler's instructions say"),
      fact(labelOf('commissioning', 'ratioLow'), null, "as the boiler's instructions say"),
    ];
  });
}

/** Fall and a pouring test of new condensate pipe. */
export function condensateDueRows(given: Given): Row[] {
  if (!condensateDrains(given).some((d) => isNew(d) && !d.pumped)) return [];
  const { wanted } = condensateFalls(given.plan.basis.editions);
  const fall = wanted.is === 'known' ? fact(labelOf('condensate', 'fallMmPerM'), quantityOf(wanted), 'at least') : null;
  return [
    due('condensate', ''),
    ...(fall ? [fall] : []),
    fact(labelOf('condensate', 'waterLitres'), null, 'runs away, none stands, and the trap stays full'),
  ];
}

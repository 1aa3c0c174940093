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
import { type PressurePart, pressureParts, THE_MAIN } from './working-pressure.ts';

const HEATING = new Set(['heatingFlow', 'heatingReturn']);
const HOT_AND_COLD_PART = 'Hot and cold';
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

function partRows(part: string, tubes: ReadonlySet<string>, working: Quantity | null, by = ''): Row[] {
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
      ? worked(labelOf('water', 'testBar'), test, `${test.steps.at(-1)?.how ?? ''}${by}`)
      : fact(
          labelOf('water', 'testBar'),
          null,
          `${times.lo} times the highest pressure it works at, which is not told`,
        );
  return [due('water', part), pressure, ...time, fact(labelOf('water', 'dropBar'), null, 'none, and no leak')];
}

/** Pipe of one pressure needs no other name than what it carries; of several each says what sets its own. */
function hotAndColdRows({ bar, by, tubes }: PressurePart, alone: boolean): Row[] {
  const behind = by === THE_MAIN ? `from ${by}` : `behind ${by}`;
  const part = alone ? HOT_AND_COLD_PART : `${HOT_AND_COLD_PART}, ${behind}`;
  const sets = by === THE_MAIN ? '' : `, as ${by} is set`;
  return partRows(part, tubes, bar === null ? null : exact(bar, 'bar', 1, 'page'), sets);
}

/** What new water pipe is tested at, before a floor is closed over it. */
export function waterRows(given: Given): Row[] {
  const parts = pressureParts(given, HOT_AND_COLD);
  const rows = [
    ...partRows('Heating', newTubes(given, HEATING), null),
    ...parts.flatMap((p) => hotAndColdRows(p, parts.length === 1)),
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

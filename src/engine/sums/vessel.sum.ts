import { figure } from '../../reference/figure.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import type { WorkingStep } from '../../report/working.ts';
import { defineSum } from '../define-sum.ts';
import { cannot, citesOf, figures, step } from '../gas/said.ts';
import { growth, pressures, vesselByTable, vesselSize } from '../heating/vessel.ts';

const TITLE = 'Expansion vessel of a heating system';
const cite = (row: string, column: string) => figure('heating-vessel', row, column).cite;
const usual = (row: string): number => {
  const found = figure('heating-water-basis', row, 'c');
  return found.is === 'known' ? found.lo : Number.NaN;
};

const number = (key: string, label: string, unit: string, required: boolean, least: number, most: number) => ({
  key,
  label,
  kind: 'number' as const,
  unit,
  required,
  least,
  most,
});

export default defineSum({
  id: 'vessel',
  title: TITLE,
  topic: 'heating',
  inputs: [
    number('litres', 'water in the system', 'litres', true, 0, 5000),
    number('staticM', 'highest water above the vessel', 'm', true, 0, 50),
    number('coldC', 'filled at', '°C', false, 0, 40),
    number('hotC', 'hottest', '°C', false, 20, 100),
    number('reliefBar', 'relief valve', 'bar', false, 1, 6),
    { key: 'by', label: 'vessel', kind: 'choice', unit: '', required: false, choices: ['growth', 'older table'] },
  ],
  work(values) {
    const of = (key: string, unit: string, digits: number): Quantity | null =>
      values[key] === undefined ? null : exact(Number(values[key]), unit, digits, 'page');
    const content = exact(Number(values.litres), 'litres', 0, 'page');
    const staticM = exact(Number(values.staticM), 'm', 1, 'page');
    const [coldC, hotC] = [Number(values.coldC ?? usual('filled')), Number(values.hotC ?? usual('hottest'))];
    const p = pressures(staticM, of('reliefBar', 'bar', 1));
    const grows = growth(coldC, hotC);
    const wanted = grows === null ? null : vesselSize(content, grows, p);
    // The table is for one valve: with another it has nothing to say.
    const usualRelief = figure('heating-vessel', 'relief', 'bar');
    const sameRelief =
      values.reliefBar === undefined || (usualRelief.is === 'known' && usualRelief.lo === Number(values.reliefBar));
    const table = sameRelief ? vesselByTable(content, p.chargeBar) : null;
    const steps: WorkingStep[] = [
      step('Water grows by', `from ${coldC} to ${hotC} °C`, grows === null ? null : exact(grows * 100, '%', 2)),
      step(
        'Charge',
        `${figures(staticM)} m of water and some over it`,
        p.chargeBar,
        citesOf(cite('overStatic', 'bar'), cite('leastCharge', 'bar'), cite('head', 'barPerM')),
      ),
      step('Cold fill', 'a little over the charge', p.fillBar, citesOf(cite('fillOver', 'bar'))),
      step('Highest working pressure', 'below the relief valve', p.endBar, citesOf(cite('belowRelief', 'bar'))),
      step('Vessel by growth', '(growth + reserve) x (end + 1) / (end - charge)', wanted, [cite('reserve', 'litres')]),
      step('Vessel by the older table', 'content times its factor', table, [figure('heating-vessel-older', '1').cite]),
    ];
    if (grows === null) return cannot(TITLE, ['how much water grows between these temperatures'], steps);
    const byTable = values.by === 'older table';
    const result = byTable ? table : wanted;
    if (result) return { title: TITLE, steps, result, missing: [], assumed: [] };
    const why = byTable ? 'a charge and a valve the older table has' : 'room between the charge and the relief valve';
    return cannot(TITLE, [why], steps);
  },
  example: {
    values: { litres: 100, staticM: 4, by: 'older table' },
    result: 10.9,
    within: 0.05,
    from: 'BS 7074 and BS 5449 as remembered: content times 0.109 at a charge of 1.0 bar with a valve of 3 bar; 4 m ask for 0.7, and the next row is read',
  },
});

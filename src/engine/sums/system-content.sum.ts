import { figure } from '../../reference/figure.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import type { Cite, WorkingStep } from '../../report/working.ts';
import { defineSum } from '../define-sum.ts';
import { citesOf, figures, step } from '../gas/said.ts';
import { type Build, contentCite, dose, litresByHeat, tubeLitres } from '../heating/content.ts';
import { total } from '../heating/spread.ts';

const TITLE = 'Water in a heating system';
const SIZES = ['8', '10', '15', '22', '28', '35', '42'] as const;
const BUILDS: Readonly<Record<string, Build>> = { panels: 'system', 'small content': 'low', 'not known': 'any' };

const number = (key: string, label: string, unit: string, most: number, required = false) => ({
  key,
  label,
  kind: 'number' as const,
  unit,
  required,
  least: 0,
  most,
});

export default defineSum({
  id: 'system-content',
  title: TITLE,
  topic: 'heating',
  inputs: [
    number('litres', 'water in boiler, radiators and coil', 'litres', 5000, true),
    ...SIZES.map((size) => number(`m${size}`, `metres of copper ${size}`, 'm', 1000)),
    number('kW', 'heating of a system nobody measured', 'kW', 200),
    {
      key: 'build',
      label: 'that system has',
      kind: 'choice',
      unit: '',
      required: false,
      choices: Object.keys(BUILDS),
    },
  ],
  work(values) {
    const steps: WorkingStep[] = [];
    const parts: Quantity[] = [];
    const add = (label: string, how: string, litres: Quantity, cite?: Cite): void => {
      parts.push(litres);
      steps.push(step(label, how, litres, citesOf(cite)));
    };
    add('Boiler, radiators, coil', 'as told', exact(Number(values.litres), 'litres', 1, 'page'));
    for (const size of SIZES) {
      const metres = values[`m${size}`];
      if (metres === undefined) continue;
      const m = exact(Number(metres), 'm', 1, 'page');
      const litres = tubeLitres('copper', size, m);
      if (litres) add(`Copper ${size}`, `${figures(m)} m of its bore`, litres);
    }
    if (values.kW !== undefined) {
      const build = BUILDS[String(values.build ?? 'not known')] ?? 'any';
      const litres = litresByHeat(exact(Number(values.kW), 'kW', 1, 'page'), build);
      add('The rest by its heat', `${values.kW} kW by what is usual for each`, litres, contentCite(build, 'perKw'));
    }
    const whole = total(parts, 'litres', 1);
    steps.push(step('Whole', 'all of it', whole));
    const treated = figure('heating-treatment', 'inhibitor', 'share').cite;
    steps.push(step('Inhibitor', 'a part of the whole; round up', dose(whole), citesOf(treated)));
    return { title: TITLE, steps, result: whole, missing: [], assumed: [] };
  },
  example: {
    values: { litres: 40, m15: 20, m22: 10, m28: 5 },
    result: 48.81,
    within: 0.1,
    from: 'a handbook of heating, table 6.4: 0.145, 0.321 and 0.540 litres a metre of 15, 22 and 28, so 40 + 2.90 + 3.21 + 2.70',
  },
});

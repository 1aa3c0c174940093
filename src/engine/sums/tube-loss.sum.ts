import { table } from '../../reference/tables.ts';
import type { SumInput } from '../../report/sum-card.ts';
import { defineSum } from '../define-sum.ts';
import { cannot } from '../gas/said.ts';
import { FITTING_TABLES } from '../hydraulics/fitting-loss.ts';
import { tubeLossSum } from '../hydraulics/tube-loss-sum.ts';
import { chosenTube, sayChosen, TUBE_INPUTS } from './tube-choice.ts';

const FITTINGS = new Map(Object.values(FITTING_TABLES).flatMap((id) => table(id).columns.map((c) => [c.key, c.title])));

export default defineSum({
  id: 'tube-loss',
  title: 'Loss of one water pipe',
  topic: 'pipework',
  inputs: [
    ...TUBE_INPUTS,
    { key: 'flow', label: 'flow', kind: 'number', unit: 'litres a minute', required: true, least: 0.01, most: 1000 },
    { key: 'tC', label: 'temperature of the water', kind: 'number', unit: '°C', required: true, least: 0, most: 100 },
    { key: 'm', label: 'measured length', kind: 'number', unit: 'm', required: true, least: 0, most: 1000 },
    {
      key: 'basis',
      label: 'table of fittings, heating if not told',
      kind: 'choice',
      unit: '',
      required: false,
      choices: Object.keys(FITTING_TABLES),
      words: { heating: 'heating, copper fittings', water: 'hot and cold' },
    },
    ...[...FITTINGS].map(
      ([key, title]): SumInput => ({
        key,
        label: `how many: ${title}`,
        kind: 'number',
        unit: '',
        required: false,
        least: 0,
        most: 100,
      }),
    ),
  ],
  work(values) {
    const tube = chosenTube(values);
    if (!tube) return cannot('Loss of one water pipe', [`a tube ${sayChosen(values)}`]);
    return tubeLossSum({
      tube,
      flow: Number(values.flow),
      tC: Number(values.tC),
      lengthM: Number(values.m),
      basis: values.basis === 'water' ? 'water' : 'heating',
      fittings: [...FITTINGS.keys()].map((key) => ({ key, count: Number(values[key] ?? 0) })),
    });
  },
  example: {
    values: { size: '28', flow: 29.42, tC: 75, m: 10 },
    result: 3,
    within: 0.15,
    from: 'building services engineering textbook, table 4.3: 28 carries 0.478 kg/s (29.42 litres a minute at 75 °C) at 300 Pa/m; held to 5 in a hundred',
  },
});

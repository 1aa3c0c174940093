import { tube, tubeKinds } from '../../reference/tubes.ts';
import { defineSum, type SumValues } from '../define-sum.ts';
import { flowSum } from '../heating/flow-sum.ts';
import { tempsOf } from '../heating-system/design-temps.ts';

const degrees = (key: string, label: string) => ({
  key,
  label,
  kind: 'number' as const,
  unit: '°C',
  required: false,
  least: 0,
  most: 105,
});

const told = (values: SumValues, key: string): number | null =>
  values[key] === undefined ? null : Number(values[key]);

export default defineSum({
  id: 'heating-flow',
  title: 'Heating flow of a heat',
  topic: 'heating',
  inputs: [
    { key: 'kw', label: 'heat', kind: 'number', unit: 'kW', required: true, least: 0, most: 1000 },
    degrees('flow', 'flow temperature'),
    degrees('return', 'return temperature'),
    {
      key: 'extra',
      label: 'added for heat lost by pipes',
      kind: 'number',
      unit: '%',
      required: false,
      least: 0,
      most: 50,
    },
    {
      key: 'size',
      label: 'copper pipe it goes through',
      kind: 'choice',
      unit: 'mm',
      required: false,
      choices: [
        ...new Set(
          tubeKinds()
            .find((k) => k.kind === 'copper')
            ?.sizes.map((s) => s.label),
        ),
      ],
    },
  ],
  work(values) {
    const [flow, back] = [told(values, 'flow'), told(values, 'return')];
    const usual = tempsOf(flow, back);
    const temps = flow !== null && back !== null ? { flowC: flow, returnC: back } : usual;
    return flowSum({
      kW: Number(values.kw),
      temps,
      extraPercent: told(values, 'extra') ?? 0,
      tube: values.size === undefined ? null : (tube('copper', String(values.size)) ?? null),
      assumed: usual.assumed === null || (flow !== null && back !== null) ? [] : [usual.assumed],
    });
  },
  example: {
    values: { kw: 3, flow: 85, return: 72, extra: 10 },
    result: 0.0606,
    within: 0.0006,
    from: 'building services textbook, example 4.2: 3 kW at 85 and 72 with a tenth for the pipes is 0.06 kg/s, worked out 0.06058 with 4.19',
  },
});

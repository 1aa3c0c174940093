import { defineSum, type SumValues } from '../define-sum.ts';
import { hotFlowSum } from '../water/hot-flow-sum.ts';

const number = (key: string, label: string, unit: string, least: number, most: number, required = false) => ({
  key,
  label,
  kind: 'number' as const,
  unit,
  required,
  least,
  most,
});
const told = (values: SumValues, key: string): number | null =>
  values[key] === undefined ? null : Number(values[key]);

export default defineSum({
  id: 'hot-flow',
  title: 'Hot water at a heat output',
  topic: 'hot and cold',
  inputs: [
    number('kw', 'heat output for hot water', 'kW', 0.1, 1000, true),
    number('coldC', 'cold water', '°C', 0, 100, true),
    number('wantC', 'wanted at the tap', '°C', 0, 100, true),
    number('flow', 'flow of the mains, as read', 'litres a minute', 0.1, 1000),
    number('standing', 'pressure with nothing running', 'bar', 0, 16),
    number('flowing', 'pressure at that flow', 'bar', 0, 16),
    number('least', 'least pressure at the inlet, from its sheet', 'bar', 0, 16),
    number('up', 'inlet above the reading', 'm', -50, 50),
  ],
  work: (values) =>
    hotFlowSum({
      kw: Number(values.kw),
      coldC: Number(values.coldC),
      wantC: Number(values.wantC),
      mains: {
        standingBar: told(values, 'standing'),
        flowingBar: told(values, 'flowing'),
        flow: told(values, 'flow'),
        leastBar: told(values, 'least'),
        upM: told(values, 'up'),
      },
    }),
  example: {
    values: { kw: 31.5, coldC: 10, wantC: 60 },
    result: 9,
    within: 0.05,
    from: 'the usual rule as installers write it: 31.5 kW warm 9 litres a minute from 10 to 60 °C',
  },
});

import type { SumInput } from '../../report/sum-card.ts';
import { defineSum, type SumValues } from '../define-sum.ts';
import { blendSum } from '../water/blend-sum.ts';

const degrees = (key: string, label: string, required: boolean): SumInput => ({
  key,
  label,
  kind: 'number',
  unit: '°C',
  required,
  least: 0,
  most: 100,
});
const amount = (key: string, label: string): SumInput => ({
  key,
  label,
  kind: 'number',
  unit: 'litres, or litres a minute',
  required: false,
  least: 0,
  most: 100000,
});
const told = (values: SumValues, key: string): number | null =>
  values[key] === undefined ? null : Number(values[key]);

export default defineSum({
  id: 'mixing',
  title: 'Hot and cold mixed',
  topic: 'hot and cold',
  inputs: [
    degrees('hotC', 'hot water', true),
    degrees('coldC', 'cold water', true),
    amount('hot', 'how much hot'),
    amount('cold', 'how much cold'),
    degrees('wantC', 'wanted blend', false),
    amount('want', 'how much of the blend'),
  ],
  work: (values) =>
    blendSum({
      hotC: Number(values.hotC),
      coldC: Number(values.coldC),
      hot: told(values, 'hot'),
      cold: told(values, 'cold'),
      wantC: told(values, 'wantC'),
      want: told(values, 'want'),
    }),
  example: {
    values: { hotC: 100, coldC: 10, wantC: 40, want: 3500 },
    result: 1166,
    within: 1,
    from: 'forum answer on mixing liquids: 3500 litres at 40 °C from 100 and 10 °C take about 1166 litres of the hot',
  },
});

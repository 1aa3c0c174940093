import { exact } from '../../report/quantity.ts';
import { defineSum } from '../define-sum.ts';
import { dischargeSize, valveOutlets } from '../drainage/discharge-size.ts';

export default defineSum({
  id: 'discharge-size',
  title: 'Size of a discharge pipe from the tundish',
  topic: 'drains',
  inputs: [
    {
      key: 'outlet',
      label: 'outlet of the safety valve',
      kind: 'choice',
      unit: '',
      required: true,
      choices: valveOutlets(),
    },
    { key: 'm', label: 'length from the tundish', kind: 'number', unit: 'm', required: true, least: 0, most: 100 },
    { key: 'bends', label: 'elbows and bends', kind: 'number', unit: '', required: true, least: 0, most: 100 },
  ],
  work: ({ outlet, m, bends }) =>
    dischargeSize({
      outlet: String(outlet),
      lengthM: exact(Number(m), 'm', 1, 'page'),
      bends: { lo: Number(bends), hi: Number(bends) },
    }),
  example: {
    values: { outlet: 'G1/2', m: 7, bends: 4 },
    result: 28,
    within: 0,
    from: 'worked example of Approved Document G as extracted in instructions of vessels: 7 m and 4 elbows, 22 is too long, 28 passes',
  },
});

import { exact } from '../../report/quantity.ts';
import { defineSum } from '../define-sum.ts';
import { gasFlow } from '../gas/flow.ts';

export default defineSum({
  id: 'gas-flow',
  title: 'Gas flow of a heat input',
  topic: 'gas',
  inputs: [
    { key: 'kw', label: 'gross heat input', kind: 'number', unit: 'kW', required: true, least: 0, most: 1000 },
    { key: 'gas', label: 'kind of gas', kind: 'choice', unit: '', required: false, choices: ['natural', 'propane'] },
    { key: 'cv', label: 'gross calorific value', kind: 'number', unit: 'MJ/m3', required: false, least: 20, most: 150 },
  ],
  work: ({ kw, gas, cv }) =>
    gasFlow(
      exact(Number(kw), 'kW', 1, 'page'),
      gas === 'propane' ? 'propane' : 'natural',
      cv === undefined ? null : Number(cv),
    ),
  example: {
    values: { kw: 10, cv: 38.5 },
    result: 0.936,
    within: 0.005,
    from: 'one-sheet gas sizing example: 10 kW at 38.5 MJ/m3 is 0.936 m3/h after rounding to 0.26 l/s',
  },
});

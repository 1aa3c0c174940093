import { defineSum } from '../define-sum.ts';
import { cannot } from '../gas/said.ts';
import { deadLegSum } from '../water/dead-leg-sum.ts';
import { chosenTube, sayChosen, TUBE_INPUTS } from './tube-choice.ts';

export default defineSum({
  id: 'dead-leg',
  title: 'Water in a dead leg',
  topic: 'hot and cold',
  inputs: [
    { key: 'm', label: 'length', kind: 'number', unit: 'm', required: true, least: 0, most: 500 },
    ...TUBE_INPUTS,
    {
      key: 'end',
      label: 'at its end, a hot tap if not told',
      kind: 'choice',
      unit: '',
      required: false,
      choices: ['tap', 'capped'],
      words: { tap: 'a hot tap', capped: 'capped, nothing draws from it' },
    },
  ],
  work(values) {
    const tube = chosenTube(values);
    if (!tube) return cannot('Water in a dead leg', [`a tube ${sayChosen(values)}`]);
    return deadLegSum({ tube, lengthM: Number(values.m), end: values.end === 'capped' ? 'capped' : 'tap' });
  },
  example: {
    values: { m: 10, size: '22' },
    result: 3.2,
    within: 0.01,
    from: 'magazine page on dead legs: 22 holds 0.320 litres a metre',
  },
});

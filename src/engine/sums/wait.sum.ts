import { exact } from '../../report/quantity.ts';
import { defineSum } from '../define-sum.ts';
import { cannot } from '../gas/said.ts';
import { waitSum } from '../water/wait-sum.ts';
import { chosenTube, sayChosen, TUBE_INPUTS } from './tube-choice.ts';

export default defineSum({
  id: 'wait',
  title: 'Wait for hot water',
  topic: 'hot and cold',
  inputs: [
    {
      key: 'm',
      label: 'pipe between the source and the tap',
      kind: 'number',
      unit: 'm',
      required: true,
      least: 0,
      most: 500,
    },
    ...TUBE_INPUTS,
    {
      key: 'flow',
      label: 'flow of the tap',
      kind: 'number',
      unit: 'litres a minute',
      required: true,
      least: 0.1,
      most: 100,
    },
    {
      key: 'source',
      label: 'hot water comes from',
      kind: 'choice',
      unit: '',
      required: true,
      choices: ['combi', 'store'],
      words: { combi: 'a combi, which lights first', store: 'a cylinder, which is hot' },
    },
  ],
  work(values) {
    const tube = chosenTube(values);
    if (!tube) return cannot('Wait for hot water', [`a tube ${sayChosen(values)}`]);
    return waitSum({
      tube,
      lengthM: exact(Number(values.m), 'm', 1, 'page'),
      flow: exact(Number(values.flow), 'litres/min', 1, 'page'),
      lights: values.source === 'combi',
    });
  },
  example: {
    values: { m: 8, size: '15', flow: 9, source: 'store' },
    result: 10.46,
    within: 0.1,
    from: 'magazine page on dead legs: 15 holds 0.145 litres a metre, so 8 m run out in 7.75 s at 9 litres a minute; 20 to 50 in a hundred longer by what is usual, 9.3 to 11.6',
  },
});

import { exact } from '../../report/quantity.ts';
import { defineSum } from '../define-sum.ts';
import { cannot, step } from '../gas/said.ts';

const title = 'Length to cut between two fittings';

export default defineSum({
  id: 'cut-length',
  title,
  topic: 'pipework',
  inputs: [
    { key: 'centres', label: 'centre to centre', kind: 'number', unit: 'mm', required: true, least: 1, most: 20000 },
    {
      key: 'x1',
      label: 'X of one end, tube stop to centre',
      kind: 'number',
      unit: 'mm',
      required: true,
      least: 0,
      most: 300,
    },
    { key: 'x2', label: 'X of the other end', kind: 'number', unit: 'mm', required: true, least: 0, most: 300 },
    {
      key: 'gain',
      label: 'saving of the bends between them',
      kind: 'number',
      unit: 'mm',
      required: false,
      least: 0,
      most: 2000,
    },
  ],
  work({ centres, x1, x2, gain }) {
    const off = Number(x1) + Number(x2) + Number(gain ?? 0);
    const cut = Number(centres) - off;
    const steps = [
      step('Taken off', gain === undefined ? 'both X' : 'both X and the saving', exact(off, 'mm', 1, 'derived')),
    ];
    if (cut <= 0) return cannot(title, ['room for any tube: the fittings meet'], steps);
    const result = exact(cut, 'mm', 1, 'derived');
    return {
      title,
      steps: [...steps, step('Length to cut', 'centre to centre less that', result)],
      result,
      missing: [],
      assumed: ['X differs by make and way of joining: measure the fitting in hand'],
    };
  },
  example: {
    values: { centres: 1000, x1: 12, x2: 12 },
    result: 976,
    within: 0.001,
    from: 'college textbook 2019, viewer page 148 takes 12 mm for a 15 end-feed elbow; 1000 - 12 - 12',
  },
});

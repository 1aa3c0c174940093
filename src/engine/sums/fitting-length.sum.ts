import { defineSum } from '../define-sum.ts';
import { equivalentLength, FITTING_CLASSES, type FittingClass } from '../gas/equivalent-length.ts';
import { cannot, citesOf, step } from '../gas/said.ts';

export default defineSum({
  id: 'fitting-length',
  title: 'Length of tube one gas fitting stands for',
  topic: 'gas',
  inputs: [
    { key: 'kind', label: 'kind of tube', kind: 'choice', unit: '', required: false, choices: ['copper', 'steel'] },
    {
      key: 'size',
      label: 'size, as said or as 22x0.9',
      kind: 'choice',
      unit: 'mm',
      required: true,
      choices: ['10', '12', '15', '20', '22', '25', '28', '35', '42'],
    },
    { key: 'fitting', label: 'fitting', kind: 'choice', unit: '', required: true, choices: FITTING_CLASSES },
    {
      key: 'edition',
      label: 'edition of the table',
      kind: 'choice',
      unit: '',
      required: false,
      choices: ['gas-fittings-2015', 'gas-fittings-older'],
    },
  ],
  work({ kind, size, fitting, edition }) {
    const editions = edition === undefined ? {} : { 'gas-fittings': String(edition) };
    const found = equivalentLength(String(kind ?? 'copper'), String(size), fitting as FittingClass, editions);
    const title = `${found.say} of ${size}`;
    if (!found.known) return cannot(title, [`a length for ${found.say} of ${kind ?? 'copper'} ${size}`]);
    return {
      title,
      steps: [step(found.say, 'straight tube it stands for', found.length, citesOf(found.cite))],
      result: found.length,
      missing: [],
      assumed: [],
    };
  },
  example: {
    values: { size: '22', fitting: 'elbow90', edition: 'gas-fittings-2015' },
    result: 0.6,
    within: 0.0001,
    from: 'BS 6891:2015 allowance for a 22 elbow, as quoted in a trade forum note',
  },
});

import { exact } from '../../report/quantity.ts';
import { defineSum, type SumValues } from '../define-sum.ts';
import { type GasPipe, installationVolume } from '../gas/installation-volume.ts';

const SIZES = ['15', '22', '28', '35'] as const;

const pipesOf = (values: SumValues): GasPipe[] =>
  SIZES.flatMap((size) => {
    const metres = values[`m${size}`];
    return metres === undefined
      ? []
      : [{ label: `copper ${size}`, tubeKind: 'copper', size, lengthM: exact(Number(metres), 'm', 1, 'page') }];
  });

export default defineSum({
  id: 'gas-volume',
  title: 'Gas installation volume',
  topic: 'gas',
  inputs: [
    { key: 'meter', label: 'meter', kind: 'choice', unit: '', required: true, choices: ['E6', 'G4', 'G10'] },
    ...SIZES.map((size) => ({
      key: `m${size}`,
      label: `metres of copper ${size}`,
      kind: 'number' as const,
      unit: 'm',
      required: false,
      least: 0,
      most: 1000,
    })),
    { key: 'by', label: 'volume of the pipe', kind: 'choice', unit: '', required: false, choices: ['bore', 'table'] },
  ],
  work(values) {
    const volume = installationVolume(pipesOf(values), String(values.meter));
    return values.by === 'table' ? volume.byTable : volume.byBore;
  },
  example: {
    values: { meter: 'G4', m22: 10, m15: 4, by: 'table' },
    result: 0.01214,
    within: 0.0001,
    from: '0.008 + 1.1 x (10 x 0.00032 + 4 x 0.00014) m3, volumes per metre as a revision page prints them',
  },
});

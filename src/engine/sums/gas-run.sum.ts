import { exact } from '../../report/quantity.ts';
import { defineSum, type SumValues } from '../define-sum.ts';
import { FITTING_CLASSES } from '../gas/equivalent-length.ts';
import { gasFlow } from '../gas/flow.ts';
import { cannot } from '../gas/said.ts';
import { sectionDrop } from '../gas/section-drop.ts';

const counted = (values: SumValues) =>
  FITTING_CLASSES.flatMap((of) => (values[of] === undefined ? [] : [{ class: of, count: Number(values[of]) }]));

export default defineSum({
  id: 'gas-run',
  title: 'Gas drop of one size and one flow',
  topic: 'gas',
  inputs: [
    {
      key: 'kw',
      label: 'gross heat input of everything on it',
      kind: 'number',
      unit: 'kW',
      required: true,
      least: 0,
      most: 1000,
    },
    { key: 'm', label: 'measured length', kind: 'number', unit: 'm', required: true, least: 0, most: 500 },
    {
      key: 'kind',
      label: 'kind of tube',
      kind: 'choice',
      unit: '',
      required: false,
      choices: ['copper', 'steel', 'csst', 'pe'],
    },
    {
      key: 'size',
      label: 'size',
      kind: 'choice',
      unit: 'mm',
      required: true,
      choices: ['10', '12', '15', '20', '22', '25', '28', '32', '35', '42', '54'],
    },
    { key: 'gas', label: 'kind of gas', kind: 'choice', unit: '', required: false, choices: ['natural', 'propane'] },
    { key: 'cv', label: 'gross calorific value', kind: 'number', unit: 'MJ/m3', required: false, least: 20, most: 150 },
    ...FITTING_CLASSES.map((of) => ({
      key: of,
      label: `how many ${of}`,
      kind: 'number' as const,
      unit: '',
      required: false,
      least: 0,
      most: 100,
    })),
  ],
  work(values) {
    const gas = values.gas === 'propane' ? 'propane' : 'natural';
    const flow = gasFlow(
      exact(Number(values.kw), 'kW', 1, 'page'),
      gas,
      values.cv === undefined ? null : Number(values.cv),
    );
    if (!flow.result) return cannot('Gas drop', flow.missing, flow.steps);
    const drop = sectionDrop({
      label: `${values.m} m of ${values.size}`,
      tubeKind: String(values.kind ?? 'copper'),
      size: String(values.size),
      lengthM: exact(Number(values.m), 'm', 1, 'page'),
      fittings: counted(values),
      flow: flow.result,
      gas,
      editions: {},
    });
    return { ...drop.working, steps: [...flow.steps, ...drop.working.steps] };
  },
  example: {
    values: { kw: 37.41, cv: 38.7, m: 9, size: '22' },
    result: 0.65,
    within: 0.12,
    from: 'discharge table: 22 carries 3.6 m3/h over 15 m and 3.9 over 12 m at 1 mbar, so 3.48 m3/h over 9 m loses 9 / 15.75 of a mbar, at most 9 / 12',
  },
});

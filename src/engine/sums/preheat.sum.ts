import { defineSum } from '../define-sum.ts';
import { preheatSum } from '../preheat/preheat-sum.ts';

const temperature = (key: string, label: string, required: boolean) => ({
  key,
  label,
  kind: 'number' as const,
  unit: '°C',
  required,
  least: 0,
  most: 100,
});

export default defineSum({
  id: 'preheat',
  title: 'What a heater still adds to preheated water',
  topic: 'hot and cold',
  inputs: [
    { key: 'lPerMin', label: 'flow', kind: 'number', unit: 'litres a minute', required: true, least: 0, most: 100 },
    temperature('preheatC', 'preheated water', true),
    temperature('coldC', 'cold water', true),
    temperature('setC', 'heated to', true),
    { key: 'share', label: 'share that is preheated', kind: 'number', unit: '', required: false, least: 0, most: 1 },
  ],
  work: ({ lPerMin, preheatC, coldC, setC, share }) =>
    preheatSum({
      lPerMin: Number(lPerMin),
      preheatC: Number(preheatC),
      coldC: Number(coldC),
      setC: Number(setC),
      share: share === undefined ? 1 : Number(share),
    }),
  example: {
    values: { lPerMin: 9, preheatC: 10, coldC: 10, setC: 60 },
    result: 31.4,
    within: 0.2,
    from: 'the usual rule as installers write it: 9 litres a minute from 10 to 60 °C take 31.5 kW with 4.2, 31.4 with 4.19',
  },
});

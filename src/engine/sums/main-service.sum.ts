import { table } from '../../reference/tables.ts';
import { defineSum } from '../define-sum.ts';
import { mainService } from '../water/main-service.ts';

export default defineSum({
  id: 'main-service',
  title: 'Pressure left after one pipe of a main service',
  topic: 'hot and cold',
  inputs: [
    {
      key: 'start',
      label: 'pressure where it starts',
      kind: 'number',
      unit: 'kPa',
      required: true,
      least: 1,
      most: 1600,
    },
    { key: 'flow', label: 'flow', kind: 'number', unit: 'l/s', required: true, least: 0, most: 10 },
    { key: 'size', label: 'size of copper', kind: 'choice', unit: 'mm', required: true, choices: ['15', '22', '28'] },
    { key: 'm', label: 'measured length', kind: 'number', unit: 'm', required: true, least: 0, most: 500 },
    {
      key: 'height',
      label: 'pressure gained by height, below zero where it rises',
      kind: 'number',
      unit: 'kPa',
      required: true,
      least: -1000,
      most: 1000,
    },
    {
      key: 'loss',
      label: 'loss of a metre, if read',
      kind: 'number',
      unit: 'kPa/m',
      required: false,
      least: 0,
      most: 100,
    },
    { key: 'valve', label: 'lost in a valve', kind: 'number', unit: 'kPa', required: false, least: 0, most: 1000 },
    {
      key: 'need',
      label: 'draw-off at its end',
      kind: 'choice',
      unit: '',
      required: false,
      choices: table('water-pressure-needs').rows.map((r) => r.key),
    },
  ],
  work({ start, flow, size, m, height, loss, valve, need }) {
    const working = mainService({
      atMainKpa: Number(start),
      sections: [
        {
          label: `Copper ${size}`,
          size: String(size),
          flowLps: Number(flow),
          heightKpa: Number(height),
          lengthM: Number(m),
          kPaPerM: loss === undefined ? null : Number(loss),
          valveKpa: Number(valve ?? 0),
        },
      ],
      need: need === undefined ? null : String(need),
    });
    return valve === undefined ? { ...working, assumed: [...working.assumed, 'no valve was told'] } : working;
  },
  example: {
    values: { start: 83, flow: 0.2, size: '15', m: 6, height: 0, loss: 2.3, need: 'sink' },
    result: 63,
    within: 1,
    from: 'BS 6700:2006, worked example of Table D.4, pipe 5 to 6: 83 kPa available, 63 left',
  },
});

import { exact } from '../../report/quantity.ts';
import { defineSum } from '../define-sum.ts';
import { cannot, figures, step } from '../gas/said.ts';
import { purgeSeconds, purgeVolume } from '../tests-due/purge.ts';

export default defineSum({
  id: 'purge',
  title: 'Purge of a small gas installation, edition 3',
  topic: 'gas',
  inputs: [
    { key: 'meter', label: 'meter', kind: 'choice', unit: '', required: true, choices: ['E6', 'G4', 'G10'] },
    { key: 'largest', label: 'largest pipe', kind: 'number', unit: 'mm', required: true, least: 6, most: 35 },
    { key: 'flow', label: 'rate of the burner', kind: 'number', unit: 'm3/h', required: true, least: 0.01, most: 16 },
    { key: 'volume', label: 'installation volume', kind: 'number', unit: 'm3', required: false, least: 0, most: 0.035 },
  ],
  work({ meter, largest, flow, volume }) {
    const title = 'Purge time';
    const passed = purgeVolume({
      edition: '3',
      meter: String(meter),
      largestMm: Number(largest),
      volumeM3: volume === undefined ? null : exact(Number(volume), 'm3', 4, 'page'),
    });
    if (!passed.result) return cannot(title, passed.missing, passed.steps);
    const seconds = purgeSeconds(passed.result, exact(Number(flow), 'm3/h', 2, 'page'));
    const time = step(title, `3600 x ${figures(passed.result)} m3 / ${flow} m3/h`, seconds);
    return { title, steps: [...passed.steps, time], result: seconds, missing: [], assumed: [] };
  },
  example: {
    values: { meter: 'G4', largest: 28, flow: 2 },
    result: 18,
    within: 0.01,
    from: 'derived: 0.01 m3 as the revision cards give for a house meter, at a burner of 2.0 m3/h',
  },
});

import { defineSum } from '../define-sum.ts';
import { designFlow, drawOffsOf, loadingScales, loadingUnits } from '../water/loading-units.ts';

const DRAWS = [...new Set(loadingScales().flatMap(drawOffsOf))].sort();

export default defineSum({
  id: 'loading-units',
  title: 'Loading units of draw-offs',
  topic: 'hot and cold',
  inputs: [
    { key: 'scale', label: 'scale', kind: 'choice', unit: '', required: true, choices: loadingScales() },
    ...DRAWS.map((key) => ({
      key,
      label: `how many ${key}`,
      kind: 'number' as const,
      unit: '',
      required: false,
      least: 0,
      most: 10000,
    })),
  ],
  work({ scale, ...counts }) {
    const of = String(scale);
    const drawn = Object.entries(counts).map(([draw, count]) => ({ scale: of, draw, count: Number(count) }));
    const units = loadingUnits(drawn);
    if (!units.result) return units;
    const flow = designFlow(of, units.result);
    return {
      ...units,
      steps: [...units.steps, ...flow.steps],
      assumed: [...units.assumed, ...flow.missing.map((m) => `no flow is told: it lacks ${m}`)],
    };
  },
  example: {
    values: {
      scale: 'BS 6700',
      'bath-tap': 2,
      basin: 2,
      wc: 2,
      shower: 2,
      sink: 2,
      'washing-machine': 2,
      'spray-tap': 1,
    },
    result: 45,
    within: 0,
    from: 'article in two parts on a block of flats: the count of one flat',
  },
});

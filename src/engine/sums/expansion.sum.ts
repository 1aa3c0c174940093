import { defineSum } from '../define-sum.ts';
import { expandingMaterials, expansion } from '../materials/expansion.ts';

export default defineSum({
  id: 'expansion',
  title: 'How much a pipe grows by heat',
  topic: 'pipework',
  inputs: [
    { key: 'material', label: 'material', kind: 'choice', unit: '', required: true, choices: expandingMaterials() },
    { key: 'm', label: 'length', kind: 'number', unit: 'm', required: true, least: 0, most: 1000 },
    {
      key: 'rise',
      label: 'how much warmer it gets',
      kind: 'number',
      unit: 'K',
      required: true,
      least: -100,
      most: 100,
    },
    { key: 'growth', label: 'growth of a metre in a degree, if read', kind: 'number', unit: 'mm/m K', required: false },
  ],
  work: ({ material, m, rise, growth }) =>
    expansion({
      material: String(material),
      lengthM: Number(m),
      riseK: Number(rise),
      mmPerMK: growth === undefined ? null : Number(growth),
    }),
  example: {
    values: { material: 'copper', m: 10, rise: 40, growth: 0.017 },
    result: 6.8,
    within: 0.05,
    from: 'trade web page on thermal expansion: 10 m of copper, 40 K warmer, at 0.017 mm/m K grows 6.8 mm',
  },
});

import { editionsOf } from '../../reference/tables.ts';
import { defineSum } from '../define-sum.ts';
import { bendLength } from '../materials/bend-length.ts';

const TOPIC = 'bend-radius';
const mm = (key: string, label: string) =>
  ({ key, label, kind: 'number', unit: 'mm', required: false, least: 1, most: 10000 }) as const;

export default defineSum({
  id: 'bend',
  title: 'Length of a bend and what it saves',
  topic: 'pipework',
  inputs: [
    {
      key: 'size',
      label: 'size',
      kind: 'choice',
      unit: 'mm',
      required: true,
      choices: ['10', '12', '15', '22', '28', '35', '42'],
    },
    { key: 'kind', label: 'kind of tube', kind: 'choice', unit: '', required: false, choices: ['copper', 'plastic'] },
    { key: 'degrees', label: 'how far it turns', kind: 'number', unit: 'deg', required: true, least: 1, most: 179 },
    mm('radius', 'measured radius of the former'),
    {
      key: 'edition',
      label: 'table of radius instead',
      kind: 'choice',
      unit: '',
      required: false,
      choices: editionsOf(TOPIC).map((t) => t.id),
      words: Object.fromEntries(editionsOf(TOPIC).map((t) => [t.id, t.title])),
    },
    mm('a', 'one leg, to the corner of the centre lines'),
    mm('b', 'the other leg'),
  ],
  work: ({ size, kind, degrees, radius, edition, a, b }) =>
    bendLength({
      kind: String(kind ?? 'copper'),
      size: String(size),
      deg: Number(degrees),
      radiusMm: radius === undefined ? null : Number(radius),
      // One leg told and the other not is no cut length: it is asked for, not left out.
      legsMm: a === undefined && b === undefined ? null : [Number(a ?? Number.NaN), Number(b ?? Number.NaN)],
      editions: edition === undefined ? {} : { [TOPIC]: String(edition) },
    }),
  example: {
    values: { size: '15', degrees: 90, edition: 'bend-radius-textbook' },
    result: 94.2,
    within: 0.05,
    from: 'college textbook 2019, viewer page 107: 15 at 4 diameters, 60 x 1.57 is 94.2 mm',
  },
});

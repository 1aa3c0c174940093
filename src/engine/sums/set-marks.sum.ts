import { figure } from '../../reference/figure.ts';
import { edition } from '../../reference/tables.ts';
import { exact } from '../../report/quantity.ts';
import { defineSum } from '../define-sum.ts';
import { cannot, citesOf, quantityOf, step } from '../gas/said.ts';
import { passoverMarks, setMarks } from '../materials/set-marks.ts';

const title = 'Marks for a set or a passover';
const SHAPES = ['set', 'passover'] as const;

export default defineSum({
  id: 'set-marks',
  title,
  topic: 'pipework',
  inputs: [
    { key: 'shape', label: 'shape', kind: 'choice', unit: '', required: true, choices: SHAPES },
    {
      key: 'size',
      label: 'copper size',
      kind: 'choice',
      unit: '',
      required: true,
      choices: ['10', '12', '15', '22', '28'],
    },
    {
      key: 'offset',
      label: 'offset or height, centre to centre',
      kind: 'number',
      unit: 'mm',
      required: true,
      least: 5,
      most: 2000,
    },
    {
      key: 'degrees',
      label: 'angle of the outer bends',
      kind: 'number',
      unit: 'deg',
      required: true,
      least: 5,
      most: 80,
    },
    {
      key: 'radius',
      label: 'measured radius of the former',
      kind: 'number',
      unit: 'mm',
      required: false,
      least: 20,
      most: 500,
    },
  ],
  work({ shape, size, offset, degrees, radius }) {
    const table = edition('bend-radius', {});
    const read = table && figure(table, String(size), 'radius');
    const of =
      radius !== undefined ? exact(Number(radius), 'mm', 1, 'page') : read?.is === 'known' ? quantityOf(read) : null;
    if (!of) return cannot(title, [`the radius of the former for ${size}`]);
    const isSet = shape === 'set';
    const marks = (isSet ? setMarks : passoverMarks)(Number(offset), Number(degrees), of.lo);
    const mm = (n: number) => exact(n, 'mm', 1, of.sureness);
    const steps = [
      step(
        'Radius on the centre line',
        radius === undefined ? (table?.title ?? '') : 'as measured',
        of,
        radius === undefined && read ? citesOf(read.cite) : [],
      ),
      step('Along the slope', 'offset by the sine of the angle, corner to corner', mm(marks.slopeMm)),
      step(
        isSet ? 'Along the wall' : 'From first corner to last',
        'offset by the tangent of the angle',
        mm(marks.alongMm),
      ),
      step('Straight left between bends', 'slope less what both bends take', mm(marks.straightMm)),
      step('Saving of the bends', 'against corner to corner', mm(marks.gainMm)),
      step('Mark to mark', 'start of one bend to the start of the next', mm(marks.betweenMm)),
    ];
    if (marks.straightMm < 0)
      return cannot(title, ['room between the bends: a flatter angle or a tighter former'], steps);
    const last = isSet ? [] : ['the middle bend turns twice the angle, and the last mark is as far again'];
    return {
      title,
      steps,
      result: mm(marks.betweenMm),
      missing: [],
      assumed: ['marks are at the start of each bend', ...last],
    };
  },
  example: {
    values: { shape: 'set', size: '15', offset: 100, degrees: 45, radius: 60 },
    result: 138.84,
    within: 0.01,
    from: 'geometry by hand: 100 / sin 45 is 141.42; each bend takes 60 x tan 22.5, 24.85; 141.42 - 49.71 + 47.12',
  },
});

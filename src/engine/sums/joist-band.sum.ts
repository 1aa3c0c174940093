import { edition, editionsOf } from '../../reference/tables.ts';
import { exact } from '../../report/quantity.ts';
import { defineSum } from '../define-sum.ts';
import { cannot, step } from '../gas/said.ts';
import { bandsFromOneEnd, type Cut, cutLimits } from '../structure/joist-limits.ts';

const TOPIC = 'joist-limits';
const title = 'Where a joist may be cut, and how much';

export default defineSum({
  id: 'joist-band',
  title,
  topic: 'building',
  inputs: [
    { key: 'cut', label: 'cut', kind: 'choice', unit: '', required: true, choices: ['hole', 'notch'] },
    {
      key: 'span',
      label: 'clear span between bearings',
      kind: 'number',
      unit: 'mm',
      required: true,
      least: 500,
      most: 8000,
    },
    { key: 'depth', label: 'depth of the joist', kind: 'number', unit: 'mm', required: true, least: 75, most: 300 },
    {
      key: 'edition',
      label: 'table',
      kind: 'choice',
      unit: '',
      required: false,
      choices: editionsOf(TOPIC).map((t) => t.id),
      words: Object.fromEntries(editionsOf(TOPIC).map((t) => [t.id, t.title])),
    },
  ],
  work({ cut, span, depth, edition: pinned }) {
    const table = edition(TOPIC, pinned === undefined ? {} : { [TOPIC]: String(pinned) });
    if (!table) return cannot(title, ['a table of cuts']);
    const limits = cutLimits(table, cut as Cut, Number(span), Number(depth));
    const [near, far] = bandsFromOneEnd(limits, Number(span));
    const mm = (n: number) => exact(n, 'mm', 0, limits.mostMm?.sureness ?? 'page');
    const { cites } = limits;
    const band = (label: string, [from, to]: readonly [number, number]) => [
      step(`${label}, from`, 'from one bearing to the middle of the cut', mm(from), cites),
      step(`${label}, to`, '', mm(to), cites),
    ];
    const apart = limits.diameters;
    const steps = [
      ...(near ? band('Nearer band', near) : []),
      ...(far ? band('Further band', far) : []),
      ...(limits.mostMm
        ? [step(cut === 'hole' ? 'Largest hole' : 'Deepest notch', table.title, limits.mostMm, cites)]
        : []),
      ...(apart !== null && limits.mostMm
        ? [
            step(
              'Holes of that size apart',
              `${apart} diameters, centre to centre`,
              mm(apart * limits.mostMm.lo),
              cites,
            ),
          ]
        : []),
    ];
    const missing = [
      ...(near ? [] : [`where a ${cut} may be in this table`]),
      ...(limits.mostMm ? [] : [`how large a ${cut} may be in this table`]),
    ];
    const assumed = ['solid timber, simply supported, no notch and hole near each other, nothing heavy standing near'];
    return { title, steps, result: missing.length > 0 ? null : limits.mostMm, missing, assumed };
  },
  example: {
    values: { cut: 'hole', span: 3000, depth: 200, edition: 'joist-limits' },
    result: 50,
    within: 0.05,
    from: 'page on notches and holes in joists: span 3000, hole 750 to 1200; depth 200, hole 50',
  },
});

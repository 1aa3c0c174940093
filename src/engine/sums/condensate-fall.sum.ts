import { figure } from '../../reference/figure.ts';
import { edition, editionsOf } from '../../reference/tables.ts';
import { exact } from '../../report/quantity.ts';
import { defineSum } from '../define-sum.ts';
import { cannot, citesOf, step } from '../gas/said.ts';

const TOPIC = 'condensate-fall';
const MM_PER_M = 1000;

export default defineSum({
  id: 'condensate-fall',
  title: 'How far a condensate pipe comes down',
  topic: 'drains',
  inputs: [
    { key: 'm', label: 'length as seen from above', kind: 'number', unit: 'm', required: true, least: 0, most: 100 },
    {
      key: 'edition',
      label: 'edition of the fall',
      kind: 'choice',
      unit: '',
      required: false,
      choices: editionsOf(TOPIC).map((t) => t.id),
    },
    { key: 'degrees', label: 'as an angle instead', kind: 'number', unit: 'deg', required: false, least: 0, most: 45 },
  ],
  work({ m, edition: pinned, degrees }) {
    const title = 'Fall of a condensate pipe';
    const table = edition(TOPIC, pinned === undefined ? {} : { [TOPIC]: String(pinned) });
    const wanted = table && figure(table, 'least', 'mmPerM');
    if (wanted?.is !== 'known') return cannot(title, ['the fall of that edition']);
    const perM =
      degrees === undefined
        ? wanted
        : exact(Math.tan((Number(degrees) * Math.PI) / 180) * MM_PER_M, 'mm/m', 1, 'derived');
    const drop = exact(perM.lo * Number(m), 'mm', 0, perM.sureness);
    const how = degrees === undefined ? `by ${table?.title.toLowerCase()}` : `tangent of ${degrees} degrees`;
    return {
      title,
      steps: [
        step('Drop in a metre', how, perM, citesOf(wanted.cite)),
        step('Drop', `${Number(m).toFixed(2)} m x ${perM.lo.toFixed(1)} mm`, drop, []),
      ],
      result: drop,
      missing: [],
      assumed: [],
    };
  },
  example: {
    values: { m: 1.12, degrees: 2.5 },
    result: 48.9,
    within: 0.05,
    from: 'tangent of 2.5 degrees is 0.04366, times 1120 mm, by a table of tangents',
  },
});

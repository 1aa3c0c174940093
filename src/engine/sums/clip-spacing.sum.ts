import { figure } from '../../reference/figure.ts';
import { editionsOf, table } from '../../reference/tables.ts';
import { exact } from '../../report/quantity.ts';
import { defineSum } from '../define-sum.ts';
import { cannot, citesOf, quantityOf, step } from '../gas/said.ts';

const TOPIC = 'pipe-supports';
const title = 'Clips along a straight';
const tubes = (): string[] => [...new Set(editionsOf(TOPIC).flatMap((t) => t.rows.map((r) => r.key)))].sort();

export default defineSum({
  id: 'clip-spacing',
  title,
  topic: 'pipework',
  inputs: [
    { key: 'tube', label: 'tube', kind: 'choice', unit: '', required: true, choices: tubes() },
    { key: 'way', label: 'way it runs', kind: 'choice', unit: '', required: true, choices: ['horizontal', 'vertical'] },
    { key: 'm', label: 'straight length', kind: 'number', unit: 'm', required: false, least: 0.1, most: 500 },
  ],
  work({ tube, way, m }) {
    const read = editionsOf(TOPIC).flatMap((t) => {
      const found = figure(t, String(tube), String(way));
      return found.is === 'known' ? [found] : [];
    });
    const [smallest] = [...read].sort((a, b) => a.lo - b.lo);
    if (!smallest) return cannot(title, [`a spacing for ${tube} that runs ${way}`]);
    const spacing = quantityOf(smallest);
    const all = read.map((f) => step(table(f.cite.table).title, `${way}, at most`, quantityOf(f), citesOf(f.cite)));
    const count = m === undefined ? null : Math.ceil(Number(m) / spacing.lo) + 1;
    return {
      title,
      steps: [
        ...all,
        ...(read.length > 1 ? [step('The smaller', 'where tables differ', spacing)] : []),
        ...(count === null
          ? []
          : [step('Clips', 'length by spacing, rounded up, and one', exact(count, '', 0, 'derived'))]),
      ],
      result: spacing,
      missing: [],
      assumed: ['one more near each fitting and bend: common practice, no source'],
    };
  },
  example: {
    values: { tube: 'copper 15', way: 'horizontal', m: 6 },
    result: 1.2,
    within: 0.001,
    from: 'spacing of supports as in BS 8558, from memory: 15 copper level 1.2 m; the pocket reference prints 1.3',
  },
});

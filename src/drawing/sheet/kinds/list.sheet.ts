import { amountBlock, headingBlock, textBlock } from '../blocks.ts';
import { flowPages } from '../flow.ts';
import { sayCase } from '../say.ts';
import type { SheetKind } from '../sheet.ts';

const list: SheetKind = {
  id: 'list',
  order: 30,
  choices: ({ list: groups }) =>
    groups.length === 0 ? [] : [{ key: 'list', label: 'List of pieces', usual: true, scales: [] }],
  pages(job, key, layout) {
    const sheet = {
      key,
      title: 'List',
      under: `${sayCase(job.plan, job.chosen)}. Counted from the drawing; what was changed by hand is marked.`,
      documentType: 'list of pieces',
      blocks: (w: number) => [
        ...job.list.flatMap(({ title, rows }) => [
          headingBlock(title, w),
          ...rows.map((row) => amountBlock(row.amount, row.what, row.under, w)),
        ]),
        ...(job.list.length === 0 ? [textBlock('Nothing to buy.', w)] : []),
      ],
    };
    return flowPages(sheet, layout);
  },
};

export default list;

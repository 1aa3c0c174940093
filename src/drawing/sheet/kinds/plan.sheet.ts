import type { SheetKind } from '../sheet.ts';
import { viewPages } from '../view-pages.ts';

const USUAL = [50, 100, 200, 500] as const;

const plan: SheetKind = {
  id: 'plan',
  order: 10,
  choices: ({ plan: { storeys } }) =>
    Object.values(storeys)
      .sort((a, b) => a.floorMm - b.floorMm || (a.id < b.id ? -1 : 1))
      .map((s) => ({ key: `plan:${s.id}`, label: `Plan, ${s.name}`, usual: true, scales: [20, ...USUAL] })),
  pages(job, key, layout, scale) {
    const storey = key.slice('plan:'.length);
    const name = job.plan.storeys[storey]?.name;
    if (name === undefined) return [];
    const view = { kind: 'plan', storey } as const;
    const drawn = {
      key,
      view,
      storey,
      title: name,
      documentType: 'route plan',
      usual: USUAL,
      north: true,
      ladder: true,
    };
    return viewPages(job, drawn, layout, scale);
  },
};

export default plan;

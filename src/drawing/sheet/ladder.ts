import { buildNetwork } from '../../network/graph.ts';
import type { Case, Plan } from '../../plan/plan.ts';
import { sheetFrame } from '../paint/frame.ts';
import type { Prim } from '../paint/prim.ts';
import { primsOf } from '../paint/prims-of.ts';
import { ribbon } from '../ribbon.ts';
import { PRINT, paragraph, rule, SHEET_TEXT } from './ink.ts';
import type { Rect } from './paper.ts';
import { sayScale } from './say.ts';

const SCALES = [20, 25, 50, 100] as const;
const SECTION_MM = 8;
/** Between the section and the drawing beside it. */
const BESIDE_MM = 2;
const HEAD_MM = 14;
const PAD_MM = 3;

/** The gas run with the most legs on a storey; without one, the run with the most. */
function longestRun(plan: Plan, ids: readonly string[]): string | null {
  const legs = new Map<string, number>();
  for (const leg of Object.values(plan.legs))
    if (ids.includes(leg.run)) legs.set(leg.run, (legs.get(leg.run) ?? 0) + 1);
  const gas = [...legs].filter(([run]) => plan.runs[run]?.service === 'gas');
  const among = gas.length > 0 ? gas : [...legs];
  return among.sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1))[0]?.[0] ?? null;
}

/** The heights of a storey as a true section at a scale of its own, at the filing edge. */
export function ladderPrims(plan: Plan, chosen: Case, storey: string, at: Rect): Prim[] {
  const network = buildNetwork(plan, chosen);
  const run = longestRun(plan, [...network.edgesOfRun.keys()]);
  const x = at.x + PAD_MM;
  const w = at.w - 2 * PAD_MM;
  const drawn = (scale: number) =>
    ribbon(plan, network, {
      storey,
      at: null,
      run,
      widthMm: SECTION_MM * scale,
      mmPerPaperMm: scale,
      labelRoomMm: at.w - BESIDE_MM - SECTION_MM,
      medium: 'sheet',
      levels: [],
    }).list;
  const room = at.h - HEAD_MM - PAD_MM;
  const scale = SCALES.find((s) => {
    const { box } = drawn(s);
    return (box.maxY - box.minY) / s <= room;
  });
  const title = paragraph('Heights', { x, y: at.y + PAD_MM, w, size: SHEET_TEXT.heading, weight: 600 });
  const edge = rule([at.x + at.w, at.y], [at.x + at.w, at.y + at.h], 0.35);
  if (scale === undefined) return [...title.prims, edge];
  const said = paragraph(`mm over floor, ${sayScale(scale)}`, { x, y: at.y + PAD_MM + title.h, w, most: 2 });
  const { items, box } = drawn(scale);
  const top = at.y + HEAD_MM + (room - (box.maxY - box.minY) / scale) / 2;
  const frame = sheetFrame(scale, [0, box.maxY], [at.x + at.w - BESIDE_MM - SECTION_MM, top]);
  return [
    ...title.prims,
    ...said.prims,
    ...items.flatMap((g) => g.items.flatMap((i) => primsOf(i, frame, PRINT))),
    edge,
  ];
}

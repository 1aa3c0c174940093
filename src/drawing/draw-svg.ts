import type { Case, Plan } from '../plan/plan.ts';
import type { Finding } from '../report/finding.ts';
import { annotate } from './annotate.ts';
import type { Box, DisplayList, View } from './display-list.ts';
import { boxAround, pointsOf, union } from './fragments/fragment.ts';
import { fragments } from './fragments.ts';
import { keyOf, northMark, scaleBar } from './furniture.ts';
import type { Theme } from './look/style-of.ts';
import { writeSvg } from './paint/write-svg.ts';

/** Scales by view, the usual one first; the smallest is taken whatever the size. Never "fit to page". */
const SCALES = { plan: [50, 100, 200], face: [20, 50, 100] } as const;
/** What an A3 sheet leaves for a drawing, mm. */
const ROOM = { w: 380, h: 260 };
/** Under the drawing: scale bar and key. */
const UNDER_MM = 14;

const fits = (box: Box, scale: number): boolean =>
  (box.maxX - box.minX) / scale <= ROOM.w && (box.maxY - box.minY) / scale <= ROOM.h;

export interface DrawSvgOptions {
  /** 50 for 1:50. Left out: the largest usual one that an A3 sheet has room for. */
  readonly scale?: number;
  readonly findings?: readonly Finding[];
}

const sayCase = (plan: Plan, chosen: Case): string =>
  chosen.when === 'before' ? 'before' : `after, ${plan.options[chosen.option ?? '']?.name ?? 'as it is'}`;

function captionOf(plan: Plan, view: View, chosen: Case, scale: number): string {
  const storey = view.kind === 'plan' ? plan.storeys[view.storey] : plan.storeys[plan.walls[view.wall]?.storey ?? ''];
  const what =
    view.kind === 'plan' ? (storey?.name ?? '') : `${storey?.name ?? ''}, wall ${view.wall} from the ${view.side}`;
  return `${plan.name}: ${what}, ${sayCase(plan, chosen)}, 1:${scale}`;
}

/** A view of a plan in a case as one SVG file: drawing, scale bar, key of the lines used. Same plan, same bytes. */
export function drawSvg(plan: Plan, view: View, chosen: Case, theme: Theme, options: DrawSvgOptions = {}): string {
  const all = fragments(plan, view, chosen);
  const whole = union(all.map((f) => f.box));
  const usual = SCALES[view.kind];
  const scale = options.scale ?? usual.find((s) => fits(whole, s)) ?? usual[2];
  const medium = theme === 'print' ? 'sheet' : 'screen';
  const findings = options.findings ? { findings: options.findings } : {};
  const list = annotate(all, { plan, view, mmPerPaperMm: scale, medium, ...findings });
  const y = list.box.minY - UNDER_MM * scale;
  const x = list.box.minX;
  const furniture = [
    ...scaleBar([x + 14 * scale, y], scale),
    ...(view.kind === 'plan' ? [northMark([x + 5 * scale, y], view.turnDeg ?? 0)] : []),
    ...keyOf(all, [x, y - 10 * scale], scale),
  ];
  const under = boxAround(furniture.flatMap((item) => pointsOf(item)));
  const drawn: DisplayList = {
    ...list,
    box: union([list.box, { ...under, minY: under.minY - 4 * scale }]),
    items: [...list.items, { group: 'label', id: 'furniture', items: furniture }],
  };
  return writeSvg(drawn, {
    scale,
    theme,
    medium,
    title: captionOf(plan, view, chosen, scale),
    description: 'Limits compared, not approved: the registered engineer decides.',
  });
}

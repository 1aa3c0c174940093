import { resolveHeight } from '../../geometry/heights.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Roof } from '../../plan/records/building.ts';
import { rafterLines } from '../building/rafter-lines.ts';
import { boundsAlong } from '../building/slope-frame.ts';
import type { Fragment, Item, LineStyle, Vec, Wish } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import { levelOf } from '../text/say-level.ts';
import { makeFragment } from './fragment.ts';

/** Overhead, so hidden: the thin dash of building edges that are not seen. */
const HIDDEN: LineStyle = { ink: 'wallEdge', pen: PEN.opening, dash: [3, 1.2], fit: false };
const RAFTER: LineStyle = { ink: 'batten', pen: PEN.batten, dash: [3, 1.2], fit: false };
const ARROW: LineStyle = { ink: 'wallEdge', pen: PEN.opening, dash: [], fit: false };
/** Of the slope's depth in plan: where the arrow begins and ends. It points the way that water runs. */
const ARROW_FROM = 0.7;
const ARROW_TO = 0.3;
const BARB = 0.2;
/** A long slope has no larger head to its arrow. */
const MOST_BARB_MM = 110;

function slopeArrow(roof: Roof): { items: Item[]; at: Vec } | undefined {
  const frame = boundsAlong(roof);
  if (!frame || frame.deepMm === 0) return undefined;
  const middle = frame.lengthMm / 2;
  const [top, foot] = [frame.deepMm * ARROW_FROM, frame.deepMm * ARROW_TO];
  const barb = Math.min(MOST_BARB_MM, Math.min(top - foot, frame.lengthMm / 4) * BARB);
  const line = (pts: Vec[]): Item => ({ t: 'line', pts, style: ARROW });
  const tip = frame.at(middle, foot);
  const barbs = [frame.at(middle - barb, foot + barb), tip, frame.at(middle + barb, foot + barb)];
  return { items: [line([frame.at(middle, top), tip]), line(barbs)], at: frame.at(middle, top) };
}

/** The outline of a roof over a storey, its eaves, its rafters, and the way it falls with pitch and eaves level. */
export function roofFragment(plan: Plan, roof: Roof): Fragment {
  const ring = roof.outline.map((p): Vec => [p.x, p.y]);
  const { a, b } = roof.eaves;
  const eaves: Vec[] = [
    [a.x, a.y],
    [b.x, b.y],
  ];
  const arrow = slopeArrow(roof);
  const z = resolveHeight(plan, roof.eaves.height)?.z;
  const level = z === undefined ? null : `eaves ${levelOf(plan, z, roof.storey)}`;
  const wishes: Wish[] = arrow
    ? [{ w: 'flag', at: arrow.at, what: `roof ${Math.round(roof.pitchDeg)}°`, how: level, rank: 6, clearMm: 0.6 }]
    : [];
  return makeFragment(
    roof.id,
    'roofs',
    'ground',
    [
      { t: 'area', rings: [ring], fill: 'none', edge: HIDDEN },
      ...rafterLines(roof).map((pts): Item => ({ t: 'line', pts, style: RAFTER })),
      { t: 'line', pts: eaves, style: { ...HIDDEN, pen: PEN.doorLeaf } },
      ...(arrow?.items ?? []),
    ],
    wishes,
  );
}

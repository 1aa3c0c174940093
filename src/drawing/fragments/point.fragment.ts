import type { SymbolPart } from '../../catalogue/define-point.ts';
import { pointKinds } from '../../catalogue/point-kinds.ts';
import { pointFrame, toHouse } from '../../geometry/hosting.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { Fragment, Item, LineStyle, Vec, Wish } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import type { PipeState } from '../pipes/leg-style.ts';
import { levelOf } from '../text/say-level.ts';
import { makeFragment } from './fragment.ts';
import { keepClear } from './keep-clear.ts';
import { symbolItems } from './symbol-items.ts';

/** Pen and ink by what becomes of it; assumed things have a dashed outline. */
export function pointEdge(point: Point, state: PipeState): LineStyle {
  return {
    ink: state === 'strip' ? 'symbolGone' : 'symbol',
    pen: state === 'new' ? PEN.symbol : PEN.opening,
    dash: point.sureness === 'assumed' ? [1.2, 0.7] : [],
    fit: false,
  };
}

/** A kind this version does not know is a box with the first two letters of its kind. */
const unknownKind = (point: Point): SymbolPart[] => {
  const { widthMm: w, depthMm: d } = point.size;
  return [
    { draw: 'rect', x: -w / 2, y: 0, w, h: d, fill: false },
    { draw: 'letter', x: 0, y: d / 2, text: point.kind.slice(0, 2).toUpperCase() },
  ];
};

function crossedOut(corner: (x: number, y: number) => Vec, w: number, d: number, edge: LineStyle): Item[] {
  const thin = { ...edge, pen: PEN.opening, dash: [] };
  return [
    { t: 'line', pts: [corner(-w / 2, 0), corner(w / 2, d)], style: thin },
    { t: 'line', pts: [corner(-w / 2, d), corner(w / 2, 0)], style: thin },
  ];
}

/** What is said of an appliance; the rest is told by its letter. */
function words(plan: Plan, point: Point, state: PipeState, z: number, at: Vec): Wish[] {
  if (pointKinds.get(point.kind)?.group !== 'appliance') return [];
  const what = state === 'strip' ? `${point.name}, out` : point.name;
  const how = state === 'strip' ? null : `base ${levelOf(plan, z, point.storey)}`;
  return [{ w: 'flag', at, what, how, rank: 1 }];
}

/** A point from above, by its kind's symbol. Nothing where it leans on a wall that is gone. */
export function pointFragment(plan: Plan, point: Point, state: PipeState): Fragment {
  const frame = pointFrame(plan, point);
  if (!frame) return makeFragment(point.id, 'points', 'point', []);
  const edge = pointEdge(point, state);
  const at = (x: number, y: number): Vec => {
    const p = toHouse(frame, { x, y, z: 0 });
    return [p.x, p.y];
  };
  const kind = pointKinds.get(point.kind);
  const parts = kind ? kind.planSymbol(point.size) : unknownKind(point);
  const shown = state === 'strip' ? parts.filter((p) => p.draw !== 'letter') : parts;
  const { widthMm: w, depthMm: d } = point.size;
  const flags = words(plan, point, state, frame.origin.z, at(0, d / 2));
  const turned = Math.abs(frame.right.x) < Math.abs(frame.right.y);
  const { items, letters } = symbolItems(shown, at, edge, turned ? [d / 2, w / 2] : [w / 2, d / 2], flags.length > 0);
  const clear = state === 'strip' ? [] : keepClear(point, 'above', at);
  const gone = state === 'strip' ? crossedOut(at, w, d, edge) : [];
  return makeFragment(point.id, 'points', 'point', [...clear, ...items, ...gone], [...letters, ...flags]);
}

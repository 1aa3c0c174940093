import { insideArea } from '../../geometry/outlines.ts';
import type { Void } from '../../plan/records/building.ts';
import { exceptionWishes, joistItems } from '../building/joist-items.ts';
import { outlineRings } from '../building/void-rings.ts';
import type { Fragment, Item, LineStyle, Vec, Wish } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import { makeFragment } from './fragment.ts';

/** Nobody has looked: the thin dash of things that are hidden. */
const HIDDEN: LineStyle = { ink: 'hatch', pen: PEN.batten, dash: [1.6, 0.8], fit: false };
const BOX: LineStyle = { ink: 'wallEdge', pen: PEN.opening, dash: [], fit: false };
/** The long dash with two dots of what lies over the cut. */
const OVER: LineStyle = { ink: 'hatch', pen: PEN.batten, dash: [4, 0.8, 0.5, 0.8, 0.5, 0.8], fit: false };
const RANK = 9;

const middle = (v: Void): Vec => [
  v.outline.reduce((sum, p) => sum + p.x, 0) / v.outline.length,
  v.outline.reduce((sum, p) => sum + p.y, 0) / v.outline.length,
];

/** A slab has only words in plan, and its edge: what lies in it shows in section. */
function slabFragment(v: Void): Fragment {
  const edge: Item = { t: 'area', rings: outlineRings(v), fill: 'none', edge: HIDDEN };
  const how = (v.layers ?? []).map((l) => `${l.what} ${Math.round(l.thicknessMm)}`).join(', ');
  const words: Wish = { w: 'flag', at: middle(v), what: 'slab, no cuts', how: how || null, rank: RANK, clearMm: 0.5 };
  return makeFragment(v.id, 'voids', 'void', [edge], [words]);
}

const holds = (v: Void, [x, y]: Vec): boolean => insideArea({ x, y }, v.outline, v.holes);

/** A void over the head covers the floor under it: of two that lie over one another only the floor shows its joists. */
export const coversFloor = (v: Void, others: readonly Void[]): boolean =>
  v.kind === 'ceiling' && others.some((o) => o.kind === 'floor' && (holds(o, middle(v)) || holds(v, middle(o))));

/** A void from above: a wash with its joists. A boxing has sides; a chase shows over the wall it is cut into. One that `covers` a floor is its edge only. */
export function voidFragment(v: Void, covers = false): Fragment {
  if (v.kind === 'slab') return slabFragment(v);
  if (covers)
    return makeFragment(v.id, 'voids', 'void', [{ t: 'area', rings: outlineRings(v), fill: 'none', edge: OVER }]);
  const sides = v.kind === 'boxing' || v.kind === 'chase' ? { edge: BOX } : {};
  const edge = v.sureness === 'assumed' ? { edge: HIDDEN } : sides;
  const wash: Item = { t: 'area', rings: outlineRings(v), fill: 'void', ...edge };
  const layer = v.kind === 'chase' ? 'opening' : 'void';
  return makeFragment(v.id, 'voids', layer, [wash, ...joistItems(v)], exceptionWishes(v));
}

import type { Void } from '../../plan/records/building.ts';
import { exceptionWishes, joistItems } from '../building/joist-items.ts';
import { outlineRings } from '../building/void-rings.ts';
import type { Fragment, Item, LineStyle, Vec, Wish } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import { makeFragment } from './fragment.ts';

/** Nobody has looked: the thin dash of things that are hidden. */
const HIDDEN: LineStyle = { ink: 'hatch', pen: PEN.batten, dash: [1.6, 0.8], fit: false };
const BOX: LineStyle = { ink: 'wallEdge', pen: PEN.opening, dash: [], fit: false };
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

/** A void from above: a wash with its joists. A boxing has sides; a chase shows over the wall it is cut into. */
export function voidFragment(v: Void): Fragment {
  if (v.kind === 'slab') return slabFragment(v);
  const sides = v.kind === 'boxing' || v.kind === 'chase' ? { edge: BOX } : {};
  const edge = v.sureness === 'assumed' ? { edge: HIDDEN } : sides;
  const wash: Item = { t: 'area', rings: outlineRings(v), fill: 'void', ...edge };
  const layer = v.kind === 'chase' ? 'opening' : 'void';
  return makeFragment(v.id, 'voids', layer, [wash, ...joistItems(v)], exceptionWishes(v));
}

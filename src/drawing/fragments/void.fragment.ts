import type { Void } from '../../plan/records/building.ts';
import { joistEdges, outlineRings } from '../building/joist-edges.ts';
import type { Fragment, Item, LineStyle } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import { makeFragment } from './fragment.ts';

const JOIST: LineStyle = { ink: 'batten', pen: PEN.batten, dash: [], fit: false };
/** Nobody has looked: the thin dash of things that are hidden. */
const HIDDEN: LineStyle = { ink: 'hatch', pen: PEN.batten, dash: [1.6, 0.8], fit: false };

/** A void from above: a wash with its joists. A slab has only words, said once for the floor. */
export function voidFragment(v: Void): Fragment {
  if (v.kind === 'slab') return makeFragment(v.id, 'voids', 'void', []);
  const edge = v.sureness === 'assumed' ? { edge: HIDDEN } : {};
  const wash: Item = { t: 'area', rings: outlineRings(v), fill: 'void', ...edge };
  return makeFragment(v.id, 'voids', 'void', [
    wash,
    ...joistEdges(v).map((pts): Item => ({ t: 'line', pts, style: JOIST })),
  ]);
}

import type { Roof } from '../../plan/records/building.ts';
import type { Fragment, LineStyle, Vec } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import { makeFragment } from './fragment.ts';

/** Overhead, so hidden: the thin dash of building edges that are not seen. */
const HIDDEN: LineStyle = { ink: 'wallEdge', pen: PEN.opening, dash: [3, 1.2], fit: false };

/** The outline of a roof over a storey, and its eaves line. */
export function roofFragment(roof: Roof): Fragment {
  const ring = roof.outline.map((p): Vec => [p.x, p.y]);
  const { a, b } = roof.eaves;
  const eaves: Vec[] = [
    [a.x, a.y],
    [b.x, b.y],
  ];
  return makeFragment(roof.id, 'roofs', 'ground', [
    { t: 'area', rings: [ring], fill: 'none', edge: HIDDEN },
    { t: 'line', pts: eaves, style: { ...HIDDEN, pen: PEN.doorLeaf } },
  ]);
}

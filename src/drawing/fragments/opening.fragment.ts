import { wallSide } from '../../geometry/hosting.ts';
import { openingSpan } from '../../geometry/opening-box.ts';
import { wallLength } from '../../geometry/wall-frame.ts';
import type { Opening, Wall } from '../../plan/records/building.ts';
import { bodyPart } from '../building/wall-bodies.ts';
import type { Fragment, Item, LineStyle, Vec } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import { makeFragment } from './fragment.ts';

const THIN: LineStyle = { ink: 'opening', pen: PEN.opening, dash: [], fit: false };
const HIDDEN: LineStyle = { ink: 'opening', pen: PEN.batten, dash: [1.6, 0.8], fit: false };
const SILL: LineStyle = { ink: 'batten', pen: PEN.batten, dash: [], fit: false };
const LEAF_LINE: LineStyle = { ink: 'doorLeaf', pen: PEN.doorLeaf, dash: [], fit: false };
/** A leaf stands this far open; the arc it swings is not drawn. */
const LEAF = { deg: 38, mostMm: 1100 };

const line = (pts: readonly Vec[], style: LineStyle): Item => ({ t: 'line', pts, style });
const middle = (p: Vec, q: Vec): Vec => [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];

/**
 * From the hinge, along the gap, turned out of the wall on the side it swings to. Not told: end a, to the left. Too wide
 * for one leaf, each jamb has its own; too wide for two, they fold: pairs that stand out of the wall as a zigzag.
 */
function leaves(wall: Wall, opening: Opening): Item[] {
  const [from, upTo] = openingSpan(opening, wallLength(wall));
  const side = wallSide(wall, opening.swings ?? 'left');
  const turn = (LEAF.deg * Math.PI) / 180;
  const width = opening.widthMm;
  const at = (along: number, out: number): Vec => [
    side.start.x + side.along.x * along + side.out.x * out,
    side.start.y + side.along.y * along + side.out.y * out,
  ];
  const fromA = (opening.hinge ?? 'a') === 'a';
  const hung = (atA: boolean, mm: number): Item => {
    const s = atA ? from : upTo;
    return line([at(s, 0), at(s + Math.cos(turn) * mm * (atA ? 1 : -1), Math.sin(turn) * mm)], LEAF_LINE);
  };
  if (width <= LEAF.mostMm) return [hung(fromA, width)];
  if (width <= 2 * LEAF.mostMm) return [hung(true, width / 2), hung(false, width / 2)];
  const n = 2 * Math.ceil(width / (2 * LEAF.mostMm));
  const step = (Math.cos(turn) * width) / n;
  const peak = (Math.sin(turn) * width) / n;
  const folded = Array.from({ length: n + 1 }, (_, i): Vec => {
    return at(fromA ? from + i * step : upTo - i * step, i % 2 === 0 ? 0 : peak);
  });
  return [line(folded, LEAF_LINE)];
}

function inGap(opening: Opening, wall: Wall, corners: readonly Vec[]): Item[] {
  const [leftFrom, leftUpTo, rightUpTo, rightFrom] = corners as [Vec, Vec, Vec, Vec];
  const faces = (style: LineStyle): Item[] => [line([leftFrom, leftUpTo], style), line([rightFrom, rightUpTo], style)];
  const centre = [middle(leftFrom, rightFrom), middle(leftUpTo, rightUpTo)];
  if (opening.kind === 'window') return [...faces(THIN), line(centre, THIN)];
  if (opening.kind === 'archway') return faces(HIDDEN);
  if (opening.kind === 'vent')
    return [...faces(THIN), line([leftFrom, rightUpTo], THIN), line([leftUpTo, rightFrom], THIN)];
  return [...faces(SILL), ...leaves(wall, opening)];
}

/** What stands in the gap of a wall. The gap and its jambs are cut from the wall itself. */
export function openingFragment(wall: Wall, opening: Opening): Fragment {
  const [from, upTo] = openingSpan(opening, wallLength(wall));
  const corners = bodyPart(wall, from, upTo);
  return makeFragment(opening.id, 'openings', 'opening', [
    { t: 'area', rings: [corners], fill: 'opening' },
    ...inGap(opening, wall, corners),
  ]);
}

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
const LEAF: LineStyle = { ink: 'doorLeaf', pen: PEN.doorLeaf, dash: [], fit: false };
/** A leaf stands this far open; the arc it swings is not drawn. */
const LEAF_DEG = 38;

const line = (pts: readonly Vec[], style: LineStyle): Item => ({ t: 'line', pts, style });
const middle = (p: Vec, q: Vec): Vec => [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];

/** From the hinge, along the gap, turned out of the wall on the side it swings to. Not told: end a, to the left. */
function leaf(wall: Wall, opening: Opening): Item {
  const [from, upTo] = openingSpan(opening, wallLength(wall));
  const side = wallSide(wall, opening.swings ?? 'left');
  const fromA = (opening.hinge ?? 'a') === 'a';
  const s = fromA ? from : upTo;
  const way = fromA ? 1 : -1;
  const turn = (LEAF_DEG * Math.PI) / 180;
  const hinge: Vec = [side.start.x + side.along.x * s, side.start.y + side.along.y * s];
  const c = Math.cos(turn) * way * opening.widthMm;
  const o = Math.sin(turn) * opening.widthMm;
  const tip: Vec = [hinge[0] + side.along.x * c + side.out.x * o, hinge[1] + side.along.y * c + side.out.y * o];
  return line([hinge, tip], LEAF);
}

function inGap(opening: Opening, wall: Wall, corners: readonly Vec[]): Item[] {
  const [leftFrom, leftUpTo, rightUpTo, rightFrom] = corners as [Vec, Vec, Vec, Vec];
  const faces = (style: LineStyle): Item[] => [line([leftFrom, leftUpTo], style), line([rightFrom, rightUpTo], style)];
  const centre = [middle(leftFrom, rightFrom), middle(leftUpTo, rightUpTo)];
  if (opening.kind === 'window') return [...faces(THIN), line(centre, THIN)];
  if (opening.kind === 'archway') return faces(HIDDEN);
  if (opening.kind === 'vent')
    return [...faces(THIN), line([leftFrom, rightUpTo], THIN), line([leftUpTo, rightFrom], THIN)];
  return [...faces(SILL), leaf(wall, opening)];
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

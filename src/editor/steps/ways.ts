import { dot3, left, sub, sub3, unit, unit3 } from '../../geometry/vec.ts';
import { isUpright } from '../../network/steps/falls.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { type WorkPlane, wayInHouse } from '../input/work-plane.ts';

/** One way across a leg: the word of its key, and how it is said of a step that goes there. */
export interface Way {
  readonly id: string;
  readonly label: string;
  readonly way: Xyz;
}

const UP: Xyz = { x: 0, y: 0, z: 1 };
const DOWN: Xyz = { x: 0, y: 0, z: -1 };
const SQUARE = 0.5;

/** Towards the one who looks at the plane. */
const nearer = (plane: WorkPlane): Xyz => sub3(plane.place([0, 0], 1), plane.place([0, 0], 0));

/**
 * The four ways across a leg. Left and right are those of someone walking along the pipe; seen on a wall, what comes off it
 * is in front. Of an upright they are those of the page.
 */
export function waysAcross(a: Xyz, b: Xyz, plane: WorkPlane): readonly Way[] {
  if (isUpright(a, b)) {
    const seen = (id: string, label: string, on: readonly [number, number]): Way => ({
      id,
      label,
      way: wayInHouse(plane, on),
    });
    const sides = [seen('left', 'left', [-1, 0]), seen('right', 'right', [1, 0])];
    if (plane.kind === 'plan')
      return [...sides, seen('up', 'up the sheet', [0, 1]), seen('down', 'down the sheet', [0, -1])];
    const out = nearer(plane);
    return [
      ...sides,
      { id: 'up', label: 'in front', way: out },
      { id: 'down', label: 'behind', way: { x: -out.x, y: -out.y, z: -out.z } },
    ];
  }
  const { x, y } = left(unit(sub(b, a)));
  const sides: readonly Way[] = [
    { id: 'left', label: 'left', way: { x, y, z: 0 } },
    { id: 'right', label: 'right', way: { x: -x, y: -y, z: 0 } },
  ];
  const out = plane.kind === 'face' ? nearer(plane) : null;
  const said = sides.map((s) => {
    const off = out ? dot3(s.way, out) : 0;
    return Math.abs(off) < SQUARE ? s : { ...s, label: off > 0 ? 'in front' : 'behind' };
  });
  return [{ id: 'up', label: 'over', way: UP }, { id: 'down', label: 'under', way: DOWN }, ...said];
}

/** The way a hand goes, of those that lie in the plane, and how far along it, mm. */
export function wayOfHand(
  ways: readonly Way[],
  plane: WorkPlane,
  from: readonly [number, number],
  to: readonly [number, number],
): { readonly way: Way; readonly mm: number } | null {
  const by = wayInHouse(plane, [to[0] - from[0], to[1] - from[1]]);
  const out = nearer(plane);
  const inPlane = ways.filter((w) => Math.abs(dot3(w.way, out)) < SQUARE);
  const [best] = inPlane.map((way) => ({ way, mm: dot3(unit3(way.way), by) })).sort((p, q) => q.mm - p.mm);
  return best && best.mm > 0 ? best : null;
}

import { askBoxes, boxTree } from '../../geometry/box-index.ts';
import { boxOf } from '../../geometry/boxes.ts';
import { type OpeningBox, openingBox } from '../../geometry/opening-box.ts';
import { between, shared } from '../../geometry/outlines.ts';
import { intoWall, type Standing } from '../../geometry/wall-frame.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Wall } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { CLEAR_MM, ON_FACE_MM } from './reach-figures.ts';

/** A piece of way in front of an opening or through it: over which part of the piece. */
export interface OpeningPass {
  readonly opening: OpeningBox;
  readonly fromMm: number;
  readonly toMm: number;
}

/** Looks for the openings of a storey that a straight piece in plan passes. */
export interface OpeningFinder {
  passed(a: Xy, b: Xy): OpeningPass[];
}

interface Placed {
  readonly opening: OpeningBox;
  readonly wall: Wall;
  readonly box: ReturnType<typeof boxOf>;
}

const flat = (p: Xy) => ({ x: p.x, y: p.y, z: 0 });

export function openingFinder(plan: Plan, storey: string, standing: Standing): OpeningFinder {
  const placed = Object.values(plan.openings).flatMap((o): Placed[] => {
    const wall = plan.walls[o.wall];
    const opening = wall?.storey === storey && standing.has(o.id) ? openingBox(plan, o.id) : undefined;
    if (!wall || !opening) return [];
    const b = boxOf(opening.footprint.map(flat));
    const by = ON_FACE_MM;
    const box = { ...b, minX: b.minX - by, minY: b.minY - by, maxX: b.maxX + by, maxY: b.maxY + by };
    return [{ opening, wall, box }];
  });
  const index = askBoxes(boxTree(placed));
  return {
    passed(a, b) {
      const lengthMm = Math.hypot(b.x - a.x, b.y - a.y);
      return index
        .search(boxOf([flat(a), flat(b)]))
        .flatMap(({ opening, wall }): OpeningPass[] => {
          const [p, q] = [intoWall(wall, flat(a)), intoWall(wall, flat(b))];
          const reach = wall.thicknessMm / 2 + ON_FACE_MM;
          const along = between(p.u, q.u, opening.fromMm - CLEAR_MM, opening.toMm + CLEAR_MM);
          const off = between(p.v, q.v, -reach, reach);
          const part = along && off && shared(along, off);
          if (!part || (part[1] - part[0]) * lengthMm < 1) return [];
          return [{ opening, fromMm: part[0] * lengthMm, toMm: part[1] * lengthMm }];
        })
        .sort((m, n) => m.fromMm - n.fromMm || (m.opening.opening < n.opening.opening ? -1 : 1));
    },
  };
}

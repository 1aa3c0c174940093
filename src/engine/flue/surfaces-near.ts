import type { Box3 } from '../../geometry/boxes.ts';
import { outOfWall, wallHeights, wallLength } from '../../geometry/wall-frame.ts';
import type { Wall } from '../../plan/records/building.ts';
import type { Given } from '../given.ts';
import { midSentence, sayPoint, sayWall } from '../say-names.ts';
import { type Candidate, candidate, FACED_MM, LOOKED_MM } from './candidate.ts';
import { type Gap, gapOf, gapWithout, overlap } from './gaps.ts';
import { neighbourhood } from './neighbourhood.ts';
import { bodyOf, riseTo, type Terminal } from './terminals.ts';

/** How far out from the mouth of the terminal to a thing before it. */
function outwards(t: Terminal, far: Box3): Gap {
  const y = far.minY;
  return gapOf(t.body, { ...t.body, minY: y, maxY: y });
}

const before = (t: Terminal, box: Box3): boolean =>
  box.minY >= t.body.maxY && overlap(t.body.minX, t.body.maxX, box.minX, box.maxX);

/** A wall's body over its whole length, without its joints. */
function wallBox(given: Given, t: Terminal, wall: Wall): Box3 | undefined {
  const heights = wallHeights(given.plan, wall);
  if (!heights) return undefined;
  const [l, half] = [wallLength(wall), wall.thicknessMm / 2];
  const corners = [
    outOfWall(wall, 0, half),
    outOfWall(wall, l, half),
    outOfWall(wall, 0, -half),
    outOfWall(wall, l, -half),
  ];
  return t.round(
    corners.flatMap((c) => [
      { ...c, z: heights.bottom },
      { ...c, z: heights.top },
    ]),
  );
}

/** The nearest wall the terminal blows at. */
export function wallFaced(given: Given, t: Terminal): Candidate[] {
  const rise = riseTo(t, null);
  const met = neighbourhood(given, t).walls.flatMap((wall) => {
    const box = given.network.alive.has('walls', wall.id) ? wallBox(given, t, wall) : undefined;
    if (!box || !before(t, box)) return [];
    if (!overlap(t.body.minZ, t.body.maxZ, box.minZ + rise.lo, box.maxZ + rise.hi)) return [];
    return [{ wall, gap: outwards(t, box) }];
  });
  const [first] = met.sort((a, b) => a.gap.mm - b.gap.mm || (a.wall.id < b.wall.id ? -1 : 1));
  if (!first || first.gap.mm > FACED_MM) return [];
  const what = `the ${midSentence(sayWall(given.plan, first.wall.id))}`;
  return [candidate({ row: 'facing-surface', ids: [first.wall.id], what, gap: first.gap, shows: 'plan' })];
}

/** A boundary goes up as far as the terminal, however low the fence on it is. */
export function boundariesNear(given: Given, t: Terminal): Candidate[] {
  return neighbourhood(given, t).points.flatMap((p): Candidate[] => {
    if (p.kind !== 'boundary' || !given.network.alive.has('points', p.id)) return [];
    const body = bodyOf(given, t, p);
    if (!body) return [];
    const { box } = body;
    const near = { ids: [p.id], what: `the ${midSentence(sayPoint(given.plan, p.id))}`, shows: 'plan' as const };
    // Square to the wall it runs beside the terminal, along the wall it is faced; slanting it may be both.
    const along = box.maxX - box.minX >= box.maxY - box.minY;
    if (along && before(t, box)) {
      const gap = outwards(t, box);
      if (gap.mm > FACED_MM) return [];
      return [
        candidate({ ...near, row: 'facing-boundary', gap }),
        candidate({ ...near, row: 'plume-neighbour', table: 'flue-plume', gap }),
      ];
    }
    const gap = gapWithout('Z', t.body, box);
    return gap.mm > LOOKED_MM ? [] : [candidate({ ...near, row: 'beside-boundary', gap })];
  });
}

import { openingSpan } from '../../geometry/opening-box.ts';
import { left, sub, unit } from '../../geometry/vec.ts';
import { outOfWall, wallHeights, wallLength } from '../../geometry/wall-frame.ts';
import type { Opening, Wall } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';
import type { Given } from '../given.ts';
import { clipTo } from './clip.ts';
import { localiser, openingsOf, wallsNear } from './obstacles.ts';
import type { Sited } from './sited.ts';

const STEPS = 8;

/** The quarter of a circle a door's leaf goes over; null where nobody told how it hangs. */
function sweep(wall: Wall, door: Opening): Xy[] | null {
  if (door.kind !== 'door' || door.hinge === null || door.swings === null) return null;
  const span = openingSpan(door, wallLength(wall));
  const side = door.swings === 'left' ? 1 : -1;
  const pin = outOfWall(wall, door.hinge === 'a' ? span[0] : span[1], (side * wall.thicknessMm) / 2);
  const along = unit(sub(wall.b, wall.a));
  const shut = door.hinge === 'a' ? 1 : -1;
  const out = left(along);
  const rim = Array.from({ length: STEPS + 1 }, (_, i): Xy => {
    const turn = (Math.PI / 2) * (i / STEPS);
    const [c, s] = [Math.cos(turn) * shut * door.widthMm, Math.sin(turn) * side * door.widthMm];
    return { x: pin.x + along.x * c + out.x * s, y: pin.y + along.y * c + out.y * s };
  });
  return [pin, ...rim];
}

export interface Swing {
  readonly door: Opening;
  /** Strikes the case; else it only goes through the space in front. */
  readonly strikes: boolean;
}

const areaOf = (o: readonly Xy[]): number =>
  Math.abs(
    o.reduce((sum, p, i) => sum + p.x * (o[(i + 1) % o.length]?.y ?? 0) - p.y * (o[(i + 1) % o.length]?.x ?? 0), 0),
  ) / 2;
/** Of a sweep less than this lies in it: a touch of rounding, mm2. */
const TOUCH_MM2 = 25;

/** Doors whose leaf goes over the case or the space of a depth in front of it. */
export function swingsAt(given: Given, boiler: Sited, frontMm: number): Swing[] {
  const local = localiser(boiler);
  const { minX, maxX, maxY, maxZ } = boiler.body.local;
  const { z } = boiler.body.frame.origin;
  return wallsNear(given, boiler, 2 * frontMm).flatMap((wall) => {
    const heights = wallHeights(given.plan, wall);
    if (!heights) return [];
    return openingsOf(given, wall.id).flatMap((door): Swing[] => {
      const leaf = sweep(wall, door);
      const low = heights.bottom + door.sillMm - z;
      if (!leaf || low >= maxZ || low + door.headMm - door.sillMm <= 0) return [];
      const over = (from: number, to: number): boolean =>
        areaOf(clipTo(local(leaf), { minX, maxX, minY: from, maxY: to })) > TOUCH_MM2;
      const strikes = over(0, maxY);
      return strikes || over(maxY, maxY + frontMm) ? [{ door, strikes }] : [];
    });
  });
}

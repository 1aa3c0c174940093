import { wallSide } from '../../geometry/hosting.ts';
import type { Plan } from '../../plan/plan.ts';
import type { WallProbe } from './banks.ts';

/** How far beside a bank a wall still hems it in. */
const REACH_MM = [40, 90, 140];

const probes = new WeakMap<Plan['walls'], Map<string, WallProbe>>();

/** Asks whether a wall of the storey stands close by a place, that way. Made once for the same walls. */
export function wallProbe({ walls }: Plan, storey: string): WallProbe {
  const of = probes.get(walls) ?? new Map<string, WallProbe>();
  probes.set(walls, of);
  const known = of.get(storey) ?? probeOf(walls, storey);
  of.set(storey, known);
  return known;
}

function probeOf(walls: Plan['walls'], storey: string): WallProbe {
  const bodies = Object.values(walls)
    .filter((wall) => wall.storey === storey)
    .map((wall) => ({ wall, side: wallSide(wall, 'left') }));
  return (at, way) =>
    REACH_MM.some((reach) => {
      const x = at[0] + way[0] * reach;
      const y = at[1] + way[1] * reach;
      return bodies.some(({ wall, side }) => {
        const dx = x - side.start.x;
        const dy = y - side.start.y;
        const s = dx * side.along.x + dy * side.along.y;
        const in_ = -(dx * side.out.x + dy * side.out.y);
        return s >= 0 && s <= side.lengthMm && in_ >= 0 && in_ <= wall.thicknessMm;
      });
    });
}

import { faceStretches } from '../../geometry/face-plane.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Wall } from '../../plan/records/building.ts';

/** What a face of a wall looks into, from left to right: "Kitchen", "Kitchen, Hall", "a space without a name"; else "outside". */
export function sayFace(plan: Plan, wall: Wall, side: 'left' | 'right'): string {
  const stretches = faceStretches(plan, wall, side);
  if (stretches.length === 0) return 'no closed room';
  const names = stretches.map(({ rooms }) => plan.rooms[rooms[0] ?? '']?.name || 'room without a name');
  return [...new Set(names)].join(', ');
}

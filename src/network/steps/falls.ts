import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Leg } from '../../plan/records/pipework.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { NotLaid, type PlacedLeg } from './edit.ts';
import { comesBack, type Step } from './step-shape.ts';

const flat = (a: Xyz, b: Xyz): number => Math.hypot(b.x - a.x, b.y - a.y);
export const isUpright = (a: Xyz, b: Xyz): boolean => flat(a, b) <= COINCIDENT_MM;

/** The end water leaves by: the lower one; of a level leg the one it was drawn to, since runs are told from their source. */
export const lowerEnd = ({ a, b }: Pick<PlacedLeg, 'a' | 'b'>): 'a' | 'b' => (a.z < b.z - COINCIDENT_MM ? 'a' : 'b');

const AS_SIDEWAYS = 'Pass it sideways, or go down with a set and stay down.';

/** Throws where water would stand in a step of a pipe that runs downhill. */
export function mustDrain(step: Step, placed: PlacedLeg, toward: 'a' | 'b'): void {
  const up = step.offset.z;
  if (isUpright(placed.a, placed.b)) {
    if (step.angleDeg >= 90) throw new NotLaid('With square bends that drop would run level for a way. Step it at 45.');
    return;
  }
  if (Math.abs(up) <= COINCIDENT_MM) return;
  if (comesBack(step.kind)) throw new NotLaid(`Water would stand in it: this pipe runs downhill. ${AS_SIDEWAYS}`);
  const falls = toward === lowerEnd(placed) ? up < 0 : up > 0;
  if (!falls) throw new NotLaid('Water would stand before it: this pipe runs downhill, and that step climbs.');
}

/** Heights shared out along a line as seen from above, so that it falls evenly from its first place to its last. */
export function evenFall(line: readonly Xyz[]): Xyz[] {
  const [first, last] = [line[0], line.at(-1)];
  if (!first || !last) return [];
  const runs = line.slice(1).map((p, i) => flat(line[i] ?? p, p));
  const whole = runs.reduce((sum, mm) => sum + mm, 0);
  let done = 0;
  return line.map((p, i) => {
    if (i > 0) done += runs[i - 1] ?? 0;
    return whole === 0 ? p : { ...p, z: first.z + ((last.z - first.z) * done) / whole };
  });
}

/** Does the pipe of a leg run downhill? */
export const isDrain = (plan: Plan, leg: Leg, runsDownhill: (service: string) => boolean): boolean =>
  runsDownhill(plan.runs[leg.run]?.service ?? '');

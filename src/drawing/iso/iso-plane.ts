import { direction, turned } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Vec } from '../display-list.ts';

/** Right angles by which the house lies turned, anticlockwise as seen from above. */
export type Quarter = 0 | 1 | 2 | 3;

/**
 * The house seen along the diagonal of a cube: uprights upright, both ways of the plan at 30 degrees, and a mm along any
 * of the three is a mm on the plane. Nothing is foreshortened.
 */
export interface IsoPlane {
  readonly quarter: Quarter;
  /** Degrees by which the house's own axes lie turned in the plan. */
  readonly houseDeg: number;
  at(p: Xyz): Vec;
  /** Nearer to the reader is more, in mm along the way the house is looked at. */
  toReader(p: Xyz): number;
  /** A place, or the way between two, told along the three axes of the drawing: right and back, left and back, up. */
  onAxes(p: Xyz): Xyz;
}

const COS = Math.sqrt(3) / 2;
const SIN = 0.5;

/** Where something told along the axes of the drawing lies on the plane. */
export const flat = ({ x, y, z }: Xyz): Vec => [(x - y) * COS, (x + y) * SIN + z];

/** `houseDeg`: how far the house's own axes lie turned in the plan; they are laid along the axes of the drawing. */
export function isoPlane(quarter: Quarter, houseDeg = 0): IsoPlane {
  const way = direction(90 * quarter - houseDeg);
  const onAxes = (p: Xyz): Xyz => ({ ...turned(p, way), z: p.z });
  return {
    quarter,
    houseDeg,
    onAxes,
    at: (p) => flat(onAxes(p)),
    toReader(p) {
      const { x, y, z } = onAxes(p);
      return (z - x - y) / Math.sqrt(3);
    },
  };
}

/** The house turned on by one right angle. */
export const nextQuarter = (q: Quarter): Quarter => ((q + 1) % 4) as Quarter;

import type { Xy, Xyz } from '../plan/records/parts.ts';

/** Plane and space vectors in mm. x right, y up the sheet, z up. */
export const sub = (a: Xy, b: Xy): Xy => ({ x: a.x - b.x, y: a.y - b.y });
export const add = (a: Xy, b: Xy): Xy => ({ x: a.x + b.x, y: a.y + b.y });
export const scale = (a: Xy, k: number): Xy => ({ x: a.x * k, y: a.y * k });
export const dot = (a: Xy, b: Xy): number => a.x * b.x + a.y * b.y;
export const cross = (a: Xy, b: Xy): number => a.x * b.y - a.y * b.x;
export const length = (a: Xy): number => Math.hypot(a.x, a.y);
export const distance = (a: Xy, b: Xy): number => Math.hypot(a.x - b.x, a.y - b.y);
/** Quarter turn anticlockwise: the left-hand normal of a direction. */
export const left = (a: Xy): Xy => ({ x: -a.y, y: a.x });
/** Unit vector; the zero vector has no direction and gives x. */
export const unit = (a: Xy): Xy => {
  const l = length(a);
  return l === 0 ? { x: 1, y: 0 } : { x: a.x / l, y: a.y / l };
};

/** Turned anticlockwise by the angle of a unit vector. */
export const turned = (a: Xy, by: Xy): Xy => ({ x: a.x * by.x - a.y * by.y, y: a.x * by.y + a.y * by.x });

/** Unit vector at an angle anticlockwise from x; exact at quarter turns, where a house has nearly all of its angles. */
export function direction(deg: number): Xy {
  const quarter = (((deg % 360) + 360) % 360) / 90;
  if (Number.isInteger(quarter)) return QUARTERS[quarter % 4] ?? { x: 1, y: 0 };
  const a = (deg * Math.PI) / 180;
  return { x: Math.cos(a), y: Math.sin(a) };
}
const QUARTERS: readonly Xy[] = [
  { x: 1, y: 0 },
  { x: 0, y: 1 },
  { x: -1, y: 0 },
  { x: 0, y: -1 },
];

export const sub3 = (a: Xyz, b: Xyz): Xyz => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });
export const add3 = (a: Xyz, b: Xyz): Xyz => ({ x: a.x + b.x, y: a.y + b.y, z: a.z + b.z });
export const scale3 = (a: Xyz, k: number): Xyz => ({ x: a.x * k, y: a.y * k, z: a.z * k });
export const dot3 = (a: Xyz, b: Xyz): number => a.x * b.x + a.y * b.y + a.z * b.z;
export const length3 = (a: Xyz): number => Math.hypot(a.x, a.y, a.z);
export const distance3 = (a: Xyz, b: Xyz): number => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);
export const unit3 = (a: Xyz): Xyz => {
  const l = length3(a);
  return l === 0 ? { x: 1, y: 0, z: 0 } : { x: a.x / l, y: a.y / l, z: a.z / l };
};

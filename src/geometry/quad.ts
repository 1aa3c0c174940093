import type { Xy } from '../plan/records/parts.ts';

/** A projective map of a plane, row by row; the last entry is 1 as it is made. */
export type Projective = readonly [number, number, number, number, number, number, number, number, number];

/** Undefined where the place lies on the map's horizon, or beyond it as seen from the corners it was made from. */
export function project(h: Projective, p: Xy): Xy | undefined {
  const w = h[6] * p.x + h[7] * p.y + h[8];
  if (w <= 0) return undefined;
  return { x: (h[0] * p.x + h[1] * p.y + h[2]) / w, y: (h[3] * p.x + h[4] * p.y + h[5]) / w };
}

const HAIR = 1e-9;

/** From the corners of a rectangle (lower left, lower right, upper right, upper left; x right, y up) to four given places. */
function fromRectangle(corners: readonly Xy[], widthMm: number, heightMm: number): Projective | undefined {
  const [p0, p1, p2, p3] = corners;
  if (!p0 || !p1 || !p2 || !p3 || !(widthMm > 0) || !(heightMm > 0)) return undefined;
  const [dx1, dy1] = [p1.x - p2.x, p1.y - p2.y];
  const [dx2, dy2] = [p3.x - p2.x, p3.y - p2.y];
  const [sx, sy] = [p0.x - p1.x + p2.x - p3.x, p0.y - p1.y + p2.y - p3.y];
  const det = dx1 * dy2 - dx2 * dy1;
  if (Math.abs(det) < HAIR) return undefined;
  const g = (sx * dy2 - dx2 * sy) / det;
  const k = (dx1 * sy - sx * dy1) / det;
  return [
    (p1.x - p0.x + g * p1.x) / widthMm,
    (p3.x - p0.x + k * p3.x) / heightMm,
    p0.x,
    (p1.y - p0.y + g * p1.y) / widthMm,
    (p3.y - p0.y + k * p3.y) / heightMm,
    p0.y,
    g / widthMm,
    k / heightMm,
    1,
  ];
}

function inverse(m: Projective): Projective | undefined {
  const [a, b, c, d, e, f, g, h, i] = m;
  const cofactors = [
    e * i - f * h,
    c * h - b * i,
    b * f - c * e,
    f * g - d * i,
    a * i - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ] as const;
  const det = a * cofactors[0] + b * cofactors[3] + c * cofactors[6];
  if (Math.abs(det) < Number.MIN_VALUE) return undefined;
  const made = cofactors.map((n) => n / det);
  return made as unknown as Projective;
}

/** Four corners in order around, no three in line, each turning the same way: what a rectangle looks like in a photo. */
export function isConvexQuad(corners: readonly Xy[]): boolean {
  if (corners.length !== 4) return false;
  const turns = corners.map((p, i) => {
    const q = corners[(i + 1) % 4] ?? p;
    const r = corners[(i + 2) % 4] ?? p;
    return (q.x - p.x) * (r.y - q.y) - (q.y - p.y) * (r.x - q.x);
  });
  return turns.every((t) => t > HAIR) || turns.every((t) => t < -HAIR);
}

/** Both ways between a picture and a plane in it, from four corners of a rectangle of known size. */
export interface SquaredPicture {
  /** mm from the rectangle's lower left (x right, y up) to pixels. */
  readonly toPixel: Projective;
  readonly toPlane: Projective;
}

/**
 * The map that lays four corners of a picture (pixels; lower left, lower right, upper right, upper left of something upright and known)
 * on a rectangle of that size. Undefined where they do not make a quadrilateral that a rectangle can look like.
 */
export function squarePicture(corners: readonly Xy[], widthMm: number, heightMm: number): SquaredPicture | undefined {
  if (!isConvexQuad(corners)) return undefined;
  const toPixel = fromRectangle(corners, widthMm, heightMm);
  const toPlane = toPixel && inverse(toPixel);
  if (!toPixel || !toPlane) return undefined;
  // Scaled so that places on the picture's side of the horizon have a positive weight.
  const first = corners[0];
  const w = first ? toPlane[6] * first.x + toPlane[7] * first.y + toPlane[8] : 0;
  if (w === 0) return undefined;
  return { toPixel, toPlane: toPlane.map((n) => n / w) as unknown as Projective };
}

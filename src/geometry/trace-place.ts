import type { Xy } from '../plan/records/parts.ts';
import type { BlobRef } from '../plan/records/statements.ts';
import { project, type SquaredPicture, squarePicture } from './quad.ts';

export type TracePlace = NonNullable<BlobRef['place']>;
export interface Pixels {
  readonly width: number;
  readonly height: number;
}

const RADIANS = Math.PI / 180;

function turn(p: Xy, deg: number): Xy {
  const [c, s] = [Math.cos(deg * RADIANS), Math.sin(deg * RADIANS)];
  return { x: p.x * c - p.y * s, y: p.x * s + p.y * c };
}

/** Undefined while the picture is not squared, or where its corners make no rectangle. */
export function squaredOf(place: TracePlace): SquaredPicture | undefined {
  const { square } = place;
  return square && squarePicture(square.corners, square.widthMm, square.heightMm);
}

/** From mm of the plane a picture lies under to mm of the picture's own frame: its lower left corner, unturned. */
function toOwn(place: TracePlace, at: Xy): Xy {
  return turn({ x: at.x - place.x, y: at.y - place.y }, -place.angleDeg);
}

/** Where in the picture a place of the plane lies, pixels from its upper left. Undefined past the horizon of a squared one. */
export function pixelAt(place: TracePlace, pixels: Pixels, at: Xy): Xy | undefined {
  const own = toOwn(place, at);
  const squared = squaredOf(place);
  if (squared) return project(squared.toPixel, own);
  if (place.mmPerPixel <= 0) return undefined;
  return { x: own.x / place.mmPerPixel, y: pixels.height - own.y / place.mmPerPixel };
}

/** Where in the plane a pixel lies. */
export function planeAt(place: TracePlace, pixels: Pixels, pixel: Xy): Xy | undefined {
  const squared = squaredOf(place);
  const own = squared
    ? project(squared.toPlane, pixel)
    : { x: pixel.x * place.mmPerPixel, y: (pixels.height - pixel.y) * place.mmPerPixel };
  if (!own) return undefined;
  const turned = turn(own, place.angleDeg);
  return { x: turned.x + place.x, y: turned.y + place.y };
}

/** The picture enlarged about a place so that a length on it becomes `factor` times as long. */
export function scaledAbout(place: TracePlace, about: Xy, factor: number): TracePlace {
  const { square } = place;
  return {
    ...place,
    x: about.x + (place.x - about.x) * factor,
    y: about.y + (place.y - about.y) * factor,
    mmPerPixel: place.mmPerPixel * factor,
    ...(square ? { square: { ...square, widthMm: square.widthMm * factor, heightMm: square.heightMm * factor } } : {}),
  };
}

/** The picture turned about a place, anticlockwise. */
export function turnedAbout(place: TracePlace, about: Xy, deg: number): TracePlace {
  const moved = turn({ x: place.x - about.x, y: place.y - about.y }, deg);
  const angle = (((place.angleDeg + deg) % 360) + 360) % 360;
  return { ...place, x: about.x + moved.x, y: about.y + moved.y, angleDeg: angle };
}

/** How far a line drawn on the picture must be turned to lie level or upright, whichever is nearer. */
export function toNearestQuarter(a: Xy, b: Xy): number {
  const deg = Math.atan2(b.y - a.y, b.x - a.x) / RADIANS;
  return Math.round(deg / 90) * 90 - deg;
}

/**
 * The picture squared by four corners tapped on the plane it lies under. The rectangle's lower left stays where it was tapped; it
 * lies level and upright from then on. Undefined where the taps make no rectangle that a photo could show.
 */
export function squaredBy(
  place: TracePlace,
  pixels: Pixels,
  taps: readonly Xy[],
  widthMm: number,
  heightMm: number,
): TracePlace | undefined {
  const [lowerLeft] = taps;
  const corners = taps.map((t) => pixelAt(place, pixels, t));
  if (!lowerLeft || corners.length !== 4 || !corners.every((c) => c !== undefined)) return undefined;
  const found = corners.map(({ x, y }) => ({ x, y }));
  if (!squarePicture(found, widthMm, heightMm)) return undefined;
  return {
    ...place,
    x: lowerLeft.x,
    y: lowerLeft.y,
    angleDeg: 0,
    square: { corners: found, widthMm, heightMm },
  };
}

/** The box of the plane a squared picture is drawn for, in the rectangle's own frame: its corners, but not far past the rectangle. */
export function squaredBox(
  place: TracePlace,
  pixels: Pixels,
): { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number } | undefined {
  const squared = squaredOf(place);
  const { square } = place;
  if (!squared || !square) return undefined;
  // A photo reaches to the horizon; what is many rectangles away has no detail left to trace.
  const far = FAR_RECTANGLES * Math.max(square.widthMm, square.heightMm);
  const bounds = { minX: -far, minY: -far, maxX: square.widthMm + far, maxY: square.heightMm + far };
  const corners = [
    { x: 0, y: 0 },
    { x: pixels.width, y: 0 },
    { x: pixels.width, y: pixels.height },
    { x: 0, y: pixels.height },
  ].map((c) => project(squared.toPlane, c));
  if (!corners.every((c) => c !== undefined)) return bounds;
  return {
    minX: Math.max(bounds.minX, Math.min(...corners.map((c) => c.x))),
    minY: Math.max(bounds.minY, Math.min(...corners.map((c) => c.y))),
    maxX: Math.min(bounds.maxX, Math.max(...corners.map((c) => c.x))),
    maxY: Math.min(bounds.maxY, Math.max(...corners.map((c) => c.y))),
  };
}

const FAR_RECTANGLES = 8;

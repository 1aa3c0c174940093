import type { Weight } from '../text/measure.ts';

/** What painters are given: plain shapes in the units of the frame, x right, y down, colours decided. */
export type Seg =
  | { readonly c: 'M' | 'L'; readonly x: number; readonly y: number }
  | { readonly c: 'Q'; readonly x1: number; readonly y1: number; readonly x: number; readonly y: number }
  | { readonly c: 'Z' };

export interface Stroke {
  readonly ink: string;
  readonly width: number;
  readonly cap: 'butt' | 'round';
  readonly join: 'miter' | 'round';
  readonly dash?: readonly number[];
  readonly dashAt?: number;
}

export interface PathPrim {
  readonly p: 'path';
  readonly path: readonly Seg[];
  readonly stroke?: Stroke;
  /** Filled by the even-odd rule. */
  readonly fill?: string;
}

export interface CirclePrim {
  readonly p: 'circle';
  readonly x: number;
  readonly y: number;
  readonly r: number;
  readonly stroke?: Stroke;
  readonly fill?: string;
}

export interface TextPrim {
  readonly p: 'text';
  readonly x: number;
  /** Of the baseline, before turning about (x, y). */
  readonly y: number;
  readonly text: string;
  readonly size: number;
  readonly weight: Weight;
  readonly align: 'left' | 'middle' | 'right';
  readonly ink: string;
  /** Clockwise as painted. */
  readonly turnDeg: number;
  readonly halo?: { readonly ink: string; readonly width: number };
}

export type Prim = PathPrim | CirclePrim | TextPrim;

export const move = (x: number, y: number): Seg => ({ c: 'M', x, y });
export const to = (x: number, y: number): Seg => ({ c: 'L', x, y });
export const CLOSE: Seg = { c: 'Z' };

export function polyline(pts: readonly (readonly [number, number])[], closed = false): Seg[] {
  const path = pts.map(([x, y], i): Seg => ({ c: i === 0 ? 'M' : 'L', x, y }));
  if (closed && path.length > 0) path.push(CLOSE);
  return path;
}

/** A plate: a rectangle with rounded corners. */
export function plate(x: number, y: number, w: number, h: number, r: number): Seg[] {
  return [
    move(x + r, y),
    to(x + w - r, y),
    { c: 'Q', x1: x + w, y1: y, x: x + w, y: y + r },
    to(x + w, y + h - r),
    { c: 'Q', x1: x + w, y1: y + h, x: x + w - r, y: y + h },
    to(x + r, y + h),
    { c: 'Q', x1: x, y1: y + h, x, y: y + h - r },
    to(x, y + r),
    { c: 'Q', x1: x, y1: y, x: x + r, y },
    CLOSE,
  ];
}

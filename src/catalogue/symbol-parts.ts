import type { PointKind, Size, SymbolPart } from './define-point.ts';

type Drawn = Pick<PointKind, 'planSymbol' | 'faceSymbol'>;

export const rect = (x: number, y: number, w: number, h: number, fill = false): SymbolPart => ({
  draw: 'rect',
  x,
  y,
  w,
  h,
  fill,
});
export const ring = (x: number, y: number, r: number, fill = false): SymbolPart => ({ draw: 'ring', x, y, r, fill });
export const letter = (x: number, y: number, text: string): SymbolPart => ({ draw: 'letter', x, y, text });
export const line = (x1: number, y1: number, x2: number, y2: number): SymbolPart => ({
  draw: 'line',
  from: [x1, y1],
  to: [x2, y2],
});

/** A box of lines only: what lies under it is seen through it. For things overhead and for areas. */
export const frame = (x: number, y: number, w: number, h: number): SymbolPart[] => [
  line(x, y, x + w, y),
  line(x + w, y, x + w, y + h),
  line(x + w, y + h, x, y + h),
  line(x, y + h, x, y),
];
export const planFrame = (s: Size): SymbolPart[] => frame(-s.widthMm / 2, 0, s.widthMm, s.depthMm);

export const planBox = (s: Size): SymbolPart => rect(-s.widthMm / 2, 0, s.widthMm, s.depthMm);
export const faceBox = (s: Size): SymbolPart => rect(-s.widthMm / 2, 0, s.widthMm, s.heightMm);
export const planMiddle = (s: Size, text: string): SymbolPart => letter(0, s.depthMm / 2, text);
export const faceMiddle = (s: Size, text: string): SymbolPart => letter(0, s.heightMm / 2, text);

/** The largest ring that fits the plan, in its middle. `part`: of that ring's radius. */
export const planRing = (s: Size, part = 1): SymbolPart =>
  ring(0, s.depthMm / 2, (part * Math.min(s.widthMm, s.depthMm)) / 2);

/** The largest ring that fits the face, in its middle. `part`: of that ring's radius. */
export const faceRing = (s: Size, part = 1): SymbolPart =>
  ring(0, s.heightMm / 2, (part * Math.min(s.widthMm, s.heightMm)) / 2);

/** A box with its letter, the way meters and boilers are drawn. */
export function boxed(text: string): Drawn {
  return { planSymbol: (s) => [planBox(s), planMiddle(s, text)], faceSymbol: (s) => [faceBox(s), faceMiddle(s, text)] };
}

/** Round from above, upright from the front: vessels, stacks. */
export function round(text: string): Drawn {
  return {
    planSymbol: (s) => [planRing(s), planMiddle(s, text)],
    faceSymbol: (s) => [faceBox(s), faceMiddle(s, text)],
  };
}

/** A tap: a stem with a bar across its end. */
export function tapped(text: string): Drawn {
  const tee = (w: number, far: number): SymbolPart[] => [
    line(0, 0, 0, far),
    line(-w / 2, far, w / 2, far),
    letter(0, far / 2, text),
  ];
  return { planSymbol: (s) => tee(s.widthMm, s.depthMm), faceSymbol: (s) => tee(s.widthMm, s.heightMm) };
}

/** Two triangles tip to tip, lying across the width. */
export function bowTie(w: number, y: number, half: number): SymbolPart[] {
  return [
    line(-w / 2, y - half, w / 2, y + half),
    line(-w / 2, y + half, w / 2, y - half),
    line(-w / 2, y - half, -w / 2, y + half),
    line(w / 2, y - half, w / 2, y + half),
  ];
}

import type { DisplayList, Fragment, Item } from '../display-list.ts';
import { type Look, styleOf, type Theme } from '../look/style-of.ts';
import { FONT } from '../text/measure.ts';
import type { Frame } from './frame.ts';
import type { Prim, Seg, Stroke } from './prim.ts';
import { primsOf } from './prims-of.ts';

/** What of a 2D canvas is used. A browser's context fits, and so does a recorder in a test. */
export interface Canvas2d {
  fillStyle: unknown;
  strokeStyle: unknown;
  lineWidth: number;
  lineCap: CanvasLineCap;
  lineJoin: CanvasLineJoin;
  lineDashOffset: number;
  font: string;
  textAlign: CanvasTextAlign;
  textBaseline: CanvasTextBaseline;
  fontKerning?: CanvasFontKerning;
  save(): void;
  restore(): void;
  translate(x: number, y: number): void;
  rotate(angle: number): void;
  beginPath(): void;
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  quadraticCurveTo(x1: number, y1: number, x: number, y: number): void;
  arc(x: number, y: number, r: number, from: number, to: number): void;
  closePath(): void;
  stroke(): void;
  fill(rule?: CanvasFillRule): void;
  setLineDash(dash: number[]): void;
  fillText(text: string, x: number, y: number): void;
  strokeText(text: string, x: number, y: number): void;
}

const ALIGN: Readonly<Record<'left' | 'middle' | 'right', CanvasTextAlign>> = {
  left: 'left',
  middle: 'center',
  right: 'right',
};

function trace(ctx: Canvas2d, path: readonly Seg[]): void {
  ctx.beginPath();
  for (const s of path) {
    if (s.c === 'M') ctx.moveTo(s.x, s.y);
    else if (s.c === 'L') ctx.lineTo(s.x, s.y);
    else if (s.c === 'Q') ctx.quadraticCurveTo(s.x1, s.y1, s.x, s.y);
    else ctx.closePath();
  }
}

function stroke(ctx: Canvas2d, s: Stroke): void {
  ctx.strokeStyle = s.ink;
  ctx.lineWidth = s.width;
  ctx.lineCap = s.cap;
  ctx.lineJoin = s.join;
  ctx.setLineDash(s.dash ? [...s.dash] : []);
  ctx.lineDashOffset = s.dashAt ?? 0;
  ctx.stroke();
}

export function paintPrim(ctx: Canvas2d, prim: Prim): void {
  if (prim.p === 'text') {
    ctx.save();
    ctx.translate(prim.x, prim.y);
    if (prim.turnDeg !== 0) ctx.rotate((prim.turnDeg * Math.PI) / 180);
    ctx.font = `${prim.weight} ${prim.size}px "${FONT.family}", sans-serif`;
    ctx.fontKerning = 'none';
    ctx.textAlign = ALIGN[prim.align];
    ctx.textBaseline = 'alphabetic';
    if (prim.halo) {
      ctx.strokeStyle = prim.halo.ink;
      ctx.lineWidth = prim.halo.width;
      ctx.lineJoin = 'round';
      ctx.setLineDash([]);
      ctx.strokeText(prim.text, 0, 0);
    }
    ctx.fillStyle = prim.ink;
    ctx.fillText(prim.text, 0, 0);
    ctx.restore();
    return;
  }
  if (prim.p === 'path') trace(ctx, prim.path);
  else {
    ctx.beginPath();
    ctx.arc(prim.x, prim.y, prim.r, 0, 2 * Math.PI);
  }
  if (prim.fill !== undefined) {
    ctx.fillStyle = prim.fill;
    ctx.fill('evenodd');
  }
  if (prim.stroke) stroke(ctx, prim.stroke);
}

export function paintItems(ctx: Canvas2d, items: readonly Item[], frame: Frame, look: Look): void {
  for (const item of items) for (const prim of primsOf(item, frame, look)) paintPrim(ctx, prim);
}

/** Paints a display list, or fragments already in painter's order, with a frame and a theme. */
export function paint(
  ctx: Canvas2d,
  what: DisplayList | readonly Fragment[] | readonly Item[],
  frame: Frame,
  theme: Theme,
): void {
  const look = styleOf(theme);
  const parts: readonly (Item | { readonly items: readonly Item[] })[] = 'view' in what ? what.items : what;
  for (const part of parts) paintItems(ctx, 't' in part ? [part] : part.items, frame, look);
}

import { useLayoutEffect, useRef } from 'react';
import { useStore } from 'zustand';
import type { Item } from '../../drawing/display-list.ts';
import { styleOf } from '../../drawing/look/style-of.ts';
import type { Frame } from '../../drawing/paint/frame.ts';
import { paintItems } from '../../drawing/paint/paint-canvas.ts';
import { theme } from './theme.ts';

const MOST_PIXEL_RATIO = 2;

interface Props {
  readonly parts: readonly { readonly items: readonly Item[] }[];
  readonly frame: Frame;
  readonly width: number;
  readonly height: number;
}

/** A small drawing of its own, painted once for each change. What it shows is told elsewhere in words. */
export function Painted({ parts, frame, width, height }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const shown = useStore(theme, (t) => t.shown);
  useLayoutEffect(() => {
    const element = canvas.current;
    const ctx = element?.getContext('2d');
    if (!element || !ctx) return;
    const ratio = Math.min(devicePixelRatio, MOST_PIXEL_RATIO);
    element.width = Math.round(width * ratio);
    element.height = Math.round(height * ratio);
    ctx.setTransform(ratio, 0, 0, ratio, 0, 0);
    ctx.clearRect(0, 0, width, height);
    const look = styleOf(shown);
    for (const part of parts) paintItems(ctx, part.items, frame, look);
  }, [parts, frame, width, height, shown]);
  return <canvas ref={canvas} className="painted" style={{ width, height }} />;
}

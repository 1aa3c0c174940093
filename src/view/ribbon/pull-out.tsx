import { type CSSProperties, type KeyboardEvent, type PointerEvent, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { OUT_PX, pulled, pullOut } from './pulled.ts';

/** A press that goes no further is a tap: it pulls out, or puts back. */
const TAP_PX = 6;

export interface Pulled {
  readonly out: boolean;
  /** While the edge is dragged, as wide as it is; else as the layout says. */
  readonly style: CSSProperties | undefined;
  readonly setWidth: (px: number | null) => void;
}

export function usePulled(): Pulled {
  const out = useStore(pulled, (s) => s.out);
  const [width, setWidth] = useState<number | null>(null);
  return { out, style: width === null ? undefined : { width }, setWidth };
}

/** The edge of the ribbon: dragged out and back, tapped, or moved with the arrows. */
export function PullOut({ pulled: { out, setWidth } }: { readonly pulled: Pulled }) {
  const grab = useRef<{ readonly id: number; readonly x: number; readonly width: number; px: number | null } | null>(
    null,
  );
  /** 1 where pulling out leads to the right; -1 where the ribbon stands at the right. */
  const sign = (e: { readonly currentTarget: HTMLElement }): 1 | -1 => {
    const ribbon = e.currentTarget.parentElement?.querySelector('.ribbon')?.getBoundingClientRect();
    return ribbon !== undefined && ribbon.left > innerWidth / 2 ? -1 : 1;
  };
  const down = (e: PointerEvent<HTMLButtonElement>): void => {
    const ribbon = e.currentTarget.parentElement?.querySelector('.ribbon');
    e.currentTarget.setPointerCapture(e.pointerId);
    grab.current = { id: e.pointerId, x: e.clientX, width: ribbon?.clientWidth ?? 0, px: null };
  };
  const move = (e: PointerEvent<HTMLButtonElement>): void => {
    const g = grab.current;
    if (!g || g.id !== e.pointerId) return;
    const by = (e.clientX - g.x) * sign(e);
    if (g.px === null && Math.abs(by) < TAP_PX) return;
    g.px = Math.min(OUT_PX, Math.max(out ? 60 : g.width, g.width + by));
    setWidth(g.px);
  };
  const over = (tapped: boolean): void => {
    const g = grab.current;
    grab.current = null;
    setWidth(null);
    if (!g) return;
    if (g.px !== null) pullOut(out ? g.px > g.width - (OUT_PX - 108) / 3 : g.px > g.width + (OUT_PX - 108) / 3);
    else if (tapped) pullOut(!out);
  };
  const key = (e: KeyboardEvent<HTMLButtonElement>): void => {
    const away = sign(e) === 1 ? 'ArrowRight' : 'ArrowLeft';
    const back = sign(e) === 1 ? 'ArrowLeft' : 'ArrowRight';
    if (e.key !== away && e.key !== back) return;
    e.preventDefault();
    pullOut(e.key === away);
  };
  return (
    <button
      type="button"
      className="ribbon-pull"
      aria-expanded={out}
      aria-label={out ? 'Put the long section back' : 'Pull out the long section'}
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={() => over(true)}
      onPointerCancel={() => over(false)}
      onKeyDown={(e) => {
        key(e);
        if (e.key === 'Enter' || e.key === ' ') {
          e.preventDefault();
          pullOut(!out);
        }
      }}
    >
      <span />
    </button>
  );
}

import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { useScreen } from '../app/use-session.ts';
import { setShare } from './beside.ts';
import { LEAST_SHARE, MOST_SHARE } from './plan-share.ts';

const STEP = 5;
const KEYS: Readonly<Record<string, (share: number) => number>> = {
  ArrowLeft: (s) => s - STEP,
  ArrowRight: (s) => s + STEP,
  Home: () => LEAST_SHARE,
  End: () => MOST_SHARE,
};

/** Parts the plan from what stands beside it: dragged, or stepped with keys; the device keeps where it was left. */
export function BesideBar() {
  const share = useScreen((s) => s.planShare);
  const held = useRef<number | null>(null);
  const move = (e: PointerEvent<HTMLElement>): void => {
    const all = e.currentTarget.parentElement?.getBoundingClientRect();
    if (held.current !== e.pointerId || !all || all.width === 0) return;
    setShare(((e.clientX - all.left) / all.width) * 100);
  };
  const key = (e: KeyboardEvent): void => {
    const to = KEYS[e.key];
    if (!to || e.ctrlKey || e.metaKey || e.altKey) return;
    e.preventDefault();
    setShare(to(share));
  };
  return (
    <hr
      className="beside-bar"
      tabIndex={0}
      aria-orientation="vertical"
      aria-label="Width of the plan"
      aria-valuenow={share}
      aria-valuemin={LEAST_SHARE}
      aria-valuemax={MOST_SHARE}
      aria-valuetext={`${share} of 100`}
      onKeyDown={key}
      onPointerDown={(e) => {
        e.currentTarget.setPointerCapture(e.pointerId);
        held.current = e.pointerId;
      }}
      onPointerMove={move}
      onPointerUp={() => {
        held.current = null;
      }}
      onPointerCancel={() => {
        held.current = null;
      }}
    />
  );
}

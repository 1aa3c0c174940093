import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import { PEN_STAYS_MS } from '../../editor/input/arbiter.ts';
import { handSettings } from './hand-settings.ts';
import { touched } from './touched.ts';

/** True while fingers only move the paper: where the pen is told to draw, and for a while after one was seen. */
export function usePenDraws(): boolean {
  const use = useStore(handSettings, (s) => s.pen);
  const [seen, setSeen] = useState(false);
  useEffect(() => {
    let timer = 0;
    const stop = touched.subscribe(({ last }) => {
      if (last?.pointerType !== 'pen') return;
      clearTimeout(timer);
      setSeen(true);
      timer = window.setTimeout(() => setSeen(false), PEN_STAYS_MS);
    });
    return () => {
      clearTimeout(timer);
      stop();
    };
  }, []);
  return use === 'pen' || (use === 'auto' && seen);
}

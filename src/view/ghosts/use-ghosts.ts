import { useEffect, useMemo, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { Box, View } from '../../drawing/display-list.ts';
import { useEditorState } from '../app/use-session.ts';
import type { Part } from '../stage/painted-group.tsx';
import type { ghostParts } from './ghost-parts.ts';
import { ghosts, hidesStripped } from './ghosts.ts';

const NONE: readonly Part[] = [];

const meets = (a: Box, b: Box): boolean => a.minX <= b.maxX && a.maxX >= b.minX && a.minY <= b.maxY && a.maxY >= b.minY;

const same = (a: readonly Part[], b: readonly Part[]): boolean =>
  a.length === b.length && a.every((p, i) => p.items === b[i]?.items);

/**
 * What lies faint under a pane, as far as it is `seen`. The same list until something of it changes, so that a pipe that
 * moves on this floor draws nothing of the floor below again. Fetched when something is first to be shown.
 */
export function useGhosts(view: View, seen: Box): readonly Part[] {
  const shown = useStore(ghosts);
  const plan = useEditorState((s) => s.plan);
  const chosen = useEditorState((s) => s.chosen);
  const [make, setMake] = useState<typeof ghostParts | null>(null);
  const any = shown.below || shown.above || shown.other !== null;
  useEffect(() => {
    if (!any) return;
    let wanted = true;
    import('./ghost-parts.ts').then(
      (m) => wanted && setMake(() => m.ghostParts),
      // Without the network it comes with the next start; the drawing is whole without it.
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [any]);
  const all = useMemo(
    () => (any && make ? make(plan, view, chosen, shown) : NONE),
    [any, make, plan, view, chosen, shown],
  ) as ReturnType<typeof ghostParts>;
  const kept = useRef<readonly Part[]>(NONE);
  return useMemo(() => {
    const now = all.filter((p) => meets(p.fragment.box, seen));
    if (!same(kept.current, now)) kept.current = now;
    return kept.current;
  }, [all, seen]);
}

/** True while what comes out is left to the ghost of what was there before. */
export function useStrippedHidden(): boolean {
  const shown = useStore(ghosts);
  return useEditorState((s) => hidesStripped(s.plan, s.chosen, shown));
}

import { createStore } from 'zustand/vanilla';
import type { PointerInput } from '../../editor/editor-api.ts';
import type { PaneName } from '../stage/draw-counts.ts';

/** What the drawing last heard of a pointer, for those who show something beside it; null where all were lost. */
export const touched = createStore<{ readonly last: PointerInput | null }>(() => ({ last: null }));

/** Told each time a live layer has been painted. */
export const livePainted = new Set<(pane: PaneName) => void>();

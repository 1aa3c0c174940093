import type { View } from '../drawing/display-list.ts';
import type { Pane, Panes } from './editor-api.ts';

const WIDTH_PX = 1000;
const HEIGHT_PX = 700;
const MM_PER_PX = 10;

export const planView = (storey: string, turnDeg = 0): View =>
  turnDeg === 0 ? { kind: 'plan', storey } : { kind: 'plan', storey, turnDeg };

export function startPanes(storey: string): Panes {
  const camera = { centre: [0, 0] as const, mmPerPx: MM_PER_PX };
  return {
    plan: { view: planView(storey), camera, width: WIDTH_PX, height: HEIGHT_PX },
    face: null,
    active: 'plan',
    flat: null,
  };
}

export const storeyOf = (panes: Panes): string => (panes.plan.view.kind === 'plan' ? panes.plan.view.storey : '');

/** Degrees by which the house lies turned in the plan. */
export const turnOf = ({ plan: { view } }: Panes): number => (view.kind === 'plan' ? (view.turnDeg ?? 0) : 0);

export function withPane(panes: Panes, which: 'plan' | 'face', change: (pane: Pane) => Pane): Panes {
  const pane = panes[which];
  return pane ? { ...panes, [which]: change(pane) } : panes;
}

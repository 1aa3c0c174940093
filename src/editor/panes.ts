import { wallSide } from '../geometry/hosting.ts';
import type { Plan } from '../plan/plan.ts';
import type { Pane, Panes } from './editor-api.ts';
import { workPlane } from './input/work-plane.ts';

const WIDTH_PX = 1000;
const HEIGHT_PX = 700;
const MM_PER_PX = 10;

export function startPanes(storey: string): Panes {
  const camera = { centre: [0, 0] as const, mmPerPx: MM_PER_PX };
  return {
    plan: { view: { kind: 'plan', storey }, camera, width: WIDTH_PX, height: HEIGHT_PX },
    face: null,
    active: 'plan',
  };
}

export const storeyOf = (panes: Panes): string => (panes.plan.view.kind === 'plan' ? panes.plan.view.storey : '');

export function withPane(panes: Panes, which: 'plan' | 'face', change: (pane: Pane) => Pane): Panes {
  const pane = panes[which];
  return pane ? { ...panes, [which]: change(pane) } : panes;
}

/** The wall's face at the scale of the plan, with its middle in the middle. Undefined where the wall is gone. */
export function facePane(plan: Plan, panes: Panes, wall: string, side: 'left' | 'right'): Pane | undefined {
  const record = plan.walls[wall];
  const view = { kind: 'face', wall, side } as const;
  const plane = workPlane(plan, view);
  const storey = record && plan.storeys[record.storey];
  if (!record || !plane || !storey) return undefined;
  const { start, along, lengthMm } = wallSide(record, side);
  const middle = { x: start.x + (along.x * lengthMm) / 2, y: start.y + (along.y * lengthMm) / 2 };
  const centre = plane.onto({ ...middle, z: storey.floorMm + storey.ceilingMm / 2 });
  const { width, height, camera } = panes.plan;
  return { view, camera: { centre, mmPerPx: camera.mmPerPx }, width, height };
}

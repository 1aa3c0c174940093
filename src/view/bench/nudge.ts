import type { Editor, Selected } from '../../editor/editor-api.ts';
import { wayInHouse, workPlane } from '../../editor/input/work-plane.ts';

const MOVABLE: ReadonlySet<string> = new Set(['walls', 'points', 'runs', 'legs', 'nodes', 'items']);

/** Rooms, voids and what else has a shape of its own are changed by their forms. */
export const isMovable = ({ map }: Selected): boolean => MOVABLE.has(map);

/**
 * Moves what is chosen by so much, x to the right and y up as it is seen in the pane last touched, z in height, as one
 * step.
 */
export function nudge(editor: Editor, selection: readonly Selected[], dx: number, dy: number, dz = 0): void {
  const { plan, panes } = editor.store.getState();
  const plane = workPlane(plan, (panes[panes.active] ?? panes.plan).view);
  if (!plane) return;
  const by = wayInHouse(plane, [dx, dy]);
  editor.run('things.move', { things: selection.filter(isMovable), by: { ...by, z: by.z + dz } });
}

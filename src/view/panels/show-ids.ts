import type { Editor, Selected } from '../../editor/editor-api.ts';
import type { Plan } from '../../plan/plan.ts';

const MAPS: readonly Selected['map'][] = [
  'runs',
  'legs',
  'points',
  'walls',
  'openings',
  'voids',
  'rooms',
  'items',
  'stretches',
  'nodes',
  'roofs',
  'grounds',
  'blobRefs',
];

/** The records of a plan that some ids name; ids of nothing in it are left out. */
export function selectedOf(plan: Plan, ids: readonly string[]): Selected[] {
  const found: Selected[] = [];
  for (const id of ids) {
    const map = MAPS.find((m) => id in plan[m]);
    if (map !== undefined) found.push({ map, id });
  }
  return found;
}

/** Chooses what a row is about, so that the drawing lights it up. */
export function showIds(editor: Editor, ids: readonly string[]): void {
  editor.select(selectedOf(editor.store.getState().plan, ids));
}

import { pointKinds } from '../../catalogue/point-kinds.ts';
import type { Fragment } from '../../drawing/display-list.ts';
import { fragments } from '../../drawing/fragments.ts';
import type { EditorState } from '../../editor/editor-api.ts';
import { workPlane } from '../../editor/input/work-plane.ts';

/** A plan that shows so much of a wall is not looking at any one place of it. */
const ALL_OF_IT = 0.7;

function middle(found: readonly Fragment[]): number | undefined {
  if (found.length === 0) return undefined;
  const from = Math.min(...found.map((f) => f.box.minX));
  return (from + Math.max(...found.map((f) => f.box.maxX))) / 2;
}

/** Ids of what is chosen: of a run, those of its pipes. */
function chosenIds({ plan, selection }: EditorState): ReadonlySet<string> {
  const ids = new Set(selection.map((s) => s.id));
  for (const map of ['legs', 'stretches'] as const) {
    for (const pipe of Object.values(plan[map])) if (ids.has(pipe.run)) ids.add(pipe.id);
  }
  return ids;
}

/**
 * Where along the face a wall is looked at, mm from its left end: at what is chosen; where the plan shows the whole wall,
 * at its appliance, else at its pipes; else at what the plan has in its middle.
 */
export function lookedAt(state: EditorState, lengthMm: number): number {
  const { plan, panes, chosen } = state;
  const view = panes.face?.view;
  const plane = view && workPlane(plan, view);
  if (!plane) return lengthMm / 2;
  const drawn = fragments(plan, view, chosen);
  const ids = chosenIds(state);
  const picked = middle(drawn.filter((f) => ids.has(f.id)));
  if (picked !== undefined) return picked;
  const { camera, width } = panes.plan;
  if (width * camera.mmPerPx >= lengthMm * ALL_OF_IT) {
    const appliances = drawn.filter((f) => {
      const point = f.map === 'points' ? plan.points[f.id] : undefined;
      return point && pointKinds.get(point.kind)?.group === 'appliance';
    });
    const at = middle(appliances.slice(0, 1)) ?? middle(drawn.filter((f) => f.layer === 'run'));
    if (at !== undefined) return at;
  }
  const below = workPlane(plan, panes.plan.view);
  return below ? plane.onto(below.place(camera.centre, 0))[0] : lengthMm / 2;
}

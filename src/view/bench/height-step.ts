import { ribbon } from '../../drawing/ribbon.ts';
import type { Editor, EditorState } from '../../editor/editor-api.ts';
import { workPlane } from '../../editor/input/work-plane.ts';
import { storeyOf } from '../../editor/panes.ts';
import { resolveHeight } from '../../geometry/heights.ts';
import { nodePlace } from '../../geometry/places.ts';
import { buildNetwork } from '../../network/graph.ts';
import type { HeightRef, Xy } from '../../plan/records/parts.ts';
import { usualHeights } from '../ribbon/levels.ts';
import { chosenRun } from '../ribbon/use-ribbon.ts';

/** Levels nearer than this are one step, mm. */
const SAME_MM = 1;
/** Only the levels of the section are wanted here, which do not hang on its scale. */
const SECTION = { widthMm: 1000, mmPerPaperMm: 50 } as const;

/** Where the work is: at the end that goes on, else in the middle of the plan. */
function workedAt({ plan, inHand, panes }: EditorState): Xy {
  const end = inHand.goesOn === null ? undefined : plan.nodes[inHand.goesOn];
  const at = end && nodePlace(plan, end)?.at;
  return at ?? workPlane(plan, panes.plan.view)?.place(panes.plan.camera.centre, 0) ?? { x: 0, y: 0 };
}

/** The next place up or down from the height in hand, as the ribbon has them, with its name; null where there is none. */
export function nextLevel(
  state: EditorState,
  by: 1 | -1,
): { readonly label: string; readonly height: HeightRef } | null {
  const { plan, chosen, inHand, panes } = state;
  const storey = storeyOf(panes);
  const z = resolveHeight(plan, inHand.height)?.z;
  if (z === undefined) return null;
  const { levels } = ribbon(plan, buildNetwork(plan, chosen), {
    ...SECTION,
    storey,
    at: workedAt(state),
    run: chosenRun(state),
    levels: usualHeights(storey),
  });
  const further = levels.filter((l) => (l.z - z) * by > SAME_MM);
  return (by > 0 ? further[0] : further.at(-1)) ?? null;
}

const MOVED = new Set(['walls', 'points', 'runs', 'legs', 'nodes', 'items']);

/** Is something chosen that these keys move, and not what is in hand? */
export const movesChosen = ({ tool, selection }: EditorState): boolean =>
  tool === 'select' && selection.some((s) => MOVED.has(s.map));

/** One step up or down: of what is chosen by so many mm, else of the height in hand to its next place. Gives words for it. */
export function stepHeight(editor: Editor, by: 1 | -1, stepMm: number): string | null {
  const state = editor.store.getState();
  if (movesChosen(state)) {
    const things = state.selection.filter((s) => MOVED.has(s.map));
    const outcome = editor.run('things.move', { things, by: { x: 0, y: 0, z: by * stepMm } });
    return outcome.ok ? `${stepMm} ${by > 0 ? 'higher' : 'lower'}` : null;
  }
  const level = nextLevel(state, by);
  if (!level) return by > 0 ? 'nothing higher on this floor' : 'nothing lower on this floor';
  editor.setInHand({ height: level.height });
  return `height: ${level.label}`;
}

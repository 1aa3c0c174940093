import { useMemo } from 'react';
import { type Ribbon, ribbon } from '../../drawing/ribbon.ts';
import type { EditorState } from '../../editor/editor-api.ts';
import { workPlane } from '../../editor/input/work-plane.ts';
import { nodePlace } from '../../geometry/places.ts';
import { buildNetwork } from '../../network/graph.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { useEditorState } from '../app/use-session.ts';
import { usualHeights } from './levels.ts';

/** The section is cut anew when the middle of the drawing has moved by so much. */
const STEP_MM = 500;

/** The run that is unrolled: the chosen one, or the one a chosen leg, stretch or corner belongs to. */
export function chosenRun(s: Pick<EditorState, 'plan' | 'selection'>): string | null {
  for (const { map, id } of s.selection) {
    if (map === 'runs') return id;
    if (map === 'legs') return s.plan.legs[id]?.run ?? null;
    if (map === 'stretches') return s.plan.stretches[id]?.run ?? null;
    if (map === 'nodes') return Object.values(s.plan.legs).find((l) => l.a === id || l.b === id)?.run ?? null;
  }
  return null;
}

/** Middle of the longest level leg of a run: where its section is cut. */
function middleOf(s: Pick<EditorState, 'plan'>, run: string): Xy | null {
  let best: { readonly at: Xy; readonly mm: number } | null = null;
  for (const leg of Object.values(s.plan.legs)) {
    if (leg.run !== run) continue;
    const [a, b] = [s.plan.nodes[leg.a], s.plan.nodes[leg.b]].map((n) => n && nodePlace(s.plan, n)?.at);
    if (!a || !b) continue;
    const mm = Math.hypot(a.x - b.x, a.y - b.y);
    if (best === null || mm > best.mm) best = { at: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, mm };
  }
  return best?.at ?? null;
}

/** The place of the house in the middle of the plan, however that is turned. */
const middleOfDrawing = ({ plan, panes }: EditorState): Xy =>
  workPlane(plan, panes.plan.view)?.place(panes.plan.camera.centre, 0) ?? { x: 0, y: 0 };

/** The heights of the storey in hand, cut where the told or chosen run goes, else in the middle of the drawing. */
export function useRibbon(
  widthMm: number,
  mmPerPaperMm: number,
  told: string | null = null,
  labelRoomMm = Number.POSITIVE_INFINITY,
): Ribbon {
  const plan = useEditorState((s) => s.plan);
  const chosen = useEditorState((s) => s.chosen);
  const storey = useEditorState((s) => (s.panes.plan.view.kind === 'plan' ? s.panes.plan.view.storey : ''));
  const picked = useEditorState(chosenRun);
  const run = told ?? picked;
  const x = useEditorState((s) => Math.round(middleOfDrawing(s).x / STEP_MM) * STEP_MM);
  const y = useEditorState((s) => Math.round(middleOfDrawing(s).y / STEP_MM) * STEP_MM);
  const network = useMemo(() => buildNetwork(plan, chosen), [plan, chosen]);
  return useMemo(() => {
    const at = (run === null ? null : middleOf({ plan }, run)) ?? { x, y };
    const levels = usualHeights(storey);
    return ribbon(plan, network, { storey, at, run, widthMm, mmPerPaperMm, labelRoomMm, levels });
  }, [plan, network, storey, run, x, y, widthMm, mmPerPaperMm, labelRoomMm]);
}

import { useMemo } from 'react';
import { type Ribbon, ribbon } from '../../drawing/ribbon.ts';
import type { EditorState } from '../../editor/editor-api.ts';
import { workPlane } from '../../editor/input/work-plane.ts';
import { pointFrame } from '../../geometry/hosting.ts';
import { nodePlace } from '../../geometry/places.ts';
import { buildNetwork } from '../../network/graph.ts';
import type { Network } from '../../network/network.ts';
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

/** The chosen leg of that run, where one is. */
export function chosenLeg(s: Pick<EditorState, 'plan' | 'selection'>): string | null {
  return s.selection.find(({ map, id }) => map === 'legs' && s.plan.legs[id] !== undefined)?.id ?? null;
}

/** Middle of the longest level leg of a run, or of the one that is chosen: where its section is cut. */
function middleOf(s: Pick<EditorState, 'plan'>, run: string, only: string | null): Xy | null {
  let best: { readonly at: Xy; readonly mm: number } | null = null;
  for (const leg of Object.values(s.plan.legs)) {
    if (leg.run !== run || (only !== null && leg.id !== only)) continue;
    const [a, b] = [s.plan.nodes[leg.a], s.plan.nodes[leg.b]].map((n) => n && nodePlace(s.plan, n)?.at);
    if (!a || !b) continue;
    const mm = Math.hypot(a.x - b.x, a.y - b.y);
    if (best === null || mm > best.mm) best = { at: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, mm };
  }
  return best?.at ?? null;
}

/** The place of the house under the cross of the keys, else in the middle of the plan, however that is turned. */
const middleOfDrawing = ({ plan, panes, cursor }: EditorState): Xy =>
  workPlane(plan, panes.plan.view)?.place(cursor?.pane === 'plan' ? cursor.at : panes.plan.camera.centre, 0) ?? {
    x: 0,
    y: 0,
  };

/** The place of a chosen thing that is no pipe; null where nothing of the kind is chosen. */
function placeOfChosen({ plan, selection }: Pick<EditorState, 'plan' | 'selection'>): Xy | null {
  for (const { map, id } of selection) {
    const point = map === 'points' ? plan.points[id] : undefined;
    const place = point && pointFrame(plan, point)?.origin;
    if (place) return { x: place.x, y: place.y };
  }
  return null;
}

export interface RibbonWithNetwork extends Ribbon {
  readonly network: Network;
}

/**
 * The heights of the storey in hand, cut under the cross of the keys, else where the told or chosen run goes, else in
 * the middle of the drawing.
 */
export function useRibbon(
  widthMm: number,
  mmPerPaperMm: number,
  told: string | null = null,
  labelRoomMm = Number.POSITIVE_INFINITY,
  long = false,
): RibbonWithNetwork {
  const plan = useEditorState((s) => s.plan);
  const chosen = useEditorState((s) => s.chosen);
  const storey = useEditorState((s) => (s.panes.plan.view.kind === 'plan' ? s.panes.plan.view.storey : ''));
  const picked = useEditorState(chosenRun);
  const leg = useEditorState(chosenLeg);
  const selection = useEditorState((s) => s.selection);
  const run = told ?? picked;
  const crossed = useEditorState((s) => s.cursor?.pane === 'plan');
  const x = useEditorState((s) => Math.round(middleOfDrawing(s).x / STEP_MM) * STEP_MM);
  const y = useEditorState((s) => Math.round(middleOfDrawing(s).y / STEP_MM) * STEP_MM);
  const network = useMemo(() => buildNetwork(plan, chosen), [plan, chosen]);
  return useMemo(() => {
    const middle = crossed ? null : run === null ? placeOfChosen({ plan, selection }) : middleOf({ plan }, run, leg);
    const at = middle ?? { x, y };
    const levels = usualHeights(storey);
    const drawn = ribbon(plan, network, { storey, at, run, leg, widthMm, mmPerPaperMm, labelRoomMm, levels, long });
    return { ...drawn, network };
  }, [plan, network, storey, run, leg, selection, crossed, x, y, widthMm, mmPerPaperMm, labelRoomMm, long]);
}

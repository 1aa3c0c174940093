import { useMemo, useRef } from 'react';
import { annotate } from '../../drawing/annotate.ts';
import { cull } from '../../drawing/cull.ts';
import type { Box, DisplayList, PainterGroup, Vec } from '../../drawing/display-list.ts';
import { fragments } from '../../drawing/fragments.ts';
import type { Pane, PlacedFigure, Selected } from '../../editor/editor-api.ts';
import { workPlane } from '../../editor/input/work-plane.ts';
import type { Finding } from '../../report/finding.ts';
import { useEditorState } from '../app/use-session.ts';
import { figuresOf } from '../figures/placed-figures.ts';
import { useStrippedHidden } from '../ghosts/use-ghosts.ts';
import { look } from '../look/tokens.ts';
import { bandParts, handleParts } from './chosen-parts.ts';
import { sameIds, seenBox } from './culled.ts';
import type { PaneName } from './draw-counts.ts';
import { overDrawing } from './over-drawing.ts';
import type { Part } from './painted-group.tsx';

const NONE: readonly Part[] = [];
const NO_IDS: ReadonlySet<string> = new Set();
const NO_FINDINGS: readonly Finding[] = [];

/** A mark of a finding as it stands on the drawing. */
export interface PlacedMark {
  readonly key: string;
  readonly at: Vec;
  readonly offsetMm: Vec;
}

/** Everything a pane shows, by painter's group, with what lies outside left out. */
export interface Picture {
  group(group: PainterGroup): readonly Part[];
  /** Tint under what is chosen. */
  readonly band: readonly Part[];
  /** Rings over it, at what can be taken hold of. */
  readonly handles: readonly Part[];
  readonly marks: readonly PlacedMark[];
  /** Figures that can be told anew. */
  readonly figures: readonly PlacedFigure[];
}

/** Ids of records shown in their moved place while they are dragged; the same set as long as it holds the same ids. */
export function useHidden(name: PaneName): ReadonlySet<string> {
  const kept = useRef<ReadonlySet<string>>(NO_IDS);
  return useEditorState((s) => {
    const moved = s.draft !== null && s.panes[name] !== null ? s.draft.moved : NO_IDS;
    if (!sameIds(kept.current, moved)) kept.current = moved;
    return kept.current;
  });
}

type Seen = Pick<Pane, 'camera' | 'width' | 'height' | 'view'>;

/** Parts by painter's group, in their order. */
export function byGroup<T extends { readonly group: PainterGroup }>(
  items: readonly T[],
): ReadonlyMap<PainterGroup, readonly T[]> {
  const found = new Map<PainterGroup, T[]>();
  for (const item of items) {
    const group = found.get(item.group);
    if (group) group.push(item);
    else found.set(item.group, [item]);
  }
  return found;
}

/**
 * Groups that hold the very same parts as before stay the very same list, so that a change of pipes does not draw the
 * walls again.
 */
export function keepSame(
  before: ReadonlyMap<PainterGroup, readonly Part[]>,
  now: ReadonlyMap<PainterGroup, readonly Part[]>,
): ReadonlyMap<PainterGroup, readonly Part[]> {
  const kept = new Map<PainterGroup, readonly Part[]>();
  for (const [group, parts] of now) {
    const old = before.get(group);
    const same = old !== undefined && old.length === parts.length && parts.every((p, i) => p.items === old[i]?.items);
    kept.set(group, same ? old : parts);
  }
  return kept;
}

function marksOf(list: DisplayList): PlacedMark[] {
  return list.items.flatMap(({ group, id, items }) => {
    if (group !== 'finding') return [];
    const mark = items.find((i) => i.t === 'mark' && i.mark.startsWith('finding:'));
    return mark?.t === 'mark' ? [{ key: id, at: mark.at, offsetMm: mark.offsetMm ?? [0, 0] }] : [];
  });
}

/** Runs whose legs are measured on the drawing: those that are chosen, whole or in part. */
function measuredRuns(selection: readonly Selected[], runOf: (leg: string) => string | undefined): ReadonlySet<string> {
  const runs = new Set<string>();
  for (const { map, id } of selection) {
    const run = map === 'runs' ? id : map === 'legs' ? runOf(id) : undefined;
    if (run !== undefined) runs.add(run);
  }
  return runs;
}

/** What a pane shows with a camera at rest. No label goes where something else is `marked`. Labels are placed for that scale, and stay until it or the plan changes. */
export function usePicture(
  pane: Seen,
  hidden: ReadonlySet<string>,
  findings: readonly Finding[] = NO_FINDINGS,
  marked: ((mmPerPaperMm: number, visible: Box) => readonly Box[]) | null = null,
): Picture {
  const plan = useEditorState((s) => s.plan);
  const chosen = useEditorState((s) => s.chosen);
  const selection = useEditorState((s) => s.selection);
  const folded = useEditorState((s) => s.panes.face !== null);
  const faceHigh = useEditorState((s) => s.panes.face?.height ?? 0);
  const planHigh = useEditorState((s) => s.panes.plan.height);
  const { view } = pane;
  const stripped = !useStrippedHidden();
  const all = useMemo(() => fragments(plan, view, chosen, { stripped }), [plan, view, chosen, stripped]);
  const seen = useMemo(() => {
    const { fragments: shown } = cull(all, seenBox(pane));
    return hidden.size === 0 ? shown : shown.filter((f) => !hidden.has(f.id));
  }, [all, pane, hidden]);
  const list = useMemo(() => {
    const mmPerPaperMm = look.screen.pxPerMm * pane.camera.mmPerPx;
    const visible = seenBox(pane, 0);
    const floors = Object.values(plan.storeys).map((s) => s.name);
    const over = overDrawing(pane, folded ? { face: faceHigh, plan: planHigh } : null, floors);
    return annotate(seen, {
      plan,
      view,
      mmPerPaperMm,
      visible,
      taken: marked ? [...over, ...marked(mmPerPaperMm, visible)] : over,
      findings,
      measured: measuredRuns(selection, (leg) => plan.legs[leg]?.run),
      placed: selection.length === 1 ? selection : [],
    });
  }, [seen, plan, view, pane, findings, selection, folded, faceHigh, planHigh, marked]);
  const before = useRef<ReadonlyMap<PainterGroup, readonly Part[]>>(new Map());
  return useMemo(() => {
    const groups = keepSame(before.current, byGroup(list.items));
    before.current = groups;
    return {
      group: (group) => groups.get(group) ?? NONE,
      band: bandParts(plan, seen, selection),
      handles: handleParts(plan, workPlane(plan, view), seen, selection),
      marks: marksOf(list),
      figures: figuresOf(list),
    };
  }, [list, plan, view, seen, selection]);
}

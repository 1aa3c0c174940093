import type { Fragment, Item } from '../../drawing/display-list.ts';
import type { Selected } from '../../editor/editor-api.ts';
import { handlesOf } from '../../editor/hit/handles.ts';
import type { WorkPlane } from '../../editor/input/work-plane.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Part } from './painted-group.tsx';

/** The tint band reaches this far past the pen on each side, paper mm. */
const BAND_MM = 1.1;

/** Ids of the fragments that show a chosen record: a run shows as its legs and stretches. */
export function shownIds(plan: Plan, selection: readonly Selected[]): ReadonlySet<string> {
  const ids = new Set<string>();
  for (const { map, id } of selection) {
    ids.add(id);
    if (map !== 'runs') continue;
    for (const l of Object.values(plan.legs)) if (l.run === id) ids.add(l.id);
    for (const s of Object.values(plan.stretches)) if (s.run === id) ids.add(s.id);
  }
  return ids;
}

function band(item: Item): Item | null {
  if (item.t === 'line') {
    const { pen } = item.style;
    const { trim: _trim, gaps: _gaps, ...rest } = item;
    return { ...rest, style: { ink: 'chosen', pen: pen + 2 * BAND_MM, dash: [], fit: false, cap: 'round' } };
  }
  if (item.t === 'area' && item.edge) {
    return {
      t: 'area',
      rings: item.rings,
      fill: 'none',
      edge: { ...item.edge, ink: 'chosen', pen: item.edge.pen + 2 * BAND_MM },
    };
  }
  return null;
}

/** Chosen things under the pipes: a band of tint along what they are drawn of, and rings at the corners that can be taken. */
export function chosenParts(plan: Plan, all: readonly Fragment[], selection: readonly Selected[]): readonly Part[] {
  if (selection.length === 0) return [];
  const ids = shownIds(plan, selection);
  return all
    .filter((f) => ids.has(f.id))
    .map((f) => ({ items: f.items.flatMap((i) => band(i) ?? []) }))
    .filter((p) => p.items.length > 0);
}

/** The rings, over everything else that is drawn. */
export function handleParts(plan: Plan, plane: WorkPlane, selection: readonly Selected[]): readonly Part[] {
  const items: Item[] = handlesOf(plan, plane, selection).map((h) => ({
    t: 'mark',
    mark: 'handle',
    at: h.at,
    turnDeg: 0,
    ink: 'accent',
  }));
  return items.length === 0 ? [] : [{ items }];
}

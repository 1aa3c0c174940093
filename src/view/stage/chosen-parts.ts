import { spanItems } from '../../drawing/building/span-items.ts';
import type { Fragment, Item, LineItem, LineStyle } from '../../drawing/display-list.ts';
import type { Selected } from '../../editor/editor-api.ts';
import { handlesOf } from '../../editor/hit/handles.ts';
import type { WorkPlane } from '../../editor/input/work-plane.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Part } from './painted-group.tsx';

const NONE: readonly Part[] = [];
/** The tint reaches this far past the pen on each side, paper mm. */
const BAND_MM = 1.1;
const OUTLINE: LineStyle = { ink: 'accent', pen: 0.5, dash: [], fit: false };

/** Legs and stretches that are meant: their own, and those of chosen runs. */
function chosenPipes(plan: Plan, selection: readonly Selected[]): ReadonlySet<string> {
  const ids = new Set<string>();
  const runs = new Set<string>();
  for (const { map, id } of selection) {
    if (map === 'runs') runs.add(id);
    else if (map === 'legs' || map === 'stretches') ids.add(id);
  }
  if (runs.size === 0) return ids;
  for (const map of ['legs', 'stretches'] as const) {
    for (const pipe of Object.values(plan[map])) if (runs.has(pipe.run)) ids.add(pipe.id);
  }
  return ids;
}

const band = (line: LineItem): Item => ({
  t: 'line',
  pts: line.pts,
  style: { ink: 'chosen', pen: line.style.pen + 2 * BAND_MM, dash: [], fit: false, cap: 'round' },
  ...(line.spread ? { spread: line.spread } : {}),
});

/** Under the runs: a band of tint along each chosen pipe. Everything else keeps its full colour and weight. */
export function bandParts(plan: Plan, fragments: readonly Fragment[], selection: readonly Selected[]): readonly Part[] {
  if (selection.length === 0) return NONE;
  const pipes = chosenPipes(plan, selection);
  const items = fragments.flatMap((f) =>
    f.layer === 'run' && pipes.has(f.id) ? f.items.flatMap((i) => (i.t === 'line' ? [band(i)] : [])) : [],
  );
  return items.length === 0 ? NONE : [{ items }];
}

/** Of a void only its own edge: joists keep their manner of line. */
const shownOf = (f: Fragment): readonly Item[] =>
  f.map === 'voids' ? f.items.filter((i) => i.t === 'area').slice(0, 1) : f.items;

function outlined(item: Item): Item[] {
  if (item.t === 'area') return [{ t: 'area', rings: item.rings, fill: 'none', edge: OUTLINE }];
  return item.t === 'line' ? [{ ...item, style: { ...OUTLINE, pen: Math.max(OUTLINE.pen, item.style.pen) } }] : [];
}

/** Over everything: the outline of what is not a pipe, and rings at what can be taken hold of. */
export function handleParts(
  plan: Plan,
  plane: WorkPlane | undefined,
  fragments: readonly Fragment[],
  selection: readonly Selected[],
): readonly Part[] {
  if (selection.length === 0) return NONE;
  const chosen = new Set(selection.filter((s) => s.map !== 'runs' && s.map !== 'legs').map((s) => s.id));
  const items: Item[] = fragments.flatMap((f) =>
    chosen.has(f.id) && f.layer !== 'run' ? shownOf(f).flatMap(outlined) : [],
  );
  if (plane?.kind === 'plan') {
    for (const { map, id } of selection) {
      const v = map === 'voids' ? plan.voids[id] : undefined;
      if (v) items.push(...spanItems(v, (p) => plane.onto({ ...p, z: 0 })));
    }
  }
  for (const { at } of plane ? handlesOf(plan, plane, selection) : []) {
    items.push({ t: 'mark', mark: 'handle', at, turnDeg: 0, ink: 'accent' });
  }
  return items.length === 0 ? NONE : [{ items }];
}

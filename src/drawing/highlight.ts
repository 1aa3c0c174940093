import { wallLength } from '../geometry/wall-frame.ts';
import type { Plan } from '../plan/plan.ts';
import { bodyPart } from './building/wall-bodies.ts';
import type { Fragment, Item, LineItem, LineStyle, Spread, Vec, View } from './display-list.ts';

/** A record that is chosen, by the map it is in. */
export interface Chosen {
  readonly map: string;
  readonly id: string;
}

export interface Highlight {
  /** Painted before the runs: the band of tint that pipes lie on. */
  readonly under: readonly Item[];
  /** Painted after everything: handles and outlines. */
  readonly over: readonly Item[];
}

/** The band is this much wider than its pen, each side. */
const BAND_MM = 1.1;
const OUTLINE: LineStyle = { ink: 'accent', pen: 0.5, dash: [], fit: false };

/** Legs and stretches that are meant: their own, and those of chosen runs. */
function chosenPipes(plan: Plan, chosen: readonly Chosen[]): ReadonlySet<string> {
  const runs = new Set(chosen.filter((c) => c.map === 'runs').map((c) => c.id));
  const ids = new Set(chosen.filter((c) => c.map === 'legs' || c.map === 'stretches').map((c) => c.id));
  if (runs.size > 0) {
    for (const map of ['legs', 'stretches'] as const) {
      for (const pipe of Object.values(plan[map])) if (runs.has(pipe.run)) ids.add(pipe.id);
    }
  }
  return ids;
}

const band = (line: LineItem): Item => ({
  t: 'line',
  pts: line.pts,
  style: { ink: 'chosen', pen: line.style.pen + 2 * BAND_MM, dash: [], fit: false, cap: 'round' },
  ...(line.spread ? { spread: line.spread } : {}),
});

function handle(at: Vec, spread: Spread | undefined): Item {
  return {
    t: 'mark',
    mark: 'handle',
    at,
    turnDeg: 0,
    ink: 'accent',
    ...(spread && spread.length > 0 ? { spread } : {}),
  };
}

/** Edges of areas and lines of a fragment, in the accent. */
function outlined(fragment: Fragment): Item[] {
  return fragment.items.flatMap((item): Item[] => {
    if (item.t === 'area') return [{ t: 'area', rings: item.rings, fill: 'none', edge: OUTLINE }];
    return item.t === 'line' ? [{ ...item, style: { ...OUTLINE, pen: Math.max(OUTLINE.pen, item.style.pen) } }] : [];
  });
}

function wallOutlines(plan: Plan, view: View, chosen: readonly Chosen[]): Item[] {
  if (view.kind !== 'plan') return [];
  return chosen.flatMap(({ map, id }): Item[] => {
    const wall = map === 'walls' ? plan.walls[id] : undefined;
    if (!wall || wall.storey !== view.storey) return [];
    return [{ t: 'area', rings: [bodyPart(wall, 0, wallLength(wall))], fill: 'none', edge: OUTLINE }];
  });
}

/** How what is chosen shows: everything else keeps its full colour and weight. */
export function highlight(
  plan: Plan,
  view: View,
  fragments: readonly Fragment[],
  chosen: readonly Chosen[],
): Highlight {
  if (chosen.length === 0) return { under: [], over: [] };
  const pipes = chosenPipes(plan, chosen);
  const others = new Set(chosen.map((c) => `${c.map} ${c.id}`));
  const under: Item[] = [];
  const over: Item[] = wallOutlines(plan, view, chosen);
  const handles = new Map<string, Item>();
  for (const fragment of fragments) {
    const isPipe = fragment.map === 'legs' || fragment.map === 'stretches';
    if (isPipe && pipes.has(fragment.id)) {
      for (const item of fragment.items) {
        if (item.t === 'line' && fragment.layer === 'run') {
          under.push(band(item));
          item.pts.forEach((p, i) => {
            handles.set(`${p[0].toFixed(1)} ${p[1].toFixed(1)}`, handle(p, item.spread?.[i]));
          });
        }
      }
    } else if (others.has(`${fragment.map} ${fragment.id}`) && fragment.map !== 'walls')
      over.push(...outlined(fragment));
  }
  return { under, over: [...over, ...handles.values()] };
}

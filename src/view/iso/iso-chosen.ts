import type { Fragment, Item, LineItem } from '../../drawing/display-list.ts';
import type { IsoDrawing } from '../../drawing/iso/iso-drawing.ts';
import type { Selected } from '../../editor/editor-api.ts';

/** The tint reaches this far past the pen on each side, paper mm. */
const BAND_MM = 1.1;

const band = (line: LineItem): Item => ({
  t: 'line',
  pts: line.pts,
  style: { ink: 'chosen', pen: line.style.pen + 2 * BAND_MM, dash: [], fit: false, cap: 'round' },
});

const outlined = (f: Fragment): Item[] =>
  f.items.flatMap((i): Item[] =>
    i.t === 'area'
      ? [{ t: 'area', rings: i.rings, fill: 'none', edge: { ink: 'accent', pen: 0.5, dash: [], fit: false } }]
      : [],
  );

export interface IsoChosen {
  /** Under the pipes. */
  readonly band: readonly Item[];
  /** Over everything. */
  readonly over: readonly Item[];
}

/** What is chosen, as on the plan: a band along pipes, with rings at the corners of a single one; an outline about a thing. */
export function isoChosen(drawing: IsoDrawing, selection: readonly Selected[]): IsoChosen {
  if (selection.length === 0) return { band: [], over: [] };
  const ids = new Map<Selected['map'], Set<string>>();
  for (const { map, id } of selection) ids.set(map, (ids.get(map) ?? new Set()).add(id));
  const has = (map: Selected['map'], id: string): boolean => ids.get(map)?.has(id) ?? false;
  const legs = drawing.legs.filter((l) => has('runs', l.run) || has(l.map, l.record.id));
  const pipes = new Set(legs.map((l) => l.record.id));
  const under = drawing.fragments.flatMap((f) =>
    f.layer === 'run' && pipes.has(f.id) ? f.items.flatMap((i) => (i.t === 'line' ? [band(i)] : [])) : [],
  );
  const rings = new Map<string, Item>();
  const ring = (key: string, at: IsoDrawing['legs'][number]['a']): void => {
    rings.set(key, { t: 'mark', mark: 'handle', at, turnDeg: 0, ink: 'accent' });
  };
  for (const leg of drawing.legs) {
    for (const [node, vertex, at] of [
      [leg.record.a, leg.vertexA, leg.a],
      [leg.record.b, leg.vertexB, leg.b],
    ] as const) {
      if (has('nodes', node) || has(leg.map, leg.record.id)) ring(vertex, at);
    }
  }
  for (const { id, at } of drawing.items) if (has('items', id)) ring(`item ${id}`, at);
  const things = drawing.fragments.filter((f) => f.map === 'points' && has('points', f.id));
  return { band: under, over: [...things.flatMap(outlined), ...rings.values()] };
}

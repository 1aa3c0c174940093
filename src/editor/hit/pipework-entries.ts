import type { View } from '../../drawing/display-list.ts';
import { NEAR_FACE_MM } from '../../drawing/pipes/pipes-in-view.ts';
import { nodePlace } from '../../geometry/places.ts';
import { wallLength } from '../../geometry/wall-frame.ts';
import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { WorkPlane } from '../input/work-plane.ts';
import { boxOf, type Shape } from './shapes.ts';

export type EntryKind =
  | 'node'
  | 'connection'
  | 'leg'
  | 'stretch'
  | 'item'
  | 'point'
  | 'opening'
  | 'wall'
  | 'void'
  | 'room'
  | 'roof'
  | 'ground'
  | 'photo';

/** A record as it lies in a view, ready for the box index. */
export interface Entry {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
  readonly kind: EntryKind;
  readonly id: string;
  /** Point of a connection. */
  readonly owner: string | null;
  readonly service: string | null;
  readonly shape: Shape;
  /** Ends in space: one place for spots, two for lines. */
  readonly ends: readonly Xyz[];
  /** Taken out or cut off in this case: it may be chosen, but nothing catches on it. */
  readonly gone: boolean;
}

interface Extra {
  readonly owner?: string | null;
  readonly service?: string | null;
  readonly ends?: readonly Xyz[];
  readonly gone?: boolean;
}

export function entry(kind: EntryKind, id: string, shape: Shape, extra: Extra = {}): Entry {
  const { minX, minY, maxX, maxY } = boxOf(shape);
  const { owner = null, service = null, ends = [], gone = false } = extra;
  return { minX, minY, maxX, maxY, kind, id, owner, service, shape, ends, gone };
}

/** What the entries of one view are made from. */
export interface Gather {
  readonly plan: Plan;
  readonly view: View;
  readonly plane: WorkPlane;
  readonly alive: Alive;
  readonly storey: string | undefined;
  readonly span: number;
  /** How far behind a face something still shows on it: as deep as its wall. */
  readonly behindMm: number;
}

export function gather(plan: Plan, view: View, plane: WorkPlane, alive: Alive): Gather {
  const wall = view.kind === 'face' ? plan.walls[view.wall] : undefined;
  const storey = view.kind === 'plan' ? view.storey : wall?.storey;
  return { plan, view, plane, alive, storey, span: wall ? wallLength(wall) : 0, behindMm: wall?.thicknessMm ?? 0 };
}

interface Spot {
  readonly at: Xyz;
  readonly storey: string;
}

/** On this floor, or near enough to this side of the wall. */
export function shows(g: Gather, p: Spot): boolean {
  if (g.view.kind === 'plan') return p.storey === g.storey;
  const depth = g.plane.depth(p.at);
  const [s] = g.plane.onto(p.at);
  return depth >= -g.behindMm && depth <= NEAR_FACE_MM && s >= -1 && s <= g.span + 1;
}

type Fated = 'nodes' | 'legs' | 'stretches' | 'items' | 'points' | 'walls' | 'openings' | 'voids';

/** Standing, or gone in this case but part of it; null for what belongs elsewhere. */
export function standing(g: Gather, map: Fated, id: string): { gone: boolean } | null {
  if (g.alive.has(map, id)) return { gone: false };
  const state = g.alive.state(id);
  return g.alive.case.when === 'after' && (state === 'strip' || state === 'cap') ? { gone: true } : null;
}

function nodeEntry(g: Gather, id: string): Entry | null {
  const node = g.plan.nodes[id];
  const place = node && node.place.on === 'storey' ? nodePlace(g.plan, node) : undefined;
  const life = place && shows(g, place) ? standing(g, 'nodes', id) : null;
  if (!place || !life) return null;
  return entry('node', id, { is: 'spot', at: g.plane.onto(place.at) }, { gone: life.gone, ends: [place.at] });
}

function pipeEntry(g: Gather, map: 'legs' | 'stretches', id: string): Entry | null {
  const pipe = g.plan[map][id];
  const [na, nb] = pipe ? [g.plan.nodes[pipe.a], g.plan.nodes[pipe.b]] : [];
  const [a, b] = [na && nodePlace(g.plan, na), nb && nodePlace(g.plan, nb)];
  if (!pipe || !a || !b || (!shows(g, a) && !shows(g, b))) return null;
  const life = standing(g, map, id);
  if (!life) return null;
  const shape: Shape = { is: 'line', a: g.plane.onto(a.at), b: g.plane.onto(b.at) };
  const service = g.plan.runs[pipe.run]?.service ?? null;
  return entry(map === 'legs' ? 'leg' : 'stretch', id, shape, { gone: life.gone, service, ends: [a.at, b.at] });
}

function itemEntry(g: Gather, id: string): Entry | null {
  const node = g.plan.nodes[g.plan.items[id]?.node ?? ''];
  const place = node && nodePlace(g.plan, node);
  const life = place && shows(g, place) ? standing(g, 'items', id) : null;
  if (!place || !life) return null;
  return entry('item', id, { is: 'spot', at: g.plane.onto(place.at) }, { gone: life.gone, ends: [place.at] });
}

export const PIPEWORK = ['nodes', 'legs', 'stretches', 'items'] as const;

/** A record of the pipework as it lies in the view; null where it does not show in it. */
export function pipeworkEntry(g: Gather, map: (typeof PIPEWORK)[number], id: string): Entry | null {
  if (map === 'nodes') return nodeEntry(g, id);
  return map === 'items' ? itemEntry(g, id) : pipeEntry(g, map, id);
}

export function* pipeworkEntries(g: Gather): Generator<Entry> {
  for (const map of PIPEWORK) {
    for (const id of Object.keys(g.plan[map])) {
      const made = pipeworkEntry(g, map, id);
      if (made) yield made;
    }
  }
}

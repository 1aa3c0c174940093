import type { Vec } from '../../drawing/display-list.ts';
import type { Selected } from '../editor-api.ts';
import type { Entry, EntryKind } from './pipework-entries.ts';
import { distanceTo } from './shapes.ts';
import { around, type ViewIndex } from './view-index.ts';

/** Something under the finger. `end` where it is the handle at one end of a chosen wall. */
export interface Hit extends Selected {
  readonly end?: 'a' | 'b';
  /** Which corner, where it is the handle at one of a chosen void. */
  readonly corner?: number;
  readonly distanceMm: number;
}

/** A place that can be dragged by itself while its owner is chosen. */
export interface Handle extends Selected {
  readonly at: Vec;
  readonly end?: 'a' | 'b';
  readonly corner?: number;
}

const MAPS: Readonly<Record<Exclude<EntryKind, 'connection'>, Selected['map']>> = {
  node: 'nodes',
  point: 'points',
  leg: 'legs',
  stretch: 'stretches',
  item: 'items',
  opening: 'openings',
  wall: 'walls',
  void: 'voids',
  room: 'rooms',
  roof: 'roofs',
  ground: 'grounds',
  photo: 'blobRefs',
};

/** Small before large, pipe before building: what can only be hit by aiming goes first. */
const RANK: Readonly<Record<EntryKind, number>> = {
  connection: 9,
  node: 1,
  photo: 1.5,
  point: 2,
  leg: 3,
  stretch: 3,
  item: 4,
  opening: 5,
  wall: 6,
  ground: 6,
  roof: 7,
  void: 7,
  room: 8,
};

const height = (e: Entry): number => Math.max(...e.ends.map((p) => p.z), Number.NEGATIVE_INFINITY);

/**
 * All that lies within `tolerance` of a place, best first: handles, then by rank, what stands before what is gone, the
 * nearer and then the higher one. Stacked pipes all come, so that a list can be offered.
 */
export function hitTest(index: ViewIndex, at: Vec, toleranceMm: number, handles: readonly Handle[] = []): Hit[] {
  const held = handles
    .map((h) => ({ ...h, distanceMm: Math.hypot(h.at[0] - at[0], h.at[1] - at[1]) }))
    .filter((h) => h.distanceMm <= toleranceMm)
    .sort((a, b) => a.distanceMm - b.distanceMm)
    .map(({ at: _, ...hit }) => hit);
  const found = index
    .near(around(at, toleranceMm))
    .filter((e) => e.kind !== 'connection')
    .map((e) => ({ e, d: distanceTo(e.shape, at), rank: RANK[e.kind] + (e.gone ? 10 : 0) }))
    .filter(({ e, d }) => d <= (e.shape.is === 'area' ? toleranceMm / 2 : toleranceMm))
    .sort((a, b) => a.rank - b.rank || a.d - b.d || height(b.e) - height(a.e) || (a.e.id < b.e.id ? -1 : 1));
  return [...held, ...found.map(({ e, d }) => ({ map: MAPS[e.kind as keyof typeof MAPS], id: e.id, distanceMm: d }))];
}

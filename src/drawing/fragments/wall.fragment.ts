import type { RoomFace } from '../../geometry/rooms.ts';
import type { Opening, Wall } from '../../plan/records/building.ts';
import { overallDimensions } from '../building/overall-dimensions.ts';
import { cutWalls } from '../building/wall-bodies.ts';
import type { Fragment, Vec } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import { makeFragment } from './fragment.ts';

const EDGE = { ink: 'wallEdge', pen: PEN.wallEdge, dash: [], fit: false };

/**
 * The walls of a storey in one body, so that no line crosses a joint; assumed walls have an edge and no fill. `quarters`:
 * turns by a right angle after which the sizes of the rooms stand below and to the left.
 */
export function wallsFragment(
  storey: string,
  walls: readonly Wall[],
  openings: readonly Opening[],
  quarters = 0,
): Fragment {
  const { edges, seen } = cutWalls(walls, openings);
  return makeFragment(
    storey,
    'walls',
    'wall',
    [
      { t: 'area', rings: seen, fill: 'wall' },
      { t: 'area', rings: edges, fill: 'none', edge: EDGE },
    ],
    overallDimensions(walls, quarters),
  );
}

/** Spaces that the walls close in: the ground the rest is drawn on. */
export function floorsFragment(storey: string, faces: readonly RoomFace[]): Fragment {
  return makeFragment(
    storey,
    'storeys',
    'ground',
    faces.map((face) => ({
      t: 'area',
      rings: [face.outline, ...face.holes].map((ring) => ring.map((p): Vec => [p.x, p.y])),
      fill: 'room',
    })),
  );
}

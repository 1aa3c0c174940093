import type { Opening, Wall } from '../../plan/records/building.ts';
import { overallDimensions } from '../building/overall-dimensions.ts';
import { wallBodies } from '../building/wall-bodies.ts';
import type { Fragment } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import { makeFragment } from './fragment.ts';

const EDGE = { ink: 'wallEdge', pen: PEN.wallEdge, dash: [], fit: false };

/** The walls of a storey in one body, so that no line crosses a joint; assumed walls have an edge and no fill. */
export function wallsFragment(storey: string, walls: readonly Wall[], openings: readonly Opening[]): Fragment {
  const { edges, seen } = wallBodies(walls, openings);
  return makeFragment(
    storey,
    'walls',
    'wall',
    [
      { t: 'area', rings: seen, fill: 'wall' },
      { t: 'area', rings: edges, fill: 'none', edge: EDGE },
    ],
    overallDimensions(walls),
  );
}

/** Floors that the walls close in: the ground the rest is drawn on. */
export function floorsFragment(storey: string, walls: readonly Wall[]): Fragment {
  const { floors } = wallBodies(walls, []);
  return makeFragment(
    storey,
    'storeys',
    'ground',
    floors.map((ring) => ({ t: 'area', rings: [ring], fill: 'room' })),
  );
}

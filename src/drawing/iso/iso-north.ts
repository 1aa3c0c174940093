import type { Item, LineStyle, Vec } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import type { IsoPlane } from './iso-plane.ts';

/** A plumb bob on the floor that points north, as seen in the isometric: its shapes in mm of paper about its middle, y up. */
export interface IsoNorth {
  readonly bob: readonly Vec[];
  readonly lines: readonly (readonly Vec[])[];
}

const BOB: readonly Vec[] = [
  [-1.5, 0.6],
  [0, 5],
  [1.5, 0.6],
];
const LINES: readonly (readonly Vec[])[] = [
  [
    [0, 0.6],
    [0, -5],
  ],
  [
    [-1.7, -5],
    [1.7, -5],
  ],
];

export function isoNorth(plane: IsoPlane): IsoNorth {
  const lay = (pts: readonly Vec[]): Vec[] => pts.map(([x, y]) => plane.at({ x, y, z: 0 }));
  return { bob: lay(BOB), lines: LINES.map(lay) };
}

const LINE: LineStyle = { ink: 'ink1', pen: PEN.dimensionStroke, dash: [], fit: false };

/** The same as shapes of a drawing at a scale. */
export function northItems(plane: IsoPlane, at: Vec, mmPerPaperMm: number): Item[] {
  const { bob, lines } = isoNorth(plane);
  const put = (pts: readonly Vec[]): Vec[] => pts.map(([x, y]) => [at[0] + x * mmPerPaperMm, at[1] + y * mmPerPaperMm]);
  return [
    ...lines.map((pts): Item => ({ t: 'line', pts: put(pts), style: LINE })),
    { t: 'area', rings: [put(bob)], fill: 'ink' },
  ];
}

import type { FlueDistance, FlueFace } from '../../src/report/flue-face.ts';
import { exact, type Quantity } from '../../src/report/quantity.ts';
import type { State } from '../../src/report/section.ts';

type At = readonly [x: number, y: number, z: number];

export interface Told {
  readonly row: string;
  readonly ids?: readonly string[];
  readonly from: At;
  readonly to: At;
  readonly shows?: 'face' | 'plan';
  readonly found: number | Quantity;
  readonly wanted?: number | null;
  readonly state?: State;
}

const xyz = ([x, y, z]: At) => ({ x, y, z });

export function distance(told: Told): FlueDistance {
  const { row, ids = [], shows = 'face', found, wanted = 300, state = 'pass' } = told;
  return {
    row,
    label: row.replaceAll('-', ' '),
    ids,
    from: xyz(told.from),
    to: xyz(told.to),
    shows,
    found: typeof found === 'number' ? exact(found, 'mm', 0) : found,
    wanted: wanted === null ? null : exact(wanted, 'mm', 0, 'memory'),
    state,
    say: `${row} is told.`,
    cites: [{ source: 'some-source', clause: '1' }],
  };
}

/** The east gable of the demo semi: its new terminal at 8400, 5250, middle 4850. */
export function eastGable(distances: readonly FlueDistance[]): FlueFace {
  return {
    terminal: 'A-NF',
    appliance: null,
    storey: 'F',
    wall: 'FE',
    side: 'right',
    at: { x: 8400, y: 5250, z: 4850 },
    state: 'stop',
    distances,
    missing: ['where the gutter is'],
  };
}

/** What a terminal on a gable meets, in the order an engine might find it. */
export const GABLE: readonly FlueDistance[] = [
  distance({ row: 'corner', ids: ['FE'], from: [8400, 5300, 4850], to: [8400, 7200, 4850], found: 1900 }),
  distance({ row: 'eaves', from: [8400, 5250, 4900], to: [8400, 5250, 5040], found: 140, wanted: 200, state: 'stop' }),
  distance({
    row: 'opening-below',
    ids: ['gd2'],
    from: [8400, 5200, 4800],
    to: [8400, 5125, 2100],
    found: 2700,
    state: 'pass',
  }),
  distance({ row: 'ground', from: [8400, 5250, 4800], to: [8400, 5250, 0], found: 4800 }),
  distance({
    row: 'meter',
    ids: ['A-GM'],
    from: [8400, 5200, 4800],
    to: [8400, 1100, 900],
    found: 5658,
    state: 'none',
    wanted: null,
  }),
  distance({
    row: 'boundary-facing',
    ids: ['A-BO'],
    from: [8500, 5250, 4850],
    to: [9450, 5250, 4850],
    shows: 'plan',
    found: 950,
    wanted: 600,
  }),
  distance({
    row: 'opening-facing',
    ids: ['A-NW'],
    from: [8500, 5250, 4850],
    to: [10750, 5600, 4700],
    shows: 'plan',
    found: 2277,
    wanted: 2000,
    state: 'cantTell',
  }),
];

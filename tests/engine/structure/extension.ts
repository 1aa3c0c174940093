import { type ExamplePlan, example } from '../../../src/engine/example.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import type { Void } from '../../../src/plan/records/building.ts';
import type { HeightRef } from '../../../src/plan/records/parts.ts';

const datum = (mm: number): HeightRef => ({ from: 'datum', of: null, mm });
const rect = (x0: number, y0: number, x1: number, y1: number) => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

/** Roof void of the extension: joists 195 by 50 at 450 along x, 4400 clear, from y 8300. */
const roofVoid: Void = {
  id: 'DV2',
  storey: 'ground',
  name: 'Extension roof void',
  kind: 'ceiling',
  outline: rect(2300, 8000, 6700, 14300),
  holes: [],
  bottom: datum(2440),
  top: datum(2660),
  joists: {
    kind: 'solid',
    wayDeg: 0,
    centresMm: 450,
    first: { x: 2300, y: 8300 },
    depthMm: 195,
    breadthMm: 50,
    bottom: datum(2440),
    spanMm: 4400,
    exceptions: [],
  },
  bearings: [],
  ventilated: true,
  mayBeCut: true,
  option: null,
  sureness: 'seen',
};

/** Below the old floor: joists 150 by 50 at 400 along y from x 500, pipes clipped under them. */
const crawlSpace: Void = {
  ...roofVoid,
  id: 'DV1',
  name: 'Crawl space',
  kind: 'floor',
  outline: rect(300, 300, 6700, 7700),
  bottom: datum(-450),
  top: datum(0),
  joists: {
    kind: 'solid',
    wayDeg: 90,
    centresMm: 400,
    first: { x: 500, y: 300 },
    depthMm: 150,
    breadthMm: 50,
    bottom: datum(-172),
    spanMm: 3650,
    exceptions: [],
  },
};

type Stops = readonly (readonly [number, number, number])[];
const RUNS: readonly (readonly [string, string, string, Stops])[] = [
  [
    'D-g1',
    'gas',
    '28x0.9',
    [
      [900, 0, 450],
      [900, 400, 450],
      [900, 400, -300],
      [900, 7500, -300],
      [6600, 7500, -300],
      [6600, 7500, 2537],
      [6600, 8150, 2537],
      [5460, 8150, 2537],
      [5460, 9400, 2537],
    ],
  ],
  [
    'D-g2',
    'gas',
    '28x0.9',
    [
      [5460, 9400, 2537],
      [5460, 12960, 2537],
      [6640, 12960, 2537],
      [6640, 12960, 1010],
    ],
  ],
  [
    'D-f1',
    'heatingFlow',
    '22x0.9',
    [
      [6640, 12860, 870],
      [6640, 12860, 2537],
      [5580, 12860, 2537],
      [5580, 8210, 2537],
      [6660, 8210, 2537],
      [6660, 6560, 2537],
    ],
  ],
  [
    'D-r1',
    'heatingReturn',
    '22x0.9',
    [
      [6640, 13060, 1150],
      [6640, 13060, 2537],
      [5220, 13060, 2537],
      [5220, 8030, 2537],
      [6430, 8030, 2537],
      [6430, 6500, 2537],
    ],
  ],
  [
    'D-c1',
    'cold',
    '22x0.9',
    [
      [6550, 7400, 400],
      [6550, 7400, 2537],
      [6550, 8090, 2537],
      [5340, 8090, 2537],
      [5340, 13010, 2537],
      [6640, 13010, 2537],
      [6640, 13010, 1080],
    ],
  ],
  [
    'D-h1',
    'hot',
    '22x0.9',
    [
      [6640, 12910, 940],
      [6640, 12910, 2600],
      [3700, 12910, 2600],
      [3700, 12910, 2537],
      [3700, 11700, 2537],
      [2600, 11700, 2537],
      [2600, 11700, 900],
    ],
  ],
];

/** Pipes of the invented house with a boot room at the far end of an extension, as its story tells them. */
export function extension(
  words: { readonly hose?: boolean; readonly change?: Partial<Void['joists'] & object> } = {},
): Plan {
  const e: ExamplePlan = example('extension');
  const joists = roofVoid.joists;
  e.plan.voids.DV1 = structuredClone(crawlSpace);
  e.plan.voids.DV2 = structuredClone({ ...roofVoid, joists: joists && { ...joists, ...words.change } });
  for (const [id, service, size, stops] of RUNS) {
    // The second gas run goes on from the first, where the hob is teed off.
    const joined = id === 'D-g2' ? [e.nodesOf('D-g1').at(-1) ?? '', ...stops.slice(1)] : stops;
    e.run(id, service, joined, { size });
  }
  if (words.hose) {
    e.run(
      'D-k3',
      'condensate',
      [
        [5020, 13560, 2600],
        [5020, 13560, 2537],
        [5020, 8240, 2537],
        [5020, 8240, 2600],
      ],
      {
        kind: 'plastic-overflow',
        size: '21.5',
      },
    );
  }
  return e.plan;
}

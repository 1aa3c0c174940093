import type { Plan } from '../../../plan/plan.ts';
import type { Joists, Void } from '../../../plan/records/building.ts';
import type { Example } from '../../define-rule.ts';
import { type ExamplePlan, example, type RunWords } from '../../example.ts';

type Corner = readonly [number, number, number];
type Change = Partial<Joists> & Pick<Partial<Void>, 'mayBeCut'>;

/** Rows of joists along x, 4000 clear from x 0, at 400 from y 200; timber 200 by 50 with its underside at 2400. */
export function joisted(change: Change = {}): ExamplePlan {
  const { mayBeCut = true, ...joists } = change;
  const e = example();
  e.plan.voids.v = {
    id: 'v',
    storey: 'ground',
    name: '',
    kind: 'floor',
    outline: [
      { x: 0, y: 0 },
      { x: 4000, y: 0 },
      { x: 4000, y: 2000 },
      { x: 0, y: 2000 },
    ],
    holes: [],
    bottom: { from: 'datum', of: null, mm: 2300 },
    top: { from: 'datum', of: null, mm: 2700 },
    joists: {
      kind: 'solid',
      wayDeg: 0,
      centresMm: 400,
      first: { x: 0, y: 200 },
      depthMm: 200,
      breadthMm: 50,
      bottom: { from: 'datum', of: null, mm: 2400 },
      spanMm: 4000,
      exceptions: [],
      ...joists,
    },
    bearings: [],
    ventilated: true,
    mayBeCut,
    option: null,
    sureness: 'seen',
  };
  return e;
}

/** Across five joists at a distance along them and a height. */
const across = (x: number, z: number, change: Change = {}, words: RunWords = {}): Plan =>
  joisted(change).run('r', 'cold', [[x, 0, z] as Corner, [x, 1990, z] as Corner], words).plan;

const two = (xs: readonly [number, number], zs: readonly [number, number] = [2500, 2500]): Plan =>
  joisted()
    .run('r', 'cold', [
      [xs[0], 0, zs[0]],
      [xs[0], 1990, zs[0]],
    ])
    .run('s', 'hot', [
      [xs[1], 0, zs[1]],
      [xs[1], 1990, zs[1]],
    ]).plan;

const pinned = (plan: Plan, table: string): Plan => ({
  ...plan,
  basis: { ...plan.basis, editions: { ...plan.basis.editions, 'joist-limits': table } },
});

export const joistExamples: readonly Example[] = [
  { name: 'holes inside the band', given: () => across(1200, 2500), expect: 'pass' },
  { name: 'below the joists', given: () => across(1200, 2370), expect: 'pass' },
  { name: 'over the joists', given: () => across(1200, 2630), expect: 'pass' },
  {
    name: 'along between two joists',
    given: () =>
      joisted().run('r', 'cold', [
        [100, 400, 2500],
        [3900, 400, 2500],
      ]).plan,
    expect: 'pass',
  },
  {
    name: 'holes at mid span',
    given: () => across(2000, 2500),
    expect: 'stop',
    found: { lo: 2000, hi: 2000, tolerance: 0.1 },
    from: 'half of the clear span',
  },
  { name: 'holes at mid span, ends only drawn', given: () => across(2000, 2500, { spanMm: null }), expect: 'check' },
  { name: 'holes at mid span of an assumed height', given: () => assumed(2000), expect: 'check' },
  {
    name: 'a shallow notch near the bearing',
    given: () => across(600, 2593, {}, { size: '15x0.7' }),
    expect: 'pass',
  },
  { name: 'a shallow notch near mid span', given: () => across(1800, 2593, {}, { size: '15x0.7' }), expect: 'stop' },
  { name: 'a notch for 28 in its whole depth', given: () => across(600, 2586, {}, { size: '28x0.9' }), expect: 'stop' },
  { name: 'holes for 54', given: () => across(1200, 2500, {}, { size: '54x1.2' }), expect: 'stop' },
  { name: 'two pipes 40 apart', given: () => two([1200, 1240]), expect: 'stop' },
  { name: 'two pipes 120 apart', given: () => two([1200, 1320]), expect: 'pass' },
  { name: 'a hole under a notch', given: () => two([980, 1050], [2592, 2500]), expect: 'stop' },
  { name: 'let in from below', given: () => across(600, 2409, {}, { size: '15x0.7' }), expect: 'check' },
  { name: 'holes above the centre line', given: () => across(1200, 2540), expect: 'check' },
  { name: 'a drop inside a joist', given: () => drop(), expect: 'stop' },
  { name: 'along, half inside a joist', given: () => beside(30), expect: 'stop' },
  { name: 'along, pressed against a joist', given: () => beside(35), expect: 'pass' },
  { name: 'across trusses', given: () => across(1200, 2500, { kind: 'truss' }), expect: 'stop' },
  { name: 'through joists that may not be cut', given: () => across(1200, 2500, { mayBeCut: false }), expect: 'stop' },
  { name: 'through joists 100 deep', given: () => across(1200, 2450, { depthMm: 100 }), expect: 'stop' },
  { name: 'between the webs', given: () => across(1200, 2500, { kind: 'metalWeb' }), expect: 'pass' },
  {
    name: 'into the chord of a metal web joist',
    given: () => across(1200, 2570, { kind: 'metalWeb' }),
    expect: 'stop',
  },
  {
    name: 'through the web of made joists',
    given: () => across(1200, 2500, { kind: 'engineered' }),
    expect: 'cantTell',
  },
  { name: 'through joists nobody looked at', given: () => across(1200, 2500, { kind: 'unknown' }), expect: 'cantTell' },
  { name: 'through joists of no known depth', given: () => across(1200, 2500, { depthMm: null }), expect: 'cantTell' },
  {
    name: 'through a trimmer',
    given: () => across(1200, 2500, { exceptions: [{ index: 2, offsetMm: 0, what: 'trimmer of the stair' }] }),
    expect: 'check',
  },
  { name: 'through joists 275 deep', given: () => across(1200, 2537, { depthMm: 275 }), expect: 'note' },
  {
    name: 'holes by an edition that was not read',
    given: () => pinned(across(1200, 2500), 'joist-limits-house-builder'),
    expect: 'cantTell',
  },
  {
    name: 'an edition that is not here',
    given: () => pinned(across(1200, 2500), 'joist-limits-2031'),
    expect: 'cantTell',
  },
];

function assumed(x: number): Plan {
  const { plan } = joisted().run('r', 'cold', [
    [x, 0, 2500],
    [x, 1990, 2500],
  ]);
  for (const node of Object.values(plan.nodes)) {
    if (node.place.on === 'storey') node.place.height = { ...node.place.height, assumed: { lo: 2480, hi: 2520 } };
  }
  return plan;
}

function drop(): Plan {
  return joisted().run('r', 'cold', [
    [1200, 600, 2690],
    [1200, 600, 1000],
  ]).plan;
}

/** Along the joist at y 600, its middle so far from the joist's own. */
function beside(off: number): Plan {
  return joisted().run('r', 'cold', [
    [100, 600 + off, 2500],
    [3900, 600 + off, 2500],
  ]).plan;
}

import type { Wall } from '../../../plan/records/building.ts';
import { figure } from '../../../reference/figure.ts';
import { sayFigures } from '../../../report/quantity.ts';
import { buildOf, byRunAndWall, findInWall, type InWall } from '../../building/in-wall.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayRun, sayWall } from '../../say-names.ts';
import { backToBackFault, type ChaseFault, chaseFaults } from '../../structure/chase-faults.ts';

const ORDER: readonly ChaseFault['kind'][] = ['hollow', 'backToBack', 'depth', 'length', 'notTold'];

/** Thickness of the finish on a face of a wall of one leaf; of two leaves the drawing does not tell it. */
function finishMm(wall: Wall): number {
  if (buildOf(wall) === 'cavity' || wall.leafMm === undefined || wall.leafMm === null) return 0;
  return Math.max(0, (wall.thicknessMm - wall.leafMm) / 2);
}

/** A chase is cut in masonry. Of a cavity wall only what lies in the leaf is one, and that takes its thickness. */
function isChase(w: InWall): boolean {
  const build = buildOf(w.wall);
  if (build === 'stud') return false;
  if (build !== 'cavity') return true;
  return typeof w.wall.leafMm === 'number' && w.depthMm <= w.wall.leafMm;
}

function worstOf(group: readonly InWall[], others: readonly InWall[]): { fault: ChaseFault; of: InWall }[] {
  const level = group.filter((w) => w.way === 'horizontal').reduce((sum, w) => sum + w.lengthMm, 0);
  const alone = group.flatMap((of) =>
    chaseFaults({
      way: of.way,
      depthMm: of.depthMm - finishMm(of.wall),
      lengthMm: of.way === 'horizontal' ? level : 0,
      leafMm: of.wall.leafMm ?? null,
      hollow: of.wall.hollow ?? null,
    }).map((fault) => ({ fault, of })),
  );
  const backs = group.flatMap((of) =>
    others.flatMap((o) => {
      // Told once, of the run that comes later.
      if (o.side === of.side || o.run >= of.run) return [];
      const fault = backToBackFault(Math.max(o.fromMm - of.toMm, of.fromMm - o.toMm), of.wall.thicknessMm);
      return fault ? [{ fault, of }] : [];
    }),
  );
  return [...alone, ...backs].sort((a, b) => ORDER.indexOf(a.fault.kind) - ORDER.indexOf(b.fault.kind));
}

function judge(given: Given): Fault[] {
  const all = findInWall(given).filter(isChase);
  return byRunAndWall(all).flatMap((group): Fault[] => {
    const wall = group[0]?.wall;
    const found = worstOf(
      group,
      all.filter((w) => w.wall.id === wall?.id),
    );
    const worst = found[0];
    if (!worst) return [];
    const { fault, of } = worst;
    const gas = of.crossing.pipe.edge.service === 'gas';
    return [
      {
        outcome: fault.kind === 'notTold' ? 'cantTell' : 'stop',
        say: fault.kind === 'notTold' ? 'cantTell' : fault.kind,
        ids: [of.run, of.wall.id],
        legs: group.map((w) => w.crossing.pipe.edge.id),
        words: {
          run: sayRun(given.plan, of.run),
          wall: midSentence(sayWall(given.plan, of.wall.id)),
          found: fault.found ? sayFigures(fault.found) : '',
          wanted: fault.wanted ? sayFigures(fault.wanted) : '',
          way: of.way === 'vertical' ? 'upright' : 'level',
          share: of.way === 'vertical' ? 'a third' : 'a sixth',
        },
        found: fault.found,
        wanted: fault.wanted,
        wantedIs: fault.kind === 'backToBack' ? 'atLeast' : 'atMost',
        at: atPlace(of.crossing.pipe.storey, of.crossing.at),
        more: group.length - 1,
        missing: fault.missing,
        ...(gas
          ? { cites: [{ source: 'gas-pipework-leaflet', clause: 'pipe in wall chases', table: 'wall-chases' }] }
          : {}),
      },
    ];
  });
}

/** A wall along x, 100 thick and let in from its left face; a pipe up or along it at a depth of its middle. */
function house(
  stops: readonly (readonly [number, number, number])[],
  change: Partial<Wall> = { leafMm: 100, hollow: false },
  thicknessMm = 100,
) {
  return example()
    .wall('w', [0, 0], [4000, 0], { thicknessMm, ...change })
    .run('r', 'cold', stops, { size: '15x0.7' });
}
const up = (depth: number, x = 1000): readonly (readonly [number, number, number])[] => [
  [x, 50 - depth, 300],
  [x, 50 - depth, 2000],
];
const along = (depth: number, length: number): readonly (readonly [number, number, number])[] => [
  [1000, 50 - depth, 300],
  [1000 + length, 50 - depth, 300],
];

const sides = (apart: number) =>
  house(up(20)).run(
    's',
    'hot',
    [
      [1000 + apart, -30, 300],
      [1000 + apart, -30, 2000],
    ],
    { size: '15x0.7' },
  ).plan;

/** A drawn chase goes as deep as it is drawn, whatever lies in it. */
const drawn = (depthMm: number) => {
  const { plan } = house(up(20));
  const at = (x: number, y: number) => ({ x, y });
  plan.voids.c = {
    id: 'c',
    storey: 'ground',
    name: '',
    kind: 'chase',
    outline: [at(950, 50 - depthMm), at(1050, 50 - depthMm), at(1050, 50), at(950, 50)],
    holes: [],
    bottom: { from: 'datum', of: null, mm: 200 },
    top: { from: 'datum', of: null, mm: 2100 },
    joists: null,
    bearings: [],
    ventilated: null,
    mayBeCut: null,
    option: null,
    sureness: 'seen',
  };
  return plan;
};

const HOLLOW = {
  title: '{run}: chased into hollow blocks of the {wall}',
  why: 'The shells of a hollow or cellular block are all it has; a chase cuts them through.',
  todo: 'Run the pipe on the face and box it, or go another way.',
};

export default defineRule({
  id: 'structure/chase',
  topic: 'structure',
  since: '1',
  basis: 'recommendation',
  lifeSafety: false,
  cites: [{ source: 'standard-specification', clause: 'clause 650', table: 'wall-chases' }],
  needs: ['thickness of the leaf without finishes', 'whether its blocks are hollow'],
  params: () => ({
    vertical: figure('wall-chases', 'vertical', 'share'),
    horizontal: figure('wall-chases', 'horizontal', 'share'),
    long: figure('wall-chases', 'horizontal', 'mm'),
  }),
  judge,
  say: {
    fault: HOLLOW,
    hollow: HOLLOW,
    depth: {
      title: '{run}: {way} chase {found} deep in the {wall}, at most {wanted}',
      why: 'Such a chase takes at most {share} of the leaf without its finishes, or the wall is weakened.',
      todo: 'Run the pipe on the face and box it, or go another way.',
    },
    length: {
      title: '{run}: {way} chase {found} long in the {wall}, at most {wanted}',
      why: 'A level or raking chase cuts across what the wall carries.',
      todo: 'Go up and over in upright chases, or run the pipe on the face and box it.',
    },
    backToBack: {
      title: '{run}: chases on both faces of the {wall}, {found} apart along it',
      why: 'What is left between two chases back to back may break through; they stand the thickness of the wall apart, {wanted} or more.',
      todo: 'Move one of them along the wall.',
    },
    cantTell: {
      title: "{run}: can't tell how deep a chase the {wall} bears",
      why: 'Not told: {missing}.',
      todo: 'Drill or look at a socket box, and set it on the wall.',
    },
    pass: 'Nothing is chased deeper than its wall bears.',
  },
  examples: [
    {
      name: 'up in a leaf of 100 by half',
      given: () => house(up(50)).plan,
      expect: 'stop',
      found: { lo: 57.5, hi: 57.5, tolerance: 0.1 },
      from: 'half of 100 and half of the pipe',
    },
    { name: 'up, just let in', given: () => house(up(20)).plan, expect: 'pass' },
    { name: 'along, just let in', given: () => house(along(8, 800)).plan, expect: 'pass' },
    { name: 'along as deep as upright would bear', given: () => house(along(20, 800)).plan, expect: 'stop' },
    { name: 'along for two metres', given: () => house(along(8, 2000)).plan, expect: 'stop' },
    { name: 'in hollow blocks', given: () => house(up(20), { leafMm: 100, hollow: true }).plan, expect: 'stop' },
    { name: 'on both faces at one place', given: () => sides(50), expect: 'stop' },
    { name: 'on both faces, well apart', given: () => sides(300), expect: 'pass' },
    { name: 'in a wall nobody described', given: () => house(up(20), {}).plan, expect: 'cantTell' },
    { name: 'up inside a stud wall', given: () => house(up(50), { construction: 'stud' }).plan, expect: 'pass' },
    { name: 'a chase drawn too deep', given: () => drawn(60), expect: 'stop' },
    { name: 'a chase drawn no deeper than it may be', given: () => drawn(33), expect: 'pass' },
    {
      name: 'square through it',
      given: () =>
        house([
          [1000, -500, 300],
          [1000, 500, 300],
        ]).plan,
      expect: 'pass',
    },
  ],
});

import { services } from '../../../catalogue/services.ts';
import { tubeOdMm } from '../../../catalogue/tubes.ts';
import { alongLine } from '../../../geometry/segments.ts';
import { distance3 } from '../../../geometry/vec.ts';
import { voidHeights } from '../../../geometry/void-stretches.ts';
import type { Void } from '../../../plan/records/building.ts';
import type { Joining } from '../../../plan/records/pipework.ts';
import { constant, figure } from '../../../reference/figure.ts';
import { exact, type Quantity } from '../../../report/quantity.ts';
import { sayVoid, type VoidPart } from '../../building/void-parts.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { sayRun } from '../../say-names.ts';
import { type LayerKind, layerAt, layerKind } from '../../structure/slab-layer.ts';

/** Steeper than this it goes through the slab and is not cast in along it. */
const UPRIGHT_DEG = constant('wall-judgement', 'upright', 'degrees');
const BURIED = ['gasSlab', 'notCut', 'compression', 'cover', 'waterSlab', 'wrapped', 'cantTell'] as const;
type Say = (typeof BURIED)[number];

interface Buried {
  readonly say: Say;
  readonly part: VoidPart;
  readonly found: Quantity | null;
  readonly wanted: Quantity | null;
}

const OUTCOME: Readonly<Record<Say, Fault['outcome']>> = {
  gasSlab: 'stop',
  notCut: 'stop',
  compression: 'stop',
  cover: 'stop',
  waterSlab: 'check',
  wrapped: 'note',
  cantTell: 'cantTell',
};

function steepness({ pipe }: VoidPart): number {
  const { a, b } = pipe.body;
  return (Math.atan2(Math.abs(b.z - a.z), Math.hypot(b.x - a.x, b.y - a.y)) * 180) / Math.PI;
}

/** Cover over the pipe, from the top of the slab's build-up. */
function depthOf(given: Given, part: VoidPart): number | null {
  const heights = voidHeights(given.plan, part.space);
  if (!heights) return null;
  const { a, b } = part.pipe.body;
  const lengthMm = distance3(a, b);
  const z = [part.fromMm, part.toMm].map((mm) => alongLine({ a, b }, lengthMm === 0 ? 0 : mm / lengthMm).z);
  return heights.top - Math.max(...z);
}

const kindAt = (space: Void, depthMm: number | null): LayerKind | null => {
  if (depthMm === null || space.layers === undefined) return null;
  const found = layerAt(space.layers, depthMm);
  return found ? layerKind(found.layer.what) : null;
};

function buried(given: Given, part: VoidPart): Buried[] {
  const { edge } = part.pipe;
  const system = services.get(edge.service)?.system;
  const of = (say: Say, found: Quantity | null = null, wanted: Quantity | null = null): Buried[] => [
    { say, part, found, wanted },
  ];
  if (part.space.mayBeCut === false) return of('notCut');
  // A hole straight through is a sleeve's business; drains are meant to lie in floors.
  if (steepness(part) >= UPRIGHT_DEG || system === 'condensate' || system === 'discharge') return [];
  const depthMm = depthOf(given, part);
  const kind = kindAt(part.space, depthMm);
  if (kind === null || depthMm === null) return of('cantTell');
  if (system === 'gas') {
    if (kind === 'concrete') return of('gasSlab');
    const cover = figure('gas-cover', 'screed', 'mm');
    const over = depthMm - (tubeOdMm(edge.tube) ?? 0) / 2;
    if (kind === 'screed' && cover.is === 'known' && over < cover.lo)
      return of('cover', exact(Math.max(0, over), 'mm', 0), exact(cover.lo, 'mm', 0, cover.sureness));
    return [];
  }
  if (given.plan.runs[part.pipe.run]?.joining === 'compression') return of('compression');
  if (kind === 'concrete') return of('waterSlab');
  return kind === 'screed' && edge.tube.kind === 'copper' ? of('wrapped') : [];
}

function judge(given: Given): Fault[] {
  const groups = new Map<string, Buried[]>();
  for (const part of given.voidParts) {
    if (part.space.kind !== 'slab' || part.pipe.edge.state !== 'new') continue;
    const key = `${part.pipe.run}|${part.space.id}`;
    groups.set(key, [...(groups.get(key) ?? []), ...buried(given, part)]);
  }
  return [...groups.values()].flatMap((all): Fault[] => {
    const worst = [...all].sort((a, b) => BURIED.indexOf(a.say) - BURIED.indexOf(b.say))[0];
    if (!worst) return [];
    const { part } = worst;
    const { a, b } = part.pipe.body;
    const lengthMm = distance3(a, b);
    const middle = alongLine({ a, b }, lengthMm === 0 ? 0 : (part.fromMm + part.toMm) / 2 / lengthMm);
    const gas = part.pipe.edge.service === 'gas';
    return [
      {
        outcome: OUTCOME[worst.say],
        say: worst.say,
        ids: [part.pipe.run, part.space.id],
        legs: all.map((f) => f.part.pipe.edge.id),
        words: {
          run: sayRun(given.plan, part.pipe.run),
          space: sayVoid(part.space),
          found: worst.found ? `${Math.round(worst.found.lo)}` : '',
          wanted: worst.wanted ? `${Math.round(worst.wanted.lo)}` : '',
        },
        found: worst.found,
        wanted: worst.wanted,
        wantedIs: 'atLeast',
        at: atPlace(part.pipe.storey, middle),
        more: all.length - 1,
        missing: worst.say === 'cantTell' ? ['the layers of the floor'] : [],
        ...(gas ? { cites: [figure('gas-cover', 'screed', 'mm').cite] } : {}),
      },
    ];
  });
}

/** Screed of 65 on insulation on concrete of 150, top at 0; a pipe along at a height. */
function floor(service: string, z: number, change: Partial<Void> = {}, joining: Joining = 'endFeed') {
  const e = example().run(
    'r',
    service,
    [
      [500, 500, z],
      [2500, 500, z],
    ],
    { size: '22x0.9', joining },
  );
  e.plan.voids.v = {
    id: 'v',
    storey: 'ground',
    name: '',
    kind: 'slab',
    outline: [
      { x: 0, y: 0 },
      { x: 3000, y: 0 },
      { x: 3000, y: 1000 },
      { x: 0, y: 1000 },
    ],
    holes: [],
    bottom: { from: 'datum', of: null, mm: -315 },
    top: { from: 'datum', of: null, mm: 0 },
    joists: null,
    bearings: [],
    ventilated: null,
    mayBeCut: true,
    layers: [
      { what: 'screed', thicknessMm: 65 },
      { what: 'insulation', thicknessMm: 100 },
      { what: 'concrete', thicknessMm: 150 },
    ],
    option: null,
    sureness: 'seen',
    ...change,
  };
  return e.plan;
}

const through = () => {
  const plan = floor('cold', -30);
  const [low] = Object.values(plan.nodes);
  const high = Object.values(plan.nodes)[1];
  if (low?.place.on === 'storey' && high?.place.on === 'storey') {
    high.place = { ...low.place, height: { from: 'datum', of: null, mm: 500 } };
    low.place = { ...low.place, height: { from: 'datum', of: null, mm: -600 } };
  }
  return plan;
};

const noLayers = () => {
  const plan = floor('gas', -40);
  const space = plan.voids.v;
  if (space) delete space.layers;
  return plan;
};

const NOT_CUT = {
  title: '{run} goes into the {space}, which may not be touched',
  why: 'The survey says nothing of it may be drilled or chased; it may belong to the whole building, or hold heating or steel under load.',
  todo: 'Take the pipe another way, or get it agreed in writing first.',
};

export default defineRule({
  id: 'structure/in-slab',
  topic: 'structure',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [
    { source: 'plumbing-textbook-2019', clause: 'page 325 (page view 337): no water fitting buried in a solid floor' },
    { source: 'house-building-standards', clause: '8.1.11: copper in screed' },
  ],
  needs: ['the layers of the floor'],
  params: () => ({ cover: figure('gas-cover', 'screed', 'mm') }),
  judge,
  say: {
    fault: NOT_CUT,
    notCut: NOT_CUT,
    gasSlab: {
      title: '{run} lies in the concrete of the {space}',
      why: 'Gas pipe is never cast into a slab: it cannot be got at, and concrete eats it and cracks it.',
      todo: 'Lay it in the screed with its cover and its wrapping, or take it another way.',
    },
    cover: {
      title: '{run}: {found} of screed over it in the {space}, at least {wanted}',
      why: 'With less over it a nail or a crack in the screed reaches the pipe.',
      todo: 'Lay it deeper in the screed, wrapped or sheathed all over, with as few joints as can be.',
    },
    compression: {
      title: '{run}: compression joints buried in the {space}',
      why: 'A joint that can work loose under a floor is found by the damage it does.',
      todo: 'Solder what will be buried, or bring the joints out of the floor.',
    },
    waterSlab: {
      title: '{run} is cast into the concrete of the {space}',
      why: 'Water pipe in a solid floor has to lie where it can be got at: in a duct or a chase with a cover.',
      todo: 'Give it a duct it can be drawn through, or take it another way.',
    },
    wrapped: {
      title: '{run} lies in the screed of the {space}',
      why: 'Copper in screed is eaten where it touches cement and worn where it moves.',
      todo: 'Wrap or sheathe it all over, solder its joints, and make sure the floor may hold it.',
    },
    cantTell: {
      title: "{run}: can't tell what it lies in, in the {space}",
      why: 'Screed may hold it and concrete may not; not told: {missing}.',
      todo: 'Ask the builder for the build-up of the floor, and set it on the slab.',
    },
    pass: 'Nothing is buried that may not be.',
  },
  examples: [
    { name: 'gas in the concrete', given: () => floor('gas', -250), expect: 'stop' },
    {
      name: 'gas high in the screed',
      given: () => floor('gas', -20),
      expect: 'stop',
      found: { lo: 9, hi: 9, tolerance: 0.1 },
      from: '20 to its middle less half of 22',
    },
    { name: 'gas deep in the screed', given: () => floor('gas', -45), expect: 'pass' },
    { name: 'compression joints in the screed', given: () => floor('cold', -45, {}, 'compression'), expect: 'stop' },
    { name: 'cold in the concrete', given: () => floor('cold', -250), expect: 'check' },
    { name: 'copper in the screed', given: () => floor('heatingFlow', -45), expect: 'note' },
    { name: 'straight through', given: through, expect: 'pass' },
    { name: 'in a slab that may not be touched', given: () => floor('cold', -45, { mayBeCut: false }), expect: 'stop' },
    { name: 'a floor nobody told the layers of', given: noLayers, expect: 'cantTell' },
  ],
});

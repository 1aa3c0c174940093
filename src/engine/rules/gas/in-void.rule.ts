import type { Void } from '../../../plan/records/building.ts';
import { figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { sayVoid, type VoidPart } from '../../building/void-parts.ts';
import { sectionM2 } from '../../building/void-section.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atEdge } from '../../places.ts';
import { sayRun } from '../../say-names.ts';
import { voidVentCm2 } from '../../structure/void-vent.ts';

interface InVoid {
  readonly space: Void;
  readonly parts: readonly VoidPart[];
  readonly runs: readonly string[];
  readonly metres: number;
}

/** Voids that new gas pipe runs in. What is cast into a slab is told of elsewhere. */
function gasInVoids(given: Given): InVoid[] {
  const found = new Map<string, VoidPart[]>();
  for (const part of given.voidParts) {
    const { edge } = part.pipe;
    if (edge.service !== 'gas' || edge.state !== 'new' || part.space.kind === 'slab') continue;
    found.set(part.space.id, [...(found.get(part.space.id) ?? []), part]);
  }
  return [...found.values()].flatMap((parts): InVoid[] => {
    const space = parts[0]?.space;
    if (!space) return [];
    const runs = [...new Set(parts.map((p) => p.pipe.run))];
    return [{ space, parts, runs, metres: parts.reduce((sum, p) => sum + p.lengthMm, 0) / 1000 }];
  });
}

/** An ordinary boarded timber floor breathes by itself; a box, a duct or a hung ceiling may not, nor does a sealed floor. */
const breathes = (space: Void): boolean =>
  space.kind === 'floor' && space.ventilated === null && (space.sealed ?? false) === false;

/** Free area that is told, in cm2; none where nobody lets air in. */
const freeArea = (space: Void): number | null => space.ventAreaCm2 ?? (space.ventilated === false ? 0 : null);

/** One finding a void: what is asked or wanted of it is the same for every gas pipe in it. */
function judgeOne(given: Given, f: InVoid): Fault[] {
  const { space } = f;
  const run = f.runs.length === 1 ? sayRun(given.plan, f.runs[0] ?? '') : 'Gas';
  const said = { run, space: sayVoid(space), metres: f.metres.toFixed(1) };
  const shared = {
    ids: [...f.runs, space.id],
    legs: f.parts.map((p) => p.pipe.edge.id),
    words: said,
    found: exact(f.metres, 'm', 1),
    at: atEdge(given.network, f.parts[0]?.pipe.edge.id),
  };
  // A quiet word, and of the floor alone: it stays what it is, whatever else is laid in it.
  if (breathes(space)) return [{ outcome: 'note', ...shared, ids: [space.id], say: 'floor' }];
  const area = freeArea(space);
  if (area === null && space.ventilated === true) return [];
  if (area === null && space.sealed !== true) {
    return [{ outcome: 'cantTell', ...shared, missing: [`whether the ${said.space} is ventilated`] }];
  }
  const section = sectionM2(given.plan, space, f.parts);
  if (section === null) return [{ outcome: 'cantTell', ...shared, missing: [`how high the ${said.space} is`] }];
  const wanted = voidVentCm2(section);
  if ((area ?? 0) >= wanted.lo) return [];
  return [
    {
      outcome: 'check',
      ...shared,
      say: (area ?? 0) > 0 ? 'small' : 'sealed',
      words: { ...said, area: `${Math.ceil(wanted.lo)}`, told: `${Math.round(area ?? 0)}` },
      found: exact(area ?? 0, 'cm2', 0),
      wanted,
      wantedIs: 'atLeast',
    },
  ];
}

const judge = (given: Given): Fault[] => gasInVoids(given).flatMap((f) => judgeOne(given, f));

const house = (ventilated: boolean | null, kind: 'ceiling' | 'floor' = 'ceiling', change: Partial<Void> = {}) => {
  const e = example();
  e.plan.voids.v = {
    id: 'v',
    storey: 'ground',
    name: 'Hall ceiling',
    kind,
    outline: [
      { x: 0, y: 0 },
      { x: 3000, y: 0 },
      { x: 3000, y: 1000 },
      { x: 0, y: 1000 },
    ],
    holes: [],
    bottom: { from: 'datum', of: null, mm: 2250 },
    top: { from: 'datum', of: null, mm: 2400 },
    joists: null,
    bearings: [],
    ventilated,
    mayBeCut: null,
    option: null,
    sureness: 'seen',
    ...change,
  };
  return e.run('g', 'gas', [
    [500, 500, 2300],
    [2500, 500, 2300],
  ]).plan;
};

/** The same, and a second run in it. */
const twoRuns = () => {
  const plan = house(null, 'floor');
  const leg = plan.legs['g.1'];
  const run = plan.runs.g;
  if (leg && run) {
    plan.runs.g2 = { ...run, id: 'g2' };
    plan.legs['g2.1'] = { ...leg, id: 'g2.1', run: 'g2', b: 'n9' };
    plan.nodes.n9 = {
      id: 'n9',
      place: { on: 'storey', storey: 'ground', x: 500, y: 900, height: { from: 'datum', of: null, mm: 2300 } },
      turn: null,
      option: 'A',
    };
  }
  return plan;
};

const box = (change: Partial<Void>) =>
  house(null, 'ceiling', { kind: 'boxing', bottom: { from: 'datum', of: null, mm: 2200 }, ...change });

const SEALED = {
  title: '{run}: {metres} m in the {space}, which lets no gas out',
  why: 'A small leak in a closed space gathers until it can burn.',
  todo: 'Ventilate it by {area} cm2 in all, high and low, to a place that is no way out; or take the pipe outside it.',
};

export default defineRule({
  id: 'gas/in-void',
  topic: 'gas',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [
    { source: 'bs6891-2015', clause: 'pipes in ducts and voids', table: 'void-vent' },
    { source: 'pipes-in-ducts-article', clause: 'ventilation by the cross-section of the duct or void' },
  ],
  needs: ['whether the void is sealed or ventilated', 'free area of its ventilation'],
  params: () => ({ least: figure('void-vent', 'smallest', 'upTo') }),
  judge,
  say: {
    fault: SEALED,
    sealed: SEALED,
    small: {
      title: '{run}: {metres} m in the {space}, ventilated by {told} cm2',
      why: 'For a space of its cross-section {area} cm2 is asked for, so that a small leak is carried away.',
      todo: 'Make the openings larger, high and low, to a place that is no way out; or take the pipe outside it.',
    },
    floor: {
      title: 'Gas: {metres} m in the {space}',
      why: 'An ordinary boarded timber floor lets a small leak out; a sealed or acoustic one does not.',
      todo: 'Look at what the floor is before it is closed.',
    },
    cantTell: {
      title: '{run}: {metres} m in the {space}; is it ventilated?',
      why: 'A small leak in a closed space gathers until it can burn. Nobody has told whether this one is sealed or ventilated.',
      todo: 'Find out on site, and set it on the void.',
    },
    pass: 'The space is ventilated, or so small that it needs none.',
  },
  examples: [
    {
      name: 'a hung ceiling nobody asked about',
      given: () => house(null),
      expect: 'cantTell',
      found: { lo: 2, hi: 2, tolerance: 0.01 },
      from: 'two metres drawn in it',
    },
    { name: 'a ceiling that is not ventilated', given: () => house(false), expect: 'check' },
    { name: 'a ceiling that seals', given: () => house(null, 'ceiling', { sealed: true }), expect: 'check' },
    { name: 'an acoustic floor', given: () => house(null, 'floor', { sealed: true }), expect: 'check' },
    {
      name: 'a sealed ceiling with small vents',
      given: () => house(null, 'ceiling', { sealed: true, ventAreaCm2: 100 }),
      expect: 'check',
      found: { lo: 100, hi: 100, tolerance: 0.1 },
      from: 'the free area told',
    },
    {
      name: 'a sealed ceiling with vents enough',
      given: () => house(null, 'ceiling', { sealed: true, ventAreaCm2: 500 }),
      expect: 'pass',
    },
    { name: 'a ventilated ceiling', given: () => house(true), expect: 'pass' },
    { name: 'a timber floor', given: () => house(null, 'floor'), expect: 'note' },
    { name: 'a timber floor with two runs', given: twoRuns, expect: 'note' },
    {
      name: 'a sealed box too small to need any',
      given: () =>
        box({
          sealed: true,
          outline: [
            { x: 0, y: 450 },
            { x: 3000, y: 450 },
            { x: 3000, y: 510 },
            { x: 0, y: 510 },
          ],
          top: { from: 'datum', of: null, mm: 2350 },
        }),
      expect: 'pass',
    },
  ],
});

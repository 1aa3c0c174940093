import { voidFinder } from '../../../geometry/void-stretches.ts';
import { exact } from '../../../report/quantity.ts';
import { standingBuilding } from '../../clearance/crossings.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atEdge } from '../../places.ts';
import { sayRun } from '../../say-names.ts';

interface InVoid {
  readonly run: string;
  readonly space: string;
  readonly legs: string[];
  mm: number;
}

function lengthsInVoids(given: Given): InVoid[] {
  const voids = voidFinder(given.plan, standingBuilding(given.network));
  const found = new Map<string, InVoid>();
  for (const pipe of given.pipes) {
    if (pipe.edge.service !== 'gas' || pipe.edge.state !== 'new') continue;
    for (const part of voids.stretches(pipe.body)) {
      const key = `${pipe.run}|${part.void}`;
      const now = found.get(key) ?? { run: pipe.run, space: part.void, legs: [], mm: 0 };
      now.mm += part.lengthMm;
      now.legs.push(pipe.edge.id);
      found.set(key, now);
    }
  }
  given.counts.boxQueries += voids.counts.queries;
  return [...found.values()];
}

function judge(given: Given): Fault[] {
  return lengthsInVoids(given).flatMap((f): Fault[] => {
    const space = given.plan.voids[f.space];
    if (!space || space.kind === 'slab' || space.ventilated === true) return [];
    const shared = {
      ids: [f.run, f.space],
      legs: f.legs,
      words: {
        run: sayRun(given.plan, f.run),
        space: space.name === '' ? `${space.kind} void` : space.name.toLowerCase(),
        metres: (f.mm / 1000).toFixed(1),
      },
      found: exact(f.mm / 1000, 'm', 1),
      at: atEdge(given.network, f.legs[0]),
    };
    // An ordinary boarded timber floor breathes; a box, a duct or a hung ceiling may not.
    if (space.kind === 'floor' && space.ventilated === null) return [{ outcome: 'note', ...shared, say: 'floor' }];
    if (space.ventilated === null)
      return [{ outcome: 'cantTell', ...shared, missing: [`whether the ${shared.words.space} is ventilated`] }];
    return [{ outcome: 'check', ...shared }];
  });
}

const house = (ventilated: boolean | null, kind: 'ceiling' | 'floor' = 'ceiling') => {
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
  };
  return e.run('g', 'gas', [
    [500, 500, 2300],
    [2500, 500, 2300],
  ]).plan;
};

export default defineRule({
  id: 'gas/in-void',
  topic: 'gas',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'bs6891-2015', clause: 'pipes in ducts and voids' }],
  needs: ['whether the void is ventilated'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: '{run}: {metres} m in the {space}, not ventilated',
      why: 'A small leak in a closed space gathers until it can burn.',
      todo: 'Ventilate the space, or take the pipe outside it; where it is part of an escape route, ask who is in charge of fire safety.',
    },
    floor: {
      title: '{run}: {metres} m in the {space}',
      why: 'An ordinary boarded timber floor lets a small leak out; a sealed or acoustic one does not.',
      todo: 'Look at what the floor is before it is closed.',
    },
    cantTell: {
      title: '{run}: {metres} m in the {space}; is it ventilated?',
      why: 'A small leak in a closed space gathers until it can burn. Nobody has told whether this one is ventilated, or part of an escape route.',
      todo: 'Find out on site, and set it on the void.',
    },
    pass: 'The space is ventilated.',
  },
  examples: [
    {
      name: 'a hung ceiling nobody asked about',
      given: () => house(null),
      expect: 'cantTell',
      found: { lo: 2, hi: 2, tolerance: 0.01 },
      from: 'two metres drawn in it',
    },
    { name: 'a sealed ceiling', given: () => house(false), expect: 'check' },
    { name: 'a ventilated ceiling', given: () => house(true), expect: 'pass' },
    { name: 'a timber floor', given: () => house(null, 'floor'), expect: 'note' },
  ],
});

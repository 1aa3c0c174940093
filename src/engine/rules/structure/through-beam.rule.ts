import { makePoint } from '../../../catalogue/make-point.ts';
import type { Point } from '../../../plan/records/pipework.ts';
import { exact } from '../../../report/quantity.ts';
import { type PointHit, pointsInTheWay, sayThing } from '../../building/points-in-the-way.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { sayRun } from '../../say-names.ts';

const KINDS: ReadonlySet<string> = new Set(['beam', 'protected-area', 'obstacle']);

function toFault(given: Given, point: Point, hits: readonly PointHit[]): Fault[] {
  const worst = hits[0];
  if (!worst) return [];
  const { pipe } = worst;
  const shared = {
    ids: [pipe.run, point.id],
    legs: hits.map((h) => h.pipe.edge.id),
    words: { run: sayRun(given.plan, pipe.run), thing: sayThing(given, point) },
    found: exact(-worst.gapMm, 'mm', 0),
    at: atPlace(pipe.storey, worst.at, true),
    more: hits.length - 1,
  };
  // Gas in a protected way out is told of by its own rule.
  if (point.kind === 'protected-area')
    return pipe.edge.service === 'gas' ? [] : [{ outcome: 'note', ...shared, say: 'area' }];
  if (point.kind === 'obstacle') return [{ outcome: 'check', ...shared, say: 'clear' }];
  const may = point.fields.mayBeDrilled ?? null;
  if (may === true) return [];
  if (may === null) return [{ outcome: 'cantTell', ...shared, missing: ['whether it may be drilled, and where'] }];
  return [{ outcome: pipe.heightAssumed ? 'check' : 'stop', ...shared }];
}

function judge(given: Given): Fault[] {
  return pointsInTheWay(given, KINDS).flatMap(({ point, hits }): Fault[] => {
    const byRun = new Map<string, PointHit[]>();
    for (const hit of hits) byRun.set(hit.pipe.run, [...(byRun.get(hit.pipe.run) ?? []), hit]);
    return [...byRun.values()].flatMap((found) => toFault(given, point, found));
  });
}

/** A beam across the way of a pipe, 254 deep with its underside at 2300. */
const house = (kind: string, fields: Point['fields'], z = 2500) => {
  const e = example().run('r', 'heatingFlow', [
    [1000, 0, z],
    [1000, 2000, z],
  ]);
  const place = {
    on: 'storey' as const,
    x: 1000,
    y: 1000,
    angleDeg: 0,
    height: { from: 'datum' as const, of: null, mm: 2300 },
  };
  const base = makePoint('obstacle', { id: 'b', storey: 'ground', place, option: null });
  e.plan.points.b = { ...base, kind, fields, size: { widthMm: 3000, depthMm: 146, heightMm: 254 } };
  return e.plan;
};

export default defineRule({
  id: 'structure/through-beam',
  topic: 'structure',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'beams, padstones and what is to be kept clear' }],
  needs: ['place and size of beams, and whether they may be pierced'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: '{run} goes through the {thing}',
      why: 'A hole in a beam or beside its bearing takes what holds the house up.',
      todo: 'Go over, under or round it, clear of its bearings and padstones.',
    },
    area: {
      title: '{run} runs through the {thing}',
      why: 'People leave by it in a fire: what is in it must not burn, and every hole in its walls passes smoke until it is closed.',
      todo: 'Keep plastic and lagging that burns out of it, and close every hole with fire stopping.',
    },
    clear: {
      title: '{run} runs into the {thing}',
      why: 'The survey says this place is to be kept clear.',
      todo: 'Go round it, or get it agreed first.',
    },
    cantTell: {
      title: '{run} goes through the {thing}; may it?',
      why: "A hole in a beam is an engineer's to allow; not told: {missing}.",
      todo: 'Ask an engineer, or go over, under or round it.',
    },
    pass: 'Nothing goes through a beam or what is to be kept clear.',
  },
  examples: [
    {
      name: 'through a beam that may not be drilled',
      given: () => house('beam', { what: 'Steel beam', mayBeDrilled: false }),
      expect: 'stop',
    },
    {
      name: 'through a beam nobody asked about',
      given: () => house('beam', { what: '', mayBeDrilled: null }),
      expect: 'cantTell',
    },
    { name: 'through a hole an engineer allowed', given: () => house('beam', { mayBeDrilled: true }), expect: 'pass' },
    { name: 'below the beam', given: () => house('beam', { mayBeDrilled: false }, 2250), expect: 'pass' },
    { name: 'into what is to be kept clear', given: () => house('obstacle', { what: 'Loft hatch' }), expect: 'check' },
    {
      name: 'into a protected area',
      given: () => house('protected-area', { what: 'stair' }),
      expect: 'note',
    },
  ],
});

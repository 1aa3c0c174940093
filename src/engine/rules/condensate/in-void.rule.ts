import { constant, type Figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { condensateDrains } from '../../drainage/condensate-drains.ts';
import { condensateFalls } from '../../drainage/falls-wanted.ts';
import { type VoidFall, voidFalls } from '../../drainage/void-room.ts';
import type { Given } from '../../given.ts';
import { atEdge } from '../../places.ts';
import { sayRun } from '../../say-names.ts';
import { bareVoid, room } from './houses.ts';

type Params = { readonly wanted: Figure };

/** Drawn to the tenth; a hair over is a slip of the pen. */
const HAIR_MM = constant('drain-judgement', 'outside by less', 'mm');

function judgeFall(given: Given, f: VoidFall, wanted: number): Fault[] {
  const needs = (f.flatMm / 1000) * wanted + (f.odMm ?? 0);
  const out = f.belowMm < -HAIR_MM || f.aboveMm < -HAIR_MM;
  const shared = {
    ids: [f.step.edge.run, f.space.id],
    legs: [f.step.edge.id],
    words: {
      run: sayRun(given.plan, f.step.edge.run),
      space: f.space.name === '' ? `${f.space.kind} void` : f.space.name.toLowerCase(),
      metres: (f.flatMm / 1000).toFixed(1),
      needs: Math.round(needs).toString(),
      depth: Math.round(f.depthMm).toString(),
      out: Math.round(Math.max(-f.belowMm, -f.aboveMm)).toString(),
      face: f.belowMm < -HAIR_MM ? 'below' : 'above',
    },
    at: atEdge(given.network, f.step.edge.id),
  };
  if (f.odMm === null) return [{ outcome: 'cantTell', ...shared, missing: ['the size of the pipe'] }];
  if (needs > f.depthMm)
    return [
      {
        outcome: 'check',
        ...shared,
        found: exact(needs, 'mm', 0),
        wanted: exact(f.depthMm, 'mm', 0),
        wantedIs: 'atMost',
      },
    ];
  return out ? [{ outcome: 'check', ...shared, say: 'comesOut' }] : [];
}

function judge(given: Given, { wanted }: Params): Fault[] {
  if (wanted.is !== 'known') return [];
  return condensateDrains(given)
    .filter((d) => !d.pumped)
    .flatMap((d) => voidFalls(given, d))
    .filter((f) => f.step.edge.state === 'new')
    .flatMap((f) => judgeFall(given, f, wanted.lo));
}

const floor = (metres: number, drop: number, size: string | null = '21.5') => {
  const e = room();
  e.plan.voids.v = bareVoid('v', {
    kind: 'ceiling',
    name: 'Floor above',
    outline: [
      { x: -2950, y: -2950 },
      { x: 9000, y: -2950 },
      { x: 9000, y: -50 },
      { x: -2950, y: -50 },
    ],
    bottom: { from: 'datum', of: null, mm: 2400 },
    top: { from: 'datum', of: null, mm: 2600 },
  });
  return e.run(
    'k',
    'condensate',
    [
      [-2500, -1000, 2580],
      [-2500 + metres * 1000, -1000, 2580 - drop],
    ],
    { kind: 'plastic-overflow', size, joining: 'solvent' },
  ).plan;
};

export default defineRule<Params>({
  id: 'condensate/in-void',
  topic: 'drains',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'condensate-guide-2018', clause: 'fall of the pipe', table: 'condensate-fall-newer' }],
  needs: ['size of the pipe', 'depth of the void'],
  params: (given) => ({ wanted: condensateFalls(given.plan.basis.editions).wanted }),
  judge,
  say: {
    fault: {
      title: '{run}: no room for its fall in the {space}',
      why: 'Over {metres} m its fall and the pipe itself take {needs} mm, and there are {depth}.',
      todo: 'Come down sooner, or go a shorter way through it.',
    },
    comesOut: {
      title: '{run} comes out of the {space}',
      why: 'As drawn it stands {out} mm {face} the space it is to be hidden in.',
      todo: 'Start it higher, end it lower, or shorten its way.',
    },
    cantTell: {
      title: "Can't tell whether {run} has room in the {space}",
      why: 'Not known: {missing}.',
      todo: 'Choose its size.',
    },
    pass: 'It has room to fall.',
  },
  examples: [
    { name: 'a short way', given: () => floor(1.12, 51), expect: 'pass' },
    {
      name: 'four metres in 200',
      given: () => floor(4, 180),
      expect: 'check',
      found: { lo: 231, hi: 231, tolerance: 0.2 },
      from: '4 m at 52.4 mm in a metre and 21.5 of pipe: 231.1',
    },
    { name: 'drawn out of the ceiling', given: () => floor(3, 176), expect: 'check' },
    { name: 'a size nobody chose', given: () => floor(1.12, 51, null), expect: 'cantTell' },
  ],
});

import { type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atEdge } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { bareLimit } from '../../water/bare-length.ts';
import { newPipes } from '../../water-system/bare-pipe.ts';
import { type BareWay, bareWays } from '../../water-system/bare-ways.ts';
import { bareVoid, room } from '../condensate/houses.ts';
import { hotTo } from './houses.ts';

type Params = { readonly told: Figure };

function ofWay(given: Given, bare: BareWay, told: Figure): Fault[] {
  if (told.is !== 'known' || bare.metres < told.lo) return [];
  const limit = bare.largest ? bareLimit(bare.largest).byDiameter : null;
  const base = {
    ids: [bare.source, ...bare.runs],
    legs: bare.legs,
    words: {
      metres: bare.metres.toFixed(1),
      source: midSentence(sayPoint(given.plan, bare.source)),
      tap: midSentence(bare.way.name),
      size: bare.largest?.label ?? '',
    },
    found: exact(bare.metres, 'm', 1),
    at: atEdge(given.network, bare.legs[0]),
  };
  if (limit?.is === 'known' && bare.metres > limit.lo)
    return [{ outcome: 'check', say: 'long', ...base, wanted: limit, cites: [limit.cite] }];
  return [{ outcome: 'note', ...base }];
}

/** All new bare pipe in the cold at once: it is lagged in one go. */
function inTheCold(given: Given): Fault[] {
  const out = newPipes(given).filter((p) => p.bare && p.coldM > 0);
  const maybe = newPipes(given).filter((p) => p.bare && p.maybeColdM > 0);
  const some = out.length > 0 ? out : maybe;
  const [first] = [...some].sort((a, b) => b.coldM + b.maybeColdM - a.coldM - a.maybeColdM);
  if (!first) return [];
  const metres = some.reduce((n, p) => n + p.coldM + (out.length > 0 ? 0 : p.maybeColdM), 0);
  const sure = out.length > 0;
  return [
    {
      outcome: sure ? 'check' : 'cantTell',
      say: sure ? 'cold' : 'cantTell',
      ids: some.map((p) => p.edge.run),
      legs: some.map((p) => p.edge.id),
      words: { metres: metres.toFixed(1) },
      missing: sure ? [] : ['whether the space under the lowest floor is ventilated'],
      found: exact(metres, 'm', 1),
      at: atEdge(given.network, first.edge.id),
    },
  ];
}

function coldRun(out: boolean, insulationMm?: number) {
  return room().run(
    'c',
    'cold',
    [
      [-2000, -1500, 600],
      [out ? 3000 : -500, -1500, 600],
    ],
    { size: '15x0.7', ...(insulationMm === undefined ? {} : { insulationMm }) },
  ).plan;
}

function underFloor() {
  const e = room();
  e.plan.voids.v = bareVoid('v', { kind: 'floor' });
  return e.run(
    'c',
    'cold',
    [
      [-2500, -1500, -60],
      [-500, -1500, -60],
    ],
    { size: '15x0.7' },
  ).plan;
}

export default defineRule<Params>({
  id: 'water/insulation',
  topic: 'water',
  since: '2',
  basis: 'recommendation',
  lifeSafety: false,
  cites: [{ source: 'pipe-insulation-articles', clause: 'new hot water pipes; accessible pipes at a changed boiler' }],
  needs: ['insulation of the new pipe', 'what is outside or unheated'],
  params: () => ({ told: figure('hot-lagging-limits', 'told from', 'm') }),
  judge: (given, { told }) => [...bareWays(given).flatMap((b) => ofWay(given, b, told)), ...inTheCold(given)],
  say: {
    fault: {
      title: '{metres} m of new hot pipe from the {source} has no insulation',
      why: 'New hot water pipe is insulated: bare it goes cold between two draws, and the wait starts again.',
      todo: 'Set insulation on it, so that it is in the list.',
    },
    long: {
      title: '{metres} m of bare hot pipe to the {tap} is too long in {size}',
      why: 'So much hot pipe without insulation goes cold with every draw: water and heat run away.',
      todo: 'Insulate it, or shorten it.',
    },
    cold: {
      title: '{metres} m of new water pipe lies outside or unheated, and bare',
      why: 'It freezes and bursts, or gives its heat away.',
      todo: 'Bring it inside, or insulate it. Insulation only delays freezing.',
    },
    cantTell: {
      title: "Can't tell whether {metres} m of new water pipe lies in the cold",
      why: 'Not known: {missing}. Where air blows through there bare pipe freezes.',
      todo: 'Look whether the space is ventilated, and set it on the void.',
    },
    pass: 'New hot pipe is insulated, and nothing bare lies in the cold.',
  },
  examples: [
    { name: 'hot pipe that is insulated', given: () => hotTo(5, { insulationMm: 19 }), expect: 'pass' },
    { name: 'bare hot pipe', given: () => hotTo(5), expect: 'note' },
    { name: 'too much bare hot pipe', given: () => hotTo(14), expect: 'check' },
    { name: 'cold pipe indoors', given: () => coldRun(false), expect: 'pass' },
    {
      name: 'cold pipe that goes outside',
      given: () => coldRun(true),
      expect: 'check',
    },
    { name: 'the same, insulated', given: () => coldRun(true, 25), expect: 'pass' },
    { name: 'under a floor nobody looked below', given: underFloor, expect: 'cantTell' },
  ],
});

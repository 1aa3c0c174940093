import type { Figure } from '../../../reference/figure.ts';
import { constant } from '../../../reference/figure.ts';
import { againstLeast, between, type Quantity } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { DrainStep } from '../../drainage/drains.ts';
import { flueFalls } from '../../flue/flue-falls.ts';
import { type FlueRoute, flueRoutes, HIDDEN_BY_LESS_MM } from '../../flue/flue-routes.ts';
import type { Given } from '../../given.ts';
import { limitFor } from '../../limits.ts';
import { atEdge } from '../../places.ts';
import { sayRun } from '../../say-names.ts';
import { overhead, rising } from './routes.ts';

type Params = { readonly wanted: Figure; readonly least: Figure };
interface Bad {
  readonly step: DrainStep;
  readonly found: Quantity | null;
  readonly say: 'outwards' | 'fault' | 'between' | 'cantTell';
}

const SLIP_MM = constant('flue-judgement', 'fall slip', 'mm');
const UPRIGHT = Math.SQRT1_2;

/** Rise towards the terminal is fall back to the boiler. A piece that is short, or steep, runs off by itself. */
function judgeStep(step: DrainStep, wanted: number, least: number): Bad[] {
  const { drop, flatMm, edge } = step;
  if (edge.state !== 'new' || edge.kind !== 'leg') return [];
  if (drop === null || flatMm === null) return [{ step, found: null, say: 'cantTell' }];
  if (flatMm < HIDDEN_BY_LESS_MM && drop.mm <= SLIP_MM) return [];
  if (edge.intoA !== null && Math.abs(edge.intoA.z) > UPRIGHT) return [];
  const perM = (mm: number): number => (mm / flatMm) * 1000;
  const found = between(perM(-drop.hi), perM(-drop.lo), 'mm/m', 1, 'derived', perM(-drop.mm));
  if (drop.lo > SLIP_MM) return [{ step, found, say: 'outwards' }];
  if (againstLeast(found, wanted) === 'pass') return [];
  return [{ step, found, say: againstLeast(found, least) === 'pass' ? 'between' : 'fault' }];
}

const RANK = ['outwards', 'fault', 'between', 'cantTell'];

function ofRoute(given: Given, route: FlueRoute, { wanted: general, least }: Params): Fault[] {
  const scope = route.appliance?.id ?? null;
  const limit = limitFor(given.plan, 'flue-fall', scope, general);
  const floor = limit?.overridden || least.is !== 'known' ? (limit?.figure.lo ?? 0) : least.lo;
  const bad = limit ? route.way.steps.flatMap((s) => judgeStep(s, limit.figure.lo, floor)) : [];
  const [worst] = [...bad].sort(
    (a, b) => RANK.indexOf(a.say) - RANK.indexOf(b.say) || (a.found?.lo ?? 0) - (b.found?.lo ?? 0),
  );
  if (!worst) return [];
  const known = worst.say !== 'cantTell';
  return [
    {
      outcome: worst.say === 'outwards' ? 'stop' : known ? 'check' : 'cantTell',
      say: worst.say,
      ids: [worst.step.edge.run],
      legs: bad.map((b) => b.step.edge.id),
      words: {
        run: sayRun(given.plan, worst.step.edge.run),
        metres: ((worst.step.flatMm ?? 0) / 1000).toFixed(2),
        rise: Math.round(Math.abs(worst.step.drop?.mm ?? 0)).toString(),
        wanted: limit?.figure.lo.toFixed(1) ?? '',
        least: floor.toFixed(1),
      },
      found: worst.found,
      wanted: known ? (limit?.figure ?? null) : null,
      wantedIs: 'atLeast',
      limit: { id: 'flue-fall', scope },
      at: atEdge(given.network, worst.step.edge.id),
      more: bad.length - 1,
      missing: known ? [] : ['the height of its ends'],
    },
  ];
}

function noHeight() {
  const { plan } = rising(220);
  plan.voids.v = overhead({ bottom: null, top: null, kind: 'slab' });
  const node = Object.values(plan.nodes).find((n) => n.place.on === 'storey');
  if (node?.place.on === 'storey') node.place.height = { from: 'voidTop', of: 'v', mm: 0 };
  return plan;
}

export default defineRule<Params>({
  id: 'flue/fall',
  topic: 'flue',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [
    { source: 'flue-in-void-article', clause: 'uniform fall back to the boiler' },
    { source: 'flue-siting-guides', clause: 'fall back to the boiler', table: 'flue-fall-newer' },
    { source: 'flue-siting-guides', clause: 'fall back to the boiler', table: 'flue-fall-older' },
  ],
  needs: ['heights of the flue'],
  params: (given) => {
    const { wanted, least } = flueFalls(given.plan.basis.editions);
    return { wanted, least };
  },
  judge: (given, params) => flueRoutes(given).flatMap((route) => (route.isNew ? ofRoute(given, route, params) : [])),
  say: {
    fault: {
      title: '{run} falls back to the boiler too little',
      why: 'It rises {rise} mm in {metres} m. Older guides want {least} mm in a metre, newer ones more: condensate stands in it.',
      todo: 'Let it rise evenly all the way to the terminal, as the sheet of the appliance wants.',
    },
    between: {
      title: '{run} falls back less than newer guides want',
      why: 'It rises {rise} mm in {metres} m: enough for the {least} mm in a metre of older guides, short of {wanted}.',
      todo: 'Give it more where there is room; the sheet of the appliance says which goes.',
    },
    outwards: {
      title: '{run} falls away from the boiler',
      why: 'It drops {rise} mm in {metres} m on its way to the terminal: condensate drips outside or stands in the flue.',
      todo: 'Let it rise evenly from the boiler to the terminal, {wanted} mm in a metre or more.',
    },
    cantTell: {
      title: "Can't tell whether {run} falls back to the boiler",
      why: 'Not known: {missing}.',
      todo: 'Measure the heights of its ends.',
    },
    pass: 'It rises all the way to the terminal.',
  },
  examples: [
    { name: 'rises by newer guides', given: () => rising(220).plan, expect: 'pass' },
    {
      name: 'rises by older guides only',
      given: () => rising(190).plan,
      expect: 'check',
      found: { lo: 47.5, hi: 47.5, tolerance: 0.1 },
      from: '190 mm in 4 m on paper',
    },
    { name: 'level', given: () => rising(0).plan, expect: 'check' },
    { name: 'falls outwards', given: () => rising(-40).plan, expect: 'stop' },
    { name: 'a corner without a height', given: noHeight, expect: 'cantTell' },
  ],
});

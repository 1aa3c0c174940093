import { figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { sayOutlet, valveOutlets } from '../../drainage/discharge-size.ts';
import { discharges, nominalOf, outletOf, type ValvePipe } from '../../drainage/discharges.ts';
import { lieOf } from '../../drainage/gradient.ts';
import type { Given } from '../../given.ts';
import { atEdge } from '../../places.ts';
import { midSentence, sayPoint, sayRun, saySize } from '../../say-names.ts';
import { vessel } from './houses.ts';

/** Kinds the guidance means by metal. */
const METAL = new Set(['copper']);
const PLASTIC = new Set(['plastic', 'waste', 'plastic-overflow', 'pe']);

function judgePipe(given: Given, pipe: ValvePipe): Fault[] {
  const { from } = pipe;
  if (!from || from.kind === 'inlet-group') return [];
  const outlet = outletOf([from], valveOutlets());
  const least = outlet === null ? undefined : figure('discharge-d1', outlet, 'size');
  for (const step of pipe.steps.filter((s) => s.edge.state === 'new')) {
    const { edge } = step;
    const shared = {
      ids: [edge.run],
      legs: [edge.id],
      words: {
        run: sayRun(given.plan, edge.run),
        vessel: midSentence(sayPoint(given.plan, from.id)),
        size: saySize(edge.tube),
        outlet: outlet === null ? '' : sayOutlet(outlet),
      },
      at: atEdge(given.network, edge.id),
    };
    const lie = lieOf(step);
    if (lie.is === 'up' || (lie.is === 'slopes' && lie.mmPerM.hi !== null && lie.mmPerM.hi < 0))
      return [{ outcome: 'stop', say: 'climbs', ...shared }];
    if (PLASTIC.has(edge.tube.kind)) return [{ outcome: 'stop', say: 'plastic', ...shared }];
    const size = METAL.has(edge.tube.kind) ? nominalOf(step) : null;
    const missing = [
      ...(outlet === null ? ['the outlet of the safety valve'] : []),
      ...(size === null ? ['the size of the pipe'] : []),
    ];
    // Below the smallest outlet of all it is too small whatever the valve is.
    const any = figure('discharge-d1', valveOutlets()[0] ?? '', 'size');
    const floor = least?.is === 'known' ? least : any.is === 'known' ? any : undefined;
    if (size !== null && floor && size < floor.lo)
      return [{ outcome: 'stop', ...shared, found: exact(size, 'mm', 0, 'page'), wanted: floor, wantedIs: 'atLeast' }];
    if (missing.length > 0) return [{ outcome: 'cantTell', ...shared, missing }];
  }
  return [];
}

export default defineRule({
  id: 'discharge/valve-pipe',
  topic: 'drains',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [
    { source: 'water-fittings-guidance', clause: 'G19.3' },
    { source: 'document-g-quoted', clause: 'table of sizes', table: 'discharge-d1' },
  ],
  needs: ['outlet of the safety valve', 'size of the pipe'],
  params: () => ({ 'G1/2': figure('discharge-d1', 'G1/2', 'size'), 'G3/4': figure('discharge-d1', 'G3/4', 'size') }),
  judge: (given) => discharges(given).valvePipes.flatMap((d) => judgePipe(given, d)),
  say: {
    fault: {
      title: '{run}: {size} is too small between valve and tundish',
      why: 'Never smaller than the outlet of the safety valve: the pipe would hold back what the valve lets go.',
      todo: 'Take the size of the outlet or larger.',
    },
    plastic: {
      title: '{run}: plastic between valve and tundish',
      why: 'What comes out is at its hottest there, and plastic softens.',
      todo: 'Copper or stainless steel up to the tundish.',
    },
    climbs: {
      title: '{run} climbs from the valve to its tundish',
      why: 'Water stands against the valve, furs it up, and it sticks when it is needed.',
      todo: 'Let it fall from the valve to the tundish.',
    },
    cantTell: {
      title: "Can't tell whether {run} is large enough",
      why: 'Not known: {missing}.',
      todo: 'Read it off the valve of the {vessel}.',
    },
    pass: 'It is metal, and as large as the outlet of the valve.',
  },
  examples: [
    { name: '15 on a half-inch valve', given: () => vessel().plan, expect: 'pass' },
    {
      name: '15 on a three-quarter valve',
      given: () => vessel({ fields: { valveOutlet: 'G3/4' } }).plan,
      expect: 'stop',
      found: { lo: 15, hi: 15, tolerance: 0 },
      from: 'size as drawn',
    },
    {
      name: '10 on any valve',
      given: () => vessel({ fields: { valveOutlet: null }, d1: { size: '10x0.6' } }).plan,
      expect: 'stop',
    },
    {
      name: 'in plastic',
      given: () => vessel({ d1: { kind: 'plastic', size: '15', joining: 'pushFit' } }).plan,
      expect: 'stop',
    },
    { name: 'up to a tundish above', given: () => vessel({ below: -300 }).plan, expect: 'stop' },
    { name: 'an outlet nobody read', given: () => vessel({ fields: { valveOutlet: null } }).plan, expect: 'cantTell' },
  ],
});

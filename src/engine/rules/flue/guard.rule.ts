import { type Figure, figure } from '../../../reference/figure.ts';
import { sayFigures } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { terminalDistances } from '../../flue/terminal-distances.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { fronted } from './houses.ts';

type Params = { readonly low: Figure; readonly off: Figure; readonly passes: Figure; readonly stops: Figure };

const whole = (f: Figure): string => (f.is === 'known' ? f.lo.toFixed(f.digits) : 'as told');

function judge(given: Given, { low, off, passes, stops }: Params): Fault[] {
  if (low.is !== 'known') return [];
  const floors = Object.values(given.plan.storeys).map((s) => s.floorMm);
  const lowest = Math.min(...floors);
  return terminalDistances(given).flatMap(({ terminal: t, above }): Fault[] => {
    if (!t.isNew || t.upright || t.point.fields.guarded === true) return [];
    const words = {
      terminal: midSentence(sayPoint(given.plan, t.point.id)),
      off: whole(off),
      passes: whole(passes),
      stops: whole(stops),
    };
    const shared = { ids: [t.point.id], at: atPlace(t.point.storey, t.at), words };
    if (above === null) {
      // Higher than that over the lowest floor it can hardly be within reach of anybody outside.
      if (t.frame.origin.z - lowest >= low.lo) return [];
      return [{ outcome: 'cantTell', ...shared, missing: ['how high it is above the ground outside'] }];
    }
    if (above.found.lo >= low.lo) return [];
    return [
      {
        outcome: 'check',
        ...shared,
        words: { ...words, found: sayFigures(above.found), what: above.what },
        found: above.found,
        wanted: low,
        wantedIs: 'atLeast',
      },
    ];
  });
}

function noGround() {
  const { plan } = fronted({}, 1800);
  delete plan.grounds.g;
  return plan;
}

export default defineRule<Params>({
  id: 'flue/guard',
  topic: 'flue',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'house-building-flues', clause: '6.8.12', table: 'flue-guard' }],
  needs: ['how high the terminal is above the ground'],
  params: () => ({
    low: figure('flue-guard', 'guarded below', 'mm'),
    off: figure('flue-guard', 'guard off', 'mm'),
    passes: figure('flue-guard', 'ball passes', 'mm'),
    stops: figure('flue-guard', 'ball stops', 'mm'),
  }),
  judge,
  say: {
    fault: {
      title: 'The {terminal} wants a guard',
      why: 'It is {found} mm above {what}: people and children reach it, and it is hot.',
      todo: 'Fit a guard {off} mm or more off the terminal: a ball of {passes} passes it, one of {stops} does not. Say so on the terminal once it is in the job.',
    },
    cantTell: {
      title: "Can't tell whether the {terminal} wants a guard",
      why: 'Not known: {missing}.',
      todo: 'Level the ground outside, or say the height on the terminal.',
    },
    pass: 'Every terminal is out of reach, or guarded.',
  },
  examples: [
    {
      name: '1800 above the ground',
      given: () => fronted({}, 1800).plan,
      expect: 'check',
      found: { lo: 1800, hi: 1800, tolerance: 0.1 },
      from: 'as drawn over ground at the datum',
    },
    { name: 'the same with a guard', given: () => fronted({ guarded: true }, 1800).plan, expect: 'pass' },
    { name: '2200 above the ground', given: () => fronted().plan, expect: 'pass' },
    { name: 'nobody levelled the ground', given: noGround, expect: 'cantTell' },
  ],
});

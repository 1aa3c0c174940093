import { tubeOdMm } from '../../../catalogue/tubes.ts';
import { type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { discharges } from '../../drainage/discharges.ts';
import type { Given } from '../../given.ts';
import { atEdge } from '../../places.ts';
import { sayRun, saySize } from '../../say-names.ts';
import { endingAt, LOW, relief, usual } from './houses.ts';

type Params = { readonly least: Figure };

function judge(given: Given, { least }: Params): Fault[] {
  if (least.is !== 'known') return [];
  return discharges(given).reliefs.flatMap((drain): Fault[] => {
    let before = least.lo;
    for (const step of drain.steps) {
      const od = tubeOdMm(step.edge.tube);
      const shared = { ids: [step.edge.run], legs: [step.edge.id], at: atEdge(given.network, step.edge.id) };
      const words = {
        run: sayRun(given.plan, step.edge.run),
        size: saySize(step.edge.tube),
        least: least.lo.toFixed(0),
      };
      if (step.edge.state === 'new' && od === undefined)
        return [{ outcome: 'cantTell', ...shared, words, missing: ['its size'] }];
      if (od === undefined) continue;
      if (step.edge.state === 'new' && od < before)
        return [
          {
            outcome: 'stop',
            say: od < least.lo ? 'fault' : 'narrows',
            ...shared,
            words,
            found: exact(od, 'mm', 0, 'page'),
            wanted: { ...least, lo: before, hi: before, value: before },
            wantedIs: 'atLeast',
          },
        ];
      before = Math.max(before, od);
    }
    return [];
  });
}

function narrowing() {
  const plan = endingAt('outside-end', LOW);
  for (const leg of ['p.1', 'p.2']) {
    const found = plan.legs[leg];
    if (found) found.tube = { kind: 'copper', size: '22x0.9' };
  }
  return plan;
}

export default defineRule<Params>({
  id: 'relief/size',
  topic: 'drains',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'bs-6798', clause: 'discharge from the safety valve', table: 'relief-limits' }],
  needs: ['size of the pipe'],
  params: () => ({ least: figure('relief-limits', 'size', 'mm') }),
  judge,
  say: {
    fault: {
      title: '{run}: {size} is too small for a safety valve',
      why: 'When the valve opens, boiling water and steam must get away at once; a narrow pipe holds the pressure in.',
      todo: 'Copper of {least} at least, full bore of the valve, all the way.',
    },
    narrows: {
      title: '{run} narrows to {size} on its way',
      why: 'The narrowest place decides what the safety valve can let out.',
      todo: 'Keep the size it starts with, or a larger one, to the end.',
    },
    cantTell: {
      title: "Can't tell whether {run} is wide enough",
      why: 'Not known: {missing}.',
      todo: 'Choose its size.',
    },
    pass: 'It is as wide as the valve all the way.',
  },
  examples: [
    { name: '15 all the way', given: () => usual(), expect: 'pass' },
    {
      name: 'in 10',
      given: () => usual({ size: '10x0.6' }),
      expect: 'stop',
      found: { lo: 10, hi: 10, tolerance: 0 },
      from: 'outside diameter of the tube as drawn',
    },
    { name: '22, then 15', given: narrowing, expect: 'stop' },
    { name: 'a size nobody chose', given: () => relief([[184, -81, 300]], { size: null }), expect: 'cantTell' },
  ],
});

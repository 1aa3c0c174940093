import { type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { discharges } from '../../drainage/discharges.ts';
import { isNew } from '../../drainage/drains.ts';
import type { Given } from '../../given.ts';
import { limitFor } from '../../limits.ts';
import { atVertex } from '../../places.ts';
import { sayRun } from '../../say-names.ts';
import { bareVoid } from '../condensate/houses.ts';
import { away } from './houses.ts';

type Params = { readonly least: Figure };

function judge(given: Given, { least }: Params): Fault[] {
  return discharges(given).tundishPipes.flatMap((pipe): Fault[] => {
    const first = pipe.steps[0];
    const limit = limitFor(given.plan, 'discharge-straight-drop', pipe.tundish?.id ?? null, least);
    if (!first || !limit || pipe.tundish === null || pipe.boilersOnly || !isNew(pipe)) return [];
    const drop = pipe.straightDropMm;
    if (drop !== null && drop >= limit.figure.lo) return [];
    const shared = {
      ids: [first.edge.run],
      legs: [first.edge.id],
      words: {
        run: sayRun(given.plan, first.edge.run),
        drop: drop === null ? '' : Math.round(drop).toString(),
        least: limit.figure.lo.toFixed(0),
      },
      at: atVertex(given.network, first.to),
      wanted: limit.figure,
      limit: { id: 'discharge-straight-drop', scope: pipe.tundish?.id ?? null },
      wantedIs: 'atLeast' as const,
    };
    if (drop === null) return [{ outcome: 'cantTell', ...shared, missing: ['the height of its ends'] }];
    return [{ outcome: 'stop', ...shared, found: exact(drop, 'mm', 0) }];
  });
}

function noHeight() {
  const plan = away();
  plan.voids.v = bareVoid('v');
  const leg = plan.legs['d2.1'];
  const node = leg && plan.nodes[leg.b];
  if (node?.place.on === 'storey') node.place.height = { from: 'voidTop', of: 'v', mm: 0 };
  return plan;
}

export default defineRule<Params>({
  id: 'discharge/straight-drop',
  topic: 'drains',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'water-fittings-guidance', clause: 'G19.3c', table: 'discharge-limits' }],
  needs: ['heights of the pipe'],
  params: () => ({ least: figure('discharge-limits', 'straight drop', 'mm') }),
  judge,
  say: {
    fault: {
      title: '{run}: only {drop} mm straight down below the tundish',
      why: 'Water and steam need {least} mm to gather before the first bend, or they come out over the rim of the tundish.',
      todo: 'Hang the tundish higher, or bend lower.',
    },
    cantTell: {
      title: "Can't tell how far {run} goes straight down",
      why: 'Not known: {missing}. Below the tundish it needs {least} mm before the first bend.',
      todo: 'Measure it.',
    },
    pass: 'It goes straight down far enough.',
  },
  examples: [
    { name: '400 straight down', given: () => away(), expect: 'pass' },
    { name: '300 is enough', given: () => away({ dropMm: 300 }), expect: 'pass' },
    {
      name: '200 straight down',
      given: () => away({ dropMm: 200 }),
      expect: 'stop',
      found: { lo: 200, hi: 200, tolerance: 0.1 },
      from: 'as drawn',
    },
    { name: 'a corner without a height', given: noHeight, expect: 'cantTell' },
  ],
});

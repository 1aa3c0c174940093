import { type Figure, figure } from '../../../reference/figure.ts';
import { againstLeast, exact, type Quantity } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { discharges, type TundishPipe } from '../../drainage/discharges.ts';
import type { DrainStep } from '../../drainage/drains.ts';
import { lieOf } from '../../drainage/gradient.ts';
import type { Given } from '../../given.ts';
import { atEdge } from '../../places.ts';
import { sayRun } from '../../say-names.ts';
import { bareVoid } from '../condensate/houses.ts';
import { away } from './houses.ts';

type Params = { readonly least: Figure };
type Bad = { readonly step: DrainStep; readonly say: string; readonly found: Quantity | null };

const RANK = ['climbs', 'fault', 'unsure', 'cantTell'];

function judgeStep(step: DrainStep, least: number): Bad | null {
  const lie = lieOf(step);
  if (lie.is === 'unknown') return step.edge.kind === 'leg' ? { step, say: 'cantTell', found: null } : null;
  if (lie.is === 'up') return { step, say: 'climbs', found: exact(0, 'mm/m', 1) };
  if (lie.is !== 'slopes') return null;
  const found = lie.mmPerM;
  if (found.hi !== null && found.hi < 0) return { step, say: 'climbs', found };
  // 1 in 200 drawn to the tenth of a mm must not fail by the last of them.
  const verdict = againstLeast(found, least - 1e-6);
  return verdict === 'pass' ? null : { step, say: verdict === 'stop' ? 'fault' : 'unsure', found };
}

function judgePipe(given: Given, pipe: TundishPipe, least: Figure): Fault[] {
  if (least.is !== 'known') return [];
  const byRun = new Map<string, Bad[]>();
  for (const step of pipe.steps) {
    const bad = step.edge.state === 'new' ? judgeStep(step, least.lo) : null;
    if (bad) byRun.set(step.edge.run, [...(byRun.get(step.edge.run) ?? []), bad]);
  }
  return [...byRun].flatMap(([run, all]): Fault[] => {
    const [worst] = [...all].sort(
      (a, b) => RANK.indexOf(a.say) - RANK.indexOf(b.say) || (a.found?.lo ?? 0) - (b.found?.lo ?? 0),
    );
    if (!worst) return [];
    const { say, step, found } = worst;
    return [
      {
        outcome: say === 'cantTell' ? 'cantTell' : say === 'unsure' ? 'check' : 'stop',
        say,
        ids: [run],
        legs: all.map((b) => b.step.edge.id),
        words: {
          run: sayRun(given.plan, run),
          least: least.lo.toFixed(0),
          drop: Math.round(step.drop?.mm ?? 0).toString(),
          metres: ((step.flatMm ?? 0) / 1000).toFixed(2),
        },
        found,
        wanted: say === 'cantTell' ? null : least,
        wantedIs: 'atLeast',
        at: atEdge(given.network, step.edge.id),
        more: all.length - 1,
        missing: say === 'cantTell' ? ['the height of its ends'] : [],
      },
    ];
  });
}

function withHeight(change: 'none' | 'assumed') {
  const plan = away({ fallMm: 14 });
  plan.voids.v = bareVoid('v');
  const leg = plan.legs['d2.2'];
  const node = leg && plan.nodes[leg.b];
  if (node?.place.on !== 'storey') return plan;
  const { mm } = node.place.height;
  node.place.height =
    change === 'none'
      ? { from: 'voidTop', of: 'v', mm: 0 }
      : { from: 'datum', of: null, mm, assumed: { lo: mm - 6, hi: mm + 6 } };
  return plan;
}

export default defineRule<Params>({
  id: 'discharge/fall',
  topic: 'drains',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'document-g-quoted', clause: '3.56(b)', table: 'discharge-limits' }],
  needs: ['heights of the pipe'],
  params: () => ({ least: figure('discharge-limits', 'fall', 'mmPerM') }),
  judge: (given, { least }) => discharges(given).tundishPipes.flatMap((d) => judgePipe(given, d, least)),
  say: {
    fault: {
      title: '{run} falls too little from the tundish',
      why: 'It drops {drop} mm in {metres} m. At less than 1 in 200, {least} mm in a metre, water stands in it and the next discharge comes back over the tundish.',
      todo: 'Let it fall all the way to its end.',
    },
    climbs: {
      title: '{run} climbs',
      why: 'A discharge pipe runs by its own weight: water stands before the rise, and the next discharge floods the room.',
      todo: 'Take another way out that falls all along. Where there is none, this vessel cannot stand here.',
    },
    unsure: {
      title: '{run} may fall too little from the tundish',
      why: 'A height on it is assumed, and within what is assumed it falls less than {least} mm in a metre.',
      todo: 'Measure the heights of its ends.',
    },
    cantTell: {
      title: "Can't tell whether {run} falls",
      why: 'Not known: {missing}.',
      todo: 'Measure it.',
    },
    pass: 'It falls all the way.',
  },
  examples: [
    { name: '10 in a metre', given: () => away(), expect: 'pass' },
    { name: '1 in 200 to the tenth', given: () => away({ fallMm: 10 }), expect: 'pass' },
    {
      name: '2 in a metre',
      given: () => away({ fallMm: 4 }),
      expect: 'stop',
      found: { lo: 2, hi: 2, tolerance: 0.01 },
      from: '4 mm in 2 m',
    },
    { name: 'climbs', given: () => away({ fallMm: -30 }), expect: 'stop' },
    { name: 'an assumed height decides', given: () => withHeight('assumed'), expect: 'check' },
    { name: 'a corner without a height', given: () => withHeight('none'), expect: 'cantTell' },
  ],
});

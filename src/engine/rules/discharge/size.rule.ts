import { figure } from '../../../reference/figure.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { dischargeSize, sayOutlet, valveOutlets } from '../../drainage/discharge-size.ts';
import { discharges, type TundishPipe } from '../../drainage/discharges.ts';
import { isNew } from '../../drainage/drains.ts';
import { pipeSize } from '../../drainage/tundish-pipe-size.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { sayRun } from '../../say-names.ts';
import { away } from './houses.ts';

function judgePipe(given: Given, pipe: TundishPipe): Fault[] {
  const first = pipe.steps[0];
  if (!first || pipe.boilersOnly || (pipe.tundish === null && pipe.vessels.length === 0)) return [];
  const found = pipeSize(pipe);
  if (found.verdict === 'pass') return [];
  const run = first.edge.run;
  const { own, least, drawn, outlet } = found;
  const shared = {
    ids: [run],
    legs: pipe.steps.map((s) => s.edge.id),
    words: {
      run: sayRun(given.plan, run),
      size: drawn === null ? '' : `${drawn}`,
      outlet: outlet === null ? '' : sayOutlet(outlet),
      instead: least
        ? `Take ${least.size} copper`
        : 'No size of the table carries so far: an engineer has to calculate it',
    },
    at: atVertex(given.network, first.from),
    found: own?.total ?? null,
    wanted: own?.most ?? null,
  };
  if (found.verdict === 'cantTell')
    return [
      {
        outcome: 'cantTell',
        ...shared,
        wanted: null,
        missing: found.missing.length > 0 ? found.missing : ['a row of the table for it'],
      },
    ];
  return [
    {
      outcome: found.verdict === 'stop' && isNew(pipe) ? 'stop' : 'check',
      say: isNew(pipe) ? (found.verdict === 'stop' ? 'fault' : 'unsure') : 'kept',
      ...shared,
      working: outlet === null ? null : dischargeSize({ outlet, lengthM: pipe.lengthM, bends: pipe.bends }),
    },
  ];
}

const G12 = { fields: { valveOutlet: 'G1/2' } };

function looseHeight() {
  const plan = away({ vessel: G12, alongM: 6.6 });
  const leg = plan.legs['d2.1'];
  const node = leg && plan.nodes[leg.b];
  if (node?.place.on !== 'storey') return plan;
  const { mm } = node.place.height;
  node.place.height = { from: 'datum', of: null, mm, assumed: { lo: mm - 300, hi: mm + 300 } };
  return plan;
}

export default defineRule({
  id: 'discharge/size',
  topic: 'drains',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'document-g-quoted', clause: 'table of sizes', table: 'discharge-d2' }],
  needs: ['outlet of the safety valve', 'size, length and bends of the pipe'],
  params: () => Object.fromEntries(valveOutlets().map((o) => [o, figure('discharge-d1', o, 'size')])),
  judge: (given) => discharges(given).tundishPipes.flatMap((d) => judgePipe(given, d)),
  say: {
    fault: {
      title: '{run}: {size} is too small from the tundish',
      why: 'By its length and bends it holds back what the valve lets go, and boiling water comes over the rim of the tundish.',
      todo: '{instead}, or take a shorter way with fewer bends.',
    },
    unsure: {
      title: '{run}: {size} may be too small from the tundish',
      why: 'The limit of the table lies inside what its length and bends leave open.',
      todo: '{instead}, or measure its length and count its bends.',
    },
    kept: {
      title: '{run}: the {size} that is there is too small',
      why: 'By its length and bends it holds back what the valve lets go.',
      todo: '{instead} while the floor is up, and tell the customer.',
    },
    cantTell: {
      title: "Can't tell whether {run} is large enough",
      why: 'Not known: {missing}. The table goes by the outlet of the valve, and is for copper only.',
      todo: 'Read it off the valve, or take the figures of the pipe from its maker.',
    },
    pass: 'It is large enough for its length and bends.',
  },
  examples: [
    { name: '22, short, two bends', given: () => away({ vessel: G12 }), expect: 'pass' },
    {
      name: '22, seven metres and more bends',
      given: () => away({ vessel: G12, alongM: 7, jogs: 2 }),
      expect: 'stop',
      found: { lo: 12.93, hi: 12.93, tolerance: 0.01 },
      from: '0.4 down, 7.0 along, 0.4 of jogs and 0.33 down, and six bends at 0.8',
    },
    {
      name: '28, the same way',
      given: () => away({ vessel: G12, alongM: 7, jogs: 2, words: { size: '28x0.9' } }),
      expect: 'pass',
    },
    {
      name: '22 on a three-quarter valve',
      given: () => away({ vessel: { fields: { valveOutlet: 'G3/4' } } }),
      expect: 'stop',
    },
    { name: 'the limit inside what is not known', given: looseHeight, expect: 'check' },
    {
      name: 'always there and too small',
      given: () => away({ vessel: { ...G12, option: null }, alongM: 9, words: { option: null } }),
      expect: 'check',
    },
    {
      name: 'an outlet nobody read',
      given: () => away({ vessel: { fields: { valveOutlet: null } } }),
      expect: 'cantTell',
    },
    {
      name: 'plastic',
      given: () => away({ words: { kind: 'plastic', size: '22', joining: 'pushFit' } }),
      expect: 'cantTell',
    },
  ],
});

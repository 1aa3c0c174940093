import { type Figure, figure } from '../../../reference/figure.ts';
import { edition } from '../../../reference/tables.ts';
import { exact, type Quantity } from '../../../report/quantity.ts';
import type { Clash } from '../../clearance/find-clashes.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import { quantityOf } from '../../gas/said.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { sayRun, saySize, sentence } from '../../say-names.ts';

type Params = { readonly gas: Figure; readonly touching: Figure; readonly crossing: Figure };

const wantedOf = (f: Figure): Quantity | null => (f.is === 'known' ? quantityOf(f, 0) : null);

function saidRun(given: Given, run: string, leg: string): string {
  const edge = given.network.edges.get(leg);
  return edge ? `${sayRun(given.plan, run)} ${saySize(edge.tube)}` : sayRun(given.plan, run);
}

function judgeOne(given: Given, params: Params, clash: Clash): Fault[] {
  const [a, b] = clash.runs;
  const legOf = (run: string): string => clash.legs.find((l) => given.network.edges.get(l)?.run === run) ?? '';
  const there = clash.legs.every((l) => given.network.edges.get(l)?.state === 'there');
  // Pipes that have lain beside each other for years are not this job's business.
  if (there) return [];
  const overlap = clash.gapMm < 0;
  const wanted = clash.gas ? params.gas : overlap ? params.crossing : params.touching;
  const shared = {
    ids: [a, b],
    legs: clash.legs,
    words: {
      a: sentence(saidRun(given, a, legOf(a))),
      b: saidRun(given, b, legOf(b)).toLowerCase(),
      by: `${Math.abs(Math.round(clash.gapMm))}`,
      centres: `${Math.round(clash.centresMm)}`,
    },
    found: exact(clash.gapMm, 'mm', 0),
    wanted: wantedOf(wanted),
    wantedIs: 'atLeast' as const,
    at: atPlace(clash.storey, clash.at, true),
    more: clash.more,
    unverified: wanted.is === 'known' && wanted.sureness === 'memory',
    cites: [{ source: wanted.cite.source, clause: wanted.cite.clause, table: wanted.cite.table }],
  };
  if (!clash.sizeKnown && !overlap)
    return [{ outcome: 'cantTell', ...shared, missing: ['the size of a pipe nobody read'] }];
  if (overlap)
    return [
      { outcome: clash.heightAssumed ? 'check' : 'stop', ...shared, say: clash.heightAssumed ? 'assumed' : 'fault' },
    ];
  return [{ outcome: 'check', ...shared, say: clash.gas ? 'gas' : 'touching' }];
}

const crossing = (y: number, service: string, z = 300) =>
  example()
    .run(
      'r',
      'heatingReturn',
      [
        [1000, 240, 1300],
        [1000, 240, 200],
      ],
      { size: '22x0.9' },
    )
    .run(
      'c',
      service,
      [
        [0, y, z],
        [2000, y, z],
      ],
      { size: '22x0.9' },
    ).plan;

export default defineRule({
  id: 'clash/runs',
  topic: 'clashes',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [
    { source: 'trade-practice', clause: 'pipes side by side and crossing', table: 'pipe-clearance' },
    { source: 'bs6891-2015', clause: 'gas beside other services', table: 'gas-clearance-2015' },
  ],
  needs: ['size and height of both pipes'],
  params(given): Params {
    const table = edition('gas-clearance', given.plan.basis.editions);
    return {
      gas: table
        ? figure(table, 'pipe', 'mm')
        : { is: 'unknown', say: 'the clearance of the pinned edition', cite: { source: '', clause: '', table: '' } },
      touching: figure('pipe-clearance', 'touching', 'mm'),
      crossing: figure('pipe-clearance', 'crossing', 'mm'),
    };
  },
  judge: (given, params) => given.clashes.flatMap((c) => judgeOne(given, params, c)),
  say: {
    fault: {
      title: '{a} meets {b}',
      why: 'Surface to surface they run {by} into each other: {centres} between centres.',
      todo: 'Bring one of them along behind or in front, raise or lower it clear, or step it round.',
    },
    assumed: {
      title: '{a} would meet {b}',
      why: 'As drawn they run {by} into each other, but a height there is assumed.',
      todo: 'Measure the height, or set one of the two clear.',
    },
    gas: {
      title: '{a} is close to {b}',
      why: 'Gas pipe is kept clear of other services, so that neither damages the other and both can be clipped.',
      todo: 'Move one of them until they are clear.',
    },
    touching: {
      title: '{a} touches {b}',
      why: 'Pipes that touch tick and creak as they warm, and cannot be clipped or lagged.',
      todo: 'Part them by the width of a clip.',
    },
    cantTell: {
      title: "Can't tell whether {a} clears {b}",
      why: 'The size of one of them is not known, so its surface is not either.',
      todo: 'Read the size on site.',
    },
    pass: 'The runs are clear of each other.',
  },
  examples: [
    {
      name: 'cold through the return',
      given: () => crossing(250, 'cold'),
      expect: 'stop',
      found: { lo: -12, hi: -12, tolerance: 0.1 },
      from: '10 between centres less two radii of 11',
    },
    { name: 'cold along behind the return', given: () => crossing(295, 'cold'), expect: 'pass' },
    {
      name: 'gas 13 clear of the return',
      given: () => crossing(275, 'gas'),
      expect: 'check',
      found: { lo: 13, hi: 13, tolerance: 0.1 },
      from: '35 between centres less two radii of 11',
    },
    { name: 'cold a millimetre from it', given: () => crossing(263, 'cold'), expect: 'check' },
    {
      name: 'cold through it at a height nobody measured',
      given: () => {
        const plan = crossing(250, 'cold');
        for (const { place } of Object.values(plan.nodes)) {
          if (place.on === 'storey' && place.height.mm === 300) place.height.assumed = { lo: 150, hi: 450 };
        }
        return plan;
      },
      expect: 'check',
    },
    { name: 'cold over the top of it', given: () => crossing(250, 'cold', 1400), expect: 'pass' },
    {
      name: 'close to a pipe of unknown size',
      given: () =>
        example()
          .run(
            'r',
            'gas',
            [
              [1000, 240, 1300],
              [1000, 240, 200],
            ],
            { size: null },
          )
          .run('c', 'cold', [
            [0, 260, 300],
            [2000, 260, 300],
          ]).plan,
      expect: 'cantTell',
    },
  ],
});

import { type Figure, figure } from '../../../reference/figure.ts';
import { edition } from '../../../reference/tables.ts';
import { exact, type Quantity } from '../../../report/quantity.ts';
import type { Clash } from '../../clearance/find-clashes.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { quantityOf } from '../../gas/said.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayRun, saySize, sentence } from '../../say-names.ts';
import { runsExamples } from './runs-examples.ts';

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
  // Lagging can be cut back or left off; the pipes below it cannot.
  const overlap = clash.gapMm + clash.laggingMm < 0;
  const lagging = !overlap && clash.gapMm < 0;
  const own = a === b;
  const wanted = clash.gas && !own ? params.gas : overlap ? params.crossing : params.touching;
  const shared = {
    ids: [a, b],
    legs: clash.legs,
    words: {
      a: sentence(saidRun(given, a, legOf(a))),
      b: own ? 'itself' : midSentence(saidRun(given, b, legOf(b))),
      by: `${Math.abs(Math.round(clash.gapMm))}`,
      centres: `${Math.round(clash.centresMm)}`,
      bare: `${Math.round(clash.gapMm + clash.laggingMm)}`,
    },
    found: exact(clash.gapMm, 'mm', 0),
    wanted: wantedOf(wanted),
    wantedIs: 'atLeast' as const,
    at: atPlace(clash.storey, clash.at, true),
    more: clash.more,
    unverified: wanted.is === 'known' && wanted.sureness === 'memory',
    ...(wanted.is === 'known' ? { cites: [wanted.cite] } : {}),
  };
  if (!clash.sizeKnown && !overlap)
    return [{ outcome: 'cantTell', ...shared, missing: ['the size of a pipe nobody read'] }];
  if (!overlap) return [{ outcome: 'check', ...shared, say: clash.gas ? 'gas' : lagging ? 'lagging' : 'touching' }];
  if (clash.heightAssumed) return [{ outcome: 'check', ...shared, say: 'assumed' }];
  return [{ outcome: 'stop', ...shared, say: own ? 'itself' : 'fault' }];
}

const NOT_PINNED = 'the clearances of the edition this job has pinned';

/** Without the figure of the pinned edition nobody can tell how near gas is: said once, of all new gas. */
function lostEdition(given: Given, params: Params): Fault[] {
  if (params.gas.is === 'known') return [];
  const gas = given.pipes.filter((p) => p.edge.service === 'gas' && p.edge.state === 'new').map((p) => p.run);
  return gas.length === 0 ? [] : [{ outcome: 'cantTell', ids: gas, missing: [NOT_PINNED], say: 'edition' }];
}

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
        : { is: 'unknown', say: NOT_PINNED, cite: { source: '', clause: '', table: '' } },
      touching: figure('pipe-clearance', 'touching', 'mm'),
      crossing: figure('pipe-clearance', 'crossing', 'mm'),
    };
  },
  judge: (given, params) => [
    ...given.clashes.flatMap((c) => judgeOne(given, params, c)),
    ...lostEdition(given, params),
  ],
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
    itself: {
      title: '{a} meets itself',
      why: 'Two of its legs run {by} into each other: {centres} between centres.',
      todo: 'Take it another way round, or raise or lower one of the two legs clear.',
    },
    lagging: {
      title: '{a} and {b}: no room for the lagging',
      why: 'The pipes are {bare} apart, and the lagging on them needs {by} more than that.',
      todo: 'Part them, or cut the lagging back where they pass.',
    },
    touching: {
      title: '{a} touches {b}',
      why: 'Pipes that touch tick and creak as they warm, and cannot be clipped or lagged.',
      todo: 'Part them by the width of a clip.',
    },
    edition: {
      title: "Can't tell how near gas may come to other pipes",
      why: 'The figure is missing: {missing}.',
      todo: 'Pin an edition that is here, or keep to the clearances of the one you have.',
    },
    cantTell: {
      title: "Can't tell whether {a} clears {b}",
      why: 'The size of one of them is not known, so its surface is not either.',
      todo: 'Read the size on site.',
    },
    pass: 'The runs are clear of each other.',
  },
  examples: runsExamples,
});

import type { ReachAnswer } from '../../report/report.ts';
import type { Row, State } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import { condensateFalls } from '../drainage/falls-wanted.ts';
import { reachOf } from '../drainage/reach.ts';
import type { Given } from '../given.ts';
import { midSentence, sayPoint } from '../say-names.ts';

const ORDER: Readonly<Record<ReachAnswer['state'], number>> = { pass: 0, check: 1, cantTell: 2, stop: 3 };
const byReach = (a: ReachAnswer, b: ReachAnswer): number =>
  ORDER[a.state] - ORDER[b.state] || (a.lengthM?.lo ?? 0) - (b.lengthM?.lo ?? 0) || (a.end < b.end ? -1 : 1);

const WATER: Readonly<Record<ReachAnswer['service'], string>> = { condensate: 'condensate', boilerRelief: 'relief' };

function rowOf(given: Given, a: ReachAnswer): Row {
  const ids = [a.end, ...a.blocks.flatMap((b) => b.ids)].filter((id, i, all) => all.indexOf(id) === i);
  return { kind: 'verdict', label: sayPoint(given.plan, a.end), state: a.state, say: a.say, ids };
}

function heightRow(given: Given, of: readonly ReachAnswer[]): Row[] {
  const short = of.filter((a) => a.state !== 'pass' && a.leastHeightMm !== null && (a.arrivesMm?.lo ?? 0) < 0);
  return short.map((a) => ({
    kind: 'fact',
    label: `${sayPoint(given.plan, a.end)}: tail at least`,
    figure: a.leastHeightMm,
    say: 'above the floor',
    ids: [a.end],
  }));
}

function assumedRows(given: Given, of: readonly ReachAnswer[]): Row[] {
  const points = [...new Set(of.flatMap((a) => [a.appliance, a.end]))];
  return points.flatMap((id): Row[] => {
    const height = given.plan.points[id]?.place.height;
    if (!height?.assumed || height.assumed.lo === height.assumed.hi) return [];
    const { lo, hi } = height.assumed;
    return [{ kind: 'assumed', say: `${sayPoint(given.plan, id)}: height assumed, ${lo} to ${hi}`, ids: [id] }];
  });
}

export default defineSection({
  id: 'reach',
  order: 25,
  write(given) {
    const all = reachOf(given);
    if (all.length === 0) return null;
    const water = all.some((a) => a.service === 'condensate') ? 'condensate' : 'boilerRelief';
    const main = all.filter((a) => a.service === water);
    const appliances = [...new Set(all.map((a) => a.appliance))];
    const groups = appliances.flatMap((appliance) =>
      (['condensate', 'boilerRelief'] as const).map((service) => ({
        appliance,
        service,
        answers: all.filter((a) => a.appliance === appliance && a.service === service).sort(byReach),
      })),
    );
    const rows = groups.flatMap(({ appliance, service, answers }): Row[] => {
      if (answers.length === 0) return [];
      const say = `by gravity, ${WATER[service]}`;
      return [
        { kind: 'heading', label: `From the ${midSentence(sayPoint(given.plan, appliance))}`, say, ids: [appliance] },
        ...answers.map((a) => rowOf(given, a)),
        ...heightRow(given, answers),
      ];
    });
    const { wanted, least } = condensateFalls(given.plan.basis.editions);
    const falls = [least, wanted].flatMap((f) => (f.is === 'known' ? [f] : []));
    const told = [...new Set(falls.map((f) => f.lo.toFixed(1)))].join(' to ');
    const reached = main.filter((a) => a.state === 'pass' || a.state === 'check').length;
    const state: State = main.some((a) => a.state === 'pass')
      ? 'pass'
      : main.some((a) => a.state === 'check')
        ? 'check'
        : main.some((a) => a.state === 'cantTell')
          ? 'cantTell'
          : 'stop';
    return {
      title: 'Where water can run',
      answer: `${reached} of ${main.length} reached`,
      state,
      rows: [
        ...rows,
        {
          kind: 'note',
          say: `Ways along walls at a fall of ${told} mm in a metre. What stands in the rooms is not known here: look before you trust one.`,
          unverified: falls.some((f) => f.sureness === 'memory'),
          cites: falls.map((f) => f.cite),
        },
        ...assumedRows(given, all),
      ],
    };
  },
});

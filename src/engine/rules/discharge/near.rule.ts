import { connectionPlace } from '../../../geometry/hosting.ts';
import { distance3 } from '../../../geometry/vec.ts';
import type { Point } from '../../../plan/records/pipework.ts';
import { type Figure, figure } from '../../../reference/figure.ts';
import { againstMost, between, type Quantity } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { type Discharges, discharges } from '../../drainage/discharges.ts';
import type { Given } from '../../given.ts';
import { limitFor } from '../../limits.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { vessel } from './houses.ts';

type Params = { readonly most: Figure; readonly older: Figure };

/** Along the pipe that is drawn; where none is, no nearer than the straight line. */
function distanceOf(given: Given, all: Discharges, from: Point, tundish: Point): Quantity | null {
  const pipe = all.valvePipes.find((d) => d.from?.id === from.id && d.to?.id === tundish.id);
  if (pipe) {
    const spans = pipe.steps.map((s) => s.edge.lengthMm);
    const lo = spans.reduce((sum, s) => sum + s.lo, 0);
    return between(
      lo,
      spans.some((s) => s.hi === null) ? null : spans.reduce((sum, s) => sum + (s.hi ?? 0), 0),
      'mm',
      0,
    );
  }
  const valve = from.connections.find((c) => c.service === 'discharge');
  const a = valve && connectionPlace(given.plan, from.id, valve.id);
  const b = connectionPlace(given.plan, tundish.id, 'in');
  return a && b ? between(distance3(a.at, b.at), null, 'mm', 0) : null;
}

function judge(given: Given, { most, older }: Params): Fault[] {
  const all = discharges(given);
  return all.vessels.flatMap((from) =>
    all.tundishesOf(from).flatMap((tundish): Fault[] => {
      const limit = limitFor(given.plan, 'discharge-tundish-distance', from.id, most);
      const found = distanceOf(given, all, from, tundish);
      if (!limit || !found) return [];
      const verdict = againstMost(found, limit.figure.lo);
      if (verdict === 'pass') return [];
      const at = connectionPlace(given.plan, tundish.id, 'in')?.at;
      const shared = {
        ids: [from.id, tundish.id],
        words: {
          vessel: midSentence(sayPoint(given.plan, from.id)),
          most: limit.figure.lo.toFixed(0),
          older: older.is === 'known' ? older.lo.toFixed(0) : '',
        },
        found,
        wanted: limit.figure,
        limit: { id: 'discharge-tundish-distance', scope: from.id },
        at: at ? atPlace(tundish.storey, at) : null,
      };
      // Without the pipe only the straight line is known: a longer one is no news until it is drawn.
      if (verdict === 'cantTell')
        return [{ outcome: 'cantTell', ...shared, missing: ['the pipe from the valve to it'] }];
      const kept = from.option === null && tundish.option === null;
      return [{ outcome: verdict === 'stop' && !kept ? 'stop' : 'check', ...shared }];
    }),
  );
}

export default defineRule<Params>({
  id: 'discharge/near',
  topic: 'drains',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'water-fittings-guidance', clause: 'G19.3a', table: 'discharge-limits' }],
  needs: ['the pipe from the valve to the tundish'],
  params: () => ({
    most: figure('discharge-limits', 'valve to tundish', 'mm'),
    older: figure('discharge-limits', 'valve to tundish, older', 'mm'),
  }),
  judge,
  say: {
    fault: {
      title: 'The tundish of the {vessel} is too far from its valve',
      why: 'At most {most} mm of pipe between them, {older} in older texts: further away nobody connects the drip with the vessel, and the pipe chokes the valve.',
      todo: 'Set the tundish nearer, in the same space.',
    },
    cantTell: {
      title: "Can't tell how far the tundish of the {vessel} is",
      why: 'Not known: {missing}. At most {most} mm of pipe may lie between valve and tundish.',
      todo: 'Draw it, or measure along it.',
    },
    pass: 'The tundish is close to its valve.',
  },
  examples: [
    { name: 'close below', given: () => vessel().plan, expect: 'pass' },
    {
      name: 'far below',
      given: () => vessel({ below: 600 }).plan,
      expect: 'stop',
      found: { lo: 700, hi: 700, tolerance: 0.1 },
      from: '100 across and 600 down',
    },
    { name: 'far below, always there', given: () => vessel({ below: 600, option: null }).plan, expect: 'check' },
    {
      name: 'no pipe drawn between them',
      given: () => vessel({ tundish: null }).point('tundish', 't', [-400, -275, 900], { serves: 'c' }).plan,
      expect: 'cantTell',
    },
  ],
});

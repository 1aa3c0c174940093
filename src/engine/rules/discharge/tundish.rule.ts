import { connectionPlace } from '../../../geometry/hosting.ts';
import type { Point } from '../../../plan/records/pipework.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { type Discharges, discharges } from '../../drainage/discharges.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { vessel } from './houses.ts';

type Said = Pick<Fault, 'outcome' | 'say' | 'missing'>;

function saidOf(all: Discharges, point: Point): Said | null {
  if (all.tundishesOf(point).length > 0) return null;
  const pipe = all.valvePipes.find((d) => d.from?.id === point.id);
  if (pipe && pipe.to !== null) return { outcome: 'stop', say: 'past' };
  const told = point.fields.tundish;
  if (told === 'found' && !pipe) return null;
  if (point.fields.unvented !== true)
    return { outcome: 'cantTell', say: 'cantTell', missing: ['whether it is unvented'] };
  // One that was always there may have a tundish that nobody drew; a new one has what is drawn.
  if (told !== 'missing' && point.option === null)
    return { outcome: 'cantTell', say: 'unseen', missing: ['whether its safety valve has a tundish'] };
  return { outcome: 'stop', say: 'fault' };
}

function judge(given: Given): Fault[] {
  const all = discharges(given);
  return all.vessels.flatMap((point): Fault[] => {
    const said = saidOf(all, point);
    if (!said) return [];
    const relief = point.connections.find((c) => c.service === 'discharge');
    const at = relief && connectionPlace(given.plan, point.id, relief.id);
    return [
      {
        ...said,
        ids: [point.id],
        words: { vessel: midSentence(sayPoint(given.plan, point.id)) },
        at: at ? atPlace(point.storey, at.at) : null,
      },
    ];
  });
}

function past() {
  const e = vessel({ tundish: null });
  e.point('outside-end', 'o', [-2000, -245, 100]);
  return e.run('d1', 'discharge', [
    { point: 'c', connection: 'relief' },
    [-2000, -275, 1275],
    { point: 'o', connection: 'in' },
  ]).plan;
}

export default defineRule({
  id: 'discharge/tundish',
  topic: 'drains',
  since: '1',
  basis: 'law',
  lifeSafety: true,
  cites: [{ source: 'water-fittings-guidance', clause: 'G19.3a' }],
  needs: ['whether the vessel is unvented', 'its tundish'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: 'The {vessel} has no tundish',
      why: 'Its safety valve needs an air gap that can be seen: without one nobody learns that it has opened, and a blocked pipe holds it shut.',
      todo: 'Set a tundish below the valve, and take its own pipe from there to the outside.',
    },
    past: {
      title: 'The safety valve of the {vessel} lets out past no tundish',
      why: 'Without an air gap that can be seen nobody learns that it has opened, and what comes back up the pipe reaches the valve.',
      todo: 'Set a tundish in the pipe, close below the valve.',
    },
    unseen: {
      title: "Can't tell whether the {vessel} has a tundish",
      why: 'Its safety valve needs one, and none is drawn.',
      todo: 'Look on site: draw it, or set on the vessel what was found.',
    },
    cantTell: {
      title: "Can't tell whether the {vessel} needs a tundish",
      why: 'Not known: {missing}. A vented one does not need it.',
      todo: 'Look for a feed cistern above it, and set it on the vessel.',
    },
    pass: 'Its safety valve lets out into a tundish.',
  },
  examples: [
    { name: 'a tundish below the valve', given: () => vessel().plan, expect: 'pass' },
    {
      name: 'a tundish that says whom it serves',
      given: () =>
        vessel({ tundish: null }).point('tundish', 't', [-400, -275, 900], { serves: 'hot water cylinder' }).plan,
      expect: 'pass',
    },
    { name: 'vented', given: () => vessel({ tundish: null, fields: { unvented: false } }).plan, expect: 'pass' },
    { name: 'a new vessel without', given: () => vessel({ tundish: null }).plan, expect: 'stop' },
    { name: 'straight outside', given: past, expect: 'stop' },
    {
      name: 'found missing on survey',
      given: () => vessel({ tundish: null, option: null, fields: { tundish: 'missing' } }).plan,
      expect: 'stop',
    },
    { name: 'nobody looked', given: () => vessel({ tundish: null, option: null }).plan, expect: 'cantTell' },
    {
      name: 'nobody knows whether it is unvented',
      given: () => vessel({ tundish: null, fields: { unvented: null } }).plan,
      expect: 'cantTell',
    },
  ],
});

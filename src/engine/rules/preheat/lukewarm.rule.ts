import { type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { assess } from '../../preheat/assess.ts';
import { preheatsOf } from '../../preheat/preheats.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { preheatHouse } from './houses.ts';

type Params = { readonly from: Figure; readonly to: Figure; readonly kill: Figure };

function judge(given: Given, { from, to, kill }: Params): Fault[] {
  if (from.is !== 'known' || to.is !== 'known' || kill.is !== 'known') return [];
  return preheatsOf(given).flatMap((preheat): Fault[] => {
    const { states, set } = assess(given, preheat);
    const stands = states.find(
      (s) => (s.id === 'hot' || s.id === 'lukewarm') && s.vessel.told && s.vessel.c > from.lo && s.vessel.c < to.lo,
    );
    if (!stands) return [];
    const { vessel, heater } = preheat;
    // A store that is kept hot heats it through; a boiler passes it on in seconds, and what goes past is not heated at all.
    const stored = heater?.kind === 'cylinder' && set !== null && set.c >= kill.lo;
    const out = vessel.connections.find((c) => given.network.kinds.circuit(c.service) === 'hot');
    return [
      {
        outcome: stored ? 'note' : 'check',
        ...(stored ? { say: 'stored' } : {}),
        ids: [vessel.id],
        words: {
          vessel: midSentence(sayPoint(given.plan, vessel.id)),
          heater: heater ? midSentence(sayPoint(given.plan, heater.id)) : 'next heater',
          from: from.lo.toFixed(0),
          to: to.lo.toFixed(0),
          kill: kill.lo.toFixed(0),
        },
        found: exact(stands.vessel.c, '°C', 0, 'page'),
        at: out ? atVertex(given.network, `${vessel.id}/${out.id}`) : null,
        unverified: true,
      },
    ];
  });
}

const luke = { lukewarmC: 35 };

export default defineRule<Params>({
  id: 'preheat/lukewarm',
  topic: 'water',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [
    { source: 'trade-practice', clause: 'lukewarm store: a daily heating, or turnover', table: 'preheat-limits' },
    { source: 'water-hygiene-recalled', clause: 'temperatures' },
    { source: 'textbook-hot-water', clause: 'storage, G18.2' },
  ],
  needs: ['how warm the vessel stands'],
  params: () => ({
    from: figure('preheat-limits', 'lukewarm from'),
    to: figure('preheat-limits', 'lukewarm to'),
    kill: figure('preheat-limits', 'heated through'),
  }),
  judge,
  say: {
    fault: {
      title: 'Water stands lukewarm in the {vessel}',
      why: 'Between {from} and {to} °C bacteria multiply, and nothing behind it keeps the water at {kill} °C for long enough.',
      todo: 'Heat the vessel through to {kill} °C once a day, or keep it small enough to be drawn off daily.',
    },
    stored: {
      title: 'Water stands lukewarm in the {vessel} ahead of a hot store',
      why: 'Between {from} and {to} °C bacteria multiply; the {heater} heats it through only if it is really kept at {kill} °C.',
      todo: 'Keep the store at {kill} °C, and heat the vessel through when it has stood unused.',
    },
    cantTell: {
      title: "Can't tell how warm the {vessel} stands",
      why: 'Not known: {missing}.',
      todo: 'Read its thermostats.',
    },
    pass: 'It is drawn off cold or kept hot.',
  },
  examples: [
    { name: 'kept hot', given: () => preheatHouse({ vessel: { hotC: 65, lukewarmC: 55 } }), expect: 'pass' },
    { name: 'nothing told', given: () => preheatHouse(), expect: 'pass' },
    {
      name: 'lukewarm ahead of a combi',
      given: () => preheatHouse({ heater: 'boiler', vessel: luke }),
      expect: 'check',
      found: { lo: 35, hi: 35, tolerance: 0 },
      from: 'told on the vessel',
    },
    { name: 'lukewarm ahead of a hot store', given: () => preheatHouse({ vessel: luke }), expect: 'note' },
    {
      name: 'ahead of a store that is not hot enough',
      given: () => preheatHouse({ vessel: luke, basis: { hotC: 50 } }),
      expect: 'check',
    },
  ],
});

import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { preheatValves } from '../../preheat/preheats.ts';
import { midSentence, sayAll, sayPoint } from '../../say-names.ts';
import { type Mixer, mixersOf, wantsBalance } from '../../supply/mixers.ts';
import { combiHouse, cylinderHouse } from './houses.ts';

/** One fault for all mixers of a heater: they are cured together, at the reducer. */
function judge(given: Given): Fault[] {
  const byHeater = new Map<string, Mixer[]>();
  const toldThere = preheatValves(given);
  for (const m of mixersOf(given)) {
    if (m.balance.is !== 'unlike' || !m.isNew || !wantsBalance(m.point) || toldThere.has(m.point.id)) continue;
    const key = m.heater?.id ?? m.point.id;
    byHeater.set(key, [...(byHeater.get(key) ?? []), m]);
  }
  return [...byHeater.values()].flatMap((mixers): Fault[] => {
    const [first] = mixers;
    if (first?.balance.is !== 'unlike') return [];
    const cold = first.point.connections.find((c) => given.network.kinds.circuit(c.service) === 'cold');
    return [
      {
        outcome: 'check',
        ids: [...mixers.map((m) => m.point.id), ...(first.heater ? [first.heater.id] : [])],
        words: {
          mixers: sayAll(mixers.map((m) => sayPoint(given.plan, m.point.id))),
          get: mixers.length === 1 ? 'gets' : 'get',
          hot: first.balance.hot.say,
          cold: first.balance.cold.say,
          heater: first.heater ? midSentence(sayPoint(given.plan, first.heater.id)) : 'heater',
        },
        at: cold ? atVertex(given.network, `${first.point.id}/${cold.id}`) : null,
        more: mixers.length - 1,
      },
    ];
  });
}

export default defineRule({
  id: 'supply/balanced',
  topic: 'water',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'balanced cold: after the reducer, before the check valve' }],
  needs: ['the hot and the cold of the mixer drawn back to where they part'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: '{mixers} {get} hot and cold at unlike pressures',
      why: 'The hot stands at what {hot} lets by, the cold at that of {cold}. The stronger pushes the weaker back: it runs hot and cold by turns, and water of one side gets into the other.',
      todo: 'Take the cold from behind the reducer that feeds the {heater}, before its check valve.',
    },
    cantTell: {
      title: "Can't tell whether {mixers} {get} balanced cold",
      why: 'Not known: {missing}.',
      todo: 'Draw both back to where they part.',
    },
    pass: 'Hot and cold come from behind one reducer, or both straight from the main.',
  },
  examples: [
    { name: 'balanced cold from the inlet group', given: () => cylinderHouse(), expect: 'pass' },
    {
      name: 'a shower on the main, its hot from behind a reducer',
      given: () => cylinderHouse({ cold: 'main' }),
      expect: 'check',
    },
    {
      name: 'a kitchen sink on the main',
      given: () => cylinderHouse({ cold: 'main', tap: 'sink-taps' }),
      expect: 'pass',
    },
    {
      name: 'the same shower as it always was',
      given: () => cylinderHouse({ cold: 'main', option: null }),
      expect: 'pass',
    },
    { name: 'a combi and a shower, both on the main', given: () => combiHouse(), expect: 'pass' },
    { name: 'a combi behind a reducer, the shower not', given: () => combiHouse({ reducer: true }), expect: 'check' },
    { name: 'the cold not drawn', given: () => cylinderHouse({ cold: 'none' }), expect: 'pass' },
  ],
});

import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayAll, sayPoint } from '../../say-names.ts';
import { type Mixer, mixersOf } from '../../supply/mixers.ts';
import { pipesOn } from '../../supply/way-back.ts';
import { cylinderHouse } from './houses.ts';

function judge(given: Given): Fault[] {
  const byHeater = new Map<string, Mixer[]>();
  for (const m of mixersOf(given)) {
    if (m.balance.is !== 'afterHeater') continue;
    byHeater.set(m.balance.heater.id, [...(byHeater.get(m.balance.heater.id) ?? []), m]);
  }
  return [...byHeater].flatMap(([heater, mixers]): Fault[] => {
    const [first] = mixers;
    if (!first) return [];
    const last = pipesOn(first.cold).pop();
    return [
      {
        outcome: 'stop',
        ids: [heater, ...mixers.map((m) => m.point.id)],
        legs: last ? last.legs : [],
        words: {
          mixers: sayAll(mixers.map((m) => midSentence(sayPoint(given.plan, m.point.id)))),
          heater: midSentence(sayPoint(given.plan, heater)),
        },
        at: last ? atVertex(given.network, last.to) : null,
        more: mixers.length - 1,
      },
    ];
  });
}

export default defineRule({
  id: 'supply/cold-after-heater',
  topic: 'water',
  since: '1',
  basis: 'practice',
  lifeSafety: true,
  cites: [{ source: 'trade-practice', clause: 'balanced cold comes off before what warms the water' }],
  needs: ['where the cold of a mixer comes from'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: 'The cold to the {mixers} comes off after the {heater}',
      why: 'What should cool the hot is itself as warm as the {heater} makes it, so on a hot day nothing can mix it down: it scalds.',
      todo: 'Take the cold off before the {heater}, from the balanced port of its inlet group or the pipe behind its reducer.',
    },
    cantTell: {
      title: "Can't tell where the cold to the {mixers} comes off",
      why: 'Not known: {missing}.',
      todo: 'Draw it back to where it comes from.',
    },
    pass: 'Cold comes off before anything warms it.',
  },
  examples: [
    { name: 'cold before the vessel', given: () => cylinderHouse(), expect: 'pass' },
    { name: 'cold from behind the cylinder', given: () => cylinderHouse({ cold: 'hot' }), expect: 'stop' },
    {
      name: 'the same in a house as it was',
      given: () => cylinderHouse({ cold: 'hot', option: null }),
      expect: 'stop',
    },
  ],
});

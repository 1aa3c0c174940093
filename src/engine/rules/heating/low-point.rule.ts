import { constant, type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { drainDowns } from '../../heating-system/drain-down.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayRun } from '../../say-names.ts';
import { waterHouse } from './water-houses.ts';

type Params = { readonly trap: Figure; readonly left: Figure };

function judge(given: Given): Fault[] {
  const least = constant('heating-water-basis', 'left', 'litres');
  return drainDowns(given).flatMap(({ lows }): Fault[] => {
    const stays = lows.reduce((sum, l) => sum + l.litres, 0);
    const [worst, ...others] = [...lows].sort((a, b) => b.litres - a.litres);
    if (!worst || stays < least) return [];
    return [
      {
        outcome: 'note',
        ids: [worst.run],
        legs: lows.flatMap((l) => l.legs),
        words: { run: midSentence(sayRun(given.plan, worst.run)) },
        found: exact(stays, 'litres', 1),
        at: atVertex(given.network, worst.at),
        more: others.length,
      },
    ];
  });
}

export default defineRule<Params>({
  id: 'heating/low-point',
  topic: 'heating',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'low points of a heating', table: 'heating-judgement' }],
  needs: ['heights of the heating pipes'],
  params: () => ({
    trap: figure('heating-judgement', 'trap', 'mm'),
    left: figure('heating-water-basis', 'left', 'litres'),
  }),
  judge,
  say: {
    fault: {
      title: 'Water stays in a dip of the {run}',
      why: 'The pipe rises to both sides of it and no drain cock stands there: the rest of the system can be emptied and this part cannot, and it is where sludge settles.',
      todo: 'Set a drain cock at the lowest place where a hand gets to it, or note where to open it.',
    },
    cantTell: {
      title: "Can't tell where water stays",
      why: 'Not known: {missing}.',
      todo: 'Set the heights of the pipes.',
    },
    pass: 'The new pipe can be emptied.',
  },
  examples: [
    { name: 'along the skirting', given: () => waterHouse(), expect: 'pass' },
    { name: 'under the floor and up again', given: () => waterHouse({ underMm: -400 }), expect: 'note' },
    { name: 'a dip too small to matter', given: () => waterHouse({ underMm: -50 }), expect: 'pass' },
    { name: 'it was there before', given: () => waterHouse({ underMm: -400, option: null }), expect: 'pass' },
  ],
});

import { constant, type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { drainDowns } from '../../heating-system/drain-down.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayRun } from '../../say-names.ts';
import { waterHouse } from './water-houses.ts';

type Params = { readonly trap: Figure };

function judge(given: Given): Fault[] {
  return drainDowns(given).flatMap(({ highs }): Fault[] => {
    const [worst, ...others] = highs;
    if (!worst) return [];
    return [
      {
        outcome: 'check',
        ids: [worst.run],
        legs: highs.flatMap((h) => h.legs),
        words: { run: midSentence(sayRun(given.plan, worst.run)) },
        found: exact(worst.depthMm, 'mm', 0),
        at: atVertex(given.network, worst.at),
        more: others.length,
      },
    ];
  });
}

const OVER_MM = 2500;

export default defineRule<Params>({
  id: 'heating/high-point',
  topic: 'heating',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'high points of a heating', table: 'heating-judgement' }],
  needs: ['heights of the heating pipes'],
  params: () => ({ trap: figure('heating-judgement', 'trap', 'mm') }),
  judge,
  say: {
    fault: {
      title: 'Air gathers at the top of the {run}',
      why: 'The pipe falls to both sides of it and nothing there lets air out: what gathers when it is filled can stop the flow, and comes back as noise.',
      todo: 'Set an air vent at the top where a hand gets to it, or take the pipe lower.',
    },
    cantTell: {
      title: "Can't tell where air gathers",
      why: 'Not known: {missing}.',
      todo: 'Set the heights of the pipes.',
    },
    pass: 'Air finds its way out of the new pipe.',
  },
  examples: [
    { name: 'along the skirting', given: () => waterHouse(), expect: 'pass' },
    {
      name: 'over the ceiling and down again',
      given: () => waterHouse({ overMm: OVER_MM }),
      expect: 'check',
      found: { lo: OVER_MM - 1300, hi: OVER_MM - 1300, tolerance: 1 },
      from: 'the flow stands at 2500 and its boiler tail at 1300',
    },
    {
      name: 'with a vent at the top',
      given: () => waterHouse({ overMm: OVER_MM, onFlow: 'air-vent' }),
      expect: 'pass',
    },
    {
      name: 'a rise too small to hold air',
      given: () => waterHouse({ overMm: 1300 + constant('heating-judgement', 'trap', 'mm') - 50 }),
      expect: 'pass',
    },
    { name: 'it was there before', given: () => waterHouse({ overMm: OVER_MM, option: null }), expect: 'pass' },
  ],
});

import { figure } from '../../../reference/figure.ts';
import type { Crossing } from '../../clearance/crossings.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { goesThrough } from '../../materials/sleeves.ts';
import { atPlace } from '../../places.ts';
import { sayRun } from '../../say-names.ts';

const times = (n: number): string => (n === 1 ? 'a wall' : `${n} walls`);

function judge(given: Given): Fault[] {
  const byRun = new Map<string, Crossing[]>();
  for (const c of given.crossings.filter(goesThrough)) byRun.set(c.pipe.run, [...(byRun.get(c.pipe.run) ?? []), c]);
  return [...byRun].flatMap(([run, found]): Fault[] => {
    const first = found[0];
    if (!first) return [];
    return [
      {
        outcome: 'note',
        ids: [run],
        legs: found.map((c) => c.pipe.edge.id),
        words: { run: sayRun(given.plan, run), walls: times(found.length) },
        at: atPlace(first.pipe.storey, first.at),
        more: found.length - 1,
        say: first.pipe.edge.service === 'gas' ? 'gas' : 'fault',
      },
    ];
  });
}

const house = (service: string, y = 1000) =>
  example()
    .wall('w', [0, 0], [0, 2000], { thicknessMm: 100 })
    .run('r', service, [
      [-500, y, 300],
      [500, y, 300],
    ]).plan;

export default defineRule({
  id: 'building/through-wall',
  topic: 'building',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'plumbing-textbook-2019', clause: 'sleeves through walls', table: 'sleeve-sizes' }],
  needs: ['walls'],
  params: () => ({ sleeve: figure('sleeve-sizes', '22') }),
  judge,
  say: {
    fault: {
      title: '{run} goes through {walls}',
      why: 'Pipe moves as it warms and a wall does not; bare pipe through a wall is worn, and its hole passes fire, sound and damp.',
      todo: 'A sleeve one size larger for each, sealed as the wall asks. They are in the list.',
    },
    gas: {
      title: '{run} goes through {walls}',
      why: 'Gas must not leak into a wall or its cavity.',
      todo: 'The shortest way through, in a sleeve sealed at the inside face only. They are in the list.',
    },
    cantTell: { title: "Can't tell what {run} goes through", why: 'The walls are not drawn.', todo: 'Draw them.' },
    pass: 'It goes through no wall.',
  },
  examples: [
    { name: 'a cold pipe through a block wall', given: () => house('cold'), expect: 'note' },
    { name: 'a gas pipe through a block wall', given: () => house('gas'), expect: 'note' },
    { name: 'a pipe past the end of the wall', given: () => house('cold', 3000), expect: 'pass' },
  ],
});

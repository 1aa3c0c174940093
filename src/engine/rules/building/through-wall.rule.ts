import { figure } from '../../../reference/figure.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { goesThrough } from '../../materials/sleeves.ts';
import { atPlace } from '../../places.ts';
import { sayRun } from '../../say-names.ts';

const many = (n: number, one: string, more: string): string => (n === 1 ? one : `${n} ${more}`);

/** Once for all of them: it asks for nothing that the list does not hold already. */
function judge(given: Given): Fault[] {
  const found = given.crossings.filter(goesThrough);
  const [first] = found;
  if (!first) return [];
  const runs = [...new Set(found.map((c) => c.pipe.run))].sort();
  const gas = new Set(found.filter((c) => c.pipe.edge.service === 'gas').map((c) => c.pipe.run)).size;
  const walls = [...new Set(found.map((c) => c.wall))].sort();
  const what = gas === runs.length ? 'gas runs' : 'pipes';
  return [
    {
      outcome: 'note',
      ids: walls,
      legs: found.map((c) => c.pipe.edge.id),
      words: {
        run: runs.length === 1 ? sayRun(given.plan, runs[0] ?? '') : `${runs.length} ${what}`,
        goes: runs.length === 1 ? 'goes' : 'go',
        walls: many(walls.length, 'a wall', 'walls'),
        times: many(found.length, 'one sleeve', 'sleeves'),
      },
      at: atPlace(first.pipe.storey, first.at),
      more: found.length - 1,
      say: gas === 0 ? 'fault' : gas === runs.length ? 'gas' : 'both',
    },
  ];
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
      title: '{run} {goes} through {walls}',
      why: 'Pipe moves as it warms and a wall does not; bare pipe through a wall is worn, and its hole passes fire, sound and damp.',
      todo: 'A sleeve one size larger each time, sealed as the wall asks: {times} in the list.',
    },
    gas: {
      title: '{run} {goes} through {walls}',
      why: 'Gas must not leak into a wall or its cavity.',
      todo: 'The shortest way through, in a sleeve sealed at the inside face only: {times} in the list.',
    },
    both: {
      title: '{run} {goes} through {walls}',
      why: 'Pipe moves as it warms and a wall does not; its hole passes fire, sound and damp; and gas must not leak into a wall or its cavity.',
      todo: 'A sleeve one size larger each time, sealed as the wall asks, for gas at the inside face only: {times} in the list.',
    },
    cantTell: { title: "Can't tell what {run} goes through", why: 'The walls are not drawn.', todo: 'Draw them.' },
    pass: 'It goes through no wall.',
  },
  examples: [
    { name: 'a cold pipe through a block wall', given: () => house('cold'), expect: 'note' },
    { name: 'a gas pipe through a block wall', given: () => house('gas'), expect: 'note' },
    {
      name: 'gas and cold through a block wall',
      given: () =>
        example()
          .wall('w', [0, 0], [0, 2000], { thicknessMm: 100 })
          .run('g', 'gas', [
            [-500, 500, 300],
            [500, 500, 300],
          ])
          .run('c', 'cold', [
            [-500, 1500, 300],
            [500, 1500, 300],
          ]).plan,
      expect: 'note',
    },
    { name: 'a pipe past the end of the wall', given: () => house('cold', 3000), expect: 'pass' },
  ],
});

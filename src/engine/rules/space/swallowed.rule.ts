import { openingBox } from '../../../geometry/opening-box.ts';
import type { Plan } from '../../../plan/plan.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayAll, sayPoint } from '../../say-names.ts';
import { swallowedBy } from '../../space/swallowed.ts';
import { add } from './houses.ts';

function judge(given: Given): Fault[] {
  const { terminals, others, vents, unclear } = swallowedBy(given);
  const name = (id: string): string => midSentence(sayPoint(given.plan, id));
  const stops = terminals.map(
    ({ point, body }): Fault => ({
      outcome: 'stop',
      ids: [point.id],
      at: atPlace(point.storey, body.frame.origin),
      words: { name: sayPoint(given.plan, point.id) },
    }),
  );
  const things = [
    ...others.map((s) => name(s.point.id)),
    ...vents.map((v) => (v.name === '' ? 'air brick' : midSentence(v.name))),
  ];
  const first = others[0];
  const brick = vents[0];
  const box = brick && openingBox(given.plan, brick.id);
  const storey = given.plan.walls[brick?.wall ?? '']?.storey;
  const at = first
    ? atPlace(first.point.storey, first.body.frame.origin)
    : box && storey
      ? atPlace(storey, box.centre)
      : null;
  const built: Fault[] =
    things.length === 0
      ? []
      : [
          {
            outcome: 'check',
            say: 'others',
            ids: [...others.map((s) => s.point.id), ...vents.map((v) => v.id)],
            words: { things: sayAll(things) },
            at,
          },
        ];
  const [lost] = unclear;
  const open: Fault[] = lost
    ? [
        {
          outcome: 'cantTell',
          ids: unclear.map((s) => s.point.id),
          words: { things: sayAll(unclear.map((s) => name(s.point.id))) },
          at: atPlace(lost.point.storey, lost.body.frame.origin),
          missing: ['whether the new walls close a room there'],
        },
      ]
    : [];
  return [...stops, ...built, ...open];
}

/** A house 3000 square, and three walls of an extension above it in plan; the last may be left out. */
function extension(kind: string, at: readonly [number, number, number], closed = true): Plan {
  const e = example()
    .wall('s', [0, 0], [3000, 0])
    .wall('e', [3000, 0], [3000, 3000])
    .wall('n', [3000, 3000], [0, 3000])
    .wall('w', [0, 3000], [0, 0])
    .wall('xw', [0, 3000], [0, 5000], { option: 'A' })
    .wall('xn', [0, 5000], [3000, 5000], { option: 'A' });
  if (closed) e.wall('xe', [3000, 5000], [3000, 3000], { option: 'A' });
  return add(e.plan, kind, 'thing', at, {}, null);
}

/** The same, with an air brick in the wall that the extension covers. */
function airBrick(): Plan {
  const plan = extension('gully', [5000, 1000, 0]);
  const e = example()
    .wall('n', [3000, 3000], [0, 3000])
    .opening('brick', 'n', 1000, 215, { kind: 'vent', headMm: 215 });
  plan.openings = e.plan.openings;
  return plan;
}

export default defineRule({
  id: 'space/swallowed',
  topic: 'space',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'trade-practice', clause: 'what an extension builds over' }],
  needs: ['which walls are new', 'what stands outside'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: '{name}: the new walls close it in',
      why: 'A flue that ends indoors fills the house with fumes, from the day the walls close and not only when all is done.',
      todo: 'Move the flue or take the boiler out of use before those walls go up; mark it to strip out if it goes.',
    },
    others: {
      title: 'The new walls close in what stands outside: {things}',
      why: 'Drains, meters, taps and air bricks must stay outside, be led on or be moved; some of it only their owner may move.',
      todo: 'Settle each with builder and supplier before the ground is opened.',
    },
    cantTell: {
      title: "Can't tell whether the new walls close in {things}",
      why: 'New walls stand round it and close no room yet. Not known: {missing}.',
      todo: 'Draw the new walls until they close.',
    },
    pass: 'The new walls close in nothing that has to stay outside.',
  },
  examples: [
    { name: 'a gully beside the extension', given: () => extension('gully', [4000, 1000, 0]), expect: 'pass' },
    {
      name: 'a flue inside the extension',
      given: () => extension('flue-terminal', [1500, 3100, 2000]),
      expect: 'stop',
    },
    { name: 'a gully inside the extension', given: () => extension('gully', [1500, 3500, 0]), expect: 'check' },
    { name: 'an air brick behind the extension', given: airBrick, expect: 'check' },
    {
      name: 'new walls that do not close',
      given: () => extension('gully', [1500, 3500, 0], false),
      expect: 'cantTell',
    },
  ],
});

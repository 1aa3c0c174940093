import { defineRule } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { illegal } from './illegal.ts';

/** Heating loops and secondary returns are made to go round; gas and the mains are not. */
function isFed(given: Given, ids: readonly string[]): boolean {
  return ids.some((id) =>
    ['gas', 'condensate', 'discharge', 'boilerRelief'].includes(given.plan.runs[id]?.service ?? ''),
  );
}

export default defineRule({
  id: 'network/ring',
  topic: 'pipework',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'pipework' }],
  needs: ['what meets what'],
  params: () => ({}),
  judge: (given) => illegal(given, 'ring', 'stop').filter((f) => isFed(given, f.ids)),
  say: {
    fault: {
      title: '{run}: a ring',
      why: '{say} The figures share the flow so that both ways lose the same; an old ring is rarely that clean inside.',
      todo: 'Take one of its legs out, or cap it, so that every appliance has one way from the meter.',
    },
    cantTell: {
      title: "Can't tell what flows here",
      why: '{say}',
      todo: 'Draw what is there, or mark it as an unseen stretch.',
    },
    pass: 'No ring.',
  },
  examples: [
    {
      name: 'one way from the meter to the boiler',
      given: () =>
        example()
          .point('gas-meter', 'm', [0, 0, 500])
          .point('boiler', 'b', [3000, 0, 1300])
          .run('g', 'gas', [
            { point: 'm', connection: 'outlet' },
            [75, -115, 2300],
            [75, -81, 2300],
            [3000, -81, 2300],
            [3000, -300, 2300],
            [3000, -300, 900],
            [3000, -81, 900],
            { point: 'b', connection: 'gas' },
          ]).plan,
      expect: 'pass',
    },
    {
      name: 'a gas pipe that comes back to itself',
      given: () => {
        const e = example()
          .point('gas-meter', 'm', [0, 0, 500])
          .run('g', 'gas', [
            { point: 'm', connection: 'outlet' },
            [75, -115, 2300],
            [3000, -115, 2300],
            [3000, 2000, 2300],
            [75, 2000, 2300],
          ]);
        const ids = e.nodesOf('g');
        return e.run('h', 'gas', [ids[4] ?? '', ids[1] ?? '']).plan;
      },
      expect: 'stop',
    },
  ],
});

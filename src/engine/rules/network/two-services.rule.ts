import { defineRule } from '../../define-rule.ts';
import { example } from '../../example.ts';
import { illegal } from './illegal.ts';

export default defineRule({
  id: 'network/two-services',
  topic: 'pipework',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'pipework' }],
  needs: ['what meets what'],
  params: () => ({}),
  judge: (given) => illegal(given, 'twoServices', 'stop'),
  say: {
    fault: {
      title: 'Two services meet: {run}',
      why: '{say}',
      todo: 'Part them, or change the service of one of the runs.',
    },
    cantTell: {
      title: "Can't tell what flows here",
      why: '{say}',
      todo: 'Draw what is there, or mark it as an unseen stretch.',
    },
    pass: 'One service at every joint.',
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
      name: 'cold drawn into a gas pipe',
      given: () => {
        const e = example().run('g', 'gas', [
          [0, 0, 2300],
          [1000, 0, 2300],
          [2000, 0, 2300],
        ]);
        return e.run('c', 'cold', [e.nodesOf('g')[1] ?? '', [1000, 1000, 2300]]).plan;
      },
      expect: 'stop',
    },
  ],
});

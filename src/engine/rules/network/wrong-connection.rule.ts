import { defineRule } from '../../define-rule.ts';
import { example } from '../../example.ts';
import { illegal } from './illegal.ts';

export default defineRule({
  id: 'network/wrong-connection',
  topic: 'pipework',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'pipework' }],
  needs: ['what meets what'],
  params: () => ({}),
  judge: (given) => illegal(given, 'wrongConnection', 'stop'),
  say: {
    fault: {
      title: '{run} ends at the wrong tail',
      why: '{say}',
      todo: 'Move it to the tail of its own service.',
    },
    cantTell: {
      title: "Can't tell what flows here",
      why: '{say}',
      todo: 'Draw what is there, or mark it as an unseen stretch.',
    },
    pass: 'Every pipe ends at a tail of its own service.',
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
      name: 'cold taken to the gas tail',
      given: () =>
        example()
          .point('boiler', 'b', [3000, 0, 1300])
          .run('c', 'cold', [[3000, -81, 300], { point: 'b', connection: 'gas' }]).plan,
      expect: 'stop',
    },
  ],
});

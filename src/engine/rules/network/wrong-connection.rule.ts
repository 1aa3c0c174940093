import { defineRule } from '../../define-rule.ts';
import { example } from '../../example.ts';
import { CANT_TELL, illegal, ONE_WAY } from './illegal.ts';

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
    cantTell: CANT_TELL,
    pass: 'Every pipe ends at a tail of its own service.',
  },
  examples: [
    ONE_WAY,
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

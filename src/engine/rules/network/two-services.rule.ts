import { defineRule } from '../../define-rule.ts';
import { example } from '../../example.ts';
import { CANT_TELL, illegal, ONE_WAY } from './illegal.ts';

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
    cantTell: CANT_TELL,
    pass: 'One service at every joint.',
  },
  examples: [
    ONE_WAY,
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

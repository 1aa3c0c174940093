import { defineRule } from '../../define-rule.ts';
import { example } from '../../example.ts';
import { CANT_TELL, illegal, ONE_WAY } from './illegal.ts';

export default defineRule({
  id: 'network/two-sources',
  topic: 'pipework',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'pipework' }],
  needs: ['what meets what'],
  params: () => ({}),
  judge: (given) => illegal(given, 'twoSources', 'stop'),
  say: {
    fault: {
      title: 'Two sources on one pipe: {points}',
      why: '{say} Which of them feeds what is not told, so this system has no figures.',
      todo: 'Part the two, or take one of them out.',
    },
    cantTell: CANT_TELL,
    pass: 'One source.',
  },
  examples: [
    ONE_WAY,
    {
      name: 'two meters on one gas pipe',
      given: () =>
        example()
          .point('gas-meter', 'm', [0, 0, 500])
          .point('gas-meter', 'k', [3000, 0, 500])
          .run('g', 'gas', [
            { point: 'm', connection: 'outlet' },
            [75, -115, 2300],
            [3075, -115, 2300],
            { point: 'k', connection: 'outlet' },
          ]).plan,
      expect: 'stop',
    },
  ],
});

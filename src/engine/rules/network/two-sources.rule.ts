import { defineRule } from '../../define-rule.ts';
import { example } from '../../example.ts';
import { illegal } from './illegal.ts';

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
    cantTell: {
      title: "Can't tell what flows here",
      why: '{say}',
      todo: 'Draw what is there, or mark it as an unseen stretch.',
    },
    pass: 'One source.',
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

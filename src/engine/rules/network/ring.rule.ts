import { defineRule } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { CANT_TELL, illegal, ONE_WAY } from './illegal.ts';

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
    cantTell: CANT_TELL,
    pass: 'No ring.',
  },
  examples: [
    ONE_WAY,
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

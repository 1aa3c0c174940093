import { defineRule } from '../../define-rule.ts';
import { goneEnds, strippedBoiler } from './gone-ends.ts';

export default defineRule({
  id: 'network/left-open',
  topic: 'pipework',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'pipework' }],
  needs: ['what becomes of the old pipe'],
  params: () => ({}),
  judge: (given) => goneEnds(given, (service) => service !== 'gas'),
  say: {
    fault: {
      title: '{run} is left open where the {point} was',
      why: 'The {point} goes and the pipe to it stays, so its end is open; a long dead end also lets water stand.',
      todo: 'Strip the pipe, cap it back at its tee, or join it to something new.',
    },
    cantTell: {
      title: "Can't tell what becomes of {run}",
      why: 'Nothing tells whether it stays.',
      todo: 'Set keep, strip or cap for it.',
    },
    pass: 'Nothing is left open.',
  },
  examples: [
    { name: 'cold to a boiler that goes', given: () => strippedBoiler('cold', 'keep'), expect: 'check' },
    { name: 'the same, cut back and capped', given: () => strippedBoiler('cold', 'cap'), expect: 'pass' },
  ],
});

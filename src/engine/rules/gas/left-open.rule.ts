import { defineRule } from '../../define-rule.ts';
import { goneEnds, strippedBoiler } from '../network/gone-ends.ts';

export default defineRule({
  id: 'gas/left-open',
  topic: 'gas',
  since: '1',
  basis: 'law',
  lifeSafety: true,
  cites: [{ source: 'gas-safety-regulations-1998', clause: 'regulation 6(3), from memory' }],
  needs: ['what becomes of the old pipe'],
  params: () => ({}),
  judge: (given) =>
    goneEnds(given, (service) => service === 'gas').map((f) => ({ ...f, outcome: 'stop', unverified: true })),
  say: {
    fault: {
      title: '{run} is left open where the {point} was',
      why: 'Gas would come out of it: whoever takes an appliance off seals every pipe that fed it.',
      todo: 'Strip the pipe, or cap it back at its tee with the fitting made for it.',
    },
    cantTell: {
      title: "Can't tell what becomes of {run}",
      why: 'Nothing tells whether it stays.',
      todo: 'Set keep, strip or cap for it.',
    },
    pass: 'No gas pipe is left open.',
  },
  examples: [
    { name: 'gas to a boiler that goes', given: () => strippedBoiler('gas', 'keep'), expect: 'stop' },
    { name: 'the same, cut back and capped', given: () => strippedBoiler('gas', 'cap'), expect: 'pass' },
  ],
});

import { evaluate } from '../../engine/evaluate.ts';
import { BadCall, defineVerb, FINE } from '../define-verb.ts';
import { chosenCase, openFile } from '../open-file.ts';

const usage = 'report FILE --json [--case OPTION:after]';

export default defineVerb({
  id: 'report',
  usage,
  about: 'everything the engine says, as data',
  flags: ['case', 'json'],
  async run(call, terminal) {
    if (!call.flags.json) throw new BadCall(`the whole report comes as data only: kickset ${usage}`);
    const plan = openFile(call, terminal, usage);
    terminal.out(`${JSON.stringify(evaluate(plan, chosenCase(plan, call.flags.case)), null, 2)}\n`);
    return FINE;
  },
});

import { evaluate } from '../../engine/evaluate.ts';
import { listCsv } from '../../files/format/list-csv.ts';
import { listText } from '../../files/format/list-text.ts';
import { defineVerb, FINE } from '../define-verb.ts';
import { chosenCase, openFile } from '../open-file.ts';

const usage = 'list FILE [--case OPTION:after] [--json|--csv|--text]';

export default defineVerb({
  id: 'list',
  usage,
  about: 'what to ask for at the counter',
  flags: ['case', 'json', 'csv', 'text'],
  async run(call, terminal) {
    const plan = openFile(call, terminal, usage);
    const { lines } = evaluate(plan, chosenCase(plan, call.flags.case));
    if (call.flags.json) terminal.out(`${JSON.stringify(lines, null, 2)}\n`);
    else terminal.out(call.flags.csv ? listCsv(lines) : listText(lines));
    return FINE;
  },
});

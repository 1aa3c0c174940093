import { example, give, ruleFacts, rules } from '../../engine/evaluate.ts';
import { ruleBook } from '../book/rule-book.ts';
import { defineVerb, FINE } from '../define-verb.ts';

const FOLDER = 'shared';

export default defineVerb({
  id: 'rules',
  usage: 'rules [--json | --write]',
  about: `every rule with its source and figures; --write keeps the book and its drawings in ${FOLDER}/`,
  flags: ['json', 'write'],
  async run(call, terminal) {
    if (call.flags.json) {
      const given = give(example().plan, { option: null, when: 'after' });
      terminal.out(
        `${JSON.stringify(
          [...rules.values()].map((rule) => ruleFacts(rule, given)),
          null,
          2,
        )}\n`,
      );
      return FINE;
    }
    const { markdown, pictures } = ruleBook();
    if (!call.flags.write) {
      terminal.out(markdown);
      return FINE;
    }
    terminal.write(`${FOLDER}/rules.md`, markdown);
    for (const [file, svg] of pictures) terminal.write(`${FOLDER}/rules/${file}`, svg);
    terminal.out(`${FOLDER}/rules.md: ${rules.size} rules, ${pictures.size} of them drawn\n`);
    return FINE;
  },
});

import { checkInputs, sums } from '../../engine/evaluate.ts';
import { sayQuantity } from '../../report/quantity.ts';
import { BadCall, defineVerb, FINE } from '../define-verb.ts';

const usage = 'sum NAME key=value … [--json] | sum --list [--json]';

function list(json: boolean): string {
  const all = [...sums.values()].map(({ id, title, topic, inputs, example }) => ({
    id,
    title,
    topic,
    inputs,
    example,
  }));
  if (json) return `${JSON.stringify(all, null, 2)}\n`;
  const lines = all.flatMap((s) => [
    `${s.id}: ${s.title}`,
    ...s.inputs.map(
      (i) =>
        `    ${i.key}${i.required ? '' : ' (may be left out)'}: ${i.label}${i.unit ? `, ${i.unit}` : ''}${i.choices ? `; one of ${i.choices.join(', ')}` : ''}`,
    ),
  ]);
  return `${lines.join('\n')}\n`;
}

function pairs(words: readonly string[]): Record<string, string> {
  return Object.fromEntries(
    words.map((word) => {
      const at = word.indexOf('=');
      if (at < 1) throw new BadCall(`figures are told as key=value, not "${word}"`);
      return [word.slice(0, at), word.slice(at + 1)];
    }),
  );
}

export default defineVerb({
  id: 'sum',
  usage,
  about: 'one sum without a drawing, with its working and sources',
  flags: ['list', 'json'],
  async run(call, terminal) {
    const json = call.flags.json === true;
    if (call.flags.list) {
      terminal.out(list(json));
      return FINE;
    }
    const [name, ...words] = call.words;
    const sum = name === undefined ? undefined : sums.get(name);
    if (!sum) throw new BadCall(`there is no sum "${name ?? ''}"; there are ${[...sums.keys()].join(', ')}`);
    const checked = checkInputs(sum, pairs(words));
    if (!checked.ok) throw new BadCall(checked.why);
    const working = sum.work(checked.values);
    if (json) terminal.out(`${JSON.stringify(working, null, 2)}\n`);
    else {
      const steps = working.steps.map(
        (s) =>
          `  ${s.label}: ${s.result ? sayQuantity(s.result) : ''}${s.how ? ` (${s.how})` : ''}${s.cites.length > 0 ? ` [${s.cites.map((c) => `${c.source}, ${c.clause}`).join('; ')}]` : ''}`,
      );
      const assumed = working.assumed.map((a) => `  assumed: ${a}`);
      const end = working.result ? sayQuantity(working.result) : `can't tell: ${working.missing.join(', ')}`;
      terminal.out(`${[working.title, ...steps, ...assumed, end].join('\n')}\n`);
    }
    return FINE;
  },
});

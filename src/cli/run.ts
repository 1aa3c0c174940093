import { BAD_INPUT, BadCall, FINE, type Terminal, type Verb } from './define-verb.ts';
import { readCall } from './read-call.ts';

const VERBS = Object.values(import.meta.glob<Verb>('./verbs/*.verb.ts', { eager: true, import: 'default' })).sort(
  (a, b) => (a.id < b.id ? -1 : 1),
);

function help(): string {
  const lines = VERBS.map((v) => `  kickset ${v.usage}\n      ${v.about}`);
  return [
    'kickset: what a boiler move does to gas drop, lengths, clashes and the list',
    '',
    ...lines,
    '',
    'Exit: 0 no stop found, 1 some stop found, 2 the input or the call was not understood.',
    'Figures are compared with limits, not signed off: the registered engineer decides. Local rules and the',
    "appliance's own instructions go first.",
    '',
  ].join('\n');
}

/** Runs one call. Never throws: a slip becomes a sentence on the error stream and exit code 2. */
export async function run(args: readonly string[], terminal: Terminal): Promise<number> {
  try {
    const call = readCall(args);
    const [name, ...words] = call.words;
    if (name === undefined || name === 'help') {
      terminal.out(help());
      return name === undefined && !call.flags.help ? BAD_INPUT : FINE;
    }
    const verb = VERBS.find((v) => v.id === name);
    if (!verb) throw new BadCall(`there is no "${name}"; there are ${VERBS.map((v) => v.id).join(', ')}`);
    const odd = Object.keys(call.flags).find((f) => !verb.flags.includes(f));
    if (odd !== undefined) {
      throw new BadCall(
        `${name} does not know --${odd}; it knows ${verb.flags.map((f) => `--${f}`).join(', ') || 'none'}`,
      );
    }
    return await verb.run({ words, flags: call.flags }, terminal);
  } catch (error) {
    terminal.err(`kickset: ${error instanceof Error ? error.message : String(error)}\n`);
    return BAD_INPUT;
  }
}

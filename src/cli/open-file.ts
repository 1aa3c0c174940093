import { readPlan } from '../files/format/read-plan.ts';
import type { Case, Plan } from '../plan/plan.ts';
import { BadCall, type Call, type Terminal } from './define-verb.ts';

/** The plan in the file the call names. A broken file is refused with what and where; nothing is guessed. */
export function openFile(call: Call, terminal: Terminal, usage: string): Plan {
  const [file, extra] = call.words;
  if (file === undefined) throw new BadCall(`which file? kickset ${usage}`);
  if (extra !== undefined) throw new BadCall(`one file at a time: what is "${extra}"? kickset ${usage}`);
  const read = readPlan(terminal.read(file));
  if (read.kind === 'ok') return read.plan;
  if (read.kind === 'newer') {
    if (read.plan === null) throw new BadCall(`${file}: ${read.sentence}`);
    terminal.err(`kickset: ${file}: ${read.sentence}\n`);
    return read.plan;
  }
  throw new BadCall(`${file}: ${read.sentence}`);
}

/**
 * `--case before`, `--case after`, `--case A:after`: the option by id or by name. Without it: the first option, after;
 * before, where the plan has no option.
 */
export function chosenCase(plan: Plan, asked: string | true | undefined): Case {
  const options = Object.values(plan.options);
  const first = options[0]?.id ?? null;
  if (asked === undefined || asked === true) return { option: first, when: first === null ? 'before' : 'after' };
  const [left = '', right] = asked.split(':');
  const when = right ?? left;
  if (when !== 'before' && when !== 'after')
    throw new BadCall(`--case is before, after or OPTION:after, not "${asked}"`);
  if (right === undefined) return { option: first, when };
  const option = options.find((o) => o.id === left) ?? options.find((o) => o.name === left);
  if (!option) {
    throw new BadCall(`there is no option "${left}"; there is ${options.map((o) => o.name).join(', ') || 'none'}`);
  }
  return { option: option.id, when };
}

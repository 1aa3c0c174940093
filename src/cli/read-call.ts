import { BadCall, type Call } from './define-verb.ts';

/** Flags that take a word after them; the rest stand alone. `--case=x` and `--case x` both do. */
const WITH_WORD = new Set(['case', 'out', 'view', 'theme', 'sheets', 'paper', 'scale', 'date']);

export function readCall(args: readonly string[]): Call {
  const words: string[] = [];
  const flags: Record<string, string | true> = {};
  for (let i = 0; i < args.length; i++) {
    const arg = args[i] ?? '';
    if (!arg.startsWith('--')) {
      words.push(arg);
      continue;
    }
    const [name = '', ...rest] = arg.slice(2).split('=');
    if (rest.length > 0) flags[name] = rest.join('=');
    else if (WITH_WORD.has(name)) {
      const next = args[++i];
      if (next === undefined) throw new BadCall(`--${name} wants a word after it`);
      flags[name] = next;
    } else flags[name] = true;
  }
  return { words, flags };
}

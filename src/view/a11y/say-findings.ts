import type { Finding, Outcome } from '../../report/finding.ts';
import { OUTCOME_WORD } from '../look/mark.tsx';

/** More than these are counted, not named. */
const MOST_NAMED = 3;

const call = ({ outcome, title }: Finding): string => `${OUTCOME_WORD[outcome]}, ${title}`;

/** "and 2 more", where not all are named. */
const rest = (n: number): string => (n > 0 ? [`and ${n} more`] : []).join('');

function part(word: string, names: readonly string[], room: number): string {
  if (names.length === 0) return '';
  const named = names.slice(0, room);
  if (named.length === 0) return `${word}: ${names.length}.`;
  return `${word}: ${[...named, rest(names.length - named.length)].filter((n) => n !== '').join('; ')}.`;
}

/**
 * What a change of the drawing did to the findings: which are new, which are worse or milder, which are gone. Worst first, at most
 * three of them by name. Empty where nothing changed.
 */
export function sayFindings(before: readonly Finding[], now: readonly Finding[]): string {
  const was = new Map(before.map((f) => [f.key, f]));
  const is = new Set(now.map((f) => f.key));
  const fresh = now.filter((f) => !was.has(f.key)).map(call);
  const turned = now.flatMap((f) => {
    const old: Outcome | undefined = was.get(f.key)?.outcome;
    return old === undefined || old === f.outcome ? [] : [`${call(f)}, was ${OUTCOME_WORD[old]}`];
  });
  const gone = before.filter((f) => !is.has(f.key)).map(call);
  let room = MOST_NAMED;
  const parts: string[] = [];
  for (const [word, names] of [
    ['New', fresh],
    ['Now', turned],
    ['Gone', gone],
  ] as const) {
    parts.push(part(word, names, room));
    room = Math.max(0, room - names.length);
  }
  return parts.filter((p) => p !== '').join(' ');
}

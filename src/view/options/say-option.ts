import type { Plan } from '../../plan/plan.ts';

const MAPS = [
  ['points', 'point', 'points'],
  ['runs', 'run', 'runs'],
  ['legs', 'piece of pipe', 'pieces of pipe'],
  ['walls', 'wall', 'walls'],
  ['openings', 'opening', 'openings'],
  ['voids', 'void or box', 'voids and boxes'],
] as const;

const all = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;

/** "3 points, 7 runs and 24 pieces of pipe": what is new in an option; empty where nothing is. */
export function sayNew(plan: Plan, option: string): string {
  return all(
    MAPS.flatMap(([map, one, many]) => {
      const n = Object.values(plan[map]).filter((r) => r.option === option).length;
      return n === 0 ? [] : [`${n} ${n === 1 ? one : many}`];
    }),
  );
}

/** What is new in an option and what it does to what was surveyed. */
export const sayWhat = (plan: Plan, option: string): string =>
  [sayNew(plan, option) || 'nothing new yet', sayFates(plan, option)].filter((s) => s !== '').join('; ');

/** "7 taken out, 1 capped off": what it does to what was surveyed. */
function sayFates(plan: Plan, option: string): string {
  const fates = Object.values(plan.options[option]?.fates ?? {});
  const [strip, cap] = [fates.filter((f) => f === 'strip').length, fates.filter((f) => f === 'cap').length];
  return [strip > 0 ? `${strip} taken out` : '', cap > 0 ? `${cap} capped off` : ''].filter((s) => s !== '').join(', ');
}

import type { RiserWords, Wish } from '../display-list.ts';

type FlagWish = Extract<Wish, { w: 'flag' }>;

/** More levels than this on one line and the words are parted. */
const ON_ONE_LINE = 3;

const risersOf = (wished: readonly FlagWish[]): RiserWords[] =>
  wished.flatMap(({ riser }) => (riser ? [riser] : [])).sort((p, q) => q.z - p.z);

function levels(wished: readonly FlagWish[]): string[] {
  const byLevel = new Map<string, string[]>();
  for (const { letters, level } of risersOf(wished)) byLevel.set(level, [...(byLevel.get(level) ?? []), letters]);
  return [...byLevel].map(([level, letters]) => `${[...new Set(letters)].join(', ')} ${level}`);
}

/** "down: G 1180, K 700, H 270" over "HR 210, HF 150"; rises and drops each on a line where there are both. */
export function together(first: FlagWish, wished: readonly FlagWish[]): FlagWish {
  const ups = levels(wished.filter((wish) => wish.riser?.up));
  const downs = levels(wished.filter((wish) => !wish.riser?.up));
  const base = { ...first, rank: 2 };
  if (ups.length > 0 && downs.length > 0)
    return { ...base, what: `down: ${downs.join(', ')}`, how: `up: ${ups.join(', ')}` };
  const [way, all] = ups.length > 0 ? ['up', ups] : ['down', downs];
  const rest = all.slice(ON_ONE_LINE);
  return {
    ...base,
    what: `${way}: ${all.slice(0, ON_ONE_LINE).join(', ')}${rest.length > 0 ? ',' : ''}`,
    how: rest.length > 0 ? rest.join(', ') : null,
  };
}

/** What leaves one point that way, seen from it: letters and where to, lowest first. */
function leaving(wished: readonly FlagWish[], up: boolean): { letters: string; level: string; z: number }[] {
  return risersOf(wished)
    .flatMap((r) => (r.from?.up === up ? [{ letters: r.letters, level: r.from.level, z: r.from.z }] : []))
    .sort((p, q) => q.z - p.z);
}

function ranged(wished: readonly FlagWish[], up: boolean): string[] {
  const mine = leaving(wished, up);
  const [high, low] = [mine[0], mine.at(-1)];
  if (!low || !high) return [];
  const letters = [...new Set(mine.map((m) => m.letters))].join(', ');
  const way = up ? 'up' : 'down';
  return [
    low.level === high.level ? `${letters} ${way} to ${low.level}` : `${letters} ${way}, ${low.level} to ${high.level}`,
  ];
}

function listed(wished: readonly FlagWish[], up: boolean): string[] {
  const byLevel = new Map<string, string[]>();
  for (const { letters, level } of leaving(wished, up)) byLevel.set(level, [...(byLevel.get(level) ?? []), letters]);
  const all = [...byLevel].map(([level, letters]) => `${[...new Set(letters)].join(', ')} ${level}`);
  const lines: string[] = [];
  for (let i = 0; i < all.length; i += ON_ONE_LINE) lines.push(all.slice(i, i + ON_ONE_LINE).join(', '));
  return lines.map((line, i) => `${i === 0 ? (up ? 'up: ' : 'down: ') : ''}${line}${i + 1 < lines.length ? ',' : ''}`);
}

/** Lines that say each: "down: K 700, H 270, HR 210," "HF 150" "up: G, C 1260". */
export const eachFrom = (wished: readonly FlagWish[]): string[] => [...listed(wished, false), ...listed(wished, true)];

/** How far they go between them, in a line for each way: "HF, HR, H down, 150 to 270" "G up to 2420". */
export const rangeFrom = (wished: readonly FlagWish[]): string[] => [...ranged(wished, false), ...ranged(wished, true)];

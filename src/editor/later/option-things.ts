import { type Plan, RECORD_MAPS, type RecordMap } from '../../plan/plan.ts';

/** Maps whose records belong to an option or to the survey, with the prefix of their ids. */
export const OWNED = {
  walls: 'w',
  openings: 'o',
  voids: 'v',
  points: 'p',
  runs: 'r',
  nodes: 'n',
  legs: 'l',
  stretches: 'u',
  items: 'i',
} as const satisfies Partial<Record<RecordMap, string>>;
export type OwnedMap = keyof typeof OWNED;
export const OWNED_MAPS: readonly OwnedMap[] = RECORD_MAPS.filter((map): map is OwnedMap => map in OWNED);

/**
 * Nodes of an option on which pipe of the survey, or of another option, ends: they are no business of one option alone,
 * so they are neither copied nor taken away with it.
 */
export function sharedNodes(plan: Plan, option: string): ReadonlySet<string> {
  const shared = new Set<string>();
  for (const pipe of [...Object.values(plan.legs), ...Object.values(plan.stretches)]) {
    if (pipe.option === option) continue;
    for (const node of [pipe.a, pipe.b]) if (plan.nodes[node]?.option === option) shared.add(node);
  }
  return shared;
}

/** Everything that is new in an option, map by map, in the order it was drawn. */
export function thingsOf(plan: Plan, option: string): { readonly map: OwnedMap; readonly id: string }[] {
  const shared = sharedNodes(plan, option);
  return OWNED_MAPS.flatMap((map) =>
    Object.values(plan[map])
      .filter((record) => record.option === option && !(map === 'nodes' && shared.has(record.id)))
      .map(({ id }) => ({ map, id })),
  );
}

/** The option at the end of the key of a finding; null where it is of no option, or was found before the work. */
export const optionOfKey = (key: string): string | null => {
  const last = key.slice(key.lastIndexOf('|') + 1);
  return last === '' || last === 'before' ? null : last;
};

/** Letters that are taken for no figure. */
const LETTERS = [...'ABCDEFGHJKLMNPQRSTUVWXYZ'];

/** The next name for an option that nobody names: the first free of A, B, C; after the letters A2, B2. */
export function nextOptionName(plan: Pick<Plan, 'options'>): string {
  const taken = new Set(Object.values(plan.options).map((o) => o.name.trim().toUpperCase()));
  for (let round = 1; ; round++) {
    const free = LETTERS.map((letter) => (round === 1 ? letter : `${letter}${round}`)).find((n) => !taken.has(n));
    if (free !== undefined) return free;
  }
}

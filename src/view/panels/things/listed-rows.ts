import type { Thing, ThingGroup } from './things-of.ts';

/** One line of the list: a heading that folds, a thing, or a key for the things that are not shown yet. */
export type ListedRow =
  | { readonly is: 'head'; readonly key: string; readonly group: ThingGroup; readonly open: boolean }
  | { readonly is: 'thing'; readonly key: string; readonly group: ThingGroup; readonly thing: Thing }
  | { readonly is: 'more'; readonly key: string; readonly group: ThingGroup; readonly left: number };

/** A group of more than these starts folded: a bill of a hundred walls is not what anybody is looking for. */
export const MANY = 40;
/** So many are shown at once of an open group; the key below it shows as many again. */
export const AT_ONCE = 60;

export interface Unfolded {
  /** Groups that somebody opened or folded, by key. */
  readonly open: ReadonlyMap<string, boolean>;
  /** How many of a group are shown, where more were asked for. */
  readonly shown: ReadonlyMap<string, number>;
}

/** The lines there are now. While something is looked for every group is open. */
export function rowsOf(
  groups: readonly ThingGroup[],
  { open, shown }: Unfolded,
  looking: boolean,
): readonly ListedRow[] {
  return groups.flatMap((group): ListedRow[] => {
    const isOpen = looking || (open.get(group.key) ?? group.things.length <= MANY);
    const head: ListedRow = { is: 'head', key: group.key, group, open: isOpen };
    if (!isOpen) return [head];
    const most = shown.get(group.key) ?? AT_ONCE;
    const things = group.things
      .slice(0, most)
      .map((thing): ListedRow => ({ is: 'thing', key: `${thing.map}/${thing.id}`, group, thing }));
    const left = group.things.length - things.length;
    const more: ListedRow[] = left > 0 ? [{ is: 'more', key: `${group.key}/more`, group, left }] : [];
    return [head, ...things, ...more];
  });
}

/** Opens what a thing is folded into, so that its line is there. */
export function unfoldedTo(groups: readonly ThingGroup[], now: Unfolded, id: string): Unfolded {
  const group = groups.find((g) => g.things.some((t) => t.id === id));
  if (!group) return now;
  const at = group.things.findIndex((t) => t.id === id);
  const open = new Map(now.open).set(group.key, true);
  const most = now.shown.get(group.key) ?? AT_ONCE;
  const shown = at < most ? now.shown : new Map(now.shown).set(group.key, (Math.floor(at / AT_ONCE) + 1) * AT_ONCE);
  return { open, shown };
}

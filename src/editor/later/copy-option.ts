import type { Plan } from '../../plan/plan.ts';
import { references } from '../../plan/references.ts';
import { findingKey } from '../../report/finding.ts';
import type { CommandContext } from '../commands/define-command.ts';
import { OWNED, OWNED_MAPS, type OwnedMap, optionOfKey, thingsOf } from './option-things.ts';

/**
 * New ids for the things of an option. They stand in the order of the old ones, because where nothing else decides the
 * engine goes by ids: a copy is then told in the order of its original.
 */
function newIds(plan: Plan, option: string, ctx: CommandContext): ReadonlyMap<string, string> {
  const ids = new Map<string, string>();
  const things = thingsOf(plan, option);
  for (const map of OWNED_MAPS) {
    const old = things.filter((t) => t.map === map).map((t) => t.id);
    const fresh = old.map(() => ctx.ids.next(OWNED[map])).sort();
    for (const [i, id] of [...old].sort().entries()) ids.set(id, fresh[i] ?? id);
  }
  return ids;
}

/** Writes another id where a reference stands: "place.wall" holds the id, "place.height" an object with `of`, "members" a list. */
function point(record: object, field: string, from: string, to: string): void {
  const path = field.split('.');
  const last = path.pop() ?? '';
  const holder = path.reduce<unknown>(
    (at, key) => (typeof at === 'object' && at ? Reflect.get(at, key) : null),
    record,
  );
  if (typeof holder !== 'object' || holder === null) return;
  const held: unknown = Reflect.get(holder, last);
  if (Array.isArray(held)) {
    Reflect.set(
      holder,
      last,
      held.map((id) => (id === from ? to : id)),
    );
  } else if (typeof held === 'object' && held !== null) Reflect.set(held, 'of', to);
  else Reflect.set(holder, last, to);
}

function copyThings(draft: Plan, option: string, made: string, ids: ReadonlyMap<string, string>, before: Plan): void {
  const copies = new Map<string, { id: string; option: string | null; from?: unknown }>();
  for (const { map, id } of thingsOf(before, option)) {
    const copy = { ...structuredClone(before[map][id] as { id: string; option: string | null; from?: unknown }) };
    copy.id = ids.get(id) ?? id;
    copy.option = made;
    // Where a run or leg was split off from: kept as a word of the file.
    if (typeof copy.from === 'string') copy.from = ids.get(copy.from) ?? copy.from;
    copies.set(`${map}/${id}`, copy);
  }
  for (const { map, id, field, toId } of references(before)) {
    const copy = copies.get(`${map}/${id}`);
    const to = ids.get(toId);
    if (copy && to !== undefined) point(copy, field, toId, to);
  }
  for (const [key, copy] of copies) {
    const map = key.slice(0, key.indexOf('/')) as OwnedMap;
    (draft[map] as Record<string, object>)[copy.id] = copy;
  }
}

/** A bank of copied runs is a bank too. One that holds surveyed runs together as well stays the one it is. */
function copyGroups(draft: Plan, before: Plan, ids: ReadonlyMap<string, string>, ctx: CommandContext): void {
  for (const group of Object.values(before.groups)) {
    const stays = group.members.filter((run) => !ids.has(run)).length;
    if (stays === group.members.length || stays > 1) continue;
    const id = ctx.ids.next('g');
    draft.groups[id] = { ...structuredClone(group), id, members: group.members.map((run) => ids.get(run) ?? run) };
  }
}

/** What the user said of the option's findings, list and limits is said of the copy's too. */
function copyStatements(
  draft: Plan,
  before: Plan,
  [option, made]: readonly [from: string, to: string],
  ids: ReadonlyMap<string, string>,
  ctx: CommandContext,
): void {
  for (const said of Object.values(before.acknowledgements)) {
    if (optionOfKey(said.key) !== option) continue;
    const [rule = '', things = ''] = said.key.split('|');
    const named = things === '' ? [] : things.split(',').map((id) => ids.get(id) ?? id);
    const id = ctx.ids.next('ack');
    draft.acknowledgements[id] = { ...structuredClone(said), id, key: findingKey(rule, named, made) };
  }
  for (const edit of Object.values(before.listEdits)) {
    if (edit.option !== option) continue;
    const id = ctx.ids.next('line');
    draft.listEdits[id] = { ...structuredClone(edit), id, option: made };
  }
  for (const own of Object.values(before.overrides)) {
    const scope = own.scope === null ? undefined : ids.get(own.scope);
    if (scope === undefined) continue;
    const id = ctx.ids.next('limit');
    draft.overrides[id] = { ...structuredClone(own), id, scope };
  }
}

/**
 * Copies everything that is new in an option into another that stands already: things with new ids that point at each
 * other, and at the survey where the first ones do; its fates; and what was said of it. Pictures stay with what they
 * were taken of, and readings with the survey.
 */
export function copyOption(draft: Plan, option: string, made: string, ctx: CommandContext): void {
  const { before } = ctx;
  const ids = newIds(before, option, ctx);
  copyThings(draft, option, made, ids, before);
  copyGroups(draft, before, ids, ctx);
  copyStatements(draft, before, [option, made], ids, ctx);
}

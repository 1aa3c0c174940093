import type { Item } from '../plan/records/pipework.ts';
import type { ItemKind } from './define-item.ts';
import type { Fields } from './define-point.ts';
import { registry } from './registry.ts';

/** Every kind of in-line item, sorted by id. */
export const itemKinds: ReadonlyMap<string, ItemKind> = registry(
  import.meta.glob<ItemKind>('./items/*.item.ts', { eager: true, import: 'default' }),
);

/** Kinds that may be put into a service, at a place of that sort. */
export function itemsFor(service: string, stands: 'inline' | 'end'): readonly ItemKind[] {
  return [...itemKinds.values()].filter(
    (k) => k.stands.includes(stands) && (k.services.length === 0 || k.services.includes(service)),
  );
}

export interface ItemChoices {
  readonly id: string;
  readonly node: string;
  readonly option: string | null;
  readonly along?: string | null;
  readonly name?: string;
  readonly fields?: Fields;
}

/** An item as its kind makes it. Throws on a kind that is not there. */
export function makeItem(kindId: string, choices: ItemChoices): Item {
  const kind = itemKinds.get(kindId);
  if (!kind) throw new RangeError(`no kind of item "${kindId}"`);
  return {
    id: choices.id,
    node: choices.node,
    kind: kind.id,
    name: choices.name ?? kind.label,
    along: choices.along ?? null,
    fields: { ...kind.defaults, ...choices.fields },
    option: choices.option,
    sureness: 'seen',
  };
}

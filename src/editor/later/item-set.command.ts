import * as v from 'valibot';
import { id } from '../../plan/records/parts.ts';
import { field, item } from '../../plan/records/pipework.ts';
import { called, change } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';

const { name, along, sureness } = item.entries;

/** Name, way or fields of an item; fields that are told are merged with those that are there. */
export default defineCommand({
  id: 'item.set',
  label: (args, before) => `change ${called(before, args.item, 'item').toLowerCase()}`,
  args: v.object({
    item: id<'item'>(),
    change: v.partial(v.object({ name, along, sureness })),
    fields: v.optional(v.record(v.string(), field)),
  }),
  run(draft, args) {
    const record = draft.items[args.item] ?? refuse('That item is no longer there.');
    const leg = args.change.along == null ? undefined : draft.legs[args.change.along];
    if (args.change.along != null && leg?.a !== record.node && leg?.b !== record.node) {
      refuse('An item points along a leg that ends at it.');
    }
    change(record, args.change);
    Object.assign(record.fields, args.fields ?? {});
    return [];
  },
  example(plan, rng) {
    const item = rng.pick(Object.values(plan.items));
    if (!item) return null;
    const along = Object.values(plan.legs).find((l) => l.a === item.node)?.id ?? null;
    return { item: item.id, change: rng.pick([{ name: 'by the sink' }, { along }]), fields: { note: 'tight' } };
  },
});

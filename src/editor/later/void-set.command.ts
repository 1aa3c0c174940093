import * as v from 'valibot';
import { voidRecord } from '../../plan/records/building.ts';
import { id } from '../../plan/records/parts.ts';
import { called, change } from '../commands/change-of.ts';
import { defineCommand, refuse } from '../commands/define-command.ts';
import { mustStand } from '../commands/height-stands.ts';

const { name, kind, outline, holes, bottom, top, joists, bearings, ventilated, mayBeCut, sureness } =
  voidRecord.entries;
const { sealed, ventAreaCm2, layers, pourDate } = voidRecord.entries;

export default defineCommand({
  id: 'void.set',
  label: (args, before) => `change ${called(before, args.void, 'void')}`,
  args: v.object({
    void: id<'void'>(),
    change: v.partial(
      v.object({
        name,
        kind,
        outline,
        holes,
        bottom,
        top,
        joists,
        bearings,
        ventilated,
        mayBeCut,
        sureness,
        sealed,
        ventAreaCm2,
        layers,
        pourDate,
      }),
    ),
  }),
  run(draft, args) {
    change(draft.voids[args.void] ?? refuse('That void is no longer there.'), args.change);
    mustStand(draft, args.change.bottom, args.change.top, args.change.joists?.bottom);
    return [];
  },
  example(plan, rng) {
    const v = rng.pick(Object.values(plan.voids));
    if (!v) return null;
    const onItself = { from: 'voidBottom', of: v.id, mm: 20 };
    const changes = [
      { ventilated: true },
      { name: 'over the hall' },
      { top: null },
      { bottom: onItself },
      { top: onItself },
      { mayBeCut: false },
      { sealed: true },
      { ventAreaCm2: 45 },
      { layers: [{ what: 'screed', thicknessMm: 65.02 }], pourDate: '2026-05-01' },
    ];
    return { void: v.id, change: rng.pick(changes) };
  },
});

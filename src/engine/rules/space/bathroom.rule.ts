import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { bathroomOf } from '../../space/opens-to.ts';
import { newBoilers, type Sited } from '../../space/sited.ts';
import { cupboardOffBathroom, inRoom } from './houses.ts';

function ofBoiler(given: Given, boiler: Sited): Fault[] {
  const found = bathroomOf(given, boiler);
  if (!found) return [];
  const { point, body } = boiler;
  const sealed = point.fields.roomSealed;
  const name = sayPoint(given.plan, point.id);
  const shared = {
    ids: [point.id, found.room.id],
    at: atPlace(point.storey, body.frame.origin),
    words: {
      name,
      where: `${found.cupboard ? 'in a cupboard that opens to the' : 'in the'} ${midSentence(found.room.name || found.room.use)}`,
    },
  };
  if (sealed === true) return [{ outcome: 'note', say: 'sealed', ...shared }];
  if (sealed === false) return [{ outcome: 'stop', ...shared }];
  return [{ outcome: 'cantTell', ...shared, missing: ['whether it is room-sealed'] }];
}

export default defineRule({
  id: 'space/bathroom',
  topic: 'space',
  since: '1',
  basis: 'law',
  lifeSafety: true,
  cites: [{ source: 'boilers-and-bathrooms', clause: 'regulation 30 of the 1998 Regulations' }],
  needs: ['what the room is used for', 'whether the boiler is room-sealed'],
  params: () => ({}),
  judge: (given) => newBoilers(given).flatMap((b) => ofBoiler(given, b)),
  say: {
    fault: {
      title: '{name} stands {where} and is not room-sealed',
      why: 'A boiler that takes its air from a bathroom can kill whoever is in it; the law forbids it there.',
      todo: 'Put it elsewhere, or choose a room-sealed one.',
    },
    sealed: {
      title: '{name} stands {where}',
      why: 'Only where nowhere else is practical, and only room-sealed; cupboards that open to a bathroom count too.',
      todo: 'Keep a note of why no other place would do, and keep it and its switches out of the zones.',
    },
    cantTell: {
      title: "{name} stands {where}: can't tell whether it may",
      why: 'Only a room-sealed boiler may stand there. Not known: {missing}.',
      todo: 'Look on its plate or its sheet, and tell it.',
    },
    pass: 'It stands in no bathroom.',
  },
  examples: [
    { name: 'in a utility room', given: () => inRoom({ roomSealed: false }), expect: 'pass' },
    { name: 'open-flued in a bathroom', given: () => inRoom({ roomSealed: false }, 1500, 'Bathroom'), expect: 'stop' },
    { name: 'room-sealed in a bathroom', given: () => inRoom({ roomSealed: true }, 1500, 'Bathroom'), expect: 'note' },
    {
      name: 'in a bathroom, not told',
      given: () => inRoom({ roomSealed: null }, 1500, 'Bathroom'),
      expect: 'cantTell',
    },
    {
      name: 'open-flued in a cupboard off a bathroom',
      given: () => cupboardOffBathroom({ roomSealed: false }),
      expect: 'stop',
    },
  ],
});

import type { Row } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import type { Given } from '../given.ts';
import { sayPoint, sentence } from '../say-names.ts';
import { bondsOf } from '../space/bonds.ts';
import { isLoft } from '../space/room-kinds.ts';
import { newBoilers, standing } from '../space/sited.ts';
import { fact, note } from '../tests-due/row-makers.ts';
import { controlsOf, hotWaterWiring, joined, pumpWiring, spurOf } from './electrician-rows.ts';

/** Bonding that was found wanting, and a loft without its light: both are the electrician's. */
function besides(given: Given): Row[] {
  const bonds = bondsOf(given).filter((b) => b.told === 'missing' || b.beforeBranch === false);
  const boilers = newBoilers(given).filter((b) => b.room && isLoft(b.room));
  const dark = boilers.length > 0 ? standing(given, 'hatch').filter((h) => h.fields.leadsTo === 'loft') : [];
  return [
    ...bonds.map((b) => fact(`Main bonding, ${b.service}`, null, 'missing or misplaced: to put right', [b.source.id])),
    ...dark
      .filter((h) => h.fields.light !== true)
      .map((h) => fact(sentence(sayPoint(given.plan, h.id)), null, 'a fixed light in the loft', [h.id])),
  ];
}

export default defineSection({
  id: 'electrician',
  order: 36,
  write(given) {
    const boilers = newBoilers(given);
    const [first] = boilers;
    if (!first) return null;
    const { drawn, ask } = joined([
      ...boilers.map((b) => spurOf(given, b)),
      controlsOf(given, first),
      hotWaterWiring(given, first),
      pumpWiring(given, first),
    ]);
    const asked = [...ask, ...besides(given)];
    const heading = (label: string): Row => ({ kind: 'heading', label, say: '', ids: [] });
    return {
      title: 'For the electrician',
      answer: asked.length === 0 ? `${drawn.length} drawn` : `${asked.length} to ask`,
      state: 'none',
      rows: [
        ...(drawn.length > 0 ? [heading('As drawn'), ...drawn] : []),
        ...(asked.length > 0 ? [heading('To ask'), ...asked] : []),
        note(
          'Metres run along walls and up and down, and are the least there can be. An electrician settles all of it.',
          [{ source: 'own-sums', clause: 'cable square to the house' }],
        ),
      ],
    };
  },
});

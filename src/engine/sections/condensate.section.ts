import { sayFigures } from '../../report/quantity.ts';
import type { Row, State } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import { condensateDrains } from '../drainage/condensate-drains.ts';
import { isNew } from '../drainage/drains.ts';
import { condensateRows, conditionOf, worstOf } from './condensate-rows.ts';

export default defineSection({
  id: 'condensate',
  order: 20,
  write(given) {
    const drains = condensateDrains(given).filter(isNew);
    if (drains.length === 0) return null;
    const conditions = drains.map((d) => conditionOf(given, d));
    const worst = worstOf(conditions);
    const state: State = worst?.state ?? 'none';
    const rows: Row[] = drains.flatMap((d, i) => {
      const condition = conditions[i];
      return condition ? condensateRows(given, d, condition) : [];
    });
    rows.push({
      kind: 'note',
      say: "The boiler's own instructions go first: they may ask for more fall, a larger bore or another end.",
      unverified: false,
      cites: [],
    });
    return {
      title: 'Condensate',
      answer: worst?.least ? `${sayFigures(worst.least)} mm/m` : (worst?.say ?? ''),
      state,
      rows,
    };
  },
});

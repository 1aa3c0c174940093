import { figure } from '../../reference/figure.ts';
import type { State } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import { assess } from '../preheat/assess.ts';
import { preheatsOf } from '../preheat/preheats.ts';
import { preheatRows } from './preheat-rows.ts';
import { degrees } from './preheat-words.ts';

const RANK: readonly State[] = ['stop', 'check', 'cantTell', 'note', 'pass', 'none'];

export default defineSection({
  id: 'preheat',
  order: 26,
  write(given) {
    const all = preheatsOf(given).map((p) => assess(given, p));
    const [first] = [...all].sort(
      (a, b) => (b.states[0]?.trace.outletC.hi ?? 0) - (a.states[0]?.trace.outletC.hi ?? 0),
    );
    if (!first) return null;
    const [bath, above] = [figure('preheat-limits', 'bath'), figure('preheat-limits', 'blending above')];
    const caution =
      bath.is === 'known' && above.is === 'known'
        ? `Hot water from such a vessel scalds in moments. A bath is held to ${bath.lo} °C; a store that may get above ${above.lo} is blended in line. The instructions of vessel, valves and boiler go first.`
        : '';
    const states = all.map((a): State => (a.inlet === 'none' ? 'none' : a.inlet));
    const drawn = first.preheat.heater !== null || first.preheat.outlets.length > 0;
    const worst = first.states[0]?.trace.outletC;
    return {
      title: 'Preheat',
      answer: drawn && worst ? `${degrees(worst)} at the worst` : 'not drawn',
      state: states.sort((a, b) => RANK.indexOf(a) - RANK.indexOf(b))[0] ?? 'none',
      rows: [
        ...all.flatMap((a) => preheatRows(given, a)),
        {
          kind: 'note',
          say: caution,
          unverified: false,
          cites: [bath, above].flatMap((f) => (f.is === 'known' ? [f.cite] : [])),
        },
      ],
    };
  },
});

import { type Quantity, sayFigures } from '../../report/quantity.ts';
import type { Row } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import { scaleOf } from '../water/draw-offs.ts';
import { hotBefore } from '../water-system/before.ts';
import { byWait, type HotWay, hotWays } from '../water-system/hot-ways.ts';
import { answerRow, readingRows, sizeRows, sumRows, tailRow, tapRow, waitState } from './hot-wait-rows.ts';

const keyOf = (w: HotWay): string => `${w.end.point}/${w.end.connection}`;
const waitOf = (w: HotWay): Quantity | null => w.wait?.result ?? null;

function answerOf(worst: HotWay | undefined, tails: readonly HotWay[]): string {
  const wait = worst && waitOf(worst);
  if (wait) return `${sayFigures(wait)} s`;
  const litres = tails[0]?.litres;
  return litres ? `${sayFigures({ ...litres, digits: 1 })} litres to the tails` : "can't tell";
}

export default defineSection({
  id: 'hot-wait',
  order: 23,
  write(given) {
    const all = [...hotWays(given)].sort(byWait);
    if (all.length === 0) return null;
    const before = given.case.when === 'after' ? hotBefore(given) : new Map<string, HotWay>();
    const taps = all.filter((w) => !w.isTail);
    const tails = all.filter((w) => w.isTail);
    const [worst, ...others] = taps;
    const wait = worst ? waitOf(worst) : null;
    const scale = scaleOf(given.plan.basis.editions);
    const was = (w: HotWay): HotWay | undefined => before.get(keyOf(w));
    const rows: Row[] = [
      ...(worst && wait ? [answerRow(given, worst, wait, was(worst))] : []),
      ...(worst && !wait ? [tapRow(worst, was(worst))] : []),
      ...others.map((w) => tapRow(w, was(w))),
      ...tails.map((w) => tailRow(given, w, was(w))),
      ...(worst && scale !== undefined ? sizeRows(given, worst, scale) : []),
      ...(worst && wait
        ? [{ kind: 'heading' as const, label: 'The sum', say: worst.name, ids: [worst.point.id] }, ...sumRows(worst)]
        : []),
      ...readingRows(),
      ...(taps.length > 0
        ? [{ kind: 'assumed' as const, say: 'Taps are fully open, and the pipe has gone cold.', ids: [] }]
        : []),
    ];
    return {
      title: 'Wait for hot water',
      answer: answerOf(worst, tails),
      state: wait ? waitState(wait) : worst ? 'cantTell' : 'none',
      rows,
    };
  },
});

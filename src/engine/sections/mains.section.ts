import type { State } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import type { Given } from '../given.ts';
import { scaleOf } from '../water/draw-offs.ts';
import { arrivals } from '../water-system/arrivals.ts';
import { type CombiFlow, combiFlows } from '../water-system/combi-flow.ts';
import { mainsOf } from '../water-system/mains-readings.ts';
import { sectionLoads } from '../water-system/section-loads.ts';
import { arrivalRows, combiRows, combiState, heatNote, readingRows, sayGives, speedRows } from './mains-rows.ts';

/** New pipe or a new combi: then the flow of the mains is part of this job. */
const concerns = (given: Given, combis: readonly CombiFlow[]): boolean =>
  mainsOf(given).isRead || combis.length > 0 || sectionLoads(given).some((l) => l.isNew);

function answerOf(given: Given, first: CombiFlow | undefined): string {
  if (first?.gives) return `${sayGives(first.gives)} litres/min`;
  const { flow } = mainsOf(given);
  return flow === null ? 'not measured' : `${flow} litres/min`;
}

export default defineSection({
  id: 'mains',
  order: 22,
  write(given) {
    const combis = [...combiFlows(given)].sort((a, b) => Number(b.isNew) - Number(a.isNew));
    if (!concerns(given, combis)) return null;
    const [first] = combis;
    const scale = scaleOf(given.plan.basis.editions);
    const state: State = first ? combiState(first) : 'none';
    return {
      title: 'Mains and hot water flow',
      answer: answerOf(given, first),
      state,
      rows: [
        ...combis.flatMap((c) => combiRows(given, c)),
        ...readingRows(given),
        ...arrivalRows(given, arrivals(given)),
        ...(scale === undefined ? [] : speedRows(given, sectionLoads(given), scale)),
        ...(combis.length > 0 ? [heatNote()] : []),
      ],
    };
  },
});

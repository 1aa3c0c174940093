import { sayFigures } from '../../report/quantity.ts';
import type { State } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import { circuitsOfHeating, type HeatCircuit } from '../heating-system/circuits.ts';
import { headState } from '../heating-system/pump-head.ts';
import { heatingOf } from '../heating-system/solve-heating.ts';
import { differenceRows, sizeRows } from './heating-choices.ts';
import { answerRow, assumedRows, flowRows, limitNotes, loadRows, pipeRows } from './heating-rows.ts';

const WORST: readonly State[] = ['check', 'note', 'pass', 'none', 'cantTell'];

/** A pump nobody told of is no news until a rule says that it matters. */
const stateOf = (c: HeatCircuit): State => {
  const state = headState(c.lost, c.head);
  return state === 'cantTell' ? 'none' : state;
};

function answerOf(c: HeatCircuit): string {
  if (c.loads.length === 0) return 'nothing joined yet';
  if (c.lost === null || c.kW.hi === null) return 'heat not told';
  const lost = sayFigures(c.lost);
  return c.head === null ? `${lost} kPa to pump` : `${lost} of ${c.head} kPa`;
}

export default defineSection({
  id: 'heating',
  order: 21,
  write(given) {
    const circuits = [...circuitsOfHeating(given)].sort(
      (a, b) => WORST.indexOf(stateOf(a)) - WORST.indexOf(stateOf(b)),
    );
    const [worst] = circuits;
    if (!worst) return null;
    const system = heatingOf(given);
    return {
      title: 'Heating',
      answer: answerOf(worst),
      state: stateOf(worst),
      rows: [
        ...circuits.flatMap((c) => [
          ...answerRow(c),
          ...flowRows(system, c),
          ...sizeRows(given, c),
          ...differenceRows(system, c),
          ...loadRows(c),
          ...pipeRows(system, c),
        ]),
        ...limitNotes(),
        ...assumedRows(system, circuits),
      ],
    };
  },
});

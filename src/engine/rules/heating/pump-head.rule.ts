import { type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { circuitsOfHeating, type HeatCircuit } from '../../heating-system/circuits.ts';
import { headState } from '../../heating-system/pump-head.ts';
import { atPoint } from '../../places.ts';
import { midSentence } from '../../say-names.ts';
import { primaries, radiators } from './circuit-houses.ts';

type Params = { readonly matters: Figure };

function faultOf(given: Given, c: HeatCircuit, matters: Figure): Fault[] {
  const { index, lost } = c;
  if (!c.isNew || index === null || lost === null) return [];
  const state = headState(lost, c.head);
  const shared = {
    ids: [c.boiler.id],
    legs: index.sections.flatMap((s) => s.section.legs),
    words: { boiler: midSentence(c.name), to: midSentence(index.load.name) },
    found: lost,
    at: atPoint(given.plan, c.boiler.id),
  };
  if (state === 'check') return [{ ...shared, outcome: 'check', wanted: exact(c.head ?? 0, 'kPa', 1, 'page') }];
  // A short pair of primaries is within what any pump leaves.
  if (state !== 'cantTell' || matters.is !== 'known' || lost.lo < matters.lo) return [];
  return [{ ...shared, outcome: 'cantTell', missing: ['the pump head left for the heating'] }];
}

const long = (head: number | null) =>
  primaries({ metres: 20, words: { size: '15x0.7' }, boiler: { pumpHeadLeftKPa: head } });

export default defineRule<Params>({
  id: 'heating/pump-head',
  topic: 'heating',
  since: '2',
  basis: 'practice',
  lifeSafety: false,
  cites: [
    { source: 'heating-sizing-notes', clause: 'index circuit and pump duty' },
    { source: 'trade-practice', clause: 'judgement of a drawing', table: 'heating-judgement' },
  ],
  needs: ['heat of what is fed', 'sizes and lengths', "the pump head left, of the boiler's sheet"],
  params: () => ({ matters: figure('heating-judgement', 'matters', 'kPa') }),
  judge: (given, { matters }) => circuitsOfHeating(given).flatMap((c) => faultOf(given, c, matters)),
  say: {
    fault: {
      title: 'The pump of the {boiler} has too little left for its pipes',
      why: 'The way to the {to} loses more at the design flow than the boiler has for it. With less water the boiler cycles and what is farthest stays cool.',
      todo: 'Take the primaries a size up, shorten the way, or add a pump behind a header.',
    },
    cantTell: {
      title: "Can't tell whether the pump of the {boiler} has enough left",
      why: 'Not known: {missing}. The way to the {to} loses much of what a built-in pump leaves.',
      todo: 'Set it on the boiler from the pump curve in its sheet, at the design flow.',
    },
    pass: 'The pump has more left than the index circuit loses.',
  },
  examples: [
    {
      name: 'four metres of 22',
      given: () => primaries({ boiler: { pumpHeadLeftKPa: 20 } }),
      expect: 'pass',
    },
    { name: 'four metres of 22, the pump not told', given: () => primaries({}), expect: 'pass' },
    { name: 'twenty metres of 15', given: () => long(20), expect: 'check' },
    { name: 'twenty metres of 15, the pump not told', given: () => long(null), expect: 'cantTell' },
    {
      name: 'three radiators on 22 and 15',
      given: () =>
        radiators(
          [
            { at: 2000, kW: 1 },
            { at: 4000, kW: 1.5 },
            { at: 6000, kW: 2 },
          ],
          { pumpHeadLeftKPa: 25 },
        ),
      expect: 'pass',
    },
  ],
});

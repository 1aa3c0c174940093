import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { INLET_LIMITS, inletMaxBar } from '../../supply/inlet-limits.ts';
import { arrivingBar, inletsOfVessels } from '../../supply/inlets.ts';
import { cylinderHouse } from './houses.ts';

function judge(given: Given): Fault[] {
  return inletsOfVessels(given).flatMap((inlet): Fault[] => {
    const most = inletMaxBar(given.plan, inlet.vessel);
    // A limit nobody told is asked for where the vessel is new: its sheet is then at hand. Elsewhere nothing is said.
    if (most === null || inlet.way.steps.length === 0) return [];
    const arrives = arrivingBar(given, inlet.way);
    const at = inlet.vessel.connections.find((c) => given.network.kinds.circuit(c.service) === 'cold');
    const words = { vessel: midSentence(sayPoint(given.plan, inlet.vessel.id)), by: arrives?.by ?? '' };
    const shared = {
      ids: [inlet.vessel.id],
      words,
      at: at ? atVertex(given.network, `${inlet.vessel.id}/${at.id}`) : null,
    };
    if (arrives === null)
      return inlet.isNew
        ? [
            {
              ...shared,
              outcome: 'cantTell',
              missing: ['the standing pressure of the main, or what its reducer is set to'],
            },
          ]
        : [];
    if (arrives.bar <= most) return [];
    return [
      {
        ...shared,
        outcome: 'stop',
        found: exact(arrives.bar, 'bar', 1, 'page'),
        wanted: exact(most, 'bar', 1, 'page'),
        limit: { id: INLET_LIMITS.bar, scope: inlet.vessel.id },
      },
    ];
  });
}

const told = (standing: number | null, setBar: number | null) =>
  cylinderHouse({ standing, group: { setBar }, vessel: { inletMaxBar: 3.5 } });

export default defineRule({
  id: 'supply/inlet-pressure',
  topic: 'water',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'trade-practice', clause: "the appliance's sheet goes first", table: 'unvented-inlet' }],
  needs: ["the highest inlet pressure of the vessel's sheet", 'the standing pressure, or what the reducer is set to'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: 'The {vessel} gets more pressure than it takes',
      why: 'What {by} lets by is above the highest inlet pressure of its sheet: its valves weep or open, and the vessel is strained.',
      todo: 'Set the reducer lower, or set one ahead of it.',
    },
    cantTell: {
      title: "Can't tell whether the {vessel} gets more pressure than it takes",
      why: 'Not known: {missing}.',
      todo: 'Read the standing pressure, best late in the evening, or the setting on the reducer.',
    },
    pass: 'What arrives is within what its sheet allows.',
  },
  examples: [
    { name: 'a reducer set within the sheet', given: () => told(6, 3), expect: 'pass' },
    {
      name: 'a reducer set above it',
      given: () => told(6, 4),
      expect: 'stop',
      found: { lo: 4, hi: 4, tolerance: 0 },
      from: 'the lesser of 6 bar standing and 4 set',
    },
    { name: 'a weak main behind the same reducer', given: () => told(3, 4), expect: 'pass' },
    { name: 'no limit told', given: () => cylinderHouse({ standing: 6 }), expect: 'pass' },
    { name: 'neither read nor set', given: () => told(null, null), expect: 'cantTell' },
  ],
});

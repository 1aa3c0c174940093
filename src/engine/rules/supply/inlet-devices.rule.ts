import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayAll, sayPoint } from '../../say-names.ts';
import { inletMaxBar } from '../../supply/inlet-limits.ts';
import { arrivingBar, type Inlet, inletsOfVessels, PARTS, type Part } from '../../supply/inlets.ts';
import { pointsOn } from '../../supply/way-back.ts';
import { cylinderHouse } from './houses.ts';

const SAID: Readonly<Record<Part, string>> = {
  strainer: 'a strainer',
  reducer: 'a pressure reducer',
  check: 'a check valve',
  relief: 'an expansion relief valve',
};
const FEEDS = new Set(['cylinder', 'preheat-vessel']);

/** A main that never reaches what the vessel takes needs no reducer. */
function needless(given: Given, { vessel, way }: Inlet, part: Part): boolean {
  const most = inletMaxBar(given.plan, vessel);
  const arrives = arrivingBar(given, way);
  return part === 'reducer' && most !== null && arrives !== null && arrives.bar <= most;
}

function judge(given: Given): Fault[] {
  return inletsOfVessels(given).flatMap((inlet): Fault[] => {
    // What stands behind another vessel is served by that one's valves.
    if (!inlet.isNew || pointsOn(inlet.way).some((p) => FEEDS.has(p.kind))) return [];
    const lacks = PARTS.filter((p) => inlet.has[p] === 'missing' && !needless(given, inlet, p)).map((p) => SAID[p]);
    if (inlet.vessel.fields.expansion === 'none') lacks.push('room for expansion');
    const at = inlet.vessel.connections.find((c) => given.network.kinds.circuit(c.service) === 'cold');
    const shared = {
      ids: [inlet.vessel.id],
      at: at ? atVertex(given.network, `${inlet.vessel.id}/${at.id}`) : null,
    };
    const vessel = midSentence(sayPoint(given.plan, inlet.vessel.id));
    if (lacks.length > 0) return [{ ...shared, outcome: 'check', words: { vessel, lacks: sayAll(lacks) } }];
    if (inlet.checkFirst) return [{ ...shared, outcome: 'check', say: 'order', words: { vessel } }];
    if (inlet.vessel.fields.unvented === null)
      return [{ ...shared, outcome: 'cantTell', words: { vessel }, missing: ['whether it is unvented'] }];
    return [];
  });
}

export default defineRule({
  id: 'supply/inlet-devices',
  topic: 'water',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [
    { source: 'document-g-quoted', clause: 'G3, devices of unvented vessels' },
    { source: 'trade-practice', clause: 'unvented inlet group', table: 'unvented-inlet' },
  ],
  needs: ['the cold to the vessel drawn from the main on'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: 'The cold to the {vessel} lacks {lacks}',
      why: 'An unvented vessel rests on the valves ahead of it: they hold the pressure down, keep its hot water from the main, and give what it grows by somewhere to go.',
      todo: 'Set what is lacking, in this order: strainer, reducer, balanced cold, check, room for expansion, expansion relief; as the sheet of the vessel has them.',
    },
    order: {
      title: 'The cold to the {vessel} meets its check valve before the reducer',
      why: 'What the vessel grows by then stands against the reducer, which is no relief, and cold taken between the two is not balanced.',
      todo: 'Reducer first, then the balanced cold, then the check valve.',
    },
    cantTell: {
      title: "Can't tell what the cold to the {vessel} has to pass",
      why: 'Not known: {missing}. A vented one has a feed cistern instead.',
      todo: 'Look for a cistern above it, and set it on the vessel.',
    },
    pass: 'The cold to it passes what it should.',
  },
  examples: [
    { name: 'an inlet group that holds them', given: () => cylinderHouse(), expect: 'pass' },
    { name: 'straight off the main', given: () => cylinderHouse({ valves: [], cold: 'main' }), expect: 'check' },
    {
      name: 'single valves in their order',
      given: () => cylinderHouse({ valves: ['strainer', 'pressure-reducer', 'check-valve'], cold: 'main' }),
      expect: 'pass',
    },
    {
      name: 'no reducer, and a main that never asks for one',
      given: () =>
        cylinderHouse({
          valves: ['strainer', 'check-valve'],
          cold: 'main',
          standing: 2.5,
          vessel: { inletMaxBar: 3.5 },
        }),
      expect: 'pass',
    },
    {
      name: 'check valve before the reducer',
      given: () => cylinderHouse({ valves: ['strainer', 'check-valve', 'pressure-reducer'], cold: 'main' }),
      expect: 'check',
    },
    { name: 'a group without a relief', given: () => cylinderHouse({ group: { hasRelief: false } }), expect: 'check' },
    { name: 'nowhere to grow', given: () => cylinderHouse({ vessel: { expansion: 'none' } }), expect: 'check' },
    {
      name: 'vented',
      given: () => cylinderHouse({ valves: [], cold: 'main', vessel: { unvented: false } }),
      expect: 'pass',
    },
    {
      name: 'as it always was',
      given: () => cylinderHouse({ valves: [], cold: 'main', option: null }),
      expect: 'pass',
    },
    {
      name: 'nobody knows whether it is unvented',
      given: () => cylinderHouse({ vessel: { unvented: null } }),
      expect: 'cantTell',
    },
  ],
});

import { type Figure, figure } from '../../../reference/figure.ts';
import { sayFigures } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { ExamplePlan } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atPlace, atVertex } from '../../places.ts';
import { midSentence, sayPoint, sayRun } from '../../say-names.ts';
import { controlValves, type EmergencyControl, emergencyControls } from '../../space/emergency-control.ts';
import { add, walled } from '../space/houses.ts';

type Params = { readonly highest: Figure; readonly inFront: Figure };

function ofMeter(given: Given, c: EmergencyControl, valves: number, { highest, inFront }: Params): Fault[] {
  const { point, body } = c.meter;
  if (highest.is !== 'known' || inFront.is !== 'known') return [];
  const shared = {
    ids: [point.id],
    at: atPlace(point.storey, body.frame.origin),
    words: {
      meter: midSentence(sayPoint(given.plan, point.id)),
      found: '',
      by: c.front?.by?.say ?? 'what is there',
    },
  };
  if (c.turns === false) return [{ outcome: 'stop', say: 'seized', ...shared }];
  if (c.reached === false) return [{ outcome: 'check', ...shared }];
  // A control on the pipe stands in for one at a meter that is far off or hard to reach; so does a look on the day.
  if (c.reached === true || valves > 0) return [];
  if (c.remote) return [{ outcome: 'cantTell', ...shared, missing: ['where gas is shut off in the house'] }];
  const { front, high } = c;
  if (front && front.found.hi !== null && front.found.hi < inFront.lo) {
    const words = { ...shared.words, found: sayFigures(front.found) };
    return [
      { outcome: 'check', say: 'behind', ...shared, words, found: front.found, wanted: inFront, wantedIs: 'atLeast' },
    ];
  }
  if (!high || high.lo <= highest.lo) return [];
  const words = { ...shared.words, found: sayFigures(high) };
  return [{ outcome: 'check', say: 'high', ...shared, words, found: high, wanted: highest, wantedIs: 'atMost' }];
}

function judge(given: Given, params: Params): Fault[] {
  const controls = emergencyControls(given);
  if (controls.length === 0) return [];
  const valves = controlValves(given);
  const seized = valves
    .filter(({ item }) => item.fields.turns === false || item.fields.handle === false)
    .map(
      ({ item, run }): Fault => ({
        outcome: 'stop',
        say: 'valve',
        ids: [run],
        at: atVertex(given.network, given.network.vertexOf.get(item.node)),
        words: { run: midSentence(sayRun(given.plan, run)) },
      }),
    );
  return [...controls.flatMap((c) => ofMeter(given, c, valves.length, params)), ...seized];
}

/** A room with new gas pipe from its meter, which stands with its back to a wall at a place. */
function meterAt(at: readonly [number, number, number], fields = {}, change: (e: ExamplePlan) => void = () => {}) {
  const e = walled('Hall');
  add(e.plan, 'gas-meter', 'm', at, fields, null);
  e.run('g', 'gas', [{ point: 'm', connection: 'outlet' }, [at[0] - 75, at[1] + 115, at[2] + 500]]);
  change(e);
  return e.plan;
}

/** Emergency control on the pipe, as it was found. */
const valve =
  (fields: Record<string, boolean>) =>
  (e: ExamplePlan): void => {
    const [, node = ''] = e.nodesOf('g');
    const kind = 'emergency-control-valve';
    e.plan.items.v = { id: 'v', node, kind, name: '', along: null, fields, option: null, sureness: 'seen' };
  };
const FAR = [9000, 1500, 300] as const;

export default defineRule<Params>({
  id: 'safety/emergency-control',
  topic: 'safety',
  since: '2',
  basis: 'law',
  lifeSafety: true,
  cites: [
    { source: 'gas-safety-regulations-1998-b', clause: 'regulation 9' },
    { source: 'trade-practice', clause: 'judgement of a drawing', table: 'emergency-control' },
  ],
  needs: ['where the meter is', 'whether its control can be reached and turns'],
  params: () => ({
    highest: figure('emergency-control', 'highest', 'mm'),
    inFront: figure('emergency-control', 'in front', 'mm'),
  }),
  judge,
  say: {
    fault: {
      title: 'The emergency control at the {meter} cannot be reached',
      why: 'Whoever smells gas must be able to shut it off at once. The law asks for a control that can be got at.',
      todo: 'Clear the way to it, or have it moved, before new pipe is joined.',
    },
    seized: {
      title: 'The emergency control at the {meter} does not turn by hand',
      why: 'Gas cannot be shut off in a hurry, nor for this work. The law asks for a control that works.',
      todo: 'Have whoever owns it put it right first; tell the owner of the house now.',
    },
    valve: {
      title: 'The emergency control on the {run} does not turn, or has no handle',
      why: 'Gas cannot be shut off in a hurry. The law asks for a control that works, with its handle and marked.',
      todo: 'Put it right before gas is let in again.',
    },
    behind: {
      title: 'The {meter} has {found} mm in front of it',
      why: 'It stands behind {by}: a hand hardly gets to the emergency control there.',
      todo: 'Move what stands in front, or tell that the control can be reached.',
    },
    high: {
      title: 'The {meter} hangs {found} mm above the floor',
      why: 'Whoever smells gas must reach its emergency control without steps.',
      todo: 'Look whether it can be reached and tell it, or plan a further control lower down.',
    },
    cantTell: {
      title: "Can't tell how gas is shut off in the house",
      why: 'The {meter} stands apart from it, and a further control belongs where the pipe comes in. Not known: {missing}.',
      todo: 'Draw the control on the pipe, or tell that the one at the meter is in reach.',
    },
    pass: 'The emergency control can be reached, as far as the drawing knows.',
  },
  examples: [
    { name: 'low in a hall', given: () => meterAt([1500, 0, 300]), expect: 'pass' },
    {
      name: 'told to be out of reach',
      given: () => meterAt([1500, 0, 300], { controlReached: false }),
      expect: 'check',
    },
    { name: 'seized', given: () => meterAt([1500, 0, 300], { controlTurns: false }), expect: 'stop' },
    {
      name: 'behind a bath',
      given: () => meterAt([1500, 0, 300], {}, (e) => add(e.plan, 'bath', 'bath', [1500, 280, 0], {}, null)),
      expect: 'check',
      found: { lo: 50, hi: 50, tolerance: 0.01 },
      from: 'front of the meter at 230, bath from 280',
    },
    {
      name: 'over the door',
      given: () => meterAt([1500, 0, 1900]),
      expect: 'check',
      found: { lo: 1900, hi: 1900, tolerance: 0.01 },
      from: 'as drawn',
    },
    {
      name: 'over the door, and looked at',
      given: () => meterAt([1500, 0, 1900], { controlReached: true }),
      expect: 'pass',
    },
    {
      name: 'a control without its handle',
      given: () => meterAt([1500, 0, 300], {}, valve({ handle: false })),
      expect: 'stop',
    },
    { name: 'a meter apart, and a control on the pipe', given: () => meterAt(FAR, {}, valve({})), expect: 'pass' },
    { name: 'a meter apart from the house', given: () => meterAt(FAR), expect: 'cantTell' },
  ],
});

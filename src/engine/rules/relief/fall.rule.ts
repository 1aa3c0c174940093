import { defineRule, type Fault } from '../../define-rule.ts';
import { discharges } from '../../drainage/discharges.ts';
import type { Drain, DrainStep } from '../../drainage/drains.ts';
import { lieOf } from '../../drainage/gradient.ts';
import type { Given } from '../../given.ts';
import { atEdge } from '../../places.ts';
import { sayRun } from '../../say-names.ts';
import { bareVoid } from '../condensate/houses.ts';
import { relief, usual } from './houses.ts';

function sayOf(step: DrainStep): string | null {
  const lie = lieOf(step);
  if (lie.is === 'up') return 'fault';
  if (lie.is === 'unknown') return step.edge.kind === 'leg' ? 'cantTell' : null;
  if (lie.is !== 'slopes') return null;
  const { lo, hi } = lie.mmPerM;
  if (hi !== null && hi < 0) return 'fault';
  return lo <= 0 ? 'level' : null;
}

/** What its boiler's sheet says of the other way out; the sheet goes first, and where it was not read somebody has to look. */
function kitWords(given: Given, drain: Drain): string {
  const allowed = given.plan.points[drain.source?.point ?? '']?.fields.reliefKitAllowed;
  if (allowed === true) return 'Where it cannot, fit the relief kit that its sheet allows.';
  if (allowed === false) return 'Its sheet allows no relief kit: where it cannot fall, the boiler cannot hang here.';
  return 'Where it cannot, look whether the sheet of the appliance allows a relief kit. Never into a condensate pump.';
}

const RANK = ['fault', 'level', 'cantTell'];

function judgeDrain(given: Given, drain: Drain): Fault[] {
  const bad = drain.steps.flatMap((step) => {
    const say = step.edge.state === 'new' ? sayOf(step) : null;
    return say === null ? [] : [{ step, say }];
  });
  const [worst] = [...bad].sort((a, b) => RANK.indexOf(a.say) - RANK.indexOf(b.say));
  if (!worst) return [];
  const { step, say } = worst;
  return [
    {
      outcome: say === 'fault' ? 'stop' : say === 'level' ? 'check' : 'cantTell',
      say,
      ids: [step.edge.run],
      legs: bad.filter((b) => b.say === say).map((b) => b.step.edge.id),
      words: {
        run: sayRun(given.plan, step.edge.run),
        kit: kitWords(given, drain),
        metres: ((step.flatMm ?? 0) / 1000).toFixed(2),
      },
      at: atEdge(given.network, step.edge.id),
      more: bad.length - 1,
      missing: say === 'cantTell' ? ['the height of its ends'] : [],
      unverified: true,
    },
  ];
}

function noHeight() {
  const plan = usual();
  plan.voids.v = bareVoid('v');
  const node = Object.values(plan.nodes)[1];
  if (node?.place.on === 'storey') node.place.height = { from: 'voidTop', of: 'v', mm: 0 };
  return plan;
}

export default defineRule({
  id: 'relief/fall',
  topic: 'drains',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'bs-6798', clause: 'discharge from the safety valve' }],
  needs: ['heights of the pipe'],
  params: () => ({}),
  judge: (given) => discharges(given).reliefs.flatMap((d) => judgeDrain(given, d)),
  say: {
    fault: {
      title: '{run} climbs',
      why: 'Water stands before the rise: it freezes or furs up, and the safety valve can no longer let go.',
      todo: 'Re-route it so that it falls all the way. {kit}',
    },
    level: {
      title: '{run} lies level for {metres} m',
      why: 'Water stands in it after the valve has opened, and freezes where it goes outside.',
      todo: 'Let it fall a little all the way.',
    },
    cantTell: {
      title: "Can't tell whether {run} falls",
      why: 'Not known: {missing}.',
      todo: 'Measure it.',
    },
    pass: 'It falls all the way.',
  },
  examples: [
    { name: 'falls all the way', given: () => usual(), expect: 'pass' },
    {
      name: 'climbs over a door',
      given: () =>
        relief([
          [184, -81, 1200],
          [184, -300, 1195],
          [184, -300, 2200],
          [184, 500, 2195],
          [184, 500, 150],
        ]),
      expect: 'stop',
    },
    {
      name: 'level through the wall',
      given: () =>
        relief([
          [184, -81, 1200],
          [184, 500, 1200],
          [184, 500, 150],
        ]),
      expect: 'check',
    },
    { name: 'a corner without a height', given: noHeight, expect: 'cantTell' },
  ],
});

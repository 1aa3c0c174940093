import { type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { sayVoid } from '../../building/void-parts.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { HIDDEN_BY_LESS_MM, numberOf, undrawn } from '../../flue/flue-routes.ts';
import { type HiddenFlue, hiddenFlues } from '../../flue/hatches.ts';
import { terminalsOf } from '../../flue/terminals.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayPoint, sayRun } from '../../say-names.ts';
import { house } from './houses.ts';
import { overhead, rising } from './routes.ts';

type Params = { readonly within: Figure; readonly side: Figure };

function ofRoute(given: Given, { route, joints, small, seen }: HiddenFlue, withinMm: number, sideMm: number): Fault[] {
  const blind = joints.filter((j) => j.awayMm > withinMm).sort((a, b) => b.awayMm - a.awayMm);
  // Without a joint it still has to be looked at somewhere along its way.
  const [first] = route.hidden;
  const nowhere = joints.length === 0;
  if (!first || (!nowhere && blind.length === 0)) return [];
  const [worst] = blind;
  const name = sayRun(given.plan, first.pipe.run);
  const hatch = small.length > 0 ? `a hatch is there, but smaller than ${sideMm} x ${sideMm}` : 'no hatch is near it';
  const outcome = route.isNew && seen && !nowhere ? 'stop' : 'check';
  return [
    {
      outcome,
      say: nowhere ? 'noJoint' : outcome === 'stop' ? 'fault' : route.isNew ? 'assumed' : 'old',
      ids: [...route.way.runs, ...new Set(route.hidden.map((h) => h.space.id)), ...small],
      legs: [...new Set(route.hidden.map((h) => h.pipe.edge.id))],
      words: {
        run: midSentence(name),
        metres: route.hiddenM.toFixed(1),
        space: sayVoid(first.space),
        joint: worst ? worst.joint.what : '',
        hatch,
        within: (withinMm / 1000).toFixed(1),
        side: String(sideMm),
      },
      found: worst && Number.isFinite(worst.awayMm) ? exact(worst.awayMm, 'mm', 0) : null,
      wanted: nowhere ? null : exact(withinMm, 'mm', 0, 'memory'),
      at: atPlace(first.pipe.storey, worst?.joint.at ?? first.pipe.body.a),
      more: Math.max(0, blind.length - 1),
      unverified: true,
    },
  ];
}

/** Of a flue that is not drawn: what its terminal tells. */
function told(given: Given): Fault[] {
  return terminalsOf(given).flatMap((t): Fault[] => {
    const { fields } = t.point;
    const hiddenM = numberOf(fields.hiddenLengthM);
    if (!undrawn(given, t.point.id) || hiddenM === null || hiddenM * 1000 < HIDDEN_BY_LESS_MM) return [];
    if (fields.inspectable === true || (fields.inspectable !== false && !t.isNew)) return [];
    const known = fields.inspectable === false;
    return [
      {
        outcome: known ? (t.isNew ? 'stop' : 'check') : 'cantTell',
        say: known ? (t.isNew ? 'told' : 'toldOld') : 'cantTell',
        ids: [t.point.id],
        words: { terminal: midSentence(sayPoint(given.plan, t.point.id)), run: 'the flue', metres: hiddenM.toFixed(1) },
        at: atPlace(t.point.storey, t.at),
        missing: known ? [] : ['whether the hidden part can be looked at'],
      },
    ];
  });
}

const hatched = (atX: readonly number[], sizeMm = 600) => {
  const e = rising(220);
  e.plan.voids.v = overhead();
  atX.forEach((x, i) => {
    e.point('hatch', `h${i}`, [x, -400, 2050], { leadsTo: 'ceiling' });
    const hatch = e.plan.points[`h${i}`];
    if (hatch) hatch.size = { ...hatch.size, widthMm: sizeMm, depthMm: sizeMm };
  });
  return e.plan;
};

const drawn = (assumed: boolean, option: string | null = 'A') => {
  const { plan } = rising(220, { assumed, option });
  plan.voids.v = overhead();
  return plan;
};

function straight() {
  const { plan } = rising(220);
  const outline = [
    { x: 500, y: -1000 },
    { x: 3800, y: -1000 },
    { x: 3800, y: 1000 },
    { x: 500, y: 1000 },
  ];
  plan.voids.v = overhead({ outline });
  return plan;
}

const byFields = (inspectable: boolean | null, option: string | null = 'A') =>
  house().point('flue-terminal', 't', [3000, 0, 2200], { hiddenLengthM: 3.4, inspectable }, option).plan;

export default defineRule<Params>({
  id: 'flue/hidden',
  topic: 'flue',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [
    { source: 'flue-in-void-article', clause: 'Approved Document J 1.47 and diagram 14' },
    { source: 'flue-in-void-answers', clause: 'no hatches' },
    { source: 'approved-document-j', clause: '1.47', table: 'flue-hidden' },
  ],
  needs: ['where the hatches are', 'whether the hidden part can be looked at'],
  params: () => ({
    within: figure('flue-hidden', 'hatch within', 'mm'),
    side: figure('flue-hidden', 'hatch side', 'mm'),
  }),
  judge: (given, { within, side }) => [
    ...(within.is === 'known' && side.is === 'known'
      ? hiddenFlues(given, side.lo, within.lo).flatMap((h) => ofRoute(given, h, within.lo, side.lo))
      : []),
    ...told(given),
  ],
  say: {
    fault: {
      title: 'A {joint} of {run} is hidden where nobody can look at it',
      why: '{metres} m run in the {space}, and {hatch}: a joint that comes apart there fills the house with what it carries.',
      todo: 'Take a way that shows, or a hatch of {side} x {side} or more within {within} m of every joint and bend.',
    },
    assumed: {
      title: 'A {joint} of {run} may be hidden where nobody can look at it',
      why: '{metres} m are taken to run in the {space}, and {hatch}.',
      todo: 'Look where it runs, and draw the hatches that are there.',
    },
    old: {
      title: 'The flue that was there has a {joint} nobody can look at',
      why: '{metres} m run in the {space}, and {hatch}.',
      todo: 'Look along it before anything is left on it; without a way to look it is for the engineer to judge.',
    },
    noJoint: {
      title: '{metres} m of flue run hidden in the {space}',
      why: 'No joint is drawn there, and a length longer than one pipe has one.',
      todo: 'Draw where its lengths meet, and a hatch of {side} x {side} or more within {within} m of each.',
    },
    told: {
      title: '{metres} m of flue to the {terminal} are hidden where nobody can look',
      why: 'A joint that comes apart there fills the house with what it carries.',
      todo: 'Take a way that shows, or make hatches so that all of it can be seen.',
    },
    toldOld: {
      title: '{metres} m of flue to the {terminal} are hidden where nobody can look',
      why: 'It was there before, and without a way to look along it nobody can say that it is whole.',
      todo: 'It is for the engineer to judge before anything is left on it.',
    },
    cantTell: {
      title: "Can't tell whether the hidden flue to the {terminal} can be looked at",
      why: '{metres} m of it are hidden. Not known: {missing}.',
      todo: 'Draw the flue and its hatches, or say it on the terminal.',
    },
    pass: 'Every joint of a hidden flue can be looked at.',
  },
  examples: [
    { name: 'no hatch', given: () => hatched([]), expect: 'stop' },
    { name: 'a hatch by its bend', given: () => hatched([300]), expect: 'pass' },
    { name: 'a hatch too far off', given: () => hatched([3000]), expect: 'stop' },
    { name: 'a hatch too small', given: () => hatched([300], 200), expect: 'stop' },
    { name: 'where it runs is taken for granted', given: () => drawn(true), expect: 'check' },
    { name: 'a flue that was there before', given: () => drawn(false, null), expect: 'check' },
    { name: 'hidden without a joint', given: straight, expect: 'check' },
    { name: 'told on the terminal, not to be looked at', given: () => byFields(false), expect: 'stop' },
    { name: 'the same of an old one', given: () => byFields(false, null), expect: 'check' },
    { name: 'told on the terminal, to be looked at', given: () => byFields(true), expect: 'pass' },
    { name: 'nobody said', given: () => byFields(null), expect: 'cantTell' },
  ],
});

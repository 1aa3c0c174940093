import { figure, word } from '../../../reference/figure.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { type CondensateDrain, condensateDrains } from '../../drainage/condensate-drains.ts';
import { endFaults } from '../../drainage/condensate-end.ts';
import { isNew } from '../../drainage/drains.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayPoint, sayRun } from '../../say-names.ts';
import { intoPoint } from './houses.ts';

function judgeDrain(given: Given, drain: CondensateDrain): Fault[] {
  const last = drain.steps[drain.steps.length - 1];
  if (!isNew(drain) || !last) return [];
  const run = last.edge.run;
  const shared = { legs: [last.edge.id], at: atVertex(given.network, last.to) };
  const named = { run: sayRun(given.plan, run) };
  if (drain.end === null) {
    // An end that stands on something that is not a drain at all is told of by the network's own rules.
    const v = given.network.vertices.get(last.to);
    if (v?.point !== null || v.gone !== null || v.capped || v.edges.length > 1) return [];
    return [{ outcome: 'cantTell', say: 'open', ids: [run], words: named, missing: ['where it ends'], ...shared }];
  }
  const point = given.plan.points[drain.end.point];
  if (!point) return [];
  const wants = word('condensate-ends', point.kind, 'wants');
  return endFaults(given, point, last.b?.at ?? null).map((f) => ({
    outcome: f.outcome,
    say: f.say,
    ids: [run, point.id],
    words: {
      ...named,
      end: midSentence(sayPoint(given.plan, point.id)),
      wants: wants.is === 'known' ? wants.word : '',
      before:
        typeof point.fields.before === 'string' && point.fields.before !== ''
          ? point.fields.before
          : 'the floor is cast',
    },
    missing: f.missing,
    found: f.found ?? null,
    wanted: f.wanted ?? null,
    wantedIs: 'atLeast',
    ...shared,
    ...(wants.is === 'known'
      ? {
          cites: [{ source: wants.cite.source, clause: wants.cite.clause, table: wants.cite.table }],
          unverified: wants.sureness === 'memory',
        }
      : {}),
  }));
}

const soakaway = { fromWallMm: 1500, ground: 'free', chippings: true } as const;

export default defineRule({
  id: 'condensate/end',
  topic: 'drains',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'condensate-guide-2018', clause: 'where the pipe ends', table: 'condensate-ends' }],
  needs: ['where it ends', 'what the end drains to'],
  params: () => ({
    stack: figure('condensate-limits', 'above foot bend', 'mm'),
    soakaway: figure('condensate-limits', 'soakaway from foundations', 'mm'),
  }),
  judge: (given) => condensateDrains(given).flatMap((d) => judgeDrain(given, d)),
  say: {
    open: {
      title: '{run} ends nowhere yet',
      why: 'Condensate is acid and never stops while the boiler burns: it needs a drain of its own kind.',
      todo: 'Draw it on to a waste, a standpipe, a stack, a foul gully, or a pump.',
    },
    surface: {
      title: '{run} ends in surface water',
      why: 'The {end} carries rain to a stream or a soakaway, and condensate is acid.',
      todo: 'Take it to a foul drain.',
    },
    noAirBreak: {
      title: '{run} runs into the {end} without an air break',
      why: 'In heavy rain the pipe backs up, and the water comes out of the boiler.',
      todo: 'Make an outside air break before it.',
    },
    belowTrap: {
      title: '{run} joins the {end} below its trap',
      why: 'Drain air comes up through it, and the sink can push water back to the boiler.',
      todo: 'Take it in above the trap, or make an air break above the rim of the sink.',
    },
    untrapped: {
      title: '{run} ends in an untrapped gully',
      why: 'Drain air comes up the pipe when the seal of the boiler dries out.',
      todo: 'A trapped gully, or a trap before it.',
    },
    overGrating: {
      title: '{run} ends above the grating',
      why: 'Wind chills the open end, and it freezes shut there first.',
      todo: 'Take it below the grating and above the water, cut at 45.',
    },
    lowInStack: {
      title: '{run} enters the {end} too low',
      why: 'Near the bend at the foot the stack fills and pushes back.',
      todo: 'Set the boss higher, or take it to the drain by itself.',
    },
    clay: {
      title: '{run} ends in a soakaway in clay',
      why: 'Clay holds the water: it stands, freezes, and backs up to the boiler.',
      todo: 'Find another end, or have the soil tried and a larger pit agreed.',
    },
    nearWall: {
      title: '{run} ends in a soakaway beside the foundations',
      why: 'Acid water wears mortar and softens the ground a house stands on.',
      todo: 'Set it further out.',
    },
    bareSoakaway: {
      title: '{run} ends in a bare soakaway',
      why: 'Without limestone the acid goes into the ground, and the pit silts up.',
      todo: 'A drilled 100 tube in limestone chippings, its holes facing away from the house.',
    },
    toLay: {
      title: '{run} ends in a branch still to be laid',
      why: 'It has to be in the ground before {before}; afterwards the floor is broken up for it.',
      todo: 'Hold the work there until it is laid and seen.',
    },
    toLayWhen: {
      title: '{run} ends in a branch nobody has a day for',
      why: 'It has to be laid before {before}, and nothing says when that is or who sees to it.',
      todo: 'Set a hold point on the job: what, before which day, whose task.',
    },
    fault: {
      title: '{run} ends in the open',
      why: 'Condensate is acid: it stains and eats what it runs over, and freezes on a path.',
      todo: 'Take it to a drain.',
    },
    cantTell: {
      title: "Can't tell whether the {end} may take {run}",
      why: 'Not known: {missing}. It may where this holds: {wants}.',
      todo: 'Look on site, and set it on the {end}.',
    },
    pass: 'It ends where condensate may.',
  },
  examples: [
    { name: 'a standpipe', given: () => intoPoint('standpipe'), expect: 'pass' },
    { name: 'a sink waste above its trap', given: () => intoPoint('sink-waste', {}, 'condensate'), expect: 'pass' },
    {
      name: 'a sink waste below its trap',
      given: () => intoPoint('sink-waste', { aboveTrap: false, airBreak: false }, 'condensate'),
      expect: 'check',
    },
    {
      name: 'a sink waste below its trap, nobody told of a break',
      given: () => intoPoint('sink-waste', { aboveTrap: false }, 'condensate'),
      expect: 'cantTell',
    },
    {
      name: 'a foul gully',
      given: () => intoPoint('gully', { drains: 'foul', trapped: true }, 'condensate'),
      expect: 'pass',
    },
    {
      name: 'a surface-water gully',
      given: () => intoPoint('gully', { drains: 'surface' }, 'condensate'),
      expect: 'stop',
    },
    { name: 'a gully nobody tested', given: () => intoPoint('gully', {}, 'condensate'), expect: 'cantTell' },
    {
      name: 'an untrapped gully',
      given: () => intoPoint('gully', { drains: 'foul', trapped: false }, 'condensate'),
      expect: 'check',
    },
    {
      name: 'above the grating',
      given: () => intoPoint('gully', { drains: 'foul', trapped: true, belowGrating: false }, 'condensate'),
      expect: 'check',
    },
    { name: 'a stack well above its foot', given: () => intoPoint('soil-stack'), expect: 'pass' },
    {
      name: 'low in a stack',
      given: () => intoPoint('soil-stack', { aboveFootMm: 300 }),
      expect: 'stop',
      found: { lo: 300, hi: 300, tolerance: 0 },
      from: 'told on the stack',
    },
    {
      name: 'a stack that starts lower down',
      given: () => intoPoint('soil-stack', {}, 'in', -400),
      expect: 'cantTell',
    },
    {
      name: 'a rainwater pipe to a combined sewer, with a break',
      given: () => intoPoint('rainwater-pipe', { drains: 'foul', airBreak: true }),
      expect: 'pass',
    },
    {
      name: 'a rainwater pipe without a break',
      given: () => intoPoint('rainwater-pipe', { drains: 'foul', airBreak: false }),
      expect: 'stop',
    },
    {
      name: 'a rainwater pipe to surface water',
      given: () => intoPoint('rainwater-pipe', { drains: 'surface' }),
      expect: 'stop',
    },
    { name: 'a soakaway in good ground', given: () => intoPoint('soakaway', soakaway), expect: 'pass' },
    { name: 'a soakaway in clay', given: () => intoPoint('soakaway', { ...soakaway, ground: 'clay' }), expect: 'stop' },
    {
      name: 'clay told in words',
      given: () => intoPoint('soakaway', { ...soakaway, ground: null, soil: 'clay found at 300' }),
      expect: 'stop',
    },
    {
      name: 'a soakaway beside the wall',
      given: () => intoPoint('soakaway', { ...soakaway, fromWallMm: 300 }),
      expect: 'stop',
      found: { lo: 300, hi: 300, tolerance: 0 },
      from: 'told on the soakaway',
    },
    { name: 'a soakaway nobody dug', given: () => intoPoint('soakaway', { fromWallMm: 900 }), expect: 'cantTell' },
    {
      name: 'a pit without limestone',
      given: () => intoPoint('soakaway', { ...soakaway, chippings: false }),
      expect: 'check',
    },
    { name: 'a branch that is laid', given: () => intoPoint('condensate-drain', { laid: true }), expect: 'pass' },
    {
      name: 'a branch with its day',
      given: () => intoPoint('condensate-drain', { before: 'the pour on 3 June' }),
      expect: 'note',
    },
    { name: 'a branch with no day', given: () => intoPoint('condensate-drain'), expect: 'check' },
    { name: 'onto the ground', given: () => intoPoint('outside-end'), expect: 'stop' },
    {
      name: 'unfinished',
      given: () =>
        example()
          .point('boiler', 'b', [0, 0, 1300])
          .run('k', 'condensate', [{ point: 'b', connection: 'condensate' }, [156, -180, 800]], {
            kind: 'plastic-overflow',
            size: '21.5',
            joining: 'solvent',
          }).plan,
      expect: 'cantTell',
    },
  ],
});

import { defineRule, type Fault } from '../../define-rule.ts';
import { HIDDEN_BY_LESS_MM, numberOf, undrawn } from '../../flue/flue-routes.ts';
import { terminalsOf } from '../../flue/terminals.ts';
import type { Given } from '../../given.ts';
import { ACROSS_DEG } from '../../materials/sleeves.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayPoint, sayRun, sayWall } from '../../say-names.ts';
import { house } from './houses.ts';
import { rising } from './routes.ts';

/** Walls that part dwellings or hold back fire, with the new flues that go through them. */
function drawn(given: Given): Fault[] {
  return given.crossings.flatMap((c): Fault[] => {
    const wall = given.plan.walls[c.wall];
    if (c.pipe.edge.circuit !== 'flue' || c.opening !== null || c.angleDeg < ACROSS_DEG || !wall) return [];
    if (wall.party !== true && wall.fire !== true) return [];
    return [
      {
        outcome: 'stop',
        say: wall.party === true ? 'fault' : 'fire',
        ids: [c.pipe.run, c.wall],
        legs: [c.pipe.edge.id],
        words: { run: sayRun(given.plan, c.pipe.run), wall: midSentence(sayWall(given.plan, c.wall)) },
        at: atPlace(c.pipe.storey, c.at),
      },
    ];
  });
}

function told(given: Given): Fault[] {
  return terminalsOf(given).flatMap((t): Fault[] => {
    const { throughOtherDwelling: through, hiddenLengthM } = t.point.fields;
    const words = { terminal: midSentence(sayPoint(given.plan, t.point.id)) };
    const shared = { ids: [t.point.id], words, at: atPlace(t.point.storey, t.at) };
    if (through === true)
      return [{ outcome: t.isNew ? 'stop' : 'check', say: t.isNew ? 'told' : 'toldOld', ...shared }];
    const hiddenMm = (numberOf(hiddenLengthM) ?? 0) * 1000;
    if (through === false || !t.isNew || hiddenMm < HIDDEN_BY_LESS_MM || !undrawn(given, t.point.id)) return [];
    return [{ outcome: 'cantTell', ...shared, missing: ['whether the hidden part runs through another dwelling'] }];
  });
}

const through = (change: { party?: boolean; fire?: boolean }) =>
  rising(220).wall('p', [2000, -1000], [2000, 1000], { ...change, heightMm: 3000 }).plan;
const byField = (throughOtherDwelling: boolean | null, option: string | null = 'A') =>
  house().point('flue-terminal', 't', [3000, 0, 2200], { throughOtherDwelling, hiddenLengthM: 2 }, option).plan;

export default defineRule({
  id: 'flue/through-dwelling',
  topic: 'flue',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'approved-document-j', clause: '1.47', table: 'flue-hidden' }],
  needs: ['which walls part dwellings', 'where a hidden flue runs'],
  params: () => ({}),
  judge: (given) => [...drawn(given), ...told(given)],
  say: {
    fault: {
      title: '{run} goes through the {wall} to another dwelling',
      why: 'Nobody here can look at it there, and whoever drills or builds there does not know of it.',
      todo: 'Take a way that stays in this dwelling and outside.',
    },
    fire: {
      title: '{run} goes through the {wall} that holds back fire',
      why: 'A flue passes fire and smoke from one part of the building to the other.',
      todo: 'Take another way, or ask building control how that wall may be passed.',
    },
    told: {
      title: 'The flue to the {terminal} runs through another dwelling',
      why: 'Nobody here can look at it there, and whoever drills or builds there does not know of it.',
      todo: 'Take a way that stays in this dwelling and outside.',
    },
    toldOld: {
      title: 'The old flue to the {terminal} runs through another dwelling',
      why: 'Nobody here can look at it there.',
      todo: 'It is for the engineer to judge before anything is left on it.',
    },
    cantTell: {
      title: "Can't tell whether the flue to the {terminal} stays in this dwelling",
      why: 'Not known: {missing}.',
      todo: 'Draw the flue, or say it on the terminal.',
    },
    pass: 'Every flue stays in its own dwelling.',
  },
  examples: [
    { name: 'through a wall shared with another dwelling', given: () => through({ party: true }), expect: 'stop' },
    { name: 'through a wall that holds back fire', given: () => through({ fire: true }), expect: 'stop' },
    { name: 'through a partition', given: () => through({}), expect: 'pass' },
    { name: 'told on the terminal', given: () => byField(true), expect: 'stop' },
    { name: 'told of an old one', given: () => byField(true, null), expect: 'check' },
    { name: 'told not to', given: () => byField(false), expect: 'pass' },
    { name: 'hidden, and nobody said', given: () => byField(null), expect: 'cantTell' },
  ],
});

import type { Figure } from '../../../reference/figure.ts';
import { sayFigures } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayOpening, sayPoint } from '../../say-names.ts';
import { generalRoom, roomRound, SAY_SIDE, shortBy, stateOf } from '../../space/clear-space.ts';
import { swingsAt } from '../../space/door-swing.ts';
import { isCupboard } from '../../space/room-kinds.ts';
import { newBoilers, type Sited } from '../../space/sited.ts';
import { cupboard, doorInto, inRoom } from './houses.ts';

type Params = { readonly front: Figure; readonly sides: Figure; readonly above: Figure; readonly below: Figure };

function ofBoiler(given: Given, boiler: Sited, front: Figure): Fault[] {
  const round = roomRound(given, boiler);
  if (!round) return [];
  const { point, body, room } = boiler;
  const name = sayPoint(given.plan, point.id);
  const at = atPlace(point.storey, body.frame.origin);
  const short = round.sides.filter((s) => shortBy(s) > 0);
  const struck = swingsAt(given, boiler, front.is === 'known' ? front.lo : 0).find((s) => s.strikes);
  const shared = { ids: [point.id], at, more: Math.max(0, short.length - 1) };
  if (struck && !short.some((s) => stateOf(s) === 'stop')) {
    const door = midSentence(sayOpening(given.plan, struck.door.id));
    return [{ outcome: 'check', say: 'swing', ...shared, more: short.length, words: { name, door } }];
  }
  const worst = [...short].sort(
    (a, b) => Number(stateOf(b) === 'stop') - Number(stateOf(a) === 'stop') || shortBy(b) - shortBy(a),
  )[0];
  if (!worst) return [];
  // Shut in on its front by walls alone: a cupboard whose door was not drawn.
  const shutIn = worst.id === 'front' && room !== null && isCupboard(room) && worst.by?.is === 'wall';
  if (shutIn && !round.obstacles.some((o) => o.is === 'door')) {
    return [
      { outcome: 'cantTell', ...shared, more: 0, words: { name }, missing: ['the door or panel it is reached by'] },
    ];
  }
  const state = stateOf(worst);
  return [
    {
      outcome: state === 'stop' ? 'stop' : 'check',
      say: worst.fromSheet ? 'fault' : 'general',
      ...shared,
      words: {
        name,
        side: SAY_SIDE[worst.id],
        found: sayFigures(worst.found),
        wanted: worst.wanted ? sayFigures(worst.wanted) : '',
        by: worst.by?.say ?? 'what is there',
      },
      found: worst.found,
      wanted: worst.wanted,
      wantedIs: 'atLeast',
      unverified: false,
    },
  ];
}

export default defineRule<Params>({
  id: 'space/working-room',
  topic: 'space',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'room to fit and look after a boiler', table: 'working-room' }],
  needs: ['walls round it', 'the door it is reached by'],
  params: () => ({
    front: generalRoom('front'),
    sides: generalRoom('left'),
    above: generalRoom('above'),
    below: generalRoom('below'),
  }),
  judge: (given, { front }) => newBoilers(given).flatMap((b) => ofBoiler(given, b, front)),
  say: {
    fault: {
      title: '{name}: {found} mm {side}, and its sheet wants {wanted}',
      why: 'It stands too near {by}: it cannot be fitted or opened as its maker asks, and a service may be refused.',
      todo: 'Move it, or show on its sheet that less will do.',
    },
    general: {
      title: '{name}: {found} mm {side}, and {wanted} is usual',
      why: 'It stands near {by}. Its own sheet says what it needs to be fitted, opened and serviced, and was not read.',
      todo: 'Read its sheet and put its figures on the boiler, or move it.',
    },
    swing: {
      title: '{name} stands where the {door} swings',
      why: 'The leaf strikes the case, and nobody can work there while it is open.',
      todo: 'Hang the door the other way, or move one of the two.',
    },
    cantTell: {
      title: "Can't tell whether {name} can be reached from its front",
      why: 'Walls stand close in front of it and no door is drawn. Not known: {missing}.',
      todo: 'Draw the door or panel of the cupboard.',
    },
    pass: 'There is room round it, as far as the drawing knows.',
  },
  examples: [
    { name: 'on a wall with room all round', given: () => inRoom({}), expect: 'pass' },
    {
      name: 'closer to the corner than its sheet allows',
      given: () => inRoom({ clearSidesMm: 60 }, 250),
      expect: 'stop',
      found: { lo: 50, hi: 50, tolerance: 0.01 },
      from: 'middle 250 from the corner, half its width 200',
    },
    {
      name: 'hard in the corner, sheet not read',
      given: () => inRoom({}, 202),
      expect: 'check',
      found: { lo: 2, hi: 2, tolerance: 0.01 },
      from: 'middle 202 from the corner, half its width 200',
    },
    { name: 'in a cupboard with its door across it', given: () => cupboard(true), expect: 'pass' },
    { name: 'in a cupboard with no door drawn', given: () => cupboard(false), expect: 'cantTell' },
    { name: 'where a door swings', given: doorInto, expect: 'check' },
    {
      name: 'too near the ceiling by its sheet',
      given: () => inRoom({ clearAboveMm: 450 }),
      expect: 'stop',
      found: { lo: 400, hi: 400, tolerance: 0.01 },
      from: 'ceiling 2400, top of the case 1300 and 700',
    },
  ],
});

import type { Point } from '../../plan/records/pipework.ts';
import { exact, sayFigures } from '../../report/quantity.ts';
import type { Row, State } from '../../report/section.ts';
import type { Given } from '../given.ts';
import { midSentence, sayOpening, sayPoint, sentence } from '../say-names.ts';
import { type RoomRound, roomRound, SAY_SIDE, type Side, shortBy, stateOf } from '../space/clear-space.ts';
import { swingsAt } from '../space/door-swing.ts';
import { isLoft } from '../space/room-kinds.ts';
import { isNewPoint, type Sited, site, standing } from '../space/sited.ts';
import { fact } from '../tests-due/row-makers.ts';

/** Vessels this job sets that somebody must get at. */
const VESSELS = ['cylinder', 'preheat-vessel'];

export const newVessels = (given: Given): Sited[] =>
  VESSELS.flatMap((kind) => standing(given, kind))
    .filter((p) => isNewPoint(given, p))
    .flatMap((p) => site(given, p) ?? []);

const clearSay = (side: Side): string => {
  const far = side.found.hi === null ? `more than ${side.found.lo.toFixed(0)}` : sayFigures(side.found);
  return side.by ? `${far} to ${side.by.say}` : far;
};

function sideRow(side: Side, ids: readonly string[]): Row {
  const label = sentence(SAY_SIDE[side.id]);
  const { wanted } = side;
  const want = wanted ? `${sayFigures(wanted)} wanted${side.fromSheet ? ' by its sheet' : ', usual'}` : 'no figure';
  return { kind: 'verdict', label, state: stateOf(side), say: `${clearSay(side)}; ${want}`, ids };
}

/** Weight of a thing as a task for somebody; asked where its sheet was not read. */
function weightRow({ fields }: Point, ids: readonly string[]): Row {
  const kg = [fields.liftKg, fields.emptyKg].find((n): n is number => typeof n === 'number');
  const full = typeof fields.fullKg === 'number' ? `; ${fields.fullKg} kg full, on the floor under it` : '';
  if (kg === undefined) return fact('To lift', null, 'not told: read its sheet and plan who lifts', ids);
  return fact('To lift', exact(kg, 'kg', 0, 'page'), `plan who lifts and by which way it comes in${full}`, ids);
}

const HATCH = [
  ['ladder', 'fixed ladder'],
  ['guard', 'guard round the hatch'],
  ['light', 'fixed light'],
  ['boarded', 'boards to it and round it'],
] as const;

function loftRows(given: Given, { room }: Sited, ids: readonly string[]): Row[] {
  if (!room || !isLoft(room)) return [];
  const hatch = standing(given, 'hatch').find((h) => h.fields.leadsTo === 'loft');
  return HATCH.map(([key, say]): Row => {
    const told = hatch?.fields[key];
    const state: State = told === true ? 'pass' : told === false ? 'check' : 'cantTell';
    const word = told === true ? 'there' : told === false ? 'not there' : 'not told';
    return { kind: 'verdict', label: sentence(say), state, say: word, ids: hatch ? [...ids, hatch.id] : ids };
  });
}

function swingRows(given: Given, { boiler, sides }: RoomRound, ids: readonly string[]): Row[] {
  const front = sides.find((s) => s.id === 'front')?.wanted?.lo ?? 0;
  return swingsAt(given, boiler, front).map(({ door, strikes }): Row => {
    const say = strikes ? 'strikes the case' : 'goes through the room in front; it can be worked at with the door shut';
    const label = sentence(midSentence(sayOpening(given.plan, door.id)));
    return { kind: 'verdict', label, state: strikes ? 'check' : 'none', say, ids: [...ids, door.id] };
  });
}

const headed = (given: Given, { point, room }: Sited): Row => ({
  kind: 'heading',
  label: sentence(sayPoint(given.plan, point.id)),
  say: room ? `in the ${midSentence(room.name || room.use)}` : '',
  ids: [point.id],
});

export interface Room {
  readonly rows: readonly Row[];
  /** Sides held against something. */
  readonly sides: readonly Side[];
}

/** A new boiler: every side found and wanted, doors, the way up to it and its weight. */
export function boilerRoom(given: Given, boiler: Sited): Room {
  const ids = [boiler.point.id];
  const round = roomRound(given, boiler);
  const rest = [...loftRows(given, boiler, ids), weightRow(boiler.point, ids)];
  if (!round) {
    const say = 'no walls are closed round it, so nothing is measured';
    return { rows: [headed(given, boiler), { kind: 'assumed', say, ids }, ...rest], sides: [] };
  }
  const sides = round.sides.map((s) => sideRow(s, ids));
  return { rows: [headed(given, boiler), ...sides, ...swingRows(given, round, ids), ...rest], sides: round.sides };
}

/** A new vessel: what is clear, held against nothing since its sheet has no fields for it, and its weight. */
export function vesselRows(given: Given, vessel: Sited): Row[] {
  const ids = [vessel.point.id];
  const found = (roomRound(given, vessel)?.sides ?? [])
    .filter((s) => s.id === 'front' || s.id === 'above')
    .map((s): Row => fact(sentence(SAY_SIDE[s.id]), null, clearSay(s), ids));
  return [headed(given, vessel), ...found, weightRow(vessel.point, ids)];
}

/** "20 short in front", else the side with least to spare. */
export function roomAnswer(sides: readonly Side[]): string {
  const held = sides.filter((s) => s.wanted !== null).sort((a, b) => shortBy(b) - shortBy(a));
  const [worst] = held;
  if (!worst?.wanted) return '';
  const short = shortBy(worst);
  return short > 0 ? `${Math.ceil(short)} mm short ${SAY_SIDE[worst.id]}` : 'room all round';
}

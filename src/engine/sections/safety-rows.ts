import { figure } from '../../reference/figure.ts';
import { sayFigures } from '../../report/quantity.ts';
import type { Row, State } from '../../report/section.ts';
import type { Given } from '../given.ts';
import { midSentence, sayPoint, sentence } from '../say-names.ts';
import { SAY_ALARM, type Watched } from '../space/alarm-place.ts';
import type { Bond } from '../space/bonds.ts';
import { cableMetres, nearestOf } from '../space/cable-way.ts';
import type { EmergencyControl } from '../space/emergency-control.ts';
import { site } from '../space/sited.ts';
import { fact } from '../tests-due/row-makers.ts';

const verdict = (label: string, state: State, say: string, ids: readonly string[]): Row => ({
  kind: 'verdict',
  label,
  state,
  say,
  ids,
});
const heading = (label: string, say: string, ids: readonly string[]): Row => ({ kind: 'heading', label, say, ids });

const WHERE: Readonly<Record<Watched['is'], readonly [State, string]>> = {
  none: ['check', 'none drawn; one belongs in the same room'],
  elsewhere: ['check', 'drawn in another room'],
  unclear: ['cantTell', 'no walls close the room of both'],
  here: ['pass', 'in the same room'],
};

/** The alarm of one new appliance with every distance it is held against. */
export function alarmRows(given: Given, w: Watched): Row[] {
  const ids = [w.appliance.point.id, ...(w.alarm ? [w.alarm.point.id] : [])];
  const [state, say] = WHERE[w.is];
  const rows = w.distances.map((d): Row => {
    const low = d.ask === 'heads' && (d.found.hi ?? d.found.lo) < 0;
    if (low) return verdict('Against the tops of doors and windows', 'check', 'lower than the highest of them', ids);
    const wanted = `${d.wantedIs === 'atLeast' ? 'at least' : 'at most'} ${sayFigures(d.wanted)}`;
    return verdict(sentence(SAY_ALARM[d.ask]), d.ok ? 'pass' : 'check', `${sayFigures(d.found)}, ${wanted}`, ids);
  });
  const name = midSentence(sayPoint(given.plan, w.appliance.point.id));
  return [heading('Carbon monoxide alarm', `for the ${name}`, ids), verdict('Alarm', state, say, ids), ...rows];
}

const FROM = { outlet: 'from the outlet', entry: 'from where it comes in' } as const;
const TOLD = {
  missing: ['check', 'looked for, not there'],
  notNeeded: ['pass', 'not needed, by an electrician'],
} as const;

function clampRows(bond: Bond, ids: readonly string[]): Row[] {
  const [conductor, most] = [figure('bonding', 'conductor', 'mm2'), figure('bonding', 'from meter', 'mm')];
  if (conductor.is !== 'known' || most.is !== 'known') return [];
  const { along, beforeBranch: first } = bond;
  const size = bond.conductor;
  const sizeState: State = !size ? 'cantTell' : size.lo < conductor.lo ? 'check' : 'pass';
  const sizeSay = `${size ? `${sayFigures(size)} mm²` : 'not read'}; ${conductor.lo} usual, from memory`;
  const alongState: State = !along ? 'cantTell' : along.lo > most.lo ? 'check' : 'pass';
  const alongSay = along ? `${sayFigures(along)} ${FROM[bond.from]}, at most ${most.lo}` : 'it lies on no pipe drawn';
  const branch: State = first === null ? 'none' : first ? 'pass' : 'check';
  return [
    verdict('Cable', sizeState, sizeSay, ids),
    verdict('Along the pipe', alongState, alongSay, ids),
    verdict('Before any branch', branch, first === null ? 'not told' : first ? 'yes' : 'no', ids),
  ];
}

/** Main bonding of one service, and the cable it takes to the consumer unit. */
export function bondRows(given: Given, bond: Bond): Row[] {
  const ids = [bond.source.id, ...(bond.clamp ? [bond.clamp.id] : [])];
  const head = heading(`Main bonding, ${bond.service}`, midSentence(sayPoint(given.plan, bond.source.id)), ids);
  const at = site(given, bond.clamp ?? bond.source);
  const unit = at && nearestOf(given, 'consumer-unit', at);
  const cable =
    at && unit ? [fact('Cable to the consumer unit', cableMetres(at, unit), 'square to the house', ids)] : [];
  if (bond.clamp) return [head, ...clampRows(bond, ids), ...cable];
  const plastic = bond.source.fields.incoming === 'plastic';
  const untold: readonly [State, string] = plastic
    ? ['none', 'none drawn; comes in as plastic, an electrician decides']
    : [bond.touched ? 'cantTell' : 'none', 'none drawn'];
  const [state, say] = bond.told ? TOLD[bond.told] : untold;
  return [head, verdict('Clamp', state, say, ids), ...(bond.told === 'notNeeded' ? [] : cable)];
}

const yesNo = (told: boolean | null): string => (told === null ? 'not told' : told ? 'yes' : 'no');
const stateOf = (told: boolean | null, bad: State): State => (told === null ? 'none' : told ? 'pass' : bad);

/** The emergency control of one meter: how it is got at, and what was found. */
export function controlRows(given: Given, c: EmergencyControl): Row[] {
  const ids = [c.meter.point.id];
  const { front, high } = c;
  const clear = front && `${front.found.hi === null ? 'more than ' : ''}${front.found.lo.toFixed(0)}`;
  return [
    heading('Emergency control', midSentence(sayPoint(given.plan, c.meter.point.id)), ids),
    verdict('In reach', stateOf(c.reached, 'check'), yesNo(c.reached), ids),
    verdict('Turns by hand', stateOf(c.turns, 'stop'), yesNo(c.turns), ids),
    ...(high ? [fact('Above the floor', high, '', ids)] : []),
    ...(clear ? [fact('Clear in front', null, `${clear}${front.by ? ` to ${front.by.say}` : ''}`, ids)] : []),
  ];
}

import { constant } from '../../reference/figure.ts';
import type { Given } from '../given.ts';
import type { Assessed, StateFound } from '../preheat/assess.ts';
import { hotShare } from '../preheat/blend.ts';
import { showerC } from '../preheat/temperatures.ts';
import type { Between } from '../preheat/trace-state.ts';
import { midSentence, sayAll, sayPoint } from '../say-names.ts';

const named = (given: Given, id: string): string => midSentence(sayPoint(given.plan, id));
export const degrees = ({ lo, hi }: Between): string =>
  Math.round(lo) === Math.round(hi) ? `${Math.round(hi)} °C` : `${Math.round(lo)} to ${Math.round(hi)} °C`;

const LABEL = { high: 'At its high limit', hot: 'Hot', lukewarm: 'Lukewarm', cold: 'Cold' } as const;
export const stateLabel = ({ id, vessel }: StateFound): string => `${LABEL[id]}, ${vessel.c} °C`;

function between(given: Given, { preheat }: Assessed, { trace, vessel }: StateFound): string {
  const { heater, valves } = preheat;
  if (!heater) return '';
  const name = named(given, heater.id);
  if (trace.inletC === null) return `The ${named(given, valves[0]?.id ?? '')} sends it past the ${name}.`;
  const valve = valves.find((v) => v.kind === 'mixing-valve');
  const cools = valve && Math.round(trace.inletC.hi) < Math.round(vessel.c);
  const by = cools ? `, blended down by the ${named(given, valve.id)}` : '';
  const either =
    trace.goes === 'either'
      ? `, or past it: nobody told what the ${named(given, valves.find((v) => v.kind === 'diverting-valve')?.id ?? '')} is set to`
      : '';
  return `To the ${name} at ${degrees(trace.inletC)}${by}${either}.`;
}

function heating({ preheat, set }: Assessed, { trace }: StateFound): string {
  const { heater } = preheat;
  if (!heater || !set || trace.inletC === null) return '';
  if (trace.inletC.lo >= set.c)
    return heater.kind === 'boiler' ? 'The burner has nothing to add.' : 'Its coil has nothing to add.';
  return `${heater.kind === 'boiler' ? 'The burner' : 'Its coil'} heats it to ${set.c} °C.`;
}

/** What whoever stands there gets: how hot the hot port is, what a mixer makes of it, and what it does when the mixer fails. */
function atShower(given: Given, { preheat, cold }: Assessed, { trace }: StateFound): string {
  const { outlets, outletValve } = preheat;
  const [first] = outlets;
  if (!first) return 'No outlet behind it is drawn.';
  const name = named(given, first.point.id);
  const blended = outletValve ? ` behind the ${named(given, outletValve.id)}` : '';
  const port = `The ${name}${blended} gets ${degrees(trace.outletC)}`;
  if (first.balance.is === 'afterHeater') return `${port}, and its cold is as warm: nothing there can mix it down.`;
  const want = showerC();
  const share = hotShare(want, trace.outletC.hi, cold.c);
  if (share === null) return `${port}: no warmer than a shower wants it.`;
  const parts = `, ${Math.round(share * 100)} % hot to ${100 - Math.round(share * 100)} % cold at ${want} °C`;
  const hot = trace.outletC.hi > constant('preheat-limits', 'blended to');
  const scald = !hot
    ? ''
    : first.point.fields.thermostatic === true
      ? ' It scalds if its valve sticks or the cold fails.'
      : ' It scalds if turned to hot, or if the cold fails.';
  return `${port}${parts}.${scald}`;
}

export const stateWords = (given: Given, a: Assessed, state: StateFound): string =>
  [between(given, a, state), heating(a, state), atShower(given, a, state)].filter((s) => s !== '').join(' ');

/** Which cold is mixed in, and from where. */
export function coldWords(given: Given, { preheat }: Assessed): string | null {
  const sides = preheat.outlets.filter((m) => m.point.kind !== 'sink-taps');
  const of = (is: string) => sides.filter((m) => m.balance.is === is).map((m) => named(given, m.point.id));
  const parts = [
    of('balanced').length > 0
      ? `balanced at the ${sayAll(of('balanced'))}: it comes off before the ${named(given, preheat.vessel.id)} and stays cold in every state`
      : '',
    of('unlike').length > 0 ? `of another pressure at the ${sayAll(of('unlike'))}` : '',
    of('afterHeater').length > 0 ? `taken off after the heat at the ${sayAll(of('afterHeater'))}` : '',
    of('unseen').length > 0 ? `not drawn back at the ${sayAll(of('unseen'))}` : '',
  ].filter((p) => p !== '');
  return parts.length === 0 ? null : `${parts.join('; ')}.`;
}

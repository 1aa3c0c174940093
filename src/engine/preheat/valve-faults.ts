import type { Point } from '../../plan/records/pipework.ts';
import type { Given } from '../given.ts';
import { mixersOf } from '../supply/mixers.ts';
import type { Way } from '../supply/way-back.ts';

/** What is wrong with a mixing valve, and what nobody told of it; each in words that follow "the mixing valve". */
export interface ValveFaults {
  readonly bad: readonly string[];
  readonly untold: readonly string[];
  /** Bad enough that the hot would come through unmixed. */
  readonly letsHotBy: boolean;
}

/** A check valve in the last pipe of a way: after whatever it went through before. */
function checkIn(way: Way): boolean {
  const last = way.steps.slice(way.steps.findLastIndex((s) => s.is === 'point') + 1);
  return last.some((s) => s.is === 'item' && (s.item.kind === 'check-valve' || s.item.kind === 'double-check'));
}

export function valveFaults(given: Given, valve: Point): ValveFaults {
  const mixer = mixersOf(given).find((m) => m.point.id === valve.id);
  const bad: string[] = [];
  const untold: string[] = [];
  const noCold = !mixer || mixer.cold.steps.length === 0;
  const warmCold = mixer?.balance.is === 'afterHeater';
  if (noCold) bad.push('has no cold');
  else if (warmCold) bad.push('takes its cold from behind the vessel');
  else if (mixer.balance.is === 'unlike') bad.push('takes its cold from another pressure');
  else if (mixer.balance.is === 'unseen') untold.push('where the cold of the mixing valve comes from');
  if (valve.fields.failsShut === false) bad.push('does not shut when the cold fails');
  else if (valve.fields.failsShut !== true) untold.push('whether the mixing valve shuts when the cold fails');
  const checked = valve.fields.hasChecks === true || (mixer && checkIn(mixer.hot) && checkIn(mixer.cold));
  if (valve.fields.hasChecks === false && !checked) bad.push('has no check valves in its inlets');
  else if (!checked) untold.push('whether the mixing valve has check valves in its inlets');
  return { bad, untold, letsHotBy: noCold || warmCold || valve.fields.failsShut === false };
}

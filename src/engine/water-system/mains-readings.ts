import { readingOf } from '../../catalogue/reading-kinds.ts';
import { pointFrame } from '../../geometry/hosting.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { Given } from '../given.ts';
import { midSentence, sayPoint } from '../say-names.ts';
import { KPA_A_BAR } from '../water/height.ts';
import { isCurve, type MainsReadings } from '../water/mains-curve.ts';

/** What was measured of the mains, and where. */
export interface Mains {
  readonly standingKpa: number | null;
  readonly flowingKpa: number | null;
  /** litres a minute. */
  readonly flow: number | null;
  /** All three, and they make sense together. */
  readonly curve: MainsReadings | null;
  /** Height it was read at, mm above the datum; null where that is not known. */
  readonly z: number | null;
  readonly where: string;
  readonly stopTap: Point | null;
  readonly isRead: boolean;
}

const numberOf = (field: Point['fields'][string] | undefined): number | null =>
  typeof field === 'number' ? field : null;

function work(given: Given): Mains {
  const { plan, network } = given;
  const stopTap = Object.values(plan.points).find((p) => p.kind === 'stop-tap' && network.alive.has('points', p.id));
  const read = (
    kind: string,
    field: string,
  ): { readonly value: number | null; readonly point: string | null; readonly place?: string } => {
    const reading = readingOf(plan, kind);
    if (reading) return { value: reading.value, point: reading.point ?? null, place: reading.place };
    return { value: numberOf(stopTap?.fields[field]), point: stopTap?.id ?? null };
  };
  const [standing, flowing, flow] = [
    read('mains-standing', 'standingBar'),
    read('mains-flowing', 'workingBar'),
    read('mains-flow', 'flowLPerMin'),
  ];
  const kpa = (bar: number | null): number | null => (bar === null ? null : bar * KPA_A_BAR);
  const [standingKpa, flowingKpa] = [kpa(standing.value), kpa(flowing.value)];
  const curve =
    standingKpa === null || flowingKpa === null || flow.value === null
      ? null
      : { standingKpa, flowingKpa, flow: flow.value };
  const at = plan.points[flowing.point ?? flow.point ?? standing.point ?? ''] ?? stopTap;
  const place = [flowing, flow, standing].find((r) => r.point === null && r.place)?.place;
  const frame = at && pointFrame(plan, at);
  return {
    standingKpa,
    flowingKpa,
    flow: flow.value,
    curve: curve && isCurve(curve) ? curve : null,
    z: frame ? (frame.zLo + frame.zHi) / 2 : null,
    where: place
      ? `the ${midSentence(place)}`
      : at
        ? `the ${midSentence(sayPoint(plan, at.id))}`
        : 'a place nobody told',
    stopTap: stopTap ?? null,
    isRead: standingKpa !== null || flowingKpa !== null || flow.value !== null,
  };
}

const known = new WeakMap<Given, Mains>();

/** The last readings of the mains, or what stands at the stop tap. Worked out once for each plan and case. */
export function mainsOf(given: Given): Mains {
  const found = known.get(given) ?? work(given);
  known.set(given, found);
  return found;
}

import { rememberWhile } from '../../geometry/remember.ts';
import { roomAt } from '../../geometry/rooms.ts';
import { standsOn } from '../building/stands-on.ts';
import { standingBuilding } from '../clearance/crossings.ts';
import type { Given } from '../given.ts';
import { aboveRoof } from './above-roof.ts';
import { below } from './below.ts';
import type { Candidate } from './candidate.ts';
import { cornersNear } from './corners-near.ts';
import { edgesNear, terminalsNear, underCarPort } from './edges-near.ts';
import { byState, type Judged, judge } from './judge-distance.ts';
import { openingsNear } from './openings-near.ts';
import { boundariesNear, wallFaced } from './surfaces-near.ts';
import { type Terminal, terminalsOf } from './terminals.ts';

/** A terminal with everything near it, worst first. */
export interface TerminalDistances {
  readonly terminal: Terminal;
  readonly distances: readonly Judged[];
  /** Above what lies beneath it, mm; null where nobody told. */
  readonly above: Judged | null;
  /** The room its mouth stands in, or "" for a closed space without a name; null outdoors. */
  readonly indoors: readonly string[] | null;
  readonly missing: readonly string[];
}

function candidates(given: Given, t: Terminal, all: readonly Terminal[]): Candidate[] {
  if (t.upright) return aboveRoof(given, t, all);
  const openings = openingsNear(given, t);
  return [
    ...openings,
    ...underCarPort(given, t, openings),
    ...edgesNear(given, t),
    ...terminalsNear(given, t, all),
    ...cornersNear(given, t),
    ...boundariesNear(given, t),
    ...wallFaced(given, t),
    ...below(given, t).slice(0, 1),
  ];
}

function indoors(given: Given, t: Terminal): readonly string[] | null {
  if (t.upright) return null;
  const mouth = t.house({ x: 0, y: t.body.maxY, z: 0 });
  return roomAt(given.plan, t.point.storey, mouth, standingBuilding(given.network))?.rooms ?? null;
}

function ofTerminal(given: Given, t: Terminal, all: readonly Terminal[]): TerminalDistances {
  const distances = candidates(given, t, all)
    .map((c) => judge(given, t, c))
    .sort(byState);
  const above = distances.find((d) => d.row === 'above-ground' || d.row === 'above-roof') ?? null;
  const missing = [
    ...(above ? [] : [t.upright ? 'the roof it goes through' : 'how high it is above the ground outside']),
    ...distances.flatMap((d) => (d.missing === null ? [] : [d.missing])),
  ];
  return { terminal: t, distances, above, indoors: indoors(given, t), missing: [...new Set(missing)] };
}

interface Asked {
  readonly given: Given;
  readonly all: readonly Terminal[];
}

/** A drawn flue says only which appliance its terminal is of; no other pipe is asked. */
const asked = rememberWhile(
  ({ given, all }: Asked) => [...standsOn(given), ...all.map((t) => t.appliance?.id)],
  ({ given, all }): readonly TerminalDistances[] => all.map((t) => ofTerminal(given, t, all)),
);

const known = new WeakMap<Given, readonly TerminalDistances[]>();

/** Every terminal that stands in the case with its distances, once. */
export function terminalDistances(given: Given): readonly TerminalDistances[] {
  const before = known.get(given);
  if (before) return before;
  const made = asked({ given, all: terminalsOf(given) });
  known.set(given, made);
  return made;
}

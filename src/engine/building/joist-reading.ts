import { constant, figure } from '../../reference/figure.ts';
import type { Table } from '../../reference/schema/table-schema.ts';
import { edition } from '../../reference/tables.ts';
import type { Given } from '../given.ts';
import { type CutOnJoist, spacingFault } from '../structure/cut-spacing.ts';
import { type JoistFault, joistFaults } from '../structure/joist-faults.ts';
import { type CutLimits, cutLimits } from '../structure/joist-limits.ts';
import type { JoistMeeting } from './joist-cuts.ts';

/** The edition of notches and holes the plan has pinned; undefined where it is not here. */
export const joistTable = (given: Given): Table | undefined => edition('joist-limits', given.plan.basis.editions);

export function limitsAt(table: Table, m: JoistMeeting): { readonly hole: CutLimits; readonly notch: CutLimits } {
  const { spanMm } = m.met;
  return {
    hole: cutLimits(table, 'hole', spanMm, m.joists.depthMm),
    notch: cutLimits(table, 'notch', spanMm, m.joists.depthMm),
  };
}

export interface FaultAt {
  readonly fault: JoistFault;
  readonly meeting: JoistMeeting;
  /** The run of the other cut, where the fault lies between two. */
  readonly other: string | null;
}

const RULES = {
  shallowMm: constant('joist-general', 'shallow', 'mm'),
  deepMm: constant('joist-general', 'deep', 'mm'),
  flangeMm: constant('joist-judgement', 'flange', 'mm'),
  offCentreShare: constant('joist-judgement', 'off centre', 'share'),
};
const HOLE_TO_NOTCH_MM = constant('joist-general', 'hole to notch', 'mm');

/** As a cut of solid timber with a known size; null for anything else. */
export function solidCut(m: JoistMeeting): CutOnJoist | null {
  const { reading } = m;
  if (m.joists.kind !== 'solid' || reading === null || reading === 'lengthwise' || reading.as === 'clear') return null;
  if (reading.as === 'hole') {
    if (reading.mm === null) return null;
    return { as: 'hole', alongMm: m.alongMm, lo: reading.mm.lo, hi: reading.mm.hi ?? reading.mm.lo };
  }
  // A notch is as wide as its pipe; how deep it is does not matter along the joist.
  const wide = m.odMm ?? 0;
  return { as: 'notch', alongMm: m.alongMm, lo: wide, hi: wide };
}

function faultsAlone(table: Table, m: JoistMeeting): FaultAt[] {
  const { hole, notch } = limitsAt(table, m);
  return joistFaults({
    kind: m.joists.kind,
    reading: m.reading,
    aboveBottomMm: m.met.aboveBottomMm,
    odMm: m.odMm,
    depthMm: m.joists.depthMm,
    toNearEndMm: m.met.toNearEndMm,
    endsTold: m.met.ends !== 'outline',
    mayBeCut: m.space.mayBeCut,
    what: m.met.what,
    hole,
    notch,
    ...RULES,
  }).map((fault) => ({ fault, meeting: m, other: null }));
}

/** Cuts of each joist, in order along it. */
export function byJoist(meetings: readonly JoistMeeting[]): JoistMeeting[][] {
  const joists = new Map<string, JoistMeeting[]>();
  for (const m of meetings) {
    const key = `${m.space.id}|${m.met.index}`;
    const list = joists.get(key);
    if (list) list.push(m);
    else joists.set(key, [m]);
  }
  return [...joists.values()].map((list) => list.sort((a, b) => a.alongMm - b.alongMm || (a.run < b.run ? -1 : 1)));
}

/** Neighbours along one joist; told of the run that comes later by id, so that it is told once. */
function faultsBetween(table: Table, cuts: readonly JoistMeeting[]): FaultAt[] {
  const apart = figure(table, 'hole', 'apart');
  const diameters = apart.is === 'known' ? apart.lo : null;
  const solid = cuts.flatMap((m) => {
    const cut = solidCut(m);
    return cut ? [{ m, cut }] : [];
  });
  return solid.slice(1).flatMap(({ m, cut }, i): FaultAt[] => {
    const before = solid[i];
    if (!before) return [];
    const fault = spacingFault(before.cut, cut, diameters, HOLE_TO_NOTCH_MM);
    if (!fault) return [];
    const [meeting, other] = m.run >= before.m.run ? [m, before.m] : [before.m, m];
    return [{ fault, meeting, other: other.run }];
  });
}

/** All that is wrong at joists, in the order of legs and then of joists. */
export function allJoistFaults(given: Given, table: Table): FaultAt[] {
  return [
    ...given.joistMeetings.flatMap((m) => faultsAlone(table, m)),
    ...byJoist(given.joistMeetings).flatMap((cuts) => faultsBetween(table, cuts)),
  ];
}

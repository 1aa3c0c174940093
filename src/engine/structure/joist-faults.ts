import type { Joists } from '../../plan/records/building.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import type { JoistCutAs } from './joist-cut.ts';
import { type CutLimits, inBand } from './joist-limits.ts';

/** What can be wrong with one pipe at one joist, worst first: this order decides between equals. */
export const JOIST_FAULTS = [
  'truss',
  'told',
  'lengthwise',
  'shallow',
  'flange',
  'holePlace',
  'notchPlace',
  'holeSize',
  'notchDepth',
  'tooClose',
  'toNotch',
  'bottom',
  'offCentre',
  'loaded',
  'engineered',
  'unknown',
  'notRead',
  'deep',
] as const;
export type JoistFaultKind = (typeof JOIST_FAULTS)[number];

export interface JoistFault {
  readonly kind: JoistFaultKind;
  readonly outcome: 'stop' | 'check' | 'note' | 'cantTell';
  readonly found: Quantity | null;
  readonly wanted: Quantity | null;
  readonly wantedIs: 'atMost' | 'atLeast';
  readonly missing: readonly string[];
}

export interface JoistAsk {
  readonly kind: Joists['kind'];
  readonly reading: JoistCutAs | 'lengthwise' | null;
  readonly aboveBottomMm: number | null;
  readonly odMm: number | null;
  readonly depthMm: number | null;
  readonly toNearEndMm: number;
  /** False where the ends were only taken from the drawn outline: what is wrong by them is looked at again. */
  readonly endsTold: boolean;
  readonly mayBeCut: boolean | null;
  /** What the survey says of this one joist; empty: like the others. */
  readonly what: string;
  readonly hole: CutLimits;
  readonly notch: CutLimits;
  readonly shallowMm: number;
  readonly deepMm: number;
  readonly flangeMm: number;
  readonly offCentreShare: number;
}

const plain = (kind: JoistFaultKind, outcome: JoistFault['outcome'], missing: readonly string[] = []): JoistFault => ({
  kind,
  outcome,
  found: null,
  wanted: null,
  wantedIs: 'atMost',
  missing,
});

/** Size against its limit: over it whatever the room taken is a stop, over it only with the larger room a check. */
function sizeFault(kind: 'holeSize' | 'notchDepth', mm: Quantity | null, limits: CutLimits): JoistFault[] {
  if (mm === null) return [plain('notRead', 'cantTell', ['the size of the pipe'])];
  if (limits.mostMm === null) return [plain('notRead', 'cantTell', ['how large the edition in use lets it be'])];
  const most = limits.mostMm.hi ?? limits.mostMm.lo;
  if ((mm.hi ?? mm.lo) <= most) return [];
  return [{ ...plain(kind, mm.lo > most ? 'stop' : 'check'), found: mm, wanted: limits.mostMm }];
}

function placeFault(ask: JoistAsk, kind: 'holePlace' | 'notchPlace', limits: CutLimits): JoistFault[] {
  const inside = inBand(limits, ask.toNearEndMm);
  if (inside === null) return [plain('notRead', 'cantTell', ['where the edition in use lets it be'])];
  if (inside || limits.fromMm === null || limits.toMm === null) return [];
  const tooNear = ask.toNearEndMm < limits.fromMm;
  return [
    {
      ...plain(kind, ask.endsTold ? 'stop' : 'check'),
      found: exact(ask.toNearEndMm, 'mm', 0),
      wanted: exact(tooNear ? limits.fromMm : limits.toMm, 'mm', 0),
      wantedIs: tooNear ? 'atLeast' : 'atMost',
    },
  ];
}

function ofSolid(ask: JoistAsk, reading: JoistCutAs, depthMm: number): JoistFault[] {
  if (depthMm <= ask.shallowMm)
    return [
      { ...plain('shallow', 'stop'), found: exact(depthMm, 'mm', 0), wanted: exact(ask.shallowMm, 'mm', 0, 'page') },
    ];
  const hole = reading.as === 'hole';
  const off = Math.abs(reading.offCentreMm);
  const centreMost = ask.offCentreShare * depthMm;
  return [
    ...placeFault(ask, hole ? 'holePlace' : 'notchPlace', hole ? ask.hole : ask.notch),
    ...sizeFault(hole ? 'holeSize' : 'notchDepth', reading.mm, hole ? ask.hole : ask.notch),
    ...(reading.as === 'bottom' ? [plain('bottom', 'check')] : []),
    ...(hole && off > centreMost
      ? [{ ...plain('offCentre', 'check'), found: exact(off, 'mm', 0), wanted: exact(centreMost, 'mm', 0, 'practice') }]
      : []),
    ...(ask.what === '' ? [] : [plain('loaded', 'check')]),
    ...(depthMm > ask.deepMm ? [plain('deep', 'note')] : []),
  ];
}

function inFlange(ask: JoistAsk, depthMm: number): boolean {
  const r = (ask.odMm ?? 0) / 2;
  const z = ask.aboveBottomMm ?? 0;
  return z + r > depthMm - ask.flangeMm || z - r < ask.flangeMm;
}

/** Everything that is wrong, or cannot be told, of one pipe at one joist. Empty where nothing is cut or all is well. */
export function joistFaults(ask: JoistAsk): JoistFault[] {
  const { reading, depthMm } = ask;
  if (reading === null) {
    const missing = [
      ...(depthMm === null ? ['the depth of the joists'] : []),
      ...(ask.aboveBottomMm === null ? ['the height of their underside'] : []),
    ];
    return [plain('notRead', 'cantTell', missing)];
  }
  if (reading !== 'lengthwise' && reading.as === 'clear') return [];
  if (ask.kind === 'truss') return [plain('truss', 'stop')];
  if (ask.mayBeCut === false && ask.kind !== 'metalWeb') return [plain('told', 'stop')];
  if (reading === 'lengthwise') return [plain('lengthwise', 'stop')];
  if (ask.kind === 'unknown') return [plain('unknown', 'cantTell', ['what kind of joists they are'])];
  if (depthMm === null) return [plain('notRead', 'cantTell', ['the depth of the joists'])];
  if (ask.kind === 'metalWeb') return inFlange(ask, depthMm) ? [plain('flange', 'stop')] : [];
  if (ask.kind === 'engineered') {
    if (inFlange(ask, depthMm)) return [plain('flange', 'stop')];
    return [plain('engineered', 'cantTell', ["the joist maker's chart of holes"])];
  }
  return ofSolid(ask, reading, depthMm);
}

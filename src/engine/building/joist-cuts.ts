import { tubeOdMm } from '../../catalogue/tubes.ts';
import { type JoistCrossing, joistsMet } from '../../geometry/joist-lines.ts';
import { alongLine } from '../../geometry/segments.ts';
import { cross, direction, distance3, length, sub } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Joists, Void } from '../../plan/records/building.ts';
import { constant, figure } from '../../reference/figure.ts';
import type { Pipe } from '../clearance/pipes.ts';
import { type CutJudgement, type JoistCutAs, joistCut } from '../structure/joist-cut.ts';
import { alongJoist } from './joist-ends.ts';
import type { VoidPart } from './void-parts.ts';

/** A new leg at one joist of a void. */
export interface JoistMeeting {
  readonly pipe: Pipe;
  readonly run: string;
  readonly space: Void;
  readonly joists: Joists;
  readonly met: JoistCrossing;
  /** Place along the joist, mm from the place told of the first. */
  readonly alongMm: number;
  readonly odMm: number | null;
  /** Null where height or depth of the timber is not told. `lengthwise`: it lies along in the timber. */
  readonly reading: JoistCutAs | 'lengthwise' | null;
}

/** Nearer along than this to the way the joists run, a pipe lies in the timber instead of crossing it. */
const LENGTHWISE_DEG = constant('heat-beside-cold', 'parallel', 'degrees');

const TOUCHING_MM = constant('pipe-clearance', 'touching', 'mm');

export function cutJudgement(): CutJudgement {
  const room = figure('joist-judgement', 'hole room', 'mm');
  return {
    holeRoom: room.is === 'known' ? { lo: room.lo, hi: room.hi ?? room.lo } : { lo: 0, hi: 0 },
    notchRoomMm: constant('joist-judgement', 'notch room', 'mm'),
    edgeShare: constant('joist-judgement', 'edge', 'share'),
  };
}

/** Does the part of the pipe that is over the joist reach into the timber's height? */
function reachesTimber(part: VoidPart, met: JoistCrossing, depthMm: number): boolean {
  if (met.aboveBottomMm === null) return false;
  const { a, b } = part.pipe.body;
  const lengthMm = distance3(a, b);
  const bottom = met.at.z - met.aboveBottomMm;
  const z = [met.fromMm, met.toMm].map((mm) => alongLine({ a, b }, lengthMm === 0 ? 0 : mm / lengthMm).z - bottom);
  return Math.max(...z) > 0 && Math.min(...z) < depthMm;
}

function readingOf(part: VoidPart, joists: Joists, met: JoistCrossing, judge: CutJudgement): JoistMeeting['reading'] {
  if (met.aboveBottomMm === null || joists.depthMm === null) return null;
  if (met.angleDeg < LENGTHWISE_DEG) {
    if (reachesTimber(part, met, joists.depthMm)) return 'lengthwise';
    return { as: 'clear', mm: null, offCentreMm: met.aboveBottomMm - joists.depthMm / 2 };
  }
  return joistCut(met.aboveBottomMm, joists.depthMm, tubeOdMm(part.pipe.edge.tube) ?? null, judge);
}

/** Does the piece stand upright, or run the way the joists run? */
function runsAlong({ pipe }: VoidPart, joists: Joists): boolean {
  const d = sub(pipe.body.b, pipe.body.a);
  const flat = length(d);
  if (flat === 0) return true;
  return Math.abs(cross(direction(joists.wayDeg), d)) / flat < Math.sin((LENGTHWISE_DEG * Math.PI) / 180);
}

/**
 * Joists a part meets. One that stands or runs along beside a joist meets it with its side and not only with its
 * middle; pressed against it by less than what counts as touching it does not.
 */
function metBy(plan: Plan, part: VoidPart, joists: Joists, odMm: number | null): readonly JoistCrossing[] {
  if (odMm === null || joists.breadthMm === null || !runsAlong(part, joists)) return part.joists;
  const { a, b } = part.pipe.body;
  const lengthMm = distance3(a, b);
  if (lengthMm === 0) return part.joists;
  const breadthMm = joists.breadthMm + Math.max(0, odMm - 2 * TOUCHING_MM);
  const widened = { ...part.space, joists: { ...joists, breadthMm } };
  return joistsMet(plan, widened, a, b, [part.fromMm / lengthMm, part.toMm / lengthMm]);
}

/** Every joist that new pipe meets inside a void, in the order of legs. Pipe that is there already has its holes. */
export function findJoistMeetings(plan: Plan, parts: readonly VoidPart[]): JoistMeeting[] {
  const judge = cutJudgement();
  return parts.flatMap((part) => {
    const { joists } = part.space;
    if (!joists || part.pipe.edge.state !== 'new') return [];
    const odMm = tubeOdMm(part.pipe.edge.tube) ?? null;
    return metBy(plan, part, joists, odMm).map((met): JoistMeeting => {
      return {
        pipe: part.pipe,
        run: part.pipe.run,
        space: part.space,
        joists,
        met,
        alongMm: alongJoist(joists, met.at),
        odMm,
        reading: readingOf(part, joists, met, judge),
      };
    });
  });
}

/** Cut from the timber, as far as that can be told. */
export const isCut = (m: JoistMeeting): boolean =>
  m.reading === 'lengthwise' || (m.reading !== null && m.reading.as !== 'clear');

import { services } from '../../catalogue/services.ts';
import { type StepChoices, stepChoices } from '../../catalogue/step-choices.ts';
import { nodePlace } from '../../geometry/places.ts';
import { scale3 } from '../../geometry/vec.ts';
import type { Laid } from '../../network/steps/edit.ts';
import { layStep } from '../../network/steps/lay-step.ts';
import { comesBack, type Step, type StepKind, stepFigures, stepShape } from '../../network/steps/step-shape.ts';
import { countingIds } from '../../plan/ids.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { bodyOf, type Obstacle } from './obstacle.ts';
import type { Way } from './ways.ts';

/** What is told of a step so far. */
export interface Told {
  readonly leg: string;
  /** Where it was pressed, from end a. */
  readonly alongMm: number;
  readonly kind: StepKind;
  readonly way: Way;
  /** Null: the least that clears what lies across, else the usual one. */
  readonly offsetMm: number | null;
  readonly overMm: number | null;
  readonly angleDeg: number;
  /** The other side goes than would by itself. */
  readonly flipped: boolean;
  readonly obstacle: Obstacle | null;
}

/** A step that could be laid as told, what the plan would be, and its figures in words. */
export interface Proposal {
  readonly step: Step;
  readonly laid: Laid;
  /** New corners, for showing where its figures belong. */
  readonly corners: readonly Xyz[];
  readonly figures: string;
  readonly word: string | null;
  /** Least offset that clears what lies across; null where nothing does, or not that way. */
  readonly leastMm: number | null;
}

const nearEnd = (kind: StepKind): boolean => kind === 'kick' || kind === 'swanNeck';
const MM = (n: number): string => String(Math.round(n));

/** Middle of what is cleared, of a kick middle of its slope, where the step stands so far off an end. */
function besideEnd(kind: StepKind, lengthMm: number, pressed: number, run: number, over: number, choices: StepChoices) {
  const atB = pressed > lengthMm / 2;
  const straight = Math.min(choices.endMm, Math.max(atB ? lengthMm - pressed : pressed, 1));
  const into = comesBack(kind) ? straight + run + over / 2 : straight + run / 2;
  return { atB, mid: atB ? lengthMm - into : into };
}

/** A set or kick as it stands when the one side goes, or the other. */
function sided(step: Step, goes: 'a' | 'b', runMm: number, keepMiddle: boolean): Step {
  if (!keepMiddle) return { ...step, toward: goes };
  // Near an end the slope stays where it is, whichever side of it goes.
  return {
    ...step,
    toward: goes,
    alongMm: goes === 'b' ? step.alongMm + runMm / 2 : step.alongMm - runMm / 2,
    overMm: 0,
  };
}

/** A step in words: "47 over, travel 66, 55 long". */
function sayFigures(step: Step, way: Way, offsetMm: number): string {
  const { travelMm } = stepFigures(offsetMm, step.angleDeg);
  const travel = step.angleDeg < 90 ? `, travel ${MM(travelMm)}` : '';
  const over = comesBack(step.kind) && step.overMm > 0 ? `, ${MM(step.overMm)} long` : '';
  return `${MM(offsetMm)} ${way.label}${travel}${over}`;
}

/** Works a step out of what is told. Null where the leg is gone. */
export function propose(plan: Plan, told: Told): Proposal | null {
  const body = bodyOf(plan, told.leg)?.body;
  if (!body) return null;
  const choices = stepChoices();
  const { kind, way, angleDeg, obstacle } = told;
  const found = obstacle?.clear(way.way, angleDeg) ?? null;
  const clear = found !== null && found.offsetMm > 0 ? found : null;
  const usual = kind === 'kick' ? choices.kickMm : (choices.offsetMm[1] ?? choices.kickMm);
  const offsetMm = told.offsetMm ?? clear?.offsetMm ?? usual;
  const overMm = told.overMm ?? clear?.overMm ?? (comesBack(kind) ? choices.overMm : 0);
  const lengthMm = Math.hypot(body.b.x - body.a.x, body.b.y - body.a.y, body.b.z - body.a.z);
  const { runMm } = stepFigures(offsetMm, angleDeg);
  const offset = scale3(way.way, offsetMm);
  const beside = nearEnd(kind) && !clear ? besideEnd(kind, lengthMm, told.alongMm, runMm, overMm, choices) : null;
  const mid = clear ? (clear.alongMm ?? obstacle?.alongMm ?? told.alongMm) : told.alongMm;
  const base: Step = { leg: told.leg, kind, alongMm: beside ? beside.mid : mid, offset, overMm, angleDeg };
  const ids = countingIds(new Set(), 1);
  const options = {
    ids: { next: (prefix: string) => ids.next(`shown-${prefix}`) },
    runsDownhill: (s: string) => services.get(s)?.runsDownhill ?? false,
  };
  const first: 'a' | 'b' = beside ? (beside.atB ? 'b' : 'a') : 'b';
  const other = first === 'a' ? 'b' : 'a';
  const goings: readonly ('a' | 'b')[] = told.flipped ? [other] : [first, other];
  const tries = comesBack(kind) ? [base] : goings.map((goes) => sided(base, goes, runMm, beside !== null));
  const answers = tries.map((step) => ({ step, laid: layStep(plan, step, options) }));
  const best = answers.find((a) => a.laid.ok) ?? answers[0];
  if (!best) return null;
  const { corners } = stepShape(best.step, body.a, body.b);
  const passes = clear && obstacle ? `${way.label} ${passed(way)}${obstacle.name}` : null;
  const unsure = clear && obstacle?.unsure ? `: ${obstacle.unsure}` : '';
  return {
    ...best,
    corners,
    figures: sayFigures(best.step, way, offsetMm),
    word: passes === null ? null : `${passes}${unsure}`,
    leastMm: clear?.offsetMm ?? null,
  };
}

/** "over the cold 15", but "left of the cold 15". */
const passed = ({ label }: Way): string =>
  label === 'left' || label === 'right' || label === 'in front' ? 'of ' : label.includes(' the sheet') ? 'past ' : '';

/** Whether a pipe one way stays under the ceiling or over the floor it is between. */
export function hasHeadroom(plan: Plan, leg: string, way: Way, mm: number): boolean {
  const of = bodyOf(plan, leg);
  const node = of && plan.nodes[of.leg.a];
  const storey = node && plan.storeys[nodePlace(plan, node)?.storey ?? ''];
  if (!of || !storey || Math.abs(way.way.z) < 0.5) return true;
  const { a, radiusMm } = of.body;
  return [storey.floorMm, storey.floorMm + storey.ceilingMm].every((level) => {
    const [before, after] = [a.z - level, a.z + way.way.z * mm - level];
    return Math.sign(before) === Math.sign(after) && Math.abs(after) >= Math.min(radiusMm, Math.abs(before));
  });
}

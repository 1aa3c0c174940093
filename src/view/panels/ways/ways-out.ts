import { tubeOdMm } from '../../../catalogue/tubes.ts';
import { nodePlace } from '../../../geometry/places.ts';
import { type Capsule, capsuleGap } from '../../../geometry/segments.ts';
import { add3, dot, scale3, sub3, unit3 } from '../../../geometry/vec.ts';
import type { Step } from '../../../network/steps/step-shape.ts';
import type { Plan } from '../../../plan/plan.ts';
import type { Xyz } from '../../../plan/records/parts.ts';
import type { Leg } from '../../../plan/records/pipework.ts';
import type { Finding } from '../../../report/finding.ts';
import { serviceLabel } from '../kind-labels.ts';
import { nameOf } from '../name-of.ts';
import { facesAbout, hasRoom } from './room-about.ts';

/** One leg moved across itself until it is as clear as is wanted, or a step in it where it passes the other. */
export interface Way {
  readonly leg: string;
  readonly by: Xyz;
  readonly mm: number;
  /** Told where the leg stays and only steps. */
  readonly step?: Step;
  /** "Bring the cold along behind". */
  readonly label: string;
  /** "40 back, 28 clear". */
  readonly under: string;
}

const STEP_MM = 5;
/** Further than this it is another route, and not a way out of a clash. */
const MOST_MM = 300;
const UPRIGHT = 0.99;
const SQUARE = 0.9;

const UP: Xyz = { x: 0, y: 0, z: 1 };
const opposite = (n: Xyz): Xyz => scale3(n, -1);

interface Body extends Capsule {
  readonly leg: Leg;
  readonly storey: string;
}

function bodyOf(plan: Plan, id: string): Body | null {
  const leg = plan.legs[id];
  const [a, b] = [leg?.a, leg?.b].map((n) => {
    const node = n === undefined ? undefined : plan.nodes[n];
    return node && nodePlace(plan, node);
  });
  const od = leg && tubeOdMm(leg.tube);
  if (!leg || !a || !b || od === undefined) return null;
  const radiusMm = od / 2 + (leg.insulation?.thicknessMm ?? 0);
  return { a: a.at, b: b.at, radiusMm, leg, storey: a.storey };
}

/** The ways across a leg: up, down and to both sides; an upright goes along and off the wall it stands before. */
function across(plan: Plan, body: Body, at: Xyz): readonly Xyz[] {
  const along = unit3(sub3(body.b, body.a));
  if (Math.abs(along.z) < UPRIGHT) {
    const level = unit3({ x: -along.y, y: along.x, z: 0 });
    return [level, opposite(level), UP, opposite(UP)];
  }
  const out = facesAbout(plan, body.storey, at)[0]?.out ?? { x: 0, y: 1 };
  const off: Xyz = { ...out, z: 0 };
  const beside: Xyz = { x: -out.y, y: out.x, z: 0 };
  return [opposite(off), off, beside, opposite(beside)];
}

function sayMove(n: Xyz): string {
  if (Math.abs(n.z) > SQUARE) return n.z > 0 ? 'higher' : 'lower';
  if (Math.abs(n.x) > Math.abs(n.y)) return n.x > 0 ? 'to the right' : 'to the left';
  return n.y > 0 ? 'up the sheet' : 'down the sheet';
}

function labelOf(plan: Plan, storey: string, what: string, at: Xyz, n: Xyz): string {
  if (Math.abs(n.z) > SQUARE) return n.z > 0 ? `Raise ${what}` : `Lower ${what}`;
  const wall = facesAbout(plan, storey, at)[0];
  const off = wall ? dot(wall.out, n) : 0;
  if (off < -SQUARE) return `Bring ${what} along behind`;
  return off > SQUARE ? `Bring ${what} along in front` : `Move ${what} aside`;
}

/** "the cold"; where both are of one service, the run's own name. */
export function whatOf(plan: Plan, leg: Leg, other: Leg | undefined): string {
  const [own, its] = [leg, other].map((l) => plan.runs[l?.run ?? '']?.service);
  if (own !== its) return `the ${serviceLabel(own ?? '')}`;
  const name = nameOf(plan, { map: 'runs', id: leg.run });
  return name.charAt(0).toLowerCase() + name.slice(1);
}

function gapAfter(body: Body, other: Body, by: Xyz): number {
  return capsuleGap({ ...body, a: add3(body.a, by), b: add3(body.b, by) }, other).gapMm;
}

/** How far a leg has to go one way; null where it does not come clear that way. */
function farEnough(
  body: Body,
  other: Body,
  n: Xyz,
  wanted: number,
): { readonly mm: number; readonly gap: number } | null {
  for (let mm = STEP_MM; mm <= MOST_MM; mm += STEP_MM) {
    const gap = gapAfter(body, other, scale3(n, mm));
    if (gap >= wanted) return { mm, gap };
  }
  return null;
}

/**
 * Ways out of a clash of two pipes: one of them moved across itself, as far as is wanted and no further, where there is
 * room for it. By distance only: what else stands in the way is for the engine to say.
 */
export function waysOut(plan: Plan, finding: Finding): readonly Way[] {
  const { wanted, wantedIs, legs } = finding;
  if (!finding.rule.startsWith('clash/') || wantedIs !== 'atLeast' || wanted === null) return [];
  const bodies = legs.map((id) => bodyOf(plan, id));
  return bodies.flatMap((body, i): Way[] => {
    const other = bodies[1 - i];
    if (!body || !other || body.leg.option === null) return [];
    const at = capsuleGap(body, other).onA;
    const what = whatOf(plan, body.leg, other.leg);
    return across(plan, body, at).flatMap((n): Way[] => {
      const found = farEnough(body, other, n, wanted.lo);
      const by = found && scale3(n, found.mm);
      if (!by || !hasRoom(plan, body.storey, at, by, body.radiusMm)) return [];
      const label = labelOf(plan, body.storey, what, at, n);
      const under = `${found.mm} ${sayMove(n)}, ${Math.round(found.gap)} clear`;
      return [{ leg: body.leg.id, by, mm: found.mm, label, under }];
    });
  });
}

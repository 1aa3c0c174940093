import type { Network } from '../../network/network.ts';
import { saidService } from '../../network/said.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xy } from '../../plan/records/parts.ts';
import type { Leg } from '../../plan/records/pipework.ts';
import type { LineStyle } from '../display-list.ts';
import { drawnLeg } from '../pipes/drawn-leg.ts';
import { planPlane } from '../pipes/plane.ts';
import { isLevel } from './level-stretch.ts';

/** A run as it passes the place in hand: the level piece of it that lies nearest. */
export interface RibbonBar {
  /** The leg that is drawn for it, and taken hold of. */
  readonly leg: string;
  readonly run: string;
  /** "HF 22". */
  readonly tag: string;
  readonly letters: string;
  /** "heating flow 22". */
  readonly name: string;
  /** Height of the middle of the pipe over the datum. */
  readonly z: number;
  /** Between what it lies where its height was taken for granted; null where it was told. */
  readonly assumed: { readonly lo: number; readonly hi: number } | null;
  /** How much it falls from one end of the piece to the other, mm; 0: it lies level. */
  readonly fallMm: number;
  /** From the place to the piece, in plan, mm; 0 where no place was told. */
  readonly awayMm: number;
  /** It passes the place: the others only run somewhere on this floor. */
  readonly here: boolean;
  readonly chosen: boolean;
  readonly style: LineStyle;
}

export interface BarOptions {
  readonly storey: string;
  readonly at: Xy | null;
  readonly run: string | null;
  /** The chosen leg: it stands for its run wherever the place is. */
  readonly leg?: string | null;
}

/** Nearer than this a run passes the place in hand: an arm's length. */
export const HERE_MM = 1000;
/** Pieces that are equally near but for this are told apart by their length. */
const SAME_MM = 50;

function awayFrom(at: Xy, a: Xy, b: Xy): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const l2 = dx * dx + dy * dy;
  const t = l2 === 0 ? 0 : Math.min(1, Math.max(0, ((at.x - a.x) * dx + (at.y - a.y) * dy) / l2));
  return Math.hypot(at.x - a.x - dx * t, at.y - a.y - dy * t);
}

type Found = { readonly drawn: NonNullable<ReturnType<typeof drawnLeg>>; readonly leg: Leg; readonly away: number };

function nearer(one: Found, other: Found | undefined, chosen: string | null): boolean {
  if (!other || one.leg.id === chosen) return true;
  if (other.leg.id === chosen) return false;
  const by = one.away - other.away;
  return Math.abs(by) > SAME_MM ? by < 0 : one.drawn.lengthMm > other.drawn.lengthMm;
}

function barOf({ drawn, leg, away }: Found, service: string, run: string | null): RibbonBar {
  const { placeA: a, placeB: b } = drawn;
  const lo = Math.min(a.zLo, b.zLo);
  const hi = Math.max(a.zHi, b.zHi);
  const sure = a.zLo === a.zHi && b.zLo === b.zHi;
  const z = (a.at.z + b.at.z) / 2;
  return {
    leg: leg.id,
    run: leg.run,
    tag: drawn.unknown ? `${drawn.letters} ?` : `${drawn.letters} ${drawn.size}`,
    letters: drawn.letters,
    name: `${saidService(service)} ${drawn.size}`,
    z,
    assumed: sure ? null : { lo, hi },
    fallMm: Math.round(Math.abs(a.at.z - b.at.z)),
    awayMm: away,
    here: away <= HERE_MM,
    chosen: leg.run === run,
    style: drawn.style,
  };
}

/** Every run of a floor by its level piece nearest to the place, lowest first. */
export function ribbonBars(plan: Plan, network: Network, options: BarOptions): RibbonBar[] {
  const plane = planPlane(options.storey);
  const found = new Map<string, Found>();
  for (const leg of Object.values(plan.legs)) {
    const edge = network.edges.get(leg.id);
    const drawn = edge && drawnLeg(plan, 'legs', leg, edge.state, plane);
    if (!drawn || drawn.endOn || drawn.placeA.storey !== options.storey) continue;
    if (!isLevel({ a: drawn.placeA.at, b: drawn.placeB.at })) continue;
    const away = options.at ? awayFrom(options.at, drawn.placeA.at, drawn.placeB.at) : 0;
    const one = { drawn, leg, away };
    if (nearer(one, found.get(leg.run), options.leg ?? null)) found.set(leg.run, one);
  }
  return [...found.values()]
    .map((f) => barOf(f, plan.runs[f.leg.run]?.service ?? '', options.run))
    .sort((a, b) => a.z - b.z || (a.run < b.run ? -1 : 1));
}

/** The same for one level leg of the chosen run; null where it is not one that has a height of its own. */
export function barOfLeg(plan: Plan, network: Network, id: string, storey: string): RibbonBar | null {
  const leg = plan.legs[id];
  const edge = network.edges.get(id);
  const drawn = leg && edge && drawnLeg(plan, 'legs', leg, edge.state, planPlane(storey));
  if (!leg || !drawn || drawn.endOn || !isLevel({ a: drawn.placeA.at, b: drawn.placeB.at })) return null;
  return barOf({ drawn, leg, away: 0 }, plan.runs[leg.run]?.service ?? '', leg.run);
}

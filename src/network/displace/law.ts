import { nodePlace } from '../../geometry/places.ts';
import { sub3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Leg } from '../../plan/records/pipework.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { Axes, AxisIndex, Triple } from './frame.ts';
import type { Incidence } from './incidence.ts';

/** A leg as the law of moving sees it. */
export interface LegLaw {
  readonly leg: Leg;
  /** From `a` to `b`, along the axes. */
  readonly v: Triple;
  readonly lengthMm: number;
  /** The axis it lies along, and takes up moves along; null for a slanting leg, which keeps its length and travels whole. */
  readonly axis: AxisIndex | null;
  /** A level leg of a service that runs downhill: mm of drop (or rise) from `a` to `b`, kept per mm of plan length. */
  readonly fallMm: number | null;
  readonly downhill: boolean;
}

export interface Pipework {
  readonly plan: Plan;
  readonly at: Incidence;
  readonly axes: Axes;
  place(node: string): Xyz | undefined;
  law(leg: Leg): LegLaw | undefined;
}

function axisOf(v: Triple): AxisIndex | null {
  const [p, q, z] = v.map((c) => Math.abs(c) > COINCIDENT_MM);
  if (p && !q && !z) return 0;
  if (q && !p && !z) return 1;
  return z && !p && !q ? 2 : null;
}

/** Reads places and legs once each, and only those that are asked for. */
export function pipework(plan: Plan, at: Incidence, axes: Axes, runsDownhill: (service: string) => boolean): Pipework {
  const places = new Map<string, Xyz | undefined>();
  const laws = new Map<string, LegLaw | undefined>();
  const place = (id: string): Xyz | undefined => {
    if (!places.has(id)) {
      const node = plan.nodes[id];
      places.set(id, node && nodePlace(plan, node)?.at);
    }
    return places.get(id);
  };
  const read = (leg: Leg): LegLaw | undefined => {
    const [a, b] = [place(leg.a), place(leg.b)];
    if (!a || !b) return undefined;
    const v = axes.along(sub3(b, a));
    const downhill = runsDownhill(plan.runs[leg.run]?.service ?? '');
    const levelAxis = axisOf([v[0], v[1], 0]);
    const falls = downhill && levelAxis !== null;
    return {
      leg,
      v,
      lengthMm: Math.hypot(...v),
      axis: falls ? levelAxis : axisOf(v),
      fallMm: falls ? v[2] : null,
      downhill,
    };
  };
  return {
    plan,
    at,
    axes,
    place,
    law(leg) {
      if (!laws.has(leg.id)) laws.set(leg.id, read(leg));
      return laws.get(leg.id);
    },
  };
}

export const otherNode = (leg: Leg, node: string): string => (leg.a === node ? leg.b : leg.a);

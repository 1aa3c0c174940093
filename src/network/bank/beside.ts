import { nodePlace } from '../../geometry/places.ts';
import { dot3, length3, scale3, sub3, unit3 } from '../../geometry/vec.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Group, Leg } from '../../plan/records/pipework.ts';

/** So near its place in the row a leg is in it. */
const IN_ROW_MM = 2;

interface Straight {
  readonly a: Xyz;
  readonly b: Xyz;
  readonly way: Xyz;
}

function straight(plan: Plan, leg: Leg): Straight | undefined {
  const [na, nb] = [plan.nodes[leg.a], plan.nodes[leg.b]];
  const [a, b] = [na && nodePlace(plan, na)?.at, nb && nodePlace(plan, nb)?.at];
  return a && b ? { a, b, way: unit3(sub3(b, a)) } : undefined;
}

function areBeside(one: Straight, other: Straight, mm: number): boolean {
  if (Math.abs(dot3(one.way, other.way)) < 0.9999) return false;
  const off = sub3(other.a, one.a);
  const across = sub3(off, scale3(one.way, dot3(off, one.way)));
  if (Math.abs(length3(across) - mm) > IN_ROW_MM) return false;
  const along = (p: Xyz): number => dot3(sub3(p, one.a), one.way);
  const [s, t, full] = [along(other.a), along(other.b), along(one.b)];
  return Math.min(full, Math.max(s, t)) - Math.max(0, Math.min(s, t)) > 0;
}

function found(plan: Plan, leg: Leg, group: Group): string[] {
  const mine = straight(plan, leg);
  const place = group.members.indexOf(leg.run);
  if (!mine) return [leg.id];
  const others = Object.values(plan.legs).filter((l) => {
    const i = l.run === leg.run ? -1 : group.members.indexOf(l.run);
    const line = i < 0 ? undefined : straight(plan, l);
    return line !== undefined && areBeside(mine, line, Math.abs(i - place) * group.spacingMm);
  });
  return [leg.id, ...others.map((l) => l.id)];
}

const known = new WeakMap<Plan['legs'], { readonly plan: Plan; readonly of: Map<string, readonly string[]> }>();

/** The leg, and those of its bank that run beside it in the row: they are dragged together. Kept while the plan is the same. */
export function legsBeside(plan: Plan, leg: string): readonly string[] {
  const record = plan.legs[leg];
  const group = record && Object.values(plan.groups).find((g) => g.members.includes(record.run));
  if (!record || !group) return [leg];
  let kept = known.get(plan.legs);
  if (kept?.plan !== plan) {
    kept = { plan, of: new Map() };
    known.set(plan.legs, kept);
  }
  const was = kept.of.get(leg);
  if (was) return was;
  const legs = found(plan, record, group);
  kept.of.set(leg, legs);
  return legs;
}

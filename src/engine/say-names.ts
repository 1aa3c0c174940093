import { pointKinds } from '../catalogue/point-kinds.ts';
import { services } from '../catalogue/services.ts';
import { sayTubeSize, tubeKinds } from '../catalogue/tubes.ts';
import type { Plan } from '../plan/plan.ts';
import type { Tube } from '../plan/records/pipework.ts';

/** "Cold", "Heating return": a service as it is said. An unknown one says its own id. */
export const sayService = (service: string): string => services.get(service)?.label ?? service;

/** "copper", "plastic overflow pipe": a kind of tube inside a sentence. */
export const sayTubeKind = (t: Tube): string => tubeKinds.get(t.kind)?.label.toLowerCase() ?? t.kind;

/** "22", "28", "a size nobody read". */
export function saySize(t: Tube): string {
  return t.size === null ? 'a size nobody read' : sayTubeSize(t);
}

/** A run by its own name, else by service and the sizes it has: "Cold 22". */
export function sayRun(plan: Plan, run: string): string {
  const r = plan.runs[run];
  if (!r) return run;
  if (r.name !== '') return r.name;
  return sayService(r.service);
}

export function sayPoint(plan: Plan, point: string): string {
  const p = plan.points[point];
  if (!p) return point;
  return p.name !== '' ? p.name : (pointKinds.get(p.kind)?.label ?? p.kind);
}

export function sayWall(plan: Plan, wall: string): string {
  const w = plan.walls[wall];
  return w ? `${w.construction} wall, ${Math.round(w.thicknessMm)} thick` : wall;
}

/** "door", "window", by its own name where it has one. */
export function sayOpening(plan: Plan, opening: string): string {
  const o = plan.openings[opening];
  return o ? (o.name !== '' ? o.name : o.kind) : opening;
}

/** "a", "a and b", "a, b and c". */
export function sayAll(of: readonly string[]): string {
  return of.length < 2 ? (of[0] ?? '') : `${of.slice(0, -1).join(', ')} and ${of[of.length - 1]}`;
}

/** A name inside a sentence: "the new combi", "the en-suite shower", but "the WC", "the T-piece" and "the B2 meter". */
export const midSentence = (name: string): string =>
  /^\p{Lu}\p{Ll}+(-\p{Ll}+)*([\s,]|$)/u.test(name) ? name.charAt(0).toLowerCase() + name.slice(1) : name;

/** Capital at the start of a sentence. */
export const sentence = (s: string): string => s.charAt(0).toUpperCase() + s.slice(1);

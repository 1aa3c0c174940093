import type { Tube } from '../plan/records/pipework.ts';
import type { Fitting, Tee } from './fitting.ts';
import { fittingAt } from './fitting-at.ts';
import { type Edge, type Network, otherEnd, sameTube } from './network.ts';
import type { Section, Trace } from './trace.ts';

export type AllowanceClass =
  | 'elbow90'
  | 'elbow45'
  | 'bend90'
  | 'bend45'
  | 'tee-run'
  | 'tee-branch'
  | 'reducer'
  | 'transition'
  | 'unresolved';

/** What one way through a fitting adds. Its size is that of `tube`; for a change, the smaller of the two. */
export interface Allowance {
  readonly class: AllowanceClass;
  readonly tube: Tube;
  readonly vertex: string;
  /** At a tee: does the flow divide there, or come together? Null for everything with two ways. */
  readonly flow: 'dividing' | 'combining' | null;
}

/** An allowance and the edge it is charged to. */
export interface Charge extends Allowance {
  readonly edge: string;
}

const turnClass = (how: 'elbow' | 'bend', degrees: 45 | 90): AllowanceClass =>
  how === 'elbow' ? (degrees === 90 ? 'elbow90' : 'elbow45') : degrees === 90 ? 'bend90' : 'bend45';

function throughTee(tee: Tee, before: Edge, served: Edge, gathers: boolean): Charge[] {
  const straight = tee.ends.includes(before.id) && tee.ends.includes(served.id);
  const of = { tube: served.tube, vertex: tee.vertex, edge: served.id };
  if (tee.guessed) return [{ class: 'unresolved', ...of, flow: gathers ? 'combining' : 'dividing' }];
  const turn: Charge = { class: straight ? 'tee-run' : 'tee-branch', ...of, flow: gathers ? 'combining' : 'dividing' };
  if (before.tube.kind === served.tube.kind) return [turn];
  return [turn, { class: 'transition', ...of, flow: null }];
}

/**
 * What the way from one edge through a fitting into another adds. It belongs to the edge served, the one away from the
 * root; an elbow of two sizes is in the larger, and goes to the edge that has it.
 */
export function through(fitting: Fitting, before: Edge, served: Edge, gathers: boolean): Charge[] {
  const vertex = fitting.vertex;
  const charge = (cls: AllowanceClass, tube: Tube): Charge => {
    const edge = !sameTube(tube, served.tube) && sameTube(tube, before.tube) ? before.id : served.id;
    return { class: cls, tube, vertex, flow: null, edge };
  };
  switch (fitting.is) {
    case 'elbow': {
      const turn = charge(turnClass('elbow', fitting.degrees), fitting.tube);
      return fitting.change ? [turn, charge(fitting.change.is, fitting.change.to)] : [turn];
    }
    case 'bend':
      return [charge(turnClass('bend', fitting.degrees), fitting.tube)];
    case 'reducer':
    case 'transition':
      return [charge(fitting.is, fitting.change.to)];
    case 'tee':
      return throughTee(fitting, before, served, gathers);
    case 'unresolved':
      return [charge('unresolved', served.tube)];
    default:
      return [];
  }
}

/** A pipe that leaves or reaches a connection across the way it faces turns there. */
export function atJoint(fitting: Fitting, edge: Edge): Charge[] {
  if (fitting.is !== 'joint' || fitting.degrees === 0) return [];
  return [
    { class: turnClass('elbow', fitting.degrees), tube: edge.tube, vertex: fitting.vertex, flow: null, edge: edge.id },
  ];
}

/**
 * Allowances of a trace by the edge they are charged to. Each way through a fitting is counted once, so adding up the
 * edges between the root and an end gives every fitting on that way, once.
 */
export function allowanceClasses(network: Network, trace: Trace): ReadonlyMap<string, readonly Allowance[]> {
  const charged = new Map<string, Allowance[]>(trace.sections.flatMap((s) => s.legs.map((leg) => [leg, []] as const)));
  const take = (charges: readonly Charge[]): void => {
    for (const { edge, ...allowance } of charges) charged.get(edge)?.push(allowance);
  };
  const sections = new Map(trace.sections.map((s) => [s.id, s] as const));
  const outward = (s: Section): Edge[] => {
    const edges = s.legs.flatMap((id) => network.edges.get(id) ?? []);
    return s.gathers ? edges.reverse() : edges;
  };
  for (const section of trace.sections) {
    const parent = section.parent === null ? undefined : sections.get(section.parent);
    let before = parent && outward(parent).at(-1);
    let here = section.gathers ? section.to : section.from;
    if (!network.vertices.has(here)) continue;
    for (const edge of outward(section)) {
      const fitting = fittingAt(network, here);
      take(before ? through(fitting, before, edge, section.gathers) : atJoint(fitting, edge));
      before = edge;
      here = otherEnd(edge, here);
    }
    if (before && network.vertices.has(here)) take(atJoint(fittingAt(network, here), before));
  }
  return charged;
}

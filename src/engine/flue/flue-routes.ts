import { fittingAt } from '../../network/fitting-at.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Field, Point } from '../../plan/records/pipework.ts';
import { constant } from '../../reference/figure.ts';
import { addQuantities, between, exact, type Quantity } from '../../report/quantity.ts';
import type { VoidPart } from '../building/void-parts.ts';
import { type Drain, drainsOf, isNew } from '../drainage/drains.ts';
import type { Given } from '../given.ts';
import type { FlueSheet } from './flue-length.ts';

/** A place of a flue where two parts meet or it is held. */
export interface FlueJoint {
  readonly what: 'bend' | 'joint' | 'support';
  readonly vertex: string;
  readonly at: Xyz;
}

/** A flue as it is drawn, from its appliance to its terminal. */
export interface FlueRoute {
  readonly way: Drain;
  readonly isNew: boolean;
  readonly appliance: Point | null;
  readonly terminal: Point | null;
  readonly straightM: Quantity;
  readonly bends90: number;
  readonly bends45: number;
  readonly joints: readonly FlueJoint[];
  /** Parts of it in voids and boxes. */
  readonly hidden: readonly VoidPart[];
  readonly hiddenM: number;
}

/** Less than this is its way through a wall. */
export const HIDDEN_BY_LESS_MM = constant('flue-judgement', 'hidden by less', 'mm');

/** A figure the user told; null for a word, a range, or nothing. */
export const numberOf = (field: Field | undefined): number | null => (typeof field === 'number' ? field : null);

/** Also of a thing that stands in `fields` of an appliance. */
export const sheetOf = (appliance: Point | null): FlueSheet => ({
  maxM: numberOf(appliance?.fields.flueMaxM),
  bend90M: numberOf(appliance?.fields.flueBend90M),
  bend45M: numberOf(appliance?.fields.flueBend45M),
});

function jointsOf(given: Given, way: Drain): FlueJoint[] {
  const { network, plan } = given;
  const vertices = [way.steps[0]?.from ?? '', ...way.steps.map((s) => s.to)];
  return vertices.flatMap((id): FlueJoint[] => {
    const vertex = network.vertices.get(id);
    const at = vertex?.place?.at;
    if (!vertex || !at) return [];
    const fitting = fittingAt(network, id);
    const turns = fitting.is === 'elbow' || fitting.is === 'bend' || (fitting.is === 'joint' && fitting.degrees !== 0);
    const items = vertex.items.flatMap((i) => {
      const kind = plan.items[i]?.kind;
      return kind === 'flue-joint' ? (['joint'] as const) : kind === 'flue-support' ? (['support'] as const) : [];
    });
    return [...(turns ? (['bend'] as const) : []), ...items].map((what) => ({ what, vertex: id, at }));
  });
}

function bendsOf(given: Given, way: Drain, degrees: 45 | 90): number {
  const vertices = new Set([way.steps[0]?.from ?? '', ...way.steps.map((s) => s.to)]);
  return [...vertices].filter((id) => {
    if (!given.network.vertices.has(id)) return false;
    const fitting = fittingAt(given.network, id);
    return 'degrees' in fitting && fitting.degrees === degrees && fitting.is !== 'tee';
  }).length;
}

function lengthOf(way: Drain): Quantity {
  const parts = way.steps.map(({ edge }) => {
    const { lo, hi, value } = edge.lengthMm;
    return between(lo / 1000, hi === null ? null : hi / 1000, 'm', 2, 'derived', value === null ? null : value / 1000);
  });
  return parts.length === 0 ? exact(0, 'm', 2) : addQuantities(parts);
}

const known = new WeakMap<Given, readonly FlueRoute[]>();

/** Every flue that is drawn as a run, once. */
export function flueRoutes(given: Given): readonly FlueRoute[] {
  const before = known.get(given);
  if (before) return before;
  const point = (id: string | undefined): Point | null => given.plan.points[id ?? ''] ?? null;
  const any = [...given.network.edges.values()].some((e) => e.circuit === 'flue');
  const made = (any ? drainsOf(given, 'flue') : []).map((way): FlueRoute => {
    const legs = new Set(way.steps.map((s) => s.edge.id));
    const hidden = given.voidParts.filter((p) => legs.has(p.pipe.edge.id));
    return {
      way,
      isNew: isNew(way),
      appliance: point(way.source?.point),
      terminal: point(way.end?.point),
      straightM: lengthOf(way),
      bends90: bendsOf(given, way, 90),
      bends45: bendsOf(given, way, 45),
      joints: jointsOf(given, way),
      hidden,
      hiddenM: hidden.reduce((sum, p) => sum + p.lengthMm, 0) / 1000,
    };
  });
  known.set(given, made);
  return made;
}

/** Terminals no drawn flue leads to: what is known of theirs is what their fields tell. */
export function undrawn(given: Given, terminal: string): boolean {
  return !flueRoutes(given).some((r) => r.terminal?.id === terminal);
}

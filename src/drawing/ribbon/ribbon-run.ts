import { services } from '../../catalogue/services.ts';
import { nodePlace } from '../../geometry/places.ts';
import type { Network } from '../../network/network.ts';
import { orderedLegs } from '../../network/runs.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Item, LineStyle, Vec } from '../display-list.ts';
import { legStyle } from '../pipes/leg-style.ts';

/** A piece of a run as it lies unrolled: how far along it starts and ends, and at what heights. */
export interface UnrolledPiece {
  readonly edge: string;
  readonly kind: 'leg' | 'stretch';
  /** Where it comes from and goes to, as the run is told. */
  readonly vertices: readonly [string, string];
  readonly places: readonly [Xyz, Xyz];
  readonly from: Vec;
  readonly upTo: Vec;
  readonly style: LineStyle;
}

export interface Unrolled {
  readonly items: readonly Item[];
  /** Heights of its corners, without doubles. */
  readonly levels: readonly number[];
}

const STRAIGHT_UP_MM = 0.5;

/** The run from its source to its end: along it is distance in plan, up it is height. Legs without a place are left out. */
export function unrolledPieces(plan: Plan, network: Network, runId: string): UnrolledPiece[] {
  const run = plan.runs[runId];
  if (!run) return [];
  const service = services.get(run.service)?.style ?? run.service;
  let along = 0;
  return orderedLegs(network, runId).steps.flatMap(({ edge, from, to }): UnrolledPiece[] => {
    const pipe = plan.legs[edge] ?? plan.stretches[edge];
    const known = network.edges.get(edge);
    if (!pipe || !known) return [];
    const [first, last] = known.a === from ? [pipe.a, pipe.b] : [pipe.b, pipe.a];
    const [a, b] = [first, last].map((id) => {
      const node = plan.nodes[id];
      return node && nodePlace(plan, node)?.at;
    });
    if (!a || !b) return [];
    const flat = Math.hypot(a.x - b.x, a.y - b.y);
    const start = along;
    along += flat;
    const hollow = known.sureness === 'assumed';
    const style = legStyle(service, known.state, hollow, known.kind === 'stretch');
    return [
      {
        edge,
        kind: known.kind,
        vertices: [from, to],
        places: [a, b],
        from: [start, a.z],
        upTo: [along, b.z],
        style,
      },
    ];
  });
}

/**
 * A run unrolled between two places across the ribbon. Its whole length takes the whole width, so that every rise and
 * drop shows; a run that only rises stands in the middle.
 */
export function unroll(plan: Plan, network: Network, runId: string, left: number, right: number): Unrolled {
  const all = unrolledPieces(plan, network, runId);
  const length = Math.max(0, ...all.map((p) => p.upTo[0]));
  const at = ([s, z]: Vec): Vec => [
    length < STRAIGHT_UP_MM ? (left + right) / 2 : left + (s / length) * (right - left),
    z,
  ];
  const items = all.map(
    (p): Item => ({
      t: 'line',
      pts: [at(p.from), at(p.upTo)],
      style: p.style.dash.length === 0 ? { ...p.style, cap: 'round' } : p.style,
    }),
  );
  const levels = new Set(all.flatMap((p) => [Math.round(p.from[1]), Math.round(p.upTo[1])]));
  return { items, levels: [...levels] };
}

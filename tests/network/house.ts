import type { Kinds } from '../../src/network/kinds.ts';
import { emptyPlan } from '../../src/plan/empty-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { HeightRef, Xyz } from '../../src/plan/records/parts.ts';
import type { Connection, Leg, Point, Run, Stretch } from '../../src/plan/records/pipework.ts';

export const COPPER_22 = { kind: 'copper', size: '22x0.9' };
export const COPPER_15 = { kind: 'copper', size: '15x0.7' };
export const COPPER_28 = { kind: 'copper', size: '28x0.9' };

type Corner = readonly [x: number, y: number, z: number];

/** A plan that can be written to, and short words to write it with. Heights are above the ground floor, at 0. */
export function house() {
  const plan = emptyPlan({ id: 'job', name: 'Job', storey: 's', option: 'o', ceilingMm: 2400, buildUpMm: 250 });
  const height = (mm: number): HeightRef => ({ from: 'floor', of: 's', mm });
  const made = {
    plan,
    run(id: string, service = 'gas', more: Partial<Run> = {}) {
      plan.runs[id] = { id, service, name: id, joining: null, turns: 'elbow', option: null, ...more };
      return made;
    },
    node(id: string, [x, y, z]: Corner, more: Partial<Plan['nodes'][string]> = {}) {
      plan.nodes[id] = {
        id,
        place: { on: 'storey', storey: 's', x, y, height: height(z) },
        turn: null,
        option: null,
        ...more,
      };
      return made;
    },
    on(id: string, point: string, connection: string) {
      plan.nodes[id] = { id, place: { on: 'connection', point, connection }, turn: null, option: null };
      return made;
    },
    /** Stands upright with its right hand along x; connections by name: service, place in its own frame, facing. */
    point(
      id: string,
      kind: string,
      [x, y, z]: Corner,
      tails: Record<string, [string, Corner, Connection['facing']]>,
      more: Partial<Point> = {},
    ) {
      const connections = Object.entries(tails).map(([name, [service, at, facing]]): Connection => {
        return { id: name, service, label: name, size: '22', at: { x: at[0], y: at[1], z: at[2] }, facing };
      });
      plan.points[id] = {
        id,
        kind,
        kindVersion: 1,
        name: id,
        storey: 's',
        place: { on: 'storey', x, y, angleDeg: 0, height: height(z) },
        size: { widthMm: 400, depthMm: 300, heightMm: 700 },
        connections,
        fields: {},
        thing: null,
        option: null,
        sureness: 'seen',
        ...more,
      };
      return made;
    },
    leg(id: string, run: string, a: string, b: string, more: Partial<Leg> = {}) {
      plan.legs[id] = { id, run, a, b, tube: COPPER_22, insulation: null, option: null, sureness: 'seen', ...more };
      return made;
    },
    stretch(id: string, run: string, a: string, b: string, more: Partial<Stretch> = {}) {
      plan.stretches[id] = {
        id,
        run,
        a,
        b,
        lengthMm: { lo: 2000, hi: 3000 },
        bends: { lo: 1, hi: 3 },
        tube: COPPER_22,
        option: null,
        ...more,
      };
      return made;
    },
    item(id: string, node: string, kind: string) {
      plan.items[id] = { id, node, kind, name: kind, along: null, fields: {}, option: null, sureness: 'seen' };
      return made;
    },
    /** Legs from node to node, named run1, run2…; nodes are made at the corners and named after them. */
    line(run: string, nodes: readonly string[], more: Partial<Leg> = {}) {
      nodes.slice(1).forEach((to, i) => {
        made.leg(`${run}${i + 1}`, run, nodes[i]!, to, more);
      });
      return made;
    },
  };
  return made;
}

export const gasMeter = { outlet: ['gas', [0, 0, 0], 'up'] } satisfies Record<
  string,
  [string, Corner, Connection['facing']]
>;
export const gasTail = { gas: ['gas', [0, 0, 0], 'down'] } satisfies Record<
  string,
  [string, Corner, Connection['facing']]
>;

/** Kinds a test makes up for itself: "meter" is a source, "boiler" and "hob" are ends, of whatever they are joined to. */
export const testKinds: Kinds = {
  part: (point) =>
    point.kind === 'meter' ? 'source' : point.kind === 'boiler' || point.kind === 'hob' ? 'end' : undefined,
  circuit: (service) => service,
  runsDownhill: (service) => service === 'condensate',
  gathers: (service) => service === 'condensate' || service === 'heatingReturn',
  takes: (point, connection, service) => point.connections.find((c) => c.id === connection)?.service === service,
  faces: () => true,
  opens: (kind) => kind === 'union',
};

export const at = (plan: Plan, node: string): Xyz => {
  const place = plan.nodes[node]!.place;
  if (place.on !== 'storey') throw new Error(`${node} is on a connection`);
  return { x: place.x, y: place.y, z: place.height.mm };
};

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allowanceClasses } from '../../src/network/allowances.ts';
import { fittingAt } from '../../src/network/fitting-at.ts';
import { buildNetwork } from '../../src/network/graph.ts';
import { into } from '../../src/network/network.ts';
import { traceSystem } from '../../src/network/trace-system.ts';
import { COPPER_15, COPPER_22, COPPER_28, gasMeter, house, testKinds } from './house.ts';

const after = { option: 'o', when: 'after' } as const;
const TUBES = [COPPER_15, COPPER_22, COPPER_28];

const step = fc.record({
  from: fc.nat(1000),
  axis: fc.constantFrom(0, 1, 2),
  mm: fc.integer({ min: 1, max: 20 }).map((n) => n * 100),
  back: fc.boolean(),
  tube: fc.nat(2),
  end: fc.constantFrom('free', 'free', 'hob'),
  turned: fc.boolean(),
});

/** A tree of pipes from a meter; hobs stand at some of its ends, and `closed` extra legs make rings of it. */
function grown(
  steps: readonly (typeof step extends fc.Arbitrary<infer T> ? T : never)[],
  closed: readonly [number, number][],
) {
  const h = house().point('m', 'meter', [0, 0, 0], gasMeter).run('r').on('n0', 'm', 'outlet').node('n1', [0, 0, 500]);
  h.leg('l0', 'r', 'n0', 'n1');
  const places: [number, number, number][] = [
    [0, 0, 0],
    [0, 0, 500],
  ];
  const open = [1];
  for (const { from, axis, mm, back, tube, end, turned } of steps) {
    const start = open[from % open.length]!;
    const place: [number, number, number] = [...places[start]!];
    place[axis] += back ? -mm : mm;
    const id = places.push(place) - 1;
    if (end === 'hob') h.point(`h${id}`, 'hob', place, { gas: ['gas', [0, 0, 0], 'up'] }).on(`n${id}`, `h${id}`, 'gas');
    else {
      h.node(`n${id}`, place);
      open.push(id);
    }
    const [a, b] = turned ? [`n${id}`, `n${start}`] : [`n${start}`, `n${id}`];
    h.leg(`l${id}`, 'r', a!, b!, { tube: TUBES[tube]! });
  }
  closed.forEach(([one, other], i) => {
    const [a, b] = [open[one % open.length]!, open[other % open.length]!];
    if (a !== b) h.leg(`x${i}`, 'r', `n${a}`, `n${b}`);
  });
  return buildNetwork(h.plan, after, testKinds);
}

const steps = fc.array(step, { minLength: 1, maxLength: 25 });
const closings = fc.array(fc.tuple(fc.nat(1000), fc.nat(1000)), { maxLength: 3 });

describe('a trace', () => {
  it('puts every edge into one section that hangs on its parent, with one tube and no tee inside', () => {
    fc.assert(
      fc.property(steps, closings, (of, closed) => {
        const net = grown(of, closed);
        const trace = traceSystem(net, 'gas');
        expect([...trace.sectionOf.keys(), ...trace.unreached].sort()).toEqual([...net.edges.keys()].sort());
        expect(trace.sections.flatMap((s) => s.legs)).toHaveLength(net.edges.size - trace.unreached.length);
        const seen = new Set<string>();
        for (const section of trace.sections) {
          const parent = trace.sections.find((s) => s.id === section.parent);
          expect(section.parent === null ? section.from : parent?.to).toBe(section.from);
          if (section.parent !== null) expect(seen.has(section.parent)).toBe(true);
          seen.add(section.id);
          let here = section.from;
          section.legs.forEach((leg, i) => {
            const edge = net.edges.get(leg)!;
            expect(edge.tube).toEqual(section.tube);
            if (i > 0) expect(net.vertices.get(here)!.edges).toHaveLength(2);
            expect([edge.a, edge.b]).toContain(here);
            here = edge.a === here ? edge.b : edge.a;
          });
          expect(here).toBe(section.to);
        }
      }),
      { numRuns: 300, seed: 11 },
    );
  });

  it('feeds every end by the sections that say they serve it, and finds as many rings as there are', () => {
    fc.assert(
      fc.property(steps, closings, (of, closed) => {
        const net = grown(of, closed);
        const trace = traceSystem(net, 'gas');
        for (const end of trace.ends) {
          const path = trace.pathTo(end.vertex);
          expect(path.at(0)!.from).toBe('m/outlet');
          expect(path.at(-1)!.to).toBe(end.vertex);
          const serving = trace.sections.filter((s) => s.serves.includes(end.vertex)).map((s) => s.id);
          expect(path.map((s) => s.id).sort()).toEqual(serving.sort());
        }
        // Edges less vertices plus one: the rings of a connected net.
        expect(trace.rings).toHaveLength(net.edges.size - net.vertices.size + 1);
      }),
      { numRuns: 300, seed: 12 },
    );
  });

  it('charges each turn, change and tee on the way to an end once and no more', () => {
    fc.assert(
      fc.property(steps, (of) => {
        const net = grown(of, []);
        const trace = traceSystem(net, 'gas');
        const charged = allowanceClasses(net, trace);
        for (const end of trace.ends) {
          const legs = trace.pathTo(end.vertex).flatMap((s) => s.legs);
          const got = legs.flatMap((leg) => charged.get(leg)!).map((a) => `${a.vertex} ${a.class}`);
          const want: string[] = [];
          for (const [i, leg] of legs.entries()) {
            const edge = net.edges.get(leg)!;
            const before = i === 0 ? undefined : net.edges.get(legs[i - 1]!)!;
            const vertex = before ? [edge.a, edge.b].find((v) => v === before.a || v === before.b)! : 'm/outlet';
            const fitting = fittingAt(net, vertex);
            const u = before && into(before, vertex);
            const w = into(edge, vertex);
            const straight = u && w ? u.x * w.x + u.y * w.y + u.z * w.z < -0.99 : true;
            if (fitting.is === 'tee') want.push(`${vertex} tee-${straight ? 'run' : 'branch'}`);
            if (fitting.is === 'elbow') want.push(`${vertex} elbow90`);
            if (fitting.is === 'reducer' || (fitting.is === 'elbow' && fitting.change)) want.push(`${vertex} reducer`);
            if (fitting.is === 'unresolved') want.push(`${vertex} unresolved`);
          }
          const last = fittingAt(net, end.vertex);
          if (last.is === 'joint' && last.degrees === 90) want.push(`${end.vertex} elbow90`);
          // At a tee's own vertex two branches may be charged, but only one of them lies on this way.
          expect(got.filter((c) => legs.length > 0 && want.includes(c)).sort()).toEqual(want.sort());
          expect(got).toHaveLength(want.length);
        }
      }),
      { numRuns: 300, seed: 13 },
    );
  });

  it('gives the same answer whatever the order of the records', () => {
    fc.assert(
      fc.property(steps, closings, (of, closed) => {
        const net = grown(of, closed);
        const turn = <T>(map: Record<string, T>): Record<string, T> =>
          Object.fromEntries(Object.entries(map).reverse());
        const plan = {
          ...net.plan,
          legs: turn(net.plan.legs),
          nodes: turn(net.plan.nodes),
          points: turn(net.plan.points),
        };
        const [one, other] = [traceSystem(net, 'gas'), traceSystem(buildNetwork(plan, after, testKinds), 'gas')];
        expect(JSON.stringify(other)).toBe(JSON.stringify(one));
      }),
      { numRuns: 100, seed: 14 },
    );
  });
});

import { describe, expect, it } from 'vitest';
import { makePoint } from '../../src/catalogue/make-point.ts';
import { fittingAt } from '../../src/network/fitting-at.ts';
import { buildNetwork } from '../../src/network/graph.ts';
import { catalogueKinds } from '../../src/network/kinds.ts';
import { traceSystem } from '../../src/network/trace-system.ts';
import { house } from './house.ts';

const after = { option: null, when: 'after' } as const;

function place(h: ReturnType<typeof house>, id: string, kind: string, x: number, fields = {}) {
  const height = { from: 'floor', of: 's', mm: 1000 } as const;
  const at = { on: 'storey', x, y: 0, angleDeg: 0, height } as const;
  h.plan.points[id] = makePoint(kind, { id, storey: 's', place: at, option: null, fields });
}

describe('kinds of the catalogue in a trace', () => {
  it('flow spreads from the boiler and return gathers to it', () => {
    const h = house().run('f', 'heatingFlow').run('r', 'heatingReturn');
    place(h, 'b', 'boiler', 0);
    place(h, 'one', 'radiator', 3000);
    place(h, 'two', 'radiator', 6000);
    h.on('f0', 'b', 'flow').node('ft', [1000, 0, 0]).on('f1', 'one', 'flow').on('f2', 'two', 'flow');
    h.leg('fa', 'f', 'f0', 'ft').leg('fb', 'f', 'ft', 'f1').leg('fc', 'f', 'ft', 'f2');
    h.on('r0', 'b', 'return').node('rt', [1000, 500, 0]).on('r1', 'one', 'return').on('r2', 'two', 'return');
    h.leg('ra', 'r', 'r0', 'rt').leg('rb', 'r', 'rt', 'r1').leg('rc', 'r', 'rt', 'r2');
    const net = buildNetwork(h.plan, after);
    const flow = traceSystem(net, 'heatingFlow');
    expect(flow.ends.map((e) => e.point)).toEqual(['one', 'two']);
    expect(flow.sections.every((s) => !s.gathers && s.sound)).toBe(true);
    const back = traceSystem(net, 'heatingReturn');
    expect(back.sections.map((s) => [s.legs[0], s.gathers])).toEqual([
      ['ra', true],
      ['rb', true],
      ['rc', true],
    ]);
    expect(back.illegal.filter((i) => i.kind !== 'unresolved')).toEqual([]);
  });

  it('takes condensate and relief at an outside end, but no flow at a return', () => {
    const h = house().run('k', 'condensate').run('f', 'heatingFlow');
    place(h, 'b', 'boiler', 0);
    place(h, 'out', 'outside-end', 3000);
    expect(catalogueKinds.takes(h.plan.points.out!, 'in', 'condensate')).toBe(true);
    expect(catalogueKinds.takes(h.plan.points.out!, 'in', 'boilerRelief')).toBe(true);
    expect(catalogueKinds.takes(h.plan.points.out!, 'in', 'gas')).toBe(false);
    expect(catalogueKinds.takes(h.plan.points.b!, 'return', 'heatingFlow')).toBe(false);
  });

  it('a place marked for joining has the part it was given and no facing of its own', () => {
    const h = house().run('g');
    place(h, 'j', 'join-point', 0, { service: 'gas', part: 'source' });
    place(h, 'h', 'hob', 3000);
    h.on('n0', 'j', 'join')
      .node('n1', [0, 30, 500])
      .on('n2', 'h', 'gas')
      .leg('l1', 'g', 'n0', 'n1')
      .leg('l2', 'g', 'n1', 'n2');
    const net = buildNetwork(h.plan, after);
    expect(fittingAt(net, 'j/join')).toMatchObject({ is: 'joint', degrees: 0 });
    expect(traceSystem(net, 'gas').sources).toEqual([{ vertex: 'j/join', point: 'j', connection: 'join' }]);
  });

  it('traces balanced cold with the cold it comes from, cut where the service changes', () => {
    const h = house().run('c', 'cold').run('bc', 'balancedCold');
    place(h, 's', 'stop-tap', 0);
    h.on('n0', 's', 'outlet').node('n1', [0, 0, 2000]).node('n2', [0, 0, 2300]);
    h.leg('l1', 'c', 'n0', 'n1').leg('l2', 'bc', 'n1', 'n2');
    const trace = traceSystem(buildNetwork(h.plan, after), 'cold');
    expect(trace.sections.map((s) => s.service)).toEqual(['cold', 'balancedCold']);
    expect(trace.illegal.map((i) => i.kind)).toEqual(['deadEnd']);
  });

  it('takes preheated water at the cold tail of what heats it on, but no hot water', () => {
    const h = house().run('k', 'condensate');
    place(h, 'b', 'boiler', 0);
    place(h, 'c', 'cylinder', 3000);
    expect(catalogueKinds.takes(h.plan.points.b!, 'cold', 'preheated')).toBe(true);
    expect(catalogueKinds.takes(h.plan.points.c!, 'coldIn', 'preheated')).toBe(true);
    expect(catalogueKinds.takes(h.plan.points.b!, 'cold', 'hot')).toBe(false);
    expect(catalogueKinds.takes(h.plan.points.b!, 'hot', 'cold')).toBe(false);
  });

  it('lets a way of a diverting valve join a pipe that a heater feeds', () => {
    const joined = (kind: string, connection: string) => {
      const h = house().run('h', 'hot').run('p', 'preheated');
      place(h, 'b', 'boiler', 0);
      place(h, 'd', kind, 3000);
      h.on('n0', 'b', 'hot').node('n1', [0, 0, 500]).node('n2', [0, 0, 300]).on('n3', 'd', connection);
      h.leg('l1', 'h', 'n0', 'n1').leg('l2', 'h', 'n1', 'n2').leg('l3', 'p', 'n1', 'n3');
      return traceSystem(buildNetwork(h.plan, after), 'hot').illegal.map((i) => i.kind);
    };
    expect(joined('diverting-valve', 'b')).not.toContain('twoSources');
    expect(joined('preheat-vessel', 'out')).toContain('twoSources');
  });
});

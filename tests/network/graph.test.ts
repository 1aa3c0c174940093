import { describe, expect, it } from 'vitest';
import { buildNetwork } from '../../src/network/graph.ts';
import { orderedLegs } from '../../src/network/runs.ts';
import { gasMeter, gasTail, house, testKinds } from './house.ts';

const after = { option: 'o', when: 'after' } as const;
const network = (h: ReturnType<typeof house>) => buildNetwork(h.plan, after, testKinds);

describe('the graph', () => {
  it('makes one vertex of the nodes on one connection', () => {
    const h = house().point('m', 'meter', [0, 0, 500], gasMeter).run('r').run('q');
    h.on('n1', 'm', 'outlet').on('n2', 'm', 'outlet').node('n3', [0, 0, 2000]).node('n4', [500, 0, 500]);
    h.leg('a', 'r', 'n1', 'n3').leg('b', 'q', 'n2', 'n4');
    const net = network(h);
    expect(net.vertices.get('m/outlet')).toMatchObject({
      nodes: ['n1', 'n2'],
      edges: ['a', 'b'],
      point: 'm',
      service: 'gas',
    });
    expect(net.vertexOf.get('n2')).toBe('m/outlet');
    expect(net.vertices.get('m/outlet')?.facing).toEqual({ x: 0, y: 0, z: 1 });
  });

  it('gives lengths and the ways out of both ends', () => {
    const h = house().run('r').node('p', [0, 0, 0]).node('q', [3000, 4000, 0]).leg('a', 'r', 'p', 'q');
    const edge = network(h).edges.get('a')!;
    expect(edge.lengthMm).toEqual({ lo: 5000, hi: 5000, value: 5000 });
    expect(edge.intoA).toEqual({ x: 0.6, y: 0.8, z: 0 });
    expect(edge.intoB!.x).toBeCloseTo(-0.6, 12);
  });

  it('bounds what is unseen or has no place, and never guesses a figure', () => {
    const h = house().run('r').node('p', [0, 0, 0]).node('q', [0, 0, 0]).node('x', [0, 0, 0]);
    h.plan.nodes.x!.place = { on: 'connection', point: 'nothing', connection: 'no' };
    h.stretch('s1', 'r', 'p', 'q').leg('b', 'r', 'q', 'x');
    const net = network(h);
    expect(net.edges.get('s1')).toMatchObject({
      lengthMm: { lo: 2000, hi: 3000, value: null },
      bends: { lo: 1, hi: 3 },
      intoA: null,
    });
    expect(net.edges.get('b')).toMatchObject({ lengthMm: { lo: 0, hi: null, value: null }, intoA: null });
  });

  it('puts a cap where a pipe that is cut off met a live one, and nowhere else', () => {
    const h = house().run('r').run('off');
    h.node('p', [0, 0, 0]).node('q', [1000, 0, 0]).node('t', [2000, 0, 0]).node('u', [2000, 500, 0]);
    h.leg('a', 'r', 'p', 'q').leg('c1', 'off', 'q', 't').leg('c2', 'off', 't', 'u');
    h.plan.options.o!.fates = { off: 'cap' };
    const net = network(h);
    expect([...net.vertices.values()].filter((v) => v.capped).map((v) => v.id)).toEqual(['q']);
    expect(buildNetwork(h.plan, { option: 'o', when: 'before' }, testKinds).vertices.get('q')!.capped).toBe(false);
  });

  it('says where what a pipe hung on has gone', () => {
    const h = house()
      .point('old', 'boiler', [0, 0, 1000], gasTail)
      .run('r')
      .on('n1', 'old', 'gas')
      .node('n2', [0, 0, 0]);
    h.leg('a', 'r', 'n2', 'n1');
    h.plan.options.o!.fates = { old: 'strip' };
    expect(network(h).vertices.get('old/gas')).toMatchObject({
      point: null,
      gone: { point: 'old', connection: 'gas' },
    });
  });
});

describe('a run as it is told', () => {
  it('starts at the source however its legs were drawn', () => {
    const h = house().point('m', 'meter', [0, 0, 0], gasMeter).point('b', 'boiler', [4000, 0, 0], gasTail).run('r');
    h.on('n0', 'm', 'outlet').node('n1', [0, 0, 2000]).node('n2', [4000, 0, 2000]).on('n3', 'b', 'gas');
    h.leg('z', 'r', 'n3', 'n2').leg('y', 'r', 'n1', 'n2').leg('x', 'r', 'n1', 'n0');
    const told = orderedLegs(network(h), 'r');
    expect(told.steps.map((s) => s.edge)).toEqual(['x', 'y', 'z']);
    expect([told.start, told.end, told.aside]).toEqual(['m/outlet', 'b/gas', []]);
  });

  it('starts a branch at its tee and leaves an unfinished end last', () => {
    const h = house().run('r').run('branch');
    h.node('n1', [0, 0, 0]).node('n2', [1000, 0, 0]).node('n3', [2000, 0, 0]).node('n4', [1000, 500, 0]);
    h.leg('a', 'r', 'n1', 'n2').leg('b', 'r', 'n2', 'n3').leg('c', 'branch', 'n4', 'n2');
    expect(orderedLegs(network(h), 'branch').steps).toEqual([{ edge: 'c', from: 'n2', to: 'n4' }]);
  });

  it('says so where a run branches or lies in pieces, going straight on', () => {
    const h = house().run('r');
    h.node('n1', [0, 0, 0]).node('n2', [1000, 0, 0]).node('n3', [2000, 0, 0]).node('n4', [1000, 500, 0]);
    h.node('n5', [9000, 0, 0]).node('n6', [9500, 0, 0]);
    h.leg('a', 'r', 'n1', 'n2').leg('c', 'r', 'n2', 'n3').leg('b', 'r', 'n2', 'n4').leg('d', 'r', 'n5', 'n6');
    const told = orderedLegs(network(h), 'r');
    expect(told.steps.map((s) => s.edge)).toEqual(['a', 'c']);
    expect(told.aside).toEqual(['b', 'd']);
  });
});

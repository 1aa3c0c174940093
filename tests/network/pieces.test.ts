import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fittingAt } from '../../src/network/fitting-at.ts';
import { buildNetwork } from '../../src/network/graph.ts';
import { piecesOf } from '../../src/network/pieces.ts';
import type { Tube } from '../../src/plan/records/pipework.ts';
import { COPPER_15, COPPER_22, COPPER_28, gasMeter, gasTail, house, testKinds } from './house.ts';

const after = { option: 'o', when: 'after' } as const;
const network = (h: ReturnType<typeof house>) => buildNetwork(h.plan, after, testKinds);
const said = (h: ReturnType<typeof house>) =>
  piecesOf(network(h)).map((p) => (p.unit === 'mm' ? `${p.amount} mm ${p.size} ${p.name}` : `${p.size} ${p.name}`));

describe('pieces', () => {
  it('count tube between centres, one piece from fitting to fitting, however many legs it was drawn in', () => {
    const h = house()
      .run('r')
      .node('a', [0, 0, 0])
      .node('b', [700, 0, 0])
      .node('c', [2000, 0, 0])
      .node('d', [2000, 500, 0]);
    h.line('r', ['a', 'b', 'c', 'd']);
    expect(said(h)).toEqual(['2000 mm 22 copper tube', '500 mm 22 copper tube', '22 end feed elbow']);
  });

  it('leave out bends pulled in the tube, through which it goes on', () => {
    const h = house()
      .run('r', 'gas', { turns: 'bend' })
      .node('a', [0, 0, 0])
      .node('b', [700, 0, 0])
      .node('c', [700, 900, 0]);
    h.line('r', ['a', 'b', 'c']);
    expect(said(h)).toEqual(['1600 mm 22 copper tube']);
  });

  it('put a reducer into the socket of the larger elbow, and into a coupler where there is none', () => {
    const h = house()
      .run('r')
      .node('a', [0, 0, 0])
      .node('b', [700, 0, 0])
      .node('c', [700, 900, 0])
      .node('d', [700, 1800, 0]);
    h.leg('l1', 'r', 'a', 'b', { tube: COPPER_28 })
      .leg('l2', 'r', 'b', 'c')
      .leg('l3', 'r', 'c', 'd', { tube: COPPER_15 });
    expect(said(h).slice(3)).toEqual([
      '28 end feed elbow',
      '28 x 22 end feed reducer',
      '22 end feed straight coupler',
      '22 x 15 end feed reducer',
    ]);
  });

  it('name a tee in trade order with its words', () => {
    const h = house()
      .run('r')
      .node('c', [0, 0, 0])
      .node('a', [-500, 0, 0])
      .node('b', [500, 0, 0])
      .node('d', [0, 400, 0]);
    h.leg('l1', 'r', 'a', 'c').leg('l2', 'r', 'c', 'b', { tube: COPPER_15 }).leg('l3', 'r', 'c', 'd');
    const tee = piecesOf(network(h)).find((p) => p.kind === 'tee')!;
    expect([tee.size, tee.name]).toEqual(['22 x 15 x 22', 'end feed reduced end tee']);
    expect(tee.note).toBe('tee 22 x 15 x 22, ends 22 and 15, branch 22 (reduced end)');
    expect(tee.ends.map((e) => e.size)).toEqual(['22', '15', '22']);
  });

  it('join a connection by its own size', () => {
    const onto = (size: string | null, tube: Tube, kind = 'boiler') => {
      const h = house().point('b', kind, [0, 0, 1000], gasTail).run('r').on('n1', 'b', 'gas').node('n2', [0, 0, 0]);
      h.plan.points.b!.connections[0]!.size = size;
      h.leg('l', 'r', 'n1', 'n2', { tube });
      return piecesOf(network(h)).slice(1);
    };
    expect(onto('22', COPPER_22)).toEqual([]);
    expect(onto('22', COPPER_15).map((p) => `${p.size} ${p.kind}`)).toEqual(['22 x 15 reducer']);
    expect(onto('22', COPPER_28).map((p) => `${p.size} ${p.kind}`)).toEqual(['28 coupler', '28 x 22 reducer']);
    expect(onto('1/2', COPPER_15, 'basin-taps').map((p) => `${p.size} ${p.kind}`)).toEqual(['15 x 1/2 tap-connector']);
    expect(onto('3/4', COPPER_22).map((p) => p.kind)).toEqual(['female-iron']);
    expect(onto(null, COPPER_22).map((p) => p.unresolved)).toEqual(['The size of the connection of b is not told.']);
  });

  it('couple new pipe to old, cap what is cut off, and mark what is there', () => {
    const h = house().run('old').run('cut').run('new', 'gas', { option: 'o', joining: 'press' });
    h.node('a', [0, 0, 0])
      .node('b', [1000, 0, 0])
      .node('c', [2000, 0, 0])
      .node('d', [1000, 500, 0])
      .node('e', [3000, 0, 0]);
    h.line('old', ['a', 'b', 'c'])
      .leg('x', 'cut', 'b', 'd', { tube: COPPER_15 })
      .leg('n', 'new', 'c', 'e', { option: 'o' });
    h.plan.options.o!.fates = { cut: 'cap' };
    const pieces = piecesOf(network(h)).map((p) => `${p.state} ${p.size} ${p.name}`);
    expect(pieces).toEqual([
      'new 22 copper tube',
      'there 22 copper tube',
      'new 15 end feed stop end',
      'new 22 press straight coupler',
    ]);
  });

  it('say what is not decided instead of guessing', () => {
    const h = house().run('r').node('c', [0, 0, 0]);
    for (const [i, to] of [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
    ].entries())
      h.node(`n${i}`, [to[0]! * 500, to[1]! * 500, 0]).leg(`l${i}`, 'r', 'c', `n${i}`);
    h.node('far', [500, 900, 0]).leg('k', 'r', 'n0', 'far', { tube: { kind: 'copper', size: null } });
    const open = piecesOf(network(h)).filter((p) => p.unresolved !== null);
    expect(open.map((p) => p.kind)).toEqual(['tube-copper', 'undecided', 'reducer']);
    expect(open.find((p) => p.kind === 'undecided')!.unresolved).toContain('Crosses are not stocked');
    expect(open.find((p) => p.kind === 'reducer')!.unresolved).toBe('The size of a pipe here is not known.');
  });

  it('put valves between the pipes they stand in', () => {
    const h = house()
      .run('r')
      .node('a', [0, 0, 0])
      .node('b', [700, 0, 0])
      .node('c', [2000, 0, 0])
      .line('r', ['a', 'b', 'c']);
    h.item('v', 'b', 'gas-cock');
    const pieces = piecesOf(network(h));
    expect(pieces.map((p) => p.amount)).toEqual([700, 1300, 1]);
    expect(pieces[2]!.ends.map((e) => `${e.form} ${e.size}`)).toEqual(['socket 22', 'socket 22']);
  });
});

describe('mating ends', () => {
  const TUBES = [COPPER_15, COPPER_22, COPPER_28];
  const step = fc.record({
    from: fc.nat(100),
    axis: fc.constantFrom(0, 1, 2),
    mm: fc.integer({ min: 100, max: 2000 }),
    back: fc.boolean(),
    tube: fc.nat(2),
  });

  it('every plain end finds a socket of its size, but for open ends and the tails of points', () => {
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 12 }), (steps) => {
        const h = house()
          .point('m', 'gas-meter', [0, 0, 0], gasMeter)
          .run('r')
          .on('n0', 'm', 'outlet')
          .node('n1', [0, 0, 500]);
        h.leg('l0', 'r', 'n0', 'n1');
        const places: [number, number, number][] = [
          [0, 0, 0],
          [0, 0, 500],
        ];
        for (const { from, axis, mm, back, tube } of steps) {
          const start = 1 + (from % (places.length - 1));
          const place: [number, number, number] = [...places[start]!];
          place[axis] += back ? -mm : mm;
          const id = places.push(place) - 1;
          h.node(`n${id}`, place).leg(`l${id}`, 'r', `n${start}`, `n${id}`, { tube: TUBES[tube]! });
        }
        const net = network(h);
        const left = new Map<string, number>();
        const count = (size: string, n: number) => left.set(size, (left.get(size) ?? 0) + n);
        for (const end of piecesOf(net).flatMap((p) => p.ends)) count(end.size, end.form === 'spigot' ? 1 : -1);
        for (const id of net.vertices.keys()) {
          const fitting = fittingAt(net, id);
          const free =
            fitting.is === 'open' || fitting.is === 'joint' || fitting.is === 'unresolved' ? fitting.edges : [];
          for (const edge of free) count(net.edges.get(edge)!.tube.size!.split('x')[0]!, -1);
        }
        expect([...left.values()].every((n) => n === 0)).toBe(true);
      }),
      { numRuns: 400, seed: 3 },
    );
  });
});

import { describe, expect, it } from 'vitest';
import { allowanceClasses } from '../../src/network/allowances.ts';
import { bendCount } from '../../src/network/bends.ts';
import { buildNetwork } from '../../src/network/graph.ts';
import { traceSystem } from '../../src/network/trace-system.ts';
import { COPPER_15, COPPER_28, gasMeter, gasTail, house, testKinds } from './house.ts';

const after = { option: 'o', when: 'after' } as const;
const network = (h: ReturnType<typeof house>) => buildNetwork(h.plan, after, testKinds);

/** Meter up to a void, along in 28 to a tee; 22 on, down beside the boiler and up into it; 15 down to the hob. */
function gasHouse() {
  const h = house().run('main').run('hob');
  h.point('m', 'meter', [0, 0, 500], gasMeter).point('b', 'boiler', [6000, 2000, 1500], gasTail);
  h.point('h', 'hob', [3000, 0, 900], { gas: ['gas', [0, 0, 0], 'up'] });
  h.on('n0', 'm', 'outlet').node('n1', [0, 0, 2500]).node('n2', [3000, 0, 2500]).node('n3', [6000, 0, 2500]);
  h.node('n4', [6000, 0, 1200]).node('n5', [6000, 2000, 1200]).on('n6', 'b', 'gas').on('n7', 'h', 'gas');
  h.line('main', ['n0', 'n1', 'n2'], { tube: COPPER_28 });
  h.leg('main3', 'main', 'n2', 'n3').leg('main4', 'main', 'n4', 'n3').leg('main5', 'main', 'n4', 'n5');
  h.leg('main6', 'main', 'n5', 'n6').leg('hob1', 'hob', 'n7', 'n2', { tube: COPPER_15 });
  return h;
}

describe('tracing a tree', () => {
  it('cuts sections at every tee and size, told from the source', () => {
    const h = gasHouse();
    const trace = traceSystem(network(h), 'gas');
    expect(trace.sections.map((s) => s.legs)).toEqual([
      ['main1', 'main2'],
      ['hob1'],
      ['main3', 'main4', 'main5', 'main6'],
    ]);
    expect(trace.sections.map((s) => s.parent)).toEqual([null, 'main1', 'main1']);
    expect(trace.sections[0]).toMatchObject({
      id: 'main1',
      from: 'm/outlet',
      to: 'n2',
      tube: COPPER_28,
      serves: ['b/gas', 'h/gas'],
    });
    expect(trace.sections[0]!.lengthMm).toEqual({ lo: 5000, hi: 5000, value: 5000 });
    expect(trace.pathTo('b/gas').map((s) => s.id)).toEqual(['main1', 'main3']);
    expect(trace.pathTo('n4').map((s) => s.id)).toEqual(['main1', 'main3']);
    expect(trace.pathTo('m/outlet')).toEqual([]);
    expect(trace.unreached).toEqual([]);
  });

  it('charges every fitting on a way once, to the leg it serves', () => {
    const h = gasHouse();
    const net = network(h);
    const charged = allowanceClasses(net, traceSystem(net, 'gas'));
    const classes = (edge: string) => charged.get(edge)!.map((a) => `${a.class} ${a.tube.size}`);
    expect(classes('main1')).toEqual([]);
    expect(classes('main2')).toEqual(['elbow90 28x0.9']);
    expect(classes('main3')).toEqual(['tee-run 22x0.9']);
    expect(classes('hob1')).toEqual(['tee-branch 15x0.7']);
    expect(classes('main4')).toEqual(['elbow90 22x0.9']);
    expect(classes('main5')).toEqual(['elbow90 22x0.9']);
    expect(classes('main6')).toEqual(['elbow90 22x0.9']);
    expect(charged.get('hob1')![0]).toMatchObject({ flow: 'dividing', vertex: 'n2' });
  });

  it('cuts at a size change and where pipe is unseen', () => {
    const h = house().point('m', 'meter', [0, 0, 0], gasMeter).point('b', 'boiler', [0, 0, 9000], gasTail).run('r');
    h.on('n0', 'm', 'outlet')
      .node('n1', [0, 0, 1000])
      .node('n2', [0, 0, 2000])
      .node('n3', [0, 0, 4000])
      .on('n4', 'b', 'gas');
    h.leg('a', 'r', 'n0', 'n1', { tube: COPPER_28 })
      .leg('b', 'r', 'n1', 'n2')
      .stretch('c', 'r', 'n2', 'n3')
      .leg('d', 'r', 'n3', 'n4');
    const net = network(h);
    const trace = traceSystem(net, 'gas');
    expect(trace.sections.map((s) => [s.id, s.kind])).toEqual([
      ['a', 'leg'],
      ['b', 'leg'],
      ['c', 'stretch'],
      ['d', 'leg'],
    ]);
    expect(trace.pathTo('b/gas').map((s) => s.lengthMm.hi)).toEqual([1000, 1000, 3000, 5000]);
    expect(allowanceClasses(net, trace).get('b')).toEqual([
      { class: 'reducer', tube: { kind: 'copper', size: '22x0.9' }, vertex: 'n1', flow: null },
    ]);
  });

  it('gathers many into one where the service does, in the way it flows', () => {
    const h = house().run('r1', 'heatingReturn').run('r2', 'heatingReturn');
    const into = { back: ['heatingReturn', [0, 0, 0], 'up'] } as const;
    const tails = { back: [...into.back] as ['heatingReturn', [number, number, number], 'up'] };
    h.point('rad1', 'meter', [0, 0, 0], tails)
      .point('rad2', 'meter', [1000, 0, 0], tails)
      .point('b', 'boiler', [5000, 0, 0], tails);
    h.on('a', 'rad1', 'back')
      .on('b0', 'rad2', 'back')
      .on('c', 'b', 'back')
      .node('t0', [0, 0, 500])
      .node('t', [1000, 0, 500])
      .node('u', [5000, 0, 500]);
    h.line('r1', ['a', 't0', 't', 'u', 'c']).line('r2', ['b0', 't']);
    const net = network(h);
    const trace = traceSystem(net, 'heatingReturn');
    expect(trace.illegal).toEqual([]);
    expect(trace.pathTo('rad1/back').map((s) => s.legs)).toEqual([
      ['r11', 'r12'],
      ['r13', 'r14'],
    ]);
    expect(trace.sections.find((s) => s.id === 'r13')).toMatchObject({
      from: 't',
      to: 'b/back',
      gathers: true,
      parent: null,
    });
    const charged = allowanceClasses(net, trace);
    expect(charged.get('r21')).toMatchObject([{ class: 'tee-branch', flow: 'combining' }]);
    expect(charged.get('r12')).toMatchObject([{ class: 'tee-run', flow: 'combining' }]);
    expect(charged.get('r11')).toMatchObject([{ class: 'elbow90' }]);
  });
});

describe('what cannot stay as drawn', () => {
  const kinds = (h: ReturnType<typeof house>, circuit = 'gas') =>
    traceSystem(network(h), circuit).illegal.map((i) => i.kind);

  it('is nothing in a sound house', () => {
    expect(kinds(gasHouse())).toEqual([]);
  });

  it('a ring is flagged, and still traced by the shorter way', () => {
    const h = gasHouse();
    h.node('r1', [3000, 0, 1200]).leg('ring1', 'main', 'n2', 'r1').leg('ring2', 'main', 'r1', 'n4');
    const trace = traceSystem(network(h), 'gas');
    expect(trace.illegal.map((i) => i.kind)).toContain('ring');
    expect(trace.rings).toHaveLength(1);
    expect(trace.rings[0]!.edges).toEqual(['main3', 'main4', 'ring1', 'ring2']);
    expect(trace.pathTo('b/gas')).not.toEqual([]);
    expect(
      trace.sections
        .filter((s) => s.onRing)
        .flatMap((s) => s.legs)
        .sort(),
    ).toEqual(['main3', 'main4', 'ring1', 'ring2']);
    expect(trace.sections.every((s) => s.sound)).toBe(true);
  });

  it('two meters on the same pipes have no figures, and a third apart from them has', () => {
    const h = gasHouse();
    h.point('m2', 'meter', [9000, 0, 0], gasMeter).on('x0', 'm2', 'outlet').leg('x1', 'main', 'x0', 'n3');
    h.point('m3', 'meter', [0, 9000, 0], gasMeter).point('h3', 'hob', [0, 9000, 2000], gasTail).run('own');
    h.on('y0', 'm3', 'outlet').on('y1', 'h3', 'gas').leg('y', 'own', 'y0', 'y1');
    const trace = traceSystem(network(h), 'gas');
    expect(trace.illegal.find((i) => i.kind === 'twoSources')).toMatchObject({ points: ['m', 'm2'] });
    expect(trace.sections.filter((s) => !s.sound).length).toBeGreaterThan(2);
    expect(trace.sections.find((s) => s.id === 'y')!.sound).toBe(true);
  });

  it('two services at one place have no figures', () => {
    const h = gasHouse();
    h.run('cold', 'cold').node('w', [0, 5000, 2500]).leg('cold1', 'cold', 'w', 'n1');
    const trace = traceSystem(network(h), 'gas');
    expect(trace.illegal.find((i) => i.kind === 'twoServices')).toMatchObject({
      vertices: ['n1'],
      runs: ['cold', 'main'],
    });
    expect(trace.sections.some((s) => s.sound)).toBe(false);
  });

  it('a pipe on a connection of another service is named', () => {
    const h = gasHouse();
    h.plan.points.b!.connections[0]!.service = 'hot';
    expect(kinds(h)).toContain('wrongConnection');
  });

  it('an unfinished end and pipe without a source are named', () => {
    const h = gasHouse();
    delete h.plan.legs.main6;
    h.run('lost').node('z0', [0, 8000, 0]).node('z1', [0, 9000, 0]).leg('lost1', 'lost', 'z0', 'z1');
    const trace = traceSystem(network(h), 'gas');
    expect(trace.deadEnds).toEqual([
      { vertex: 'n5', why: 'open' },
      { vertex: 'z0', why: 'open' },
      { vertex: 'z1', why: 'open' },
    ]);
    expect(trace.unreached).toEqual(['lost1']);
    expect(trace.illegal.find((i) => i.kind === 'noSource')).toMatchObject({ runs: ['lost'], edges: ['lost1'] });
  });

  it('a size nobody read is named', () => {
    const h = gasHouse();
    h.plan.legs.hob1!.tube = { kind: 'copper', size: null };
    expect(kinds(h)).toContain('sizeUnknown');
  });
});

describe('turns of a run', () => {
  it('are counted whole and between places that come apart', () => {
    const h = gasHouse();
    h.item('u', 'n3', 'union');
    const count = bendCount(network(h), 'main');
    expect(count).toMatchObject({ total90: 4, total45: 0, unresolved: 0 });
    expect(count.betweenOpenable.map((b) => [b.from, b.to, b.total90])).toEqual([
      ['m/outlet', 'n3', 2],
      ['n3', 'b/gas', 2],
    ]);
  });

  it('bound the turns of unseen pipe', () => {
    const h = house().run('r').node('a', [0, 0, 0]).node('b', [0, 0, 0]).stretch('s1', 'r', 'a', 'b');
    expect(bendCount(network(h), 'r')).toMatchObject({ total90: 0, unseen: { lo: 1, hi: 3 } });
  });
});

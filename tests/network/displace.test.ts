import { describe, expect, it } from 'vitest';
import type { Changes, Displaced, Move } from '../../src/network/displace/changes.ts';
import { displace, followHosts } from '../../src/network/displace/displace.ts';
import { countingIds } from '../../src/plan/ids.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { applied, expectJoined, expectWaysKept, placeOf } from './displace-laws.ts';
import { at, gasMeter, gasTail, house } from './house.ts';

const options = () => ({ ids: countingIds(new Set(), 100) });
const go = (plan: Plan, ...moves: Move[]): Displaced => displace(plan, moves, options());
function changed(answer: Displaced): Changes {
  if (!answer.ok) throw new Error(answer.why);
  return answer.changes;
}
const why = (answer: Displaced): string => (answer.ok ? 'moved' : answer.why);

/** Meter, up, along x, along y, down, into the boiler's tail from beneath. All new. */
function gasRun() {
  const h = house().run('g', 'gas', { option: 'o', name: 'gas' });
  h.point('m', 'gas-meter', [0, 0, 500], gasMeter).point('b', 'boiler', [6000, 2000, 1500], gasTail, { option: 'o' });
  h.on('n0', 'm', 'outlet').node('n1', [0, 0, 2500]).node('n2', [6000, 0, 2500]).node('n3', [6000, 2000, 2500]);
  h.plan.nodes.n3!.place = {
    on: 'storey',
    storey: 's',
    x: 6000,
    y: 1500,
    height: { from: 'ceiling', of: 's', mm: 100 },
  };
  h.node('n4', [6000, 1500, 1200]).node('n5', [6000, 2000, 1200]).on('n6', 'b', 'gas');
  return h.line('g', ['n0', 'n1', 'n2', 'n3', 'n4', 'n5', 'n6'], { option: 'o' });
}

describe('moving a boiler', () => {
  it('makes the legs along the move longer and takes those across it with them', () => {
    const { plan } = gasRun();
    const changes = changed(go(plan, { point: 'b', by: { x: 300, y: -200, z: 50 } }));
    const after = applied(plan, changes);
    expect(changes.points.b!.place).toMatchObject({ x: 6300, y: 1800 });
    expect(at(after, 'n2')).toEqual({ x: 6300, y: 0, z: 2500 });
    expect(placeOf(after, 'n3')).toEqual({ x: 6300, y: 1500, z: 2500 });
    expect(at(after, 'n5')).toEqual({ x: 6300, y: 1800, z: 1200 });
    expect(Object.keys(changes.nodes).sort()).toEqual(['n2', 'n3', 'n4', 'n5']);
    expect(changes.addedLegs).toEqual([]);
    expectJoined(plan, after);
    expectWaysKept(plan, after);
  });

  it('slides a point that hangs on a wall along it, told from either end and either side', () => {
    for (const side of ['left', 'right'] as const) {
      for (const from of ['a', 'b'] as const) {
        const { plan } = gasRun();
        const wall = {
          storey: 's',
          a: { x: 0, y: 3000 },
          b: { x: 9000, y: 3000 },
          thicknessMm: 100,
          construction: '',
          heightMm: null,
        };
        plan.walls.w = { id: 'w', ...wall, option: null, sureness: 'seen' };
        const height = { from: 'floor', of: 's', mm: 1500 } as const;
        plan.points.b!.place = { on: 'wall', wall: 'w', side, from, alongMm: 4000, standOffMm: 0, height };
        plan.nodes.n6!.place = { on: 'storey', storey: 's', x: 1, y: 1, height };
        const h = {
          ...plan,
          legs: {},
          nodes: { q: { ...plan.nodes.n6!, id: 'q', place: { on: 'connection', point: 'b', connection: 'gas' } } },
        } as Plan;
        const was = placeOf(h, 'q');
        const after = applied(h, changed(go(h, { point: 'b', by: { x: 250, y: 0, z: 10 } })));
        expect(placeOf(after, 'q').x - was.x).toBeCloseTo(250, 9);
        expect(placeOf(after, 'q').z - was.z).toBeCloseTo(10, 9);
      }
    }
  });

  it('keeps what a height is measured from', () => {
    const { plan } = gasRun();
    const changes = changed(go(plan, { node: 'n3', by: { x: 0, y: 0, z: 150 } }));
    expect(changes.nodes.n3!.place).toMatchObject({ height: { from: 'ceiling', of: 's', mm: 250 } });
    expect(changes.nodes.n2!.place).toMatchObject({ height: { from: 'floor', of: 's', mm: 2650 } });
  });

  it('moves the branches of a tee by the same law', () => {
    const h = gasRun();
    h.run('hob', 'gas', { option: 'o' })
      .node('t', [3000, 0, 2500])
      .node('t1', [3000, 0, 900])
      .node('t2', [3000, 700, 900]);
    h.plan.legs.g2!.b = 't';
    h.leg('g2b', 'g', 't', 'n2', { option: 'o' }).line('hob', ['t', 't1', 't2'], { option: 'o' });
    const after = applied(h.plan, changed(go(h.plan, { node: 't', by: { x: 400, y: 0, z: -100 } })));
    expect(at(after, 't1')).toEqual({ x: 3400, y: 0, z: 900 });
    expect(at(after, 't2')).toEqual({ x: 3400, y: 700, z: 900 });
    expect(at(after, 'n2').z).toBe(2400);
    expectWaysKept(h.plan, after);
  });

  it('puts what is left over into one jog, in the nearest leg with room for it', () => {
    const h = house().run('g', 'gas', { option: 'o', name: 'gas' });
    h.point('m', 'gas-meter', [0, 0, 500], gasMeter).point('b', 'boiler', [4000, 0, 1500], gasTail, { option: 'o' });
    h.on('n0', 'm', 'outlet').node('n1', [0, 0, 900]).node('n2', [4000, 0, 900]).on('n3', 'b', 'gas');
    h.line('g', ['n0', 'n1', 'n2', 'n3'], { option: 'o' });
    const changes = changed(go(h.plan, { point: 'b', by: { x: 0, y: 700, z: 0 } }));
    const after = applied(h.plan, changes);
    // The tail has 600 to give and the jog is 700, so the level leg takes it.
    expect(changes.addedLegs).toHaveLength(2);
    expect(changes.addedNodes.map((n) => at(after, n.id))).toEqual([
      { x: 2000, y: 0, z: 900 },
      { x: 2000, y: 700, z: 900 },
    ]);
    expect(at(after, 'n2')).toEqual({ x: 4000, y: 700, z: 900 });
    expect(at(after, 'n1')).toEqual({ x: 0, y: 0, z: 900 });
    expect(changes.addedLegs.every((l) => l.option === 'o' && l.run === 'g')).toBe(true);
    expectJoined(h.plan, after);
  });

  it('refuses in words what one jog cannot do', () => {
    const h = house().run('g', 'gas', { option: 'o', name: 'gas' });
    h.point('m', 'gas-meter', [0, 0, 500], gasMeter).point('b', 'boiler', [0, 0, 1500], gasTail, { option: 'o' });
    h.on('n0', 'm', 'outlet').on('n1', 'b', 'gas').line('g', ['n0', 'n1'], { option: 'o' });
    expect(go(h.plan, { point: 'b', by: { x: 50, y: 0, z: 0 } }).ok).toBe(true);
    // A riser can step aside both ways at once.
    expect(changed(go(h.plan, { point: 'b', by: { x: 50, y: 60, z: 0 } })).addedLegs).toHaveLength(2);
    expect(why(go(h.plan, { point: 'b', by: { x: 0, y: 0, z: -1500 } }))).toContain(
      'against the way its connection faces',
    );
    expect(why(go(h.plan, { point: 'b', by: { x: 0, y: 0, z: -1000 } }))).toContain('nothing would be left of it');
  });
});

describe('moving a leg between two held ends', () => {
  it('takes a jog on either side of it', () => {
    const h = house().run('f', 'heatingFlow', { option: 'o' });
    const up = { a: ['heatingFlow', [0, 0, 0], 'up'] } satisfies Parameters<typeof h.point>[3];
    h.point('p', 'old-tails', [0, 0, 500], up).point('q', 'old-tails', [3000, 0, 500], up);
    h.on('n0', 'p', 'a').node('n1', [0, 0, 1500]).node('n2', [3000, 0, 1500]).on('n3', 'q', 'a');
    h.line('f', ['n0', 'n1', 'n2', 'n3'], { option: 'o' });
    const changes = changed(go(h.plan, { leg: 'f2', by: { x: 0, y: 80, z: 0 } }));
    const after = applied(h.plan, changes);
    expect(changes.addedLegs).toHaveLength(4);
    expect([at(after, 'n1').y, at(after, 'n2').y]).toEqual([80, 80]);
    expect([placeOf(after, 'n0').y, placeOf(after, 'n3').y]).toEqual([0, 0]);
    expectJoined(h.plan, after);
    expectWaysKept(h.plan, after);
  });
});

describe('what stays', () => {
  /** New pipe from a tee into pipe that was there. */
  function onOld(seen: 'seen' | 'assumed') {
    const h = house().run('old', 'gas').run('new', 'gas', { option: 'o', name: 'new gas' });
    h.node('a', [0, 0, 0]).node('t', [1000, 0, 0]).node('c', [2000, 0, 0]);
    h.leg('l1', 'old', 'a', 't', { sureness: seen }).leg('l2', 'old', 't', 'c', { sureness: seen });
    h.node('d', [1000, 800, 0]).node('e', [1000, 800, 500]);
    return h.line('new', ['t', 'd', 'e'], { option: 'o' });
  }

  it('seen pipe that was there stays where new pipe is moved', () => {
    const h = onOld('seen');
    const after = applied(h.plan, changed(go(h.plan, { node: 'd', by: { x: 0, y: 0, z: 100 } })));
    expect(at(after, 't')).toEqual({ x: 1000, y: 0, z: 0 });
    expect(Object.keys(after.legs)).toHaveLength(6);
    const refused = go(h.plan, { node: 't', by: { x: 0, y: 0, z: 10 } });
    expect(why(refused)).toBe('Pipe that was there meets this corner, so it stays.');
  });

  it('new pipe can come off old pipe further along, but not where something stands, nor past the end of it', () => {
    const h = onOld('seen');
    const after = applied(h.plan, changed(go(h.plan, { node: 'd', by: { x: 100, y: 0, z: 0 } })));
    expect(at(after, 't')).toEqual({ x: 1100, y: 0, z: 0 });
    expect([at(after, 'a').x, at(after, 'c').x]).toEqual([0, 2000]);
    expect(why(go(h.plan, { node: 't', by: { x: 100, y: 0, z: 0 } }))).toBe('moved');
    expect(why(go(h.plan, { node: 't', by: { x: 1100, y: 0, z: 0 } }))).toContain('double back');
    h.item('v', 't', 'gas-cock');
    // As in the editor: other records, another map.
    h.plan.items = { ...h.plan.items };
    expect(why(go(h.plan, { node: 't', by: { x: 100, y: 0, z: 0 } }))).toContain('stays');
  });

  it('assumed pipe goes along', () => {
    const h = onOld('assumed');
    const after = applied(h.plan, changed(go(h.plan, { leg: 'new1', by: { x: 100, y: 0, z: 0 } })));
    expect(at(after, 't')).toEqual({ x: 1100, y: 0, z: 0 });
    expect(at(after, 'a')).toEqual({ x: 0, y: 0, z: 0 });
  });

  it('a survey that is put right moves what was seen', () => {
    const h = onOld('seen');
    const after = applied(h.plan, changed(go(h.plan, { leg: 'l1', by: { x: 0, y: 50, z: 0 } })));
    expect(at(after, 't').y).toBe(50);
    expect(at(after, 'c').y).toBe(50);
    expect(at(after, 'd').y).toBe(800);
  });

  it('an end on a connection is moved with its point only', () => {
    const { plan } = gasRun();
    expect(why(go(plan, { node: 'n6', by: { x: 10, y: 0, z: 0 } }))).toBe(
      'That end is a connection of b: move the point.',
    );
  });
});

describe('legs of no length', () => {
  it('go, and their two corners become one with everything that hung on both', () => {
    const h = gasRun();
    h.item('v', 'n4', 'gas-cock');
    h.plan.items.v!.along = 'g5';
    h.stretch('s1', 'g', 'n4', 'n1', { option: 'o' });
    const changes = changed(go(h.plan, { point: 'b', by: { x: 0, y: -500, z: 0 } }));
    const after = applied(h.plan, changes);
    expect(changes.removedLegs).toEqual(['g5']);
    expect(changes.removedNodes).toHaveLength(1);
    const kept = changes.removedNodes[0] === 'n4' ? 'n5' : 'n4';
    expect(after.items.v).toMatchObject({ node: kept, along: null });
    expect([after.stretches.s1!.a, after.legs.g4!.b, after.legs.g6!.a]).toEqual([kept, kept, kept]);
    expectJoined(h.plan, after);
  });

  it('are refused where the pipe would double back in itself', () => {
    const h = house().run('g', 'gas', { option: 'o', name: 'gas' });
    h.node('a', [0, 0, 0]).node('b', [1000, 0, 0]).node('c', [3000, 0, 0]).line('g', ['a', 'b', 'c'], { option: 'o' });
    expect(why(go(h.plan, { node: 'a', by: { x: 1500, y: 0, z: 0 } }))).toContain('double back');
  });
});

describe('pipes that slant', () => {
  it('travel whole, and are made longer only along themselves', () => {
    const h = house().run('g', 'gas', { option: 'o' });
    h.node('a', [0, 0, 0]).node('b', [1000, 0, 0]).node('c', [1500, 500, 0]).node('d', [3000, 500, 0]);
    h.line('g', ['a', 'b', 'c', 'd'], { option: 'o' });
    const across = applied(h.plan, changed(go(h.plan, { node: 'b', by: { x: 200, y: 0, z: 0 } })));
    expect(at(across, 'c')).toEqual({ x: 1700, y: 500, z: 0 });
    expect(at(across, 'd')).toEqual({ x: 3000, y: 500, z: 0 });
    const end = house()
      .run('g', 'gas', { option: 'o' })
      .node('a', [0, 0, 0])
      .node('b', [500, 500, 0])
      .line('g', ['a', 'b'], { option: 'o' });
    const longer = applied(end.plan, changed(go(end.plan, { node: 'b', by: { x: 100, y: 100, z: 0 } })));
    expect([at(longer, 'a'), at(longer, 'b')]).toEqual([
      { x: 0, y: 0, z: 0 },
      { x: 600, y: 600, z: 0 },
    ]);
  });

  it('in a wing that stands askew keep to its own right angles', () => {
    const h = house().run('g', 'gas', { option: 'o' });
    const [c, s] = [Math.cos(0.5), Math.sin(0.5)];
    const p = (u: number, v: number): [number, number, number] => [u * c - v * s, u * s + v * c, 0];
    h.node('a', p(0, 0)).node('b', p(2000, 0)).node('d', p(2000, 1000)).line('g', ['a', 'b', 'd'], { option: 'o' });
    const [x, y] = p(300, 0);
    const after = applied(h.plan, changed(go(h.plan, { node: 'd', by: { x, y, z: 0 } })));
    expect(placeOf(after, 'b').x).toBeCloseTo(p(2300, 0)[0], 0);
    expect(placeOf(after, 'b').y).toBeCloseTo(p(2300, 0)[1], 0);
    expect(placeOf(after, 'a')).toEqual({ x: 0, y: 0, z: 0 });
    expectWaysKept(h.plan, after);
  });
});

describe('falls', () => {
  it('are kept by the metre, and refused where they would run uphill', () => {
    const h = house().run('k', 'condensate', { option: 'o', name: 'condensate' });
    h.point('b', 'boiler', [0, 0, 1500], { k: ['condensate', [0, 0, 0], 'down'] }, { option: 'o' });
    h.point('s', 'soil-stack', [2000, 0, 1156], { in: ['condensate', [0, 0, 0], 'left'] });
    h.on('n0', 'b', 'k').node('n1', [0, 0, 1244]).on('n2', 's', 'in').line('k', ['n0', 'n1', 'n2'], { option: 'o' });
    const further = applied(h.plan, changed(go(h.plan, { point: 'b', by: { x: -500, y: 0, z: 0 } })));
    expect(at(further, 'n1')).toEqual({ x: -500, y: 0, z: 1266 });
    // The drop has height enough to step aside at 45, by 100 in 256.
    const side = changed(go(h.plan, { point: 'b', by: { x: 0, y: 100, z: 0 } }));
    const [near, far] = side.addedNodes.map((n) => at(applied(h.plan, side), n.id));
    expect([near, far]).toEqual([
      { x: 0, y: 100, z: 1422 },
      { x: 0, y: 0, z: 1322 },
    ]);
    // 300 is more than the drop has, so the level leg steps aside and the whole keeps its 44 mm per m.
    const far300 = applied(h.plan, changed(go(h.plan, { point: 'b', by: { x: 0, y: 300, z: 0 } })));
    expect(at(far300, 'n1')).toEqual({ x: 0, y: 300, z: 1257.2 });
    expect(why(go(h.plan, { point: 'b', by: { x: 0, y: 0, z: -400 } }))).toBe(
      'The run condensate cannot follow: it would no longer run downhill.',
    );
  });
});

describe('what hangs on something that has changed', () => {
  it('is followed by its pipes when a ceiling is measured again', () => {
    const { plan } = gasRun();
    const after: Plan = { ...plan, storeys: { s: { ...plan.storeys.s!, ceilingMm: 2350 } } };
    const answer = followHosts(plan, after, options());
    const whole = applied(after, changed(answer));
    expect(placeOf(whole, 'n3').z).toBe(2450);
    expect(at(whole, 'n2').z).toBe(2450);
    expect(at(whole, 'n1').z).toBe(2450);
    expect(changed(answer).nodes.n3).toBeUndefined();
    expectWaysKept(plan, whole);
  });

  it('moves a corner that takes its height from a connection with its point', () => {
    const h = gasRun();
    h.plan.nodes.n5!.place = {
      on: 'storey',
      storey: 's',
      x: 6000,
      y: 2000,
      height: { from: 'connection', of: 'b', connection: 'gas', mm: -300 },
    };
    const after = applied(h.plan, changed(go(h.plan, { point: 'b', by: { x: 0, y: 0, z: 120 } })));
    expect(placeOf(after, 'n5').z).toBe(1320);
    expect(at(after, 'n4').z).toBe(1320);
    expect(after.nodes.n5!.place).toMatchObject({ height: { mm: -300 } });
  });

  it('measures such a corner anew where a pipe holds it at its height', () => {
    const h = house().run('g', 'gas', { option: 'o' });
    h.point('b', 'boiler', [0, 0, 1500], gasTail, { option: 'o' }).point('m', 'gas-meter', [3000, 0, 1200], {
      outlet: ['gas', [0, 0, 0], 'left'],
    });
    h.on('n0', 'b', 'gas')
      .node('n1', [0, 0, 1200])
      .on('n2', 'm', 'outlet')
      .line('g', ['n0', 'n1', 'n2'], { option: 'o' });
    const height = { from: 'connection', of: 'b', connection: 'gas', mm: -300 } as const;
    h.plan.nodes.n1!.place = { on: 'storey', storey: 's', x: 0, y: 0, height };
    const changes = changed(go(h.plan, { point: 'b', by: { x: 0, y: 0, z: 120 } }));
    expect(placeOf(applied(h.plan, changes), 'n1').z).toBe(1200);
    expect(changes.nodes.n1!.place).toMatchObject({ height: { from: 'connection', mm: -420 } });
    expect(changes.addedLegs).toEqual([]);
  });

  it('moves a point that takes its height from another with it', () => {
    const h = gasRun();
    const height = { from: 'connection', of: 'm', connection: 'outlet', mm: 1000 } as const;
    h.plan.points.b!.place = { on: 'storey', x: 6000, y: 2000, angleDeg: 0, height };
    const after = applied(h.plan, changed(go(h.plan, { point: 'm', by: { x: 0, y: 0, z: 100 } })));
    expect(placeOf(after, 'n6').z).toBe(1600);
    expectJoined(h.plan, after);
    expectWaysKept(h.plan, after);
  });
});

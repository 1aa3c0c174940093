import { describe, expect, it } from 'vitest';
import type { Displaced } from '../../src/network/displace/changes.ts';
import { retell } from '../../src/network/displace/retell.ts';
import { countingIds } from '../../src/plan/ids.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { applied, placeOf } from './displace-laws.ts';
import { at, gasMeter, house } from './house.ts';

const after = { option: 'o', when: 'after' } as const;
const tell = (plan: Plan, index: number, told: Parameters<typeof retell>[4], fixed?: ReadonlySet<string>): Displaced =>
  retell(plan, after, 'g', index, told, { ids: countingIds(new Set(), 100), ...(fixed ? { fixed } : {}) });
function done(plan: Plan, answer: Displaced): Plan {
  if (!answer.ok) throw new Error(answer.why);
  return applied(plan, answer.changes);
}

/** The question on an empty page: up, along 4200, left 2600, down to a boiler that stands free; a hob on the way. */
function told() {
  const h = house().run('g').run('hob');
  h.point('m', 'gas-meter', [0, 0, 300], gasMeter).point('b', 'boiler', [4200, 2600, 1400], {
    gas: ['gas', [0, 0, 0], 'up'],
  });
  h.point('h', 'hob', [2000, 0, 900], { gas: ['gas', [0, 0, 0], 'up'] });
  h.on('n0', 'm', 'outlet').node('n1', [0, 0, 2500]).node('t', [2000, 0, 2500]).node('n2', [4200, 0, 2500]);
  h.node('n3', [4200, 2600, 2500]).on('n4', 'b', 'gas').on('n5', 'h', 'gas');
  return h.line('g', ['n0', 'n1', 't', 'n2', 'n3', 'n4']).leg('hob1', 'hob', 't', 'n5');
}

describe('a leg told anew', () => {
  it('carries everything beyond it along, branches and free points too', () => {
    const { plan } = told();
    const is = done(plan, tell(plan, 1, { lengthMm: 3000 }));
    expect(at(is, 't')).toEqual({ x: 3000, y: 0, z: 2500 });
    expect(at(is, 'n3')).toEqual({ x: 5200, y: 2600, z: 2500 });
    expect(placeOf(is, 'n4')).toEqual({ x: 5200, y: 2600, z: 1400 });
    expect(placeOf(is, 'n5')).toEqual({ x: 3000, y: 0, z: 900 });
    expect(placeOf(is, 'n0')).toEqual({ x: 0, y: 0, z: 300 });
  });

  it('can be told by the height it ends at, and keeps what that is measured from', () => {
    const { plan } = told();
    const is = done(plan, tell(plan, 0, { height: { from: 'ceiling', of: 's', mm: 200 } }));
    expect(placeOf(is, 'n1').z).toBe(2600);
    expect(is.nodes.n1!.place).toMatchObject({ height: { from: 'ceiling', mm: 200 } });
    expect(placeOf(is, 'n4').z).toBe(1500);
  });

  it('moves the last point alone, by its own place', () => {
    const { plan } = told();
    const is = done(plan, tell(plan, 4, { lengthMm: 1300 }));
    expect(is.points.b!.place).toMatchObject({ height: { mm: 1200 } });
    expect(at(is, 'n3').z).toBe(2500);
  });

  it('is taken up on the way where something beyond it is held', () => {
    const { plan } = told();
    plan.points.b!.place = {
      on: 'storey',
      x: 4200,
      y: 2600,
      angleDeg: 0,
      height: { from: 'floor', of: 's', mm: 1400 },
    };
    const is = done(plan, tell(plan, 1, { lengthMm: 2500 }, new Set(['b', 'h'])));
    expect(at(is, 't').x).toBe(2500);
    expect(at(is, 'n2').x).toBe(4200);
    expect(placeOf(is, 'n4').x).toBe(4200);
  });

  it('does not carry a point that another run reaches too', () => {
    const h = told();
    h.plan.points.b!.connections.push({
      id: 'f',
      service: 'heatingFlow',
      label: '',
      size: '22',
      at: { x: 50, y: 0, z: 0 },
      facing: 'down',
    });
    h.run('f', 'heatingFlow').on('f0', 'b', 'f').node('f1', [4250, 2600, 0]).leg('fl', 'f', 'f0', 'f1');
    const is = done(h.plan, tell(h.plan, 2, { lengthMm: 3000 }, new Set()));
    expect(placeOf(is, 'n4')).toEqual({ x: 4200, y: 2600, z: 1400 });
    // Nothing on the way can take it up, so it is a jog.
    expect(Object.keys(is.legs).length).toBe(Object.keys(h.plan.legs).length + 2);
  });

  it('says why not', () => {
    const { plan } = told();
    const why = (a: Displaced) => (a.ok ? '' : a.why);
    expect(why(tell(plan, 1, { lengthMm: 0 }))).toBe('A leg needs a length above nothing.');
    expect(why(tell(plan, 1, { height: { from: 'datum', of: null, mm: 5 } }))).toContain('goes up or down');
    expect(why(tell(plan, 9, { lengthMm: 100 }))).toContain('cannot be told');
    expect(why(tell(plan, 4, { lengthMm: 100 }, new Set(['b'])))).toContain('ends at b');
  });
});

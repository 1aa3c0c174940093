import { describe, expect, it } from 'vitest';
import { add, inRoom, walled } from '../../../src/engine/rules/space/houses.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { findingsOf, outcomesOf } from './find.ts';

/** A bath 1700 by 700 along the far wall, from x 0 to 1700, and a switch 86 by 40 whose near side lies so far off it. */
function switchOff(mm: number, z = 1200, fields = {}): Plan {
  const plan = add(walled('Bathroom').plan, 'bath', 'bath', [850, 2500, 0], {}, null, 0);
  return add(plan, 'switch', 'thing', [1700 + mm + 43, 2450, z], fields);
}

/** A bathroom 7 m wide with a socket whose near side lies so far off the same bath. */
function socketOff(mm: number): Plan {
  const { plan } = walled('Bathroom');
  for (const wall of Object.values(plan.walls)) {
    for (const end of [wall.a, wall.b]) if (end.x === 3050) end.x = 7050;
  }
  add(plan, 'bath', 'bath', [850, 2500, 0], {}, null, 0);
  const half = (add(plan, 'socket', 'thing', [0, 2500, 450], {}, 'A', 0).points.thing?.size.widthMm ?? 0) / 2;
  return add(plan, 'socket', 'thing', [1700 + mm + half, 2500, 450], {}, 'A', 0);
}

describe('the edge of zone 2', () => {
  it.each([
    [599, 'check'],
    [600, undefined],
  ])('%d from the bath', (mm, outcome) => {
    expect(outcomesOf('space/zones', switchOff(mm))[0]).toBe(outcome);
  });

  it('lies at its height too', () => {
    expect(outcomesOf('space/zones', switchOff(100, 2249))).toEqual(['check']);
    expect(outcomesOf('space/zones', switchOff(100, 2250))).toEqual([]);
  });

  it('lets through what is splash-proof or a pull cord', () => {
    expect(outcomesOf('space/zones', switchOff(100, 1200, { ipx4: true }))).toEqual([]);
    expect(outcomesOf('space/zones', switchOff(100, 1200, { what: 'cord' }))).toEqual([]);
  });
});

describe('a socket in a bathroom', () => {
  it.each([
    [2499, 'check'],
    [2500, 'note'],
    [2999, 'note'],
    [3000, undefined],
  ])('%d from zone 1: two editions', (mm, outcome) => {
    expect(outcomesOf('space/zones', socketOff(mm))[0]).toBe(outcome);
  });
});

describe('whose business it is', () => {
  it('is not that of this job where bath and switch were both there', () => {
    const plan = switchOff(0);
    if (plan.points.thing) plan.points.thing.option = null;
    expect(outcomesOf('space/zones', plan)).toEqual([]);
  });

  it('is not that of a thing on the other side of a wall', () => {
    const plan = add(walled('Bathroom').plan, 'bath', 'bath', [850, 2500, 0], {}, null, 0);
    add(plan, 'switch', 'thing', [850, 2700, 1200]);
    expect(outcomesOf('space/zones', plan)).toEqual([]);
  });

  it('asks once for a bathroom that gets a boiler and has no bath drawn', () => {
    expect(findingsOf('space/zones', inRoom({}, 1500, 'Bathroom'))).toMatchObject([{ outcome: 'cantTell' }]);
  });
});

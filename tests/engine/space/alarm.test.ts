import { describe, expect, it } from 'vitest';
import { give } from '../../../src/engine/evaluate.ts';
import { add, inRoom, setBoiler, walled } from '../../../src/engine/rules/space/houses.ts';
import { alarmOn, watched } from '../../../src/engine/space/alarm-place.ts';
import { site } from '../../../src/engine/space/sited.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { AFTER, findingsOf, outcomesOf } from './find.ts';

/** A room 3000 by 5000 inside with a boiler on its near wall: front of the case at y 300. */
function longRoom(): Plan {
  const { plan } = walled('Utility');
  for (const wall of Object.values(plan.walls)) {
    for (const end of [wall.a, wall.b]) if (end.y === 2550) end.y = 5050;
  }
  return setBoiler(plan, 1500, {}, 0);
}

/** An alarm 120 by 40 by 80 on a shelf with its near side so far from the case. */
const shelf = (mm: number): Plan =>
  add(longRoom(), 'co-alarm', 'alarm', [1500, 300 + mm, 1500], { on: 'shelf' }, 'A', 180);

const wallAlarm = (z: number): Plan => add(inRoom({}), 'co-alarm', 'alarm', [1500, 2460, z], { on: 'wall' }, 'A', 0);

describe('how far an alarm stands from what it watches', () => {
  it.each([
    [999, 'nearest'],
    [1000, undefined],
    [3000, undefined],
    [3001, 'furthest'],
  ])('%d along the floor', (mm, fault) => {
    const [w] = watched(give(shelf(mm), AFTER));
    expect(w?.is).toBe('here');
    expect(w?.distances.find((d) => d.ask === 'nearest')?.found.value).toBeCloseTo(mm, 6);
    expect(w?.distances.find((d) => !d.ok)?.ask).toBe(fault);
    expect(outcomesOf('safety/alarm', shelf(mm))).toEqual(fault ? ['check'] : []);
  });
});

describe('how high an alarm hangs on a wall', () => {
  it.each([
    [2170, true],
    [2171, false],
  ])('its underside at %d, its top 80 above, the ceiling at 2400', (z, ok) => {
    const [w] = watched(give(wallAlarm(z), AFTER));
    const ceiling = w?.distances.find((d) => d.ask === 'ceiling');
    expect(ceiling?.found.value).toBeCloseTo(2400 - 80 - z, 6);
    expect(ceiling?.ok).toBe(ok);
  });

  it('stands above the tops of doors and windows', () => {
    const house = (z: number): Plan => {
      const e = walled('Utility').opening('d', 'w', 500, 800, { headMm: 2000 });
      return add(setBoiler(e.plan, 1500, {}, 0), 'co-alarm', 'alarm', [1500, 2460, z], { on: 'wall' }, 'A', 0);
    };
    expect(findingsOf('safety/alarm', house(1990))).toMatchObject([{ outcome: 'check', found: { value: 10 } }]);
    expect(outcomesOf('safety/alarm', house(2000))).toEqual([]);
  });

  it('asks nothing of the top of a door that leaves no room under the ceiling', () => {
    const e = walled('Utility').opening('d', 'w', 500, 800, { headMm: 2300 });
    const plan = add(setBoiler(e.plan, 1500, {}, 0), 'co-alarm', 'alarm', [1500, 2460, 2150], { on: 'wall' }, 'A', 0);
    expect(outcomesOf('safety/alarm', plan)).toEqual([]);
  });
});

describe('an alarm at the ceiling', () => {
  it.each([
    [300, true],
    [299, false],
  ])('its middle %d from the wall', (mm, ok) => {
    const plan = add(inRoom({}), 'co-alarm', 'alarm', [3000 - mm, 1680, 2350], { on: 'ceiling' }, 'A', 0);
    const [w] = watched(give(plan, AFTER));
    expect(w?.distances.find((d) => d.ask === 'walls')).toMatchObject({ ok });
  });

  it('is told by its height where nobody told what it is fixed to', () => {
    const at = (z: number): string | undefined => {
      const plan = add(inRoom({}), 'co-alarm', 'alarm', [1500, 1500, z]);
      const given = give(plan, AFTER);
      const alarm = plan.points.alarm && site(given, plan.points.alarm);
      return alarm && alarmOn(given, alarm);
    };
    expect([at(2220), at(2219)]).toEqual(['ceiling', 'shelf']);
  });
});

describe('which appliance is watched', () => {
  it('is every new fixed one and no cooker', () => {
    const plan = add(add(inRoom({}), 'gas-fire', 'fire', [500, 2400, 0]), 'cooker', 'cooker', [2500, 2400, 0]);
    expect(watched(give(plan, AFTER)).map((w) => w.appliance.point.id)).toEqual(['b', 'fire']);
  });

  it('is none that stays', () => {
    const plan = inRoom({});
    if (plan.points.b) plan.points.b.option = null;
    expect(outcomesOf('safety/alarm', plan)).toEqual([]);
  });

  it('counts the better of two alarms in its room', () => {
    const plan = add(shelf(400), 'co-alarm', 'second', [1500, 2300, 1500], { on: 'shelf' });
    expect(watched(give(plan, AFTER))[0]?.alarm?.point.id).toBe('second');
    expect(outcomesOf('safety/alarm', plan)).toEqual([]);
  });
});

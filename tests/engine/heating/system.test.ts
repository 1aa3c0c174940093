import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { example } from '../../../src/engine/example.ts';
import { type Given, give } from '../../../src/engine/given.ts';
import { designFlow } from '../../../src/engine/heating/design-flow.ts';
import { circuitsOfHeating, lossOf } from '../../../src/engine/heating-system/circuits.ts';
import { otherDifferences, otherSizes, primariesOf } from '../../../src/engine/heating-system/other-ways.ts';
import { type HeatSection, heatingOf } from '../../../src/engine/heating-system/solve-heating.ts';
import { primaries, radiators } from '../../../src/engine/rules/heating/circuit-houses.ts';
import type { Plan } from '../../../src/plan/plan.ts';

const drawn = (plan: Plan): Given => give(plan, { option: 'A', when: 'after' });
const sectionsOf = (given: Given, service: string): HeatSection[] =>
  [...heatingOf(given).sections.values()].filter((s) => s.section.service === service);
const sole = (given: Given) => {
  const [circuit] = circuitsOfHeating(given);
  if (!circuit) throw new Error('no circuit');
  return circuit;
};

const rooms = fc
  .array(fc.double({ min: 0.3, max: 3, noNaN: true }), { minLength: 1, maxLength: 8 })
  .map((all) => all.map((kW, i) => ({ at: 2000 + i * 1500, kW })));

describe('two pipes and radiators', () => {
  test('what goes out by the primary is the sum of the branches, and all of it comes back', () => {
    fc.assert(
      fc.property(rooms, (all) => {
        const given = drawn(radiators(all, { outputKw: 40 }));
        for (const service of ['heatingFlow', 'heatingReturn']) {
          const sections = sectionsOf(given, service);
          const tails = sections.filter((s) => s.section.tube.size === '15x0.7');
          const sum = tails.reduce((of, s) => of + (s.flow.value ?? Number.NaN), 0);
          const most = Math.max(...sections.map((s) => s.flow.value ?? Number.NaN));
          expect(tails).toHaveLength(all.length);
          expect(most).toBeCloseTo(sum, 9);
          const heat = all.reduce((of, r) => of + r.kW, 0);
          const whole = designFlow({ ...sole(given).kW, value: heat, lo: heat, hi: heat }, heatingOf(given).temps);
          expect(most).toBeCloseTo(whole?.value ?? Number.NaN, 9);
        }
      }),
      { numRuns: 25 },
    );
  });

  test('every way is closed, and loses no more than the index', () => {
    const circuit = sole(
      drawn(
        radiators([
          { at: 2000, kW: 2.5 },
          { at: 5000, kW: 0.6 },
          { at: 9000, kW: 0.8 },
        ]),
      ),
    );
    expect(circuit.ways.every((w) => w.closed)).toBe(true);
    // The nearest is the index: its tails and valves carry most. It is not always the farthest.
    expect(circuit.index?.load.point).toBe('r1');
    for (const w of circuit.ways) expect(lossOf(w).value ?? 0).toBeLessThanOrEqual(circuit.lost?.value ?? 0);
    expect(circuit.balance?.ways.filter((w) => w.kv === null).map((w) => w.id)).toEqual(['r1/flow']);
  });

  test('worked out once for a plan and case', () => {
    const given = drawn(primaries({}));
    expect(heatingOf(given)).toBe(heatingOf(given));
    expect(circuitsOfHeating(given)).toBe(circuitsOfHeating(given));
  });
});

describe('heat that nobody told', () => {
  test('lies between nothing and what the boiler gives', () => {
    const [section] = sectionsOf(drawn(primaries({ heatingKw: null })), 'heatingFlow');
    expect(section?.kW).toMatchObject({ lo: 0, hi: 24 });
    expect(section?.result?.loss.lo).toBe(0);
    expect(section?.result?.loss.hi ?? 0).toBeGreaterThan(1);
  });

  test('has no top where the boiler tells nothing either', () => {
    const [section] = sectionsOf(drawn(primaries({ heatingKw: null, boiler: { outputKw: null } })), 'heatingFlow');
    expect(section?.kW.hi).toBeNull();
    expect(section?.result?.loss.hi).toBeNull();
  });

  test('a return whose other end is not drawn still carries what left the boiler', () => {
    const plan = example()
      .point('boiler', 'boiler', [0, 0, 1300], { outputKw: 24 })
      .point('join-point', 'join', [4000, 0, 150], { service: 'heatingFlow', part: 'end', heatingKw: 9 })
      .run('flow', 'heatingFlow', [
        { point: 'boiler', connection: 'flow' },
        { point: 'join', connection: 'join' },
      ])
      .run('return', 'heatingReturn', [{ point: 'boiler', connection: 'return' }, [4000, -300, 150]]).plan;
    const join = plan.points.join;
    if (join) {
      join.connections = join.connections.map((c) => ({ ...c, service: 'heatingFlow' }));
    }
    const given = drawn(plan);
    expect(sectionsOf(given, 'heatingReturn').map((s) => s.kW.value)).toEqual([9]);
    expect(sole(given).ways[0]?.closed).toBe(false);
    expect(sole(given).lost?.hi).toBeNull();
  });
});

describe('a ring of flow pipe', () => {
  /** Boiler, 22 to a tee, and two ways round of different length to the tee of the tails. */
  const ring = (longWayMm: number): Plan => {
    const e = example()
      .point('boiler', 'boiler', [0, 0, 1300], { outputKw: 24 })
      .point('old-tails', 'tails', [8000, 0, 150], { heatingKw: 12 }, null)
      .run('flow', 'heatingFlow', [
        { point: 'boiler', connection: 'flow' },
        [1000, -300, 300],
        [7000, -300, 300],
        { point: 'tails', connection: 'flow' },
      ]);
    const nodes = e.nodesOf('flow');
    return e
      .run('round', 'heatingFlow', [
        nodes[1] ?? '',
        [1000, -300 - longWayMm, 300],
        [7000, -300 - longWayMm, 300],
        nodes[2] ?? '',
      ])
      .run('return', 'heatingReturn', [
        { point: 'boiler', connection: 'return' },
        { point: 'tails', connection: 'return' },
      ]).plan;
  };

  test.each([500, 2000, 8000])('%d mm aside: both ways together carry it all, and lose alike', (mm) => {
    const all = sectionsOf(drawn(ring(mm)), 'heatingFlow');
    const round = all.filter((s) => s.section.onRing);
    expect(round).toHaveLength(2);
    const whole = all.find((s) => !s.section.onRing)?.flow.value ?? Number.NaN;
    expect(round.reduce((sum, s) => sum + (s.flow.value ?? Number.NaN), 0)).toBeCloseTo(whole, 5);
    // Straight pipe alone shares the flow out; fittings are charged on what comes of it.
    const [a, b] = round.map((s) => (s.result?.paPerM.value ?? 0) * (s.ask?.lengthM.value ?? 0));
    expect((a ?? 0) / (b ?? 1)).toBeGreaterThan(0.99);
    expect((a ?? 0) / (b ?? 1)).toBeLessThan(1.01);
  });
});

describe('made or run another way', () => {
  const given = drawn(primaries({ metres: 10, boiler: { pumpHeadLeftKPa: 20 } }));

  test('primaries a size down and up: more loss and less, and the legs to change', () => {
    const sizes = otherSizes(given, sole(given));
    expect(sizes.map((o) => o.size.label)).toEqual(['15', '22', '28']);
    expect(sizes.map((o) => o.chosen)).toEqual([false, true, false]);
    const lost = sizes.map((o) => o.lost.value ?? Number.NaN);
    expect(lost).toEqual([...lost].sort((a, b) => b - a));
    expect(lost[1]).toBeCloseTo(sole(given).lost?.value ?? Number.NaN, 9);
    expect(sizes[2]?.change.map((c) => c.leg).sort()).toEqual(['flow.1', 'flow.2', 'return.1', 'return.2']);
  });

  test('at 5 K four times the water, and about twelve times the loss', () => {
    const at = otherDifferences(heatingOf(given), sole(given));
    expect(at.map((o) => o.kelvin.lo)).toEqual([11, 5]);
    expect(at[1]?.times).toBeCloseTo(4, 1);
    const ratio = (at[1]?.lost.value ?? 0) / (sole(given).lost?.value ?? 1);
    expect(ratio).toBeGreaterThan(10);
    expect(ratio).toBeLessThan(14);
  });

  test('the primaries are what everything goes through', () => {
    const house = drawn(
      radiators([
        { at: 2000, kW: 1 },
        { at: 5000, kW: 1 },
      ]),
    );
    expect(primariesOf(sole(house)).map((s) => s.section.service)).toEqual(['heatingFlow', 'heatingReturn']);
  });
});

describe('the head left', () => {
  const withPump = (boiler: number | null, pump: number | null): number | null => {
    const plan = primaries({ boiler: { type: 'heatOnly', pumpHeadLeftKPa: boiler } });
    const node = Object.values(plan.nodes).find((n) => n.place.on === 'storey');
    plan.items.pump = {
      id: 'pump',
      kind: 'pump',
      name: '',
      node: node?.id ?? '',
      along: null,
      option: 'A',
      sureness: 'seen',
      fields: { hasValves: null, headKPa: pump },
    };
    return sole(drawn(plan)).head;
  };

  test('is that of the boiler, else of the pump that is drawn', () => {
    expect(withPump(20, 30)).toBe(20);
    expect(withPump(null, 30)).toBe(30);
    expect(withPump(null, null)).toBeNull();
  });
});

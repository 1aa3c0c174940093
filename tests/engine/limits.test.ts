import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { example } from '../../src/engine/example.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Override } from '../../src/plan/records/statements.ts';

const AFTER = { option: 'A', when: 'after' } as const;

function house(...overrides: Partial<Override>[]): Plan {
  const { plan } = example()
    .point('gas-meter', 'meter', [0, 0, 500])
    .point('boiler', 'boiler', [5000, 0, 1300], { inputKwHotWater: 24, inputBasis: 'gross' })
    .run(
      'g',
      'gas',
      [
        { point: 'meter', connection: 'outlet' },
        [75, -115, 2300],
        [5000, -115, 2300],
        { point: 'boiler', connection: 'gas' },
      ],
      { size: '22x0.9' },
    );
  overrides.forEach((change, i) => {
    const id = `o${i}`;
    plan.overrides[id] = {
      id,
      limit: 'gas-drop/natural',
      scope: 'boiler',
      value: 0.1,
      unit: 'mbar',
      note: 'sheet of the boiler',
      page: '14',
      ...change,
    };
  });
  return plan;
}
const dropOf = (plan: Plan) => evaluate(plan, AFTER).findings.find((f) => f.rule === 'gas/drop');

describe("a limit of the appliance's own sheet", () => {
  test('goes before the general one, and the panel says where it stands', () => {
    expect(dropOf(house())).toBeUndefined();
    const found = dropOf(house({}));
    expect([found?.outcome, found?.wanted?.lo, found?.wantedIs]).toEqual(['stop', 0.1, 'atMost']);
    const rows = evaluate(house({}), AFTER).sections.find((s) => s.id === 'gas-drop')?.rows ?? [];
    expect(rows).toContainEqual(
      expect.objectContaining({ say: "Limit from the appliance's own sheet: sheet of the boiler, page 14." }),
    );
  });

  test('holds for what it is told of: another appliance keeps the general one', () => {
    expect(dropOf(house({ scope: 'another' }))).toBeUndefined();
    expect(dropOf(house({ scope: null }))?.outcome).toBe('stop');
  });

  test("the appliance's own goes before one for everything, in any order", () => {
    const [all, own] = [{ scope: null, value: 0.1 }, { value: 5 }];
    expect(dropOf(house(all, own))).toBeUndefined();
    expect(dropOf(house(own, all))).toBeUndefined();
  });

  test('in another unit, or of another limit, is not taken for it', () => {
    expect(dropOf(house({ unit: 'Pa' }))).toBeUndefined();
    expect(dropOf(house({ limit: 'gas-drop/propane' }))).toBeUndefined();
  });

  test('is not taken where the general limit is of an edition that is not here: nothing is compared', () => {
    const plan = house();
    plan.basis.editions = { 'gas-pressure-limit': 'lost' };
    expect([dropOf(plan)?.outcome, dropOf(plan)?.wanted]).toEqual(['cantTell', null]);
  });
});

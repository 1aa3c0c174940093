import { describe, expect, it } from 'vitest';
import { evaluate, example, give } from '../../../src/engine/evaluate.ts';
import { add } from '../../../src/engine/rules/space/houses.ts';
import { bondsOf } from '../../../src/engine/space/bonds.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { demoPlan } from '../demo-file.ts';
import { AFTER, findingsOf, outcomesOf } from './find.ts';

/** Gas straight up from a meter's outlet at 75, -115, 700, and a clamp whose middle lies so far along it. */
function clampAt(mm: number, fields = {}): Plan {
  const e = example()
    .point('gas-meter', 'm', [0, 0, 300], {}, null)
    .run('g', 'gas', [{ point: 'm', connection: 'outlet' }, [75, -115, 2300]]);
  const told = { pipe: 'gas', conductorMm2: 10, ...fields };
  return add(e.plan, 'bonding-clamp', 'clamp', [75, -85, 670 + mm], told, null, 0);
}

describe('how far along the pipe a clamp sits', () => {
  it('is measured from the outlet', () => {
    const [bond] = bondsOf(give(clampAt(400), AFTER));
    expect(bond).toMatchObject({ service: 'gas', from: 'outlet', beforeBranch: true });
    expect(bond?.along?.value).toBeCloseTo(400, 0);
  });

  it.each([
    [600, []],
    [601, ['check']],
  ])('told as %d', (mm, outcomes) => {
    expect(outcomesOf('safety/bonding', clampAt(300, { fromMeterMm: mm }))).toEqual(outcomes);
  });

  it('is not known where it lies on no pipe', () => {
    const plan = clampAt(300);
    const { clamp } = plan.points;
    if (clamp?.place.on === 'storey') clamp.place.x = 900;
    expect(findingsOf('safety/bonding', plan)).toMatchObject([
      { outcome: 'cantTell', missing: ['how far along the gas pipe its clamp is'] },
    ]);
  });

  it('begins where the pipe comes in when the meter is outside', () => {
    const e = example()
      .wall('s', [0, 0], [3000, 0])
      .wall('e', [3000, 0], [3000, 3000])
      .wall('n', [3000, 3000], [0, 3000])
      .wall('w', [0, 3000], [0, 0])
      .point('gas-meter', 'm', [500, -1500, 300], {}, null)
      .run('g', 'gas', [{ point: 'm', connection: 'outlet' }, [575, -1615, 1000], [575, 1500, 1000]]);
    // Inside face at y 50; the clamp's middle at y 450.
    const plan = add(e.plan, 'bonding-clamp', 'clamp', [575, 480, 970], { pipe: 'gas', conductorMm2: 10 }, null, 0);
    const [bond] = bondsOf(give(plan, AFTER));
    expect(bond?.from).toBe('entry');
    expect(bond?.along?.value).toBeCloseTo(400, 6);
    expect(outcomesOf('safety/bonding', plan)).toEqual([]);
  });
});

describe('the cable of a clamp', () => {
  it.each([
    [10, []],
    [9.9, ['check']],
    [16, []],
  ])('%d mm2', (mm2, outcomes) => {
    expect(outcomesOf('safety/bonding', clampAt(300, { conductorMm2: mm2 }))).toEqual(outcomes);
  });

  it('may be read on the day and noted for the clamp', () => {
    const plan = clampAt(300, { conductorMm2: null });
    plan.job.readings = [{ what: 'cable', value: 6, unit: 'mm2', on: null, place: '', note: '', point: 'clamp' }];
    expect(findingsOf('safety/bonding', plan)).toMatchObject([{ outcome: 'check', found: { value: 6 } }]);
  });
});

describe('what nobody looked at', () => {
  it('is asked once for gas and water together', () => {
    const e = example()
      .point('gas-meter', 'm', [0, 0, 300], {}, null)
      .point('stop-tap', 't', [2000, 0, 300], {}, null)
      .run('g', 'gas', [{ point: 'm', connection: 'outlet' }, [75, -115, 2300]])
      .run('c', 'cold', [{ point: 't', connection: 'outlet' }, [2000, -30, 1500]]);
    expect(findingsOf('safety/bonding', e.plan)).toMatchObject([{ outcome: 'cantTell', ids: ['m', 't'] }]);
  });

  it('is left alone where the job does not come to it', () => {
    const e = example()
      .point('gas-meter', 'm', [0, 0, 300], {}, null)
      .run('old', 'gas', [{ point: 'm', connection: 'outlet' }, [75, -115, 2300]], { option: null });
    e.run('g', 'gas', [e.nodesOf('old')[1] ?? '', [3000, -115, 2300]]);
    expect(outcomesOf('safety/bonding', e.plan)).toEqual([]);
  });

  it('is not asked of a main that comes in as plastic', () => {
    const e = example()
      .point('stop-tap', 't', [2000, 0, 300], { incoming: 'plastic' }, null)
      .run('c', 'cold', [{ point: 't', connection: 'outlet' }, [2000, -30, 1500]]);
    expect(outcomesOf('safety/bonding', e.plan)).toEqual([]);
  });
});

it('tells the thin cable of the flat, and nothing of the good one of the semi', () => {
  expect(findingsOf('safety/bonding', demoPlan('flat')).find((f) => f.ids.includes('B-MB'))).toMatchObject({
    outcome: 'check',
    ids: ['B-MB'],
    found: { value: 6, unit: 'mm2' },
    wanted: { value: 10 },
    unverified: true,
  });
  expect(outcomesOf('safety/bonding', demoPlan('semi'))).toEqual([]);
  const section = evaluate(demoPlan('semi'), AFTER).sections.find((s) => s.id === 'safety');
  expect(section?.rows.find((r) => r.kind === 'verdict' && r.label === 'Cable')).toMatchObject({ state: 'pass' });
});

import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { example } from '../../../src/engine/example.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import type { TestRecord } from '../../../src/plan/records/basis.ts';
import { sayFigures } from '../../../src/report/quantity.ts';
import type { Row } from '../../../src/report/section.ts';

function house(change: (plan: Plan) => void = () => undefined): Plan {
  const { plan } = example()
    .point('gas-meter', 'meter', [0, 0, 500], { meter: 'G4' })
    .point('boiler', 'boiler', [3000, 0, 1300], { inputKwHotWater: 30, inputBasis: 'gross', leastInletMbar: 18 })
    .run('g', 'gas', [
      { point: 'meter', connection: 'outlet' },
      [75, -115, 2300],
      { point: 'boiler', connection: 'gas' },
    ])
    .run('h', 'heatingFlow', [{ point: 'boiler', connection: 'flow' }, [9000, 0, 100]]);
  change(plan);
  return plan;
}
const write = (plan: Plan) => {
  const section = evaluate(plan, { option: 'A', when: 'after' }).sections.find((s) => s.id === 'tests');
  if (!section) throw new Error('no section');
  return section;
};
/** Rows under a heading, by their labels: figure and words. */
function under(rows: readonly Row[], label: string, say: string): Record<string, string> {
  const at = rows.findIndex((r) => r.kind === 'heading' && r.label === label && r.say === say);
  const found: Record<string, string> = {};
  for (const r of rows.slice(at + 1)) {
    if (at < 0 || r.kind === 'heading') break;
    if (r.kind === 'fact') found[r.label] = `${r.figure ? sayFigures(r.figure) : ''}|${r.say}`;
    if (r.kind === 'sum') found[r.label] = `${r.result ? sayFigures(r.result) : ''}|${r.how}`;
    if (r.kind === 'verdict') found[r.label] = `${r.state}|${r.say}`;
  }
  return found;
}
const record = (change: Partial<TestRecord>): TestRecord => ({
  kind: 'tightness',
  part: '',
  edition: '3',
  on: null,
  figures: {},
  result: '',
  by: '',
  note: '',
  ...change,
});

describe('what is to be tested, read from the drawing', () => {
  it('is not said of an empty plan', () => {
    expect(evaluate(example().plan, { option: 'A', when: 'after' }).sections.some((s) => s.id === 'tests')).toBe(false);
  });

  it('tells the steps of each edition that a test may still go by', () => {
    const { rows } = write(house());
    const steps = under(rows, 'Gas tightness', '');
    expect(steps['Test pressure, edition 3']).toBe('20 to 21|');
    expect(steps['Let-by, pressure, edition 4']).toBe('7 to 10|');
    expect(steps['Test pressure, edition 4']).toBe('20|18 mbar at least where that cannot be reached');
    expect(steps['Time of the test, edition 4']).toBe('|take it from edition 4');
    expect(steps['Edition 3']).toBe('|until 30 September 2026');
    expect(steps['Edition 4']).toBe('|from March 2026');
    const later = write(
      house((p) => {
        p.basis.surveyDate = '2026-10-01';
      }),
    ).rows;
    expect(Object.keys(under(later, 'Gas tightness', '')).filter((l) => l.endsWith('pressure, edition 3'))).toEqual([]);
  });

  it('keeps the new part and the whole apart', () => {
    const { rows } = write(house());
    expect(under(rows, 'Gas tightness', 'New pipework on its own')['Drop, edition 3']).toMatch(
      /^\|none that can be perceived/,
    );
    const whole = under(rows, 'Gas tightness', 'Whole installation, appliances connected');
    expect(whole['Drop, edition 3']).toBe('4.0|G4 meter, pipe to 28');
    expect(whole['Drop, edition 4']).toMatch(/^\|can't tell: the band of the installation volume/);
    const before = house((p) => {
      for (const map of [p.legs, p.nodes, p.runs, p.points]) for (const r of Object.values(map)) r.option = null;
    });
    expect(write(before).rows.some((r) => r.kind === 'heading' && r.say === 'New pipework on its own')).toBe(false);
  });

  it('has the volume with the meter, and names the size nobody read', () => {
    const volume = under(write(house()).rows, 'Gas tightness', '')['Installation volume'] ?? '';
    expect(Number(volume.split('|')[0])).toBeGreaterThan(0.0095);
    expect(Number(volume.split('|')[0])).toBeLessThan(0.011);
    const unread = write(
      house((p) => {
        for (const l of Object.values(p.legs)) if (l.run === 'g') l.tube.size = null;
      }),
    );
    expect(under(unread.rows, 'Gas tightness', '')['Installation volume']).toMatch(
      /the size of a pipe \(gas meter to boiler\)/,
    );
  });

  it('takes the drop from what was read at the meter, and holds it beside the sheet', () => {
    const label = 'Working, at the inlet';
    expect(under(write(house()).rows, 'Gas pressures', '')[label]).toMatch(/was not read/);
    const reading = { what: '', value: 19, unit: 'mbar', on: null, place: '', note: '', kind: 'gas-working' };
    const found = write(
      house((p) => {
        p.job.readings = [reading];
      }),
    );
    const inlet = under(found.rows, 'Gas pressures', 'Boiler');
    const [lo = 0, hi = 0] = (inlet[label] ?? '').split('|')[0]?.split(' to ').map(Number) ?? [];
    expect(lo).toBeGreaterThan(17.5);
    expect(hi).toBeLessThan(19);
    expect(inlet['Inlet of Boiler']).toContain('wanted at least 18.0 mbar by its sheet');
    const low = write(
      house((p) => {
        p.job.readings = [{ ...reading, value: 17 }];
      }),
    );
    expect(low.state).toBe('stop');
    const after = write(
      house((p) => {
        p.job.readings = [reading];
        p.job.tests = [record({ kind: 'gas-pressure', figures: { workingMbar: 21 } })];
      }),
    );
    expect(under(after.rows, 'Gas pressures', 'Boiler')[label]).toContain('21.0 at the meter after the work');
  });

  it('tells the gas rate, the seconds of a dial, and the water tests of new pipe', () => {
    const { rows } = write(house());
    expect(under(rows, 'Gas rate', 'Boiler')).toEqual({
      'Gas rate': '2.79|at its full input',
      'Time taken': '37|for one cubic foot',
      'Passed, metric meter': '0.093|in 120 s',
    });
    expect(under(rows, 'Gas purge', 'Boiler')['Time at the burner, edition 3']).toBe('13|at its full rate');
    expect(under(rows, 'Water pressure test', 'Heating')['Time of the test']).toBe('60|metal pipe');
    expect(rows.some((r) => r.kind === 'heading' && r.say === 'Hot and cold')).toBe(false);
  });

  it('says what was found, and judges nothing but an edition that was not in force', () => {
    const tests = [
      record({
        kind: 'gas-rate',
        part: 'Boiler',
        figures: { volumeFt3: 1, seconds: 36, volumeM3: null, rateM3PerH: null },
      }),
      record({ on: '2026-10-02' }),
      record({ on: '2026-09-30', figures: { dropMbar: 0 }, result: 'in order' }),
    ];
    const section = write(
      house((p) => {
        p.job.tests = tests;
      }),
    );
    expect(section.answer).toBe('3 written');
    expect(section.state).toBe('check');
    const said = section.rows.slice(1, 4).map((r) => ('say' in r ? r.say : ''));
    expect(said).toEqual([
      'found 2.83 m3/h, 30.4 kW gross, 27.4 net',
      'edition 3 was not in force on the day it is dated',
      'found drop 0 mbar; in order',
    ]);
  });
});

import { describe, expect, it } from 'vitest';
import { type GasPipe, installationVolume } from '../../../src/engine/gas/installation-volume.ts';
import { meterCapacity } from '../../../src/engine/gas/meter-capacity.ts';
import { pressureLimit } from '../../../src/engine/gas/pressure-limit.ts';
import { between } from '../../../src/report/quantity.ts';
import { m3PerH, metres } from './ask.ts';

const pipe = (size: string | null, m: number, tubeKind = 'copper'): GasPipe => ({
  label: `${size}`,
  tubeKind,
  size,
  lengthM: metres(m),
});

describe('meter', () => {
  it('passes up to its capacity and not past it', () => {
    expect(meterCapacity('G4', m3PerH(6)).verdict).toBe('pass');
    expect(meterCapacity('G4', m3PerH(6.01)).verdict).toBe('stop');
    expect(meterCapacity('G4', between(5.9, 6.1, 'm3/h', 2)).verdict).toBe('check');
    expect(meterCapacity('G2.5', m3PerH(4.5)).verdict).toBe('stop');
  });

  it('cannot tell of a meter nobody read or a flow not known from above', () => {
    expect(meterCapacity(null, m3PerH(1))).toMatchObject({
      verdict: 'cantTell',
      capacity: null,
      working: { missing: ['size of the meter'] },
    });
    expect(meterCapacity('G99', m3PerH(1)).working.missing).toEqual(['capacity of meter G99']);
    expect(meterCapacity('G4', between(3, null, 'm3/h', 2)).verdict).toBe('cantTell');
    expect(meterCapacity('G4', between(7, null, 'm3/h', 2)).verdict).toBe('stop');
  });
});

describe('installation volume', () => {
  it('is meter + pipe + a tenth of the pipe, both ways', () => {
    const found = installationVolume([pipe('22', 10), pipe('15', 4)], 'G4');
    expect(found.byTable.result?.value).toBeCloseTo(0.008 + 1.1 * (10 * 0.00032 + 4 * 0.00014), 9);
    expect(found.byBore.result?.value).toBeCloseTo(
      0.008 + 1.1 * (Math.PI / 4) * (10 * 0.0202 ** 2 + 4 * 0.0136 ** 2),
      9,
    );
    expect(found.verdict).toBe('pass');
    expect(found.limit.lo).toBe(0.035);
  });

  it('the table rounds 15 down and the bore does not', () => {
    const { byTable, byBore } = installationVolume([pipe('15', 20)], 'E6');
    expect(byTable.result?.value ?? 9).toBeLessThan(byBore.result?.value ?? 0);
  });

  it('sizes outside the table go by their bore in both', () => {
    const { byTable, byBore } = installationVolume([pipe('12', 5)], 'E6');
    expect(byTable.result?.value).toBe(byBore.result?.value);
  });

  it('an unknown size or meter leaves the low side only, and is named', () => {
    const found = installationVolume([pipe('22', 10), { ...pipe(null, 3), label: 'old pipe' }], null);
    expect(found.byTable.result).toBeNull();
    expect(found.byTable.missing).toEqual(['the size of a pipe (old pipe)', 'size of the meter']);
    expect(found.verdict).toBe('cantTell');
    expect(installationVolume([pipe('22', 10)], 'G2.5').byTable.missing).toEqual(['volume of meter G2.5']);
  });

  it('a large one leaves the small rules', () => {
    expect(installationVolume([pipe('35', 40)], 'G4').verdict).toBe('stop');
    expect(installationVolume([{ ...pipe('28', 0), lengthM: between(30, null, 'm', 1) }], 'G10').verdict).toBe('stop');
  });

  it('plastic in the ground has a tabulated volume and no bore', () => {
    const found = installationVolume([pipe('25', 10, 'pe')], 'G4');
    expect(found.byTable.result?.value).toBeCloseTo(0.008 + 1.1 * 0.0033, 9);
    expect(found.byBore.result).toBeNull();
  });
});

describe('pressure limit', () => {
  it('goes by gas and edition', () => {
    expect(pressureLimit('natural', {})?.limit.lo).toBe(1);
    expect(pressureLimit('propane', {})?.limit.lo).toBe(2);
    expect(pressureLimit('propane', { 'gas-pressure-limit': 'gas-pressure-limit-2005' })?.limit.lo).toBe(2.5);
    expect(pressureLimit('natural', { 'gas-pressure-limit': 'gas-pressure-limit-2031' })).toBeUndefined();
    expect(pressureLimit('natural', {})?.id).toBe('gas-drop/natural');
  });
});

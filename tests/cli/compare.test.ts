import { describe, expect, test } from 'vitest';
import { call } from './fake-terminal.ts';

describe('compare', () => {
  test('puts before and after side by side, and tells what differs', async () => {
    const { code, out, err } = await call('compare', 'house.json');
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(
      /^# Answers\nGas drop at the boiler\n {4}Before: .*\n {4}A: 0\.\d\d to 0\.\d\d mbar; new boiler: passes$/m,
    );
    expect(out).toMatch(/^# What differs: A from Before$/m);
    expect(out).toMatch(/^ {4}moved: New boiler: .* away/m);
    expect(out).not.toMatch(/undefined|NaN|\[object/);
  });
  test('gives the same as data', async () => {
    const { code, out } = await call('compare', 'house.json', '--json');
    expect(code).toBe(0);
    const told = JSON.parse(out) as { tallies: { case: unknown; figures: unknown[] }[]; differences: unknown[] };
    expect(told.tallies.map((t) => t.case)).toEqual([
      { option: 'A', when: 'before' },
      { option: 'A', when: 'after' },
    ]);
    expect(told.differences).toHaveLength(1);
  });
  test('asks for the file, and for no more than one', async () => {
    expect((await call('compare')).code).toBe(2);
    expect((await call('compare', 'house.json', 'flat.json')).err).toMatch(/one file at a time/);
  });
});

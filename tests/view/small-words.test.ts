import { expect, test } from 'vitest';
import { exact } from '../../src/report/quantity.ts';
import { fileName } from '../../src/view/app/hand-over.ts';
import { sayKey } from '../../src/view/help/say-key.ts';
import { sayWhen } from '../../src/view/jobs/job-shelf.ts';
import { sayUnit, sayWithUnit } from '../../src/view/panels/rows/figures.ts';
import { sayKept } from '../../src/view/strip/say-kept.ts';

test('units are written as people write them', () => {
  expect(sayUnit('at least 0.0089 m3')).toBe('at least 0.0089 m³');
  expect(sayUnit('15.3 m at 3.66 m3/h')).toBe('15.3 m at 3.66 m³/h');
  expect(sayUnit('l')).toBe('litres');
  expect(sayWithUnit(exact(3, 'm3/h', 0))).toBe('3 m³/h');
  expect(sayWithUnit(null)).toBe('');
});

test('the time a job was kept is the device own', () => {
  expect(sayKept(null)).toBe('');
  expect(sayKept(new Date(2026, 4, 1, 9, 5).getTime())).toBe('kept 09:05');
});

test('a job of today says the hour, an older one the day', () => {
  const now = new Date(2026, 4, 2, 12, 0);
  expect(sayWhen(new Date(2026, 4, 2, 8, 7).toISOString(), now)).toBe('today 08:07');
  expect(sayWhen(new Date(2026, 4, 1, 8, 7).toISOString(), now)).toBe('1 May 2026');
  expect(sayWhen('nonsense', now)).toBe('');
});

test('a file is called after its job, in letters every device takes', () => {
  expect(fileName('First-floor flat', '.plan.json')).toBe('first-floor-flat.plan.json');
  expect(fileName('Café / flat: 2', '.svg')).toBe('cafe-flat-2.svg');
  expect(fileName('', '.svg')).toBe('job.svg');
});

test('keys are printed as they stand on the keyboard', () => {
  expect(sayKey({ key: 'z', ctrl: true, shift: true })).toBe('Ctrl + Shift + Z');
  expect(sayKey({ key: 'Escape' })).toBe('Esc');
  expect(sayKey({ key: 'r' })).toBe('R');
});

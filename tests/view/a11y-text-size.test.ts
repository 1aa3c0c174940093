import { expect, test } from 'vitest';
import { emOf, remOf } from '../../src/view/look/px-to-rem.ts';

test('sizes follow the letters of the device, thin lines do not', () => {
  expect(remOf('14.5px')).toBe('0.90625rem');
  expect(remOf('-10px 0 2px')).toBe('-0.625rem 0 2px');
  expect(remOf('1.5px solid var(--rule)')).toBe('1.5px solid var(--rule)');
  expect(remOf('calc(100% - 68px - 1px)')).toBe('calc(100% - 4.25rem - 1px)');
});

test('the page is laid out otherwise at widths in letters', () => {
  expect(emOf('(min-width: 700px) and (max-width: 1020px)')).toBe('(min-width: 43.75em) and (max-width: 63.75em)');
});

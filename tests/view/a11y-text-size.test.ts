import { expect, test } from 'vitest';
import { pxToRem } from '../../src/view/look/px-to-rem.ts';

test('sizes follow the letters of the device, thin lines do not', () => {
  expect(pxToRem('.a { font-size: 14.5px; margin: -10px 0 2px; border: 1.5px solid; }')).toBe(
    '.a { font-size: 0.90625rem; margin: -0.625rem 0 2px; border: 1.5px solid; }',
  );
  expect(pxToRem('.a { height: calc(100% - 68px - 1px); }')).toBe('.a { height: calc(100% - 4.25rem - 1px); }');
});

test('the page is laid out otherwise at widths in letters', () => {
  expect(pxToRem('@media (min-width: 700px) and (max-width: 1020px) { .a { width: 64px; } }')).toBe(
    '@media (min-width: 43.75em) and (max-width: 63.75em) { .a { width: 4rem; } }',
  );
});

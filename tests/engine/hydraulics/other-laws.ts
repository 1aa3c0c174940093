import type { NetMethod } from '../../../src/engine/hydraulics/hydraulic-net.ts';
import { colebrook } from '../../published/colebrook.ts';

/** What the cubic has to meet at Re 4000: value and slope of the Swamee-Jain factor. */
const AT_4000 = 5.74 / 4000 ** 0.9;
const SLOPE = ((2 * 0.9 * 2) / Math.LN10) * AT_4000;

/**
 * Law of friction of the public-domain network program: 64 / Re, a cubic from 2000 to 4000, Swamee-Jain above. Its manual
 * prints the cubic with a sign that does not meet the slope at 4000; this is what the program itself does.
 */
export function programFriction(re: number, rough: number): number {
  if (re <= 2000) return 64 / re;
  if (re >= 4000) return 0.25 / Math.log10(rough / 3.7 + 5.74 / re ** 0.9) ** 2;
  const y2 = rough / 3.7 + AT_4000;
  const y3 = (-2 / Math.LN10) * Math.log(y2);
  const fa = 1 / y3 ** 2;
  const fb = fa * (2 - SLOPE / (y2 * y3));
  const r = re / 2000;
  const x1 = 7 * fa - fb;
  const x2 = 0.128 - 17 * fa + 2.5 * fb;
  const x3 = -0.128 + 13 * fa - 2 * fb;
  const x4 = r * (0.032 - 3 * fa + 0.5 * fb);
  return x1 + r * (x2 + r * (x3 + x4));
}

/** ft/s2, the gravity of the same program. */
export const PROGRAM_GRAVITY_FT = 32.2;
export const PROGRAM_GRAVITY = PROGRAM_GRAVITY_FT * 0.3048;

export const programMethod = (viscosityM2PerS: number): NetMethod => ({
  friction: programFriction,
  gravity: PROGRAM_GRAVITY,
  viscosityM2PerS,
});

/** The root search that the second column of the development nets was found with. */
export const exactMethod = (viscosityM2PerS: number): NetMethod => ({
  friction: (re, rough) => (re < 2300 ? 64 / re : colebrook(re, rough)),
  viscosityM2PerS,
});

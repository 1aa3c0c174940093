import { frictionFactor } from '../../src/engine/gas/friction.ts';

/** Formulas of other countries and older books. They stand here to check tables and units, and size nothing. */
export const PA_PER_IN_WC = 249.08891;
export const M3_PER_FT3 = 0.0283168466;
export const M_PER_FT = 0.3048;

/** Natural gas of the low-pressure equation: gravity factor as published. */
export const CR_NATURAL = 0.6094;

/** Low-pressure equation, ft3/h: D = Q^0.381 / (19.17 (dH / (Cr L))^0.206); in, in w.c., ft. */
export const lowPressureFlow = (boreIn: number, dropInWc: number, lengthFt: number, cr = CR_NATURAL): number =>
  (19.17 * boreIn * (dropInWc / (cr * lengthFt)) ** 0.206) ** (1 / 0.381);

/** Cr = 0.00354 S T (Z / S)^0.152; T in degrees Rankine, Z in centipoise. */
export const gravityFactor = (gravity: number, rankine: number, centipoise: number): number =>
  0.00354 * gravity * rankine * (centipoise / gravity) ** 0.152;

/** Spitzglass, ft3/h: 3550 k sqrt(h / (l SG)); in, in w.c., ft. */
export function spitzglassFlow(boreIn: number, dropInWc: number, lengthFt: number, gravity: number): number {
  const k = Math.sqrt(boreIn ** 5 / (1 + 3.6 / boreIn + 0.03 * boreIn));
  return 3550 * k * Math.sqrt(dropInWc / (lengthFt * gravity));
}

/** Pole: ft3/h, in, in w.c., length in yards; and its metric twin in m3/h, mm, mbar, m. */
export const poleImperial = (boreIn: number, dropInWc: number, yards: number, gravity: number): number =>
  1350 * boreIn ** 2 * Math.sqrt((dropInWc * boreIn) / (gravity * yards));
export const poleMetric = (boreMm: number, mbar: number, metres: number, gravity: number): number =>
  0.0071 * Math.sqrt((boreMm ** 5 * mbar) / (gravity * metres));

/** Flow (m3/h) that loses `paPerM` in a bore, by the friction factor of the engine and a gas of one's own choosing. */
export function darcyFlow(
  boreMm: number,
  paPerM: number,
  densityKgPerM3: number,
  viscosityPaS: number,
  law: 'smooth' | 'rough',
): number {
  const d = boreMm / 1000;
  const loss = (q: number): number => {
    const v = q / 3600 / ((Math.PI / 4) * d * d);
    return ((frictionFactor((densityKgPerM3 * v * d) / viscosityPaS, law, boreMm) / d) * densityKgPerM3 * v * v) / 2;
  };
  let [lo, hi] = [1e-3, 1e4];
  for (let turn = 0; turn < 200; turn++) {
    const middle = Math.sqrt(lo * hi);
    if (loss(middle) > paPerM) hi = middle;
    else lo = middle;
  }
  return Math.sqrt(lo * hi);
}

import { constant, word } from '../../reference/figure.ts';
import { table } from '../../reference/tables.ts';

/** Liquid water at about the pressure of the air: kg/m3, Pa s, kJ/kgK. */
export interface Water {
  readonly densityKgM3: number;
  readonly viscosityPaS: number;
  readonly cpKJPerKgK: number;
}

interface Term {
  readonly of: string;
  readonly in: string;
  readonly factor: number;
  readonly power: number;
}

function readTerms(): Term[] {
  const t = table('water-terms');
  const name = (row: string, column: string): string => {
    const found = word(t, row, column);
    if (found.is !== 'known') throw new Error(found.say);
    return found.word;
  };
  return t.rows.map(({ key }) => ({
    of: name(key, 'of'),
    in: name(key, 'in'),
    factor: constant(t, key, 'factor'),
    power: constant(t, key, 'power'),
  }));
}

// Read once: tables never change while the program runs, and every leg asks.
const TERMS = readTerms();
const of = (property: string, variable: string): readonly Term[] =>
  TERMS.filter((t) => t.of === property && t.in === variable);
const only = (property: string): number => of(property, 'one').reduce((sum, t) => sum + t.factor, 0);
const VOLUME = { one: only('volume'), alpha: of('volume', 'alpha'), beta: of('volume', 'beta') };
const HEAT = { one: only('heat'), alpha: of('heat', 'alpha'), beta: of('heat', 'beta') };
const VISCOSITY = of('viscosity', 'theta');
const at = (key: string): number => constant('water-scope', key);
const SCOPE = {
  fromK: at('fromK'),
  toK: at('toK'),
  zeroC: at('zeroC'),
  gas: at('gasKJPerKgK'),
  pressureMPa: at('pressureMPa'),
  stepK: at('stepK'),
  alphaK: at('alphaK'),
  betaK: at('betaK'),
  thetaK: at('thetaK'),
  viscosity: at('viscosityPaS'),
};

const series = (terms: readonly Term[], x: number): number =>
  terms.reduce((sum, t) => sum + t.factor * x ** t.power, 0);
/** Second derivative of a series by temperature, but for the common factor: heat capacity is made of it. */
const bent = (terms: readonly Term[], x: number): number =>
  terms.reduce((sum, t) => sum + t.power * (t.power + 1) * t.factor * x ** (t.power + 2), 0);

function work(tC: number): Water | null {
  const kelvin = tC + SCOPE.zeroC;
  if (!(kelvin >= SCOPE.fromK && kelvin <= SCOPE.toK)) return null;
  const alpha = SCOPE.stepK / (SCOPE.alphaK - kelvin);
  const beta = SCOPE.stepK / (kelvin - SCOPE.betaK);
  const tau = kelvin / SCOPE.stepK;
  const reduced = VOLUME.one + series(VOLUME.alpha, alpha) + series(VOLUME.beta, beta);
  // kJ over MPa is litres.
  const m3PerKg = ((SCOPE.gas * SCOPE.stepK) / SCOPE.pressureMPa / 1000) * reduced;
  return {
    densityKgM3: 1 / m3PerKg,
    viscosityPaS: SCOPE.viscosity * series(VISCOSITY, kelvin / SCOPE.thetaK),
    cpKJPerKgK: -SCOPE.gas * (HEAT.one + tau * (bent(HEAT.alpha, alpha) + bent(HEAT.beta, beta))),
  };
}

/** A plan has a handful of temperatures and hundreds of legs; the cap is against callers that sweep. */
const KEPT = 64;
const known = new Map<number, Water | null>();

/**
 * Properties of plain water at a temperature in degrees; null outside 0 to 110, where the release does not hold.
 * Source: tables water-terms and water-scope (SR6-08).
 */
export function waterAt(tC: number): Water | null {
  const found = known.get(tC);
  if (found !== undefined) return found;
  if (known.size >= KEPT) known.clear();
  const water = work(tC);
  known.set(tC, water);
  return water;
}

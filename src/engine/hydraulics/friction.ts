import { constant, figure } from '../../reference/figure.ts';

export type Regime = 'laminar' | 'transitional' | 'turbulent';

const law = (column: string): number => constant('friction-churchill', 'churchill', column);
const LAW = {
  lead: law('lead'),
  laminar: law('laminar'),
  laminarPower: law('laminarPower'),
  turbulentPower: law('turbulentPower'),
  logFactor: law('logFactor'),
  reynolds: law('reynolds'),
  reynoldsPower: law('reynoldsPower'),
  rough: law('rough'),
  steep: law('steep'),
  critical: law('critical'),
};

/** The lower end of a bound that is told as a range: what is not surely laminar is not called so. */
function bound(key: string): number {
  const found = figure('flow-regimes', key);
  if (found.is !== 'known') throw new Error(`no regime ${key}`);
  return found.lo;
}
const LAMINAR_TO = bound('laminarTo');
const TURBULENT_FROM = bound('turbulentFrom');

/** Between the regimes no friction law is sure; what says a figure there says so beside it. */
export function regimeOf(re: number): Regime {
  if (re <= LAMINAR_TO) return 'laminar';
  return re < TURBULENT_FROM ? 'transitional' : 'turbulent';
}

/**
 * Darcy friction factor by Churchill: one smooth formula through all regimes, so that a network settles. Reynolds
 * number above 0, roughness over bore. Source: table friction-churchill.
 */
export function frictionFactor(re: number, relRoughness: number): number {
  const inner = (LAW.reynolds / re) ** LAW.reynoldsPower + LAW.rough * relRoughness;
  const a = (LAW.logFactor * Math.log(1 / inner)) ** LAW.steep;
  const b = (LAW.critical / re) ** LAW.steep;
  const laminar = (LAW.laminar / re) ** LAW.laminarPower;
  return LAW.lead * (laminar + (a + b) ** LAW.turbulentPower) ** (1 / LAW.laminarPower);
}

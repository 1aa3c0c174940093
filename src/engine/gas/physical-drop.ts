import { constant, figure } from '../../reference/figure.ts';
import { table } from '../../reference/tables.ts';
import type { TubeSize } from '../../reference/tubes.ts';
import { leastSure, type Quantity, type Sureness } from '../../report/quantity.ts';
import type { Cite } from '../../report/working.ts';
import { type FrictionLaw, frictionFactor, lawOf } from './friction.ts';
import type { GasKind } from './heat-input.ts';
import { best } from './interval.ts';
import { citesOf } from './said.ts';

interface Gas {
  readonly densityKgPerM3: number;
  readonly viscosityPaS: number;
  readonly sureness: Sureness;
  readonly cite: Cite;
}

function read(gas: GasKind): Gas | undefined {
  const density = figure('gas-properties', gas, 'relativeDensity');
  const viscosity = figure('gas-properties', gas, 'viscosityPaS');
  if (density.is !== 'known' || viscosity.is !== 'known') return undefined;
  return {
    densityKgPerM3: density.lo * constant('gas-physical-model', 'smooth', 'airDensityKgPerM3'),
    viscosityPaS: viscosity.lo,
    sureness: leastSure(density.sureness, viscosity.sureness),
    cite: density.cite,
  };
}

const GASES: Readonly<Record<GasKind, Gas | undefined>> = { natural: read('natural'), propane: read('propane') };

/** Pa per metre and Reynolds number at a flow (m3/h) in a bore (mm): Darcy-Weisbach, f (1/d) rho v2 / 2. No flow, no loss. */
function perMetre(
  flowM3PerH: number,
  boreMm: number,
  gas: Gas,
  law: FrictionLaw,
): { readonly pa: number; readonly re: number } {
  const d = boreMm / 1000;
  const v = flowM3PerH / 3600 / ((Math.PI / 4) * d * d);
  const re = (gas.densityKgPerM3 * v * d) / gas.viscosityPaS;
  // So little that the laminar factor would overflow is no flow.
  if (!(re > Number.EPSILON)) return { pa: 0, re: 0 };
  return { pa: ((frictionFactor(re, law, boreMm) / d) * gas.densityKgPerM3 * v * v) / 2, re };
}

export interface PhysicalDrop {
  /** mbar, with the method's own error; open above where the flow or the length is, or the law ends. */
  readonly drop: Quantity;
  /** Reynolds number at the best single flow, for the working. */
  readonly re: number | null;
  /** The flow is past the Reynolds number the law holds to: the low side is that of the flow it still holds for. */
  readonly pastLaw: boolean;
  readonly cites: readonly Cite[];
}

/**
 * Loss of a straight length by the smooth-tube (steel: rough-tube) sum, mbar. The error of the method goes by the
 * Reynolds number (table gas-physical-error); it widens slower than the loss grows, so more flow never means less.
 * Undefined where the tube has no bore or law. Past the Reynolds number the law holds to, only the low side is given.
 */
export function physicalDrop(
  tube: TubeSize,
  lengthM: Quantity,
  flow: Quantity,
  gasKind: GasKind,
): PhysicalDrop | undefined {
  const gas = GASES[gasKind];
  const law = lawOf(tube.kind);
  const bore = tube.boreMm;
  if (!gas || !law || bore === null) return undefined;
  const model = table('gas-physical-model');
  const errors = table('gas-physical-error');
  const reTo = constant(model, law.law, 'reynoldsTo');
  const reOf = (q: number): number => perMetre(q, bore, gas, law.law).re;
  const within = (q: number): number => (reOf(q) <= reTo ? q : (q * reTo) / reOf(q));
  const loss = (q: number, m: number, side: 'lo' | 'hi'): number => {
    const { pa, re } = perMetre(q, bore, gas, law.law);
    return (pa * m * (1 + constant(errors, `${law.law} ${side}`, Math.min(re, reTo)))) / 100;
  };
  const q = best(flow);
  const m = best(lengthM);
  const open = flow.hi === null || reOf(flow.hi) > reTo;
  const drop: Quantity = {
    lo: loss(within(flow.lo), lengthM.lo, 'lo'),
    hi: flow.hi === null || open || lengthM.hi === null ? null : loss(flow.hi, lengthM.hi, 'hi'),
    value: q === null || m === null || reOf(q) > reTo ? null : (perMetre(q, bore, gas, law.law).pa * m) / 100,
    unit: 'mbar',
    digits: 2,
    sureness: leastSure('derived', tube.sureness, gas.sureness, law.sureness, lengthM.sureness, flow.sureness),
  };
  const cite = (of: typeof model): Cite => ({ source: of.source, clause: of.clause, table: of.id });
  return {
    drop,
    re: q === null ? null : reOf(q),
    pastLaw: flow.hi !== null && open,
    cites: citesOf(cite(model), gas.cite, law.cite, tube.cite, cite(errors)),
  };
}

import { constant, figure } from '../../reference/figure.ts';
import { tube } from '../../reference/tubes.ts';
import { addQuantities, againstMost, exact, leastSure, type Quantity, type Verdict } from '../../report/quantity.ts';
import type { Cite, Working, WorkingStep } from '../../report/working.ts';
import { midSentence } from '../say-names.ts';
import { anything, best } from './interval.ts';
import { citesOf, figures, quantityOf, step } from './said.ts';

/** One length of gas pipe on the consumer's side of the meter. */
export interface GasPipe {
  readonly label: string;
  readonly tubeKind: string;
  readonly size: string | null;
  readonly lengthM: Quantity;
}

export interface InstallationVolume {
  /** By the tabulated volume per metre, and by the true bore: 15 mm is rounded down in the table. */
  readonly byTable: Working;
  readonly byBore: Working;
  /** Greatest volume of a small installation, m3, and how the greater of the two stands against it. */
  readonly limit: Quantity;
  readonly verdict: Verdict | 'cantTell';
}

interface PerMetre {
  readonly m3PerM: number;
  readonly cite: Cite;
  readonly sureness: Quantity['sureness'];
  readonly how: string;
}

function boreVolume(pipe: GasPipe): PerMetre | undefined {
  const found = tube(pipe.tubeKind, pipe.size);
  if (!found || found.boreMm === null) return undefined;
  const m3PerM = (Math.PI / 4) * (found.boreMm / 1000) ** 2;
  return { m3PerM, cite: found.cite, sureness: leastSure('derived', found.sureness), how: `bore of ${found.boreMm}` };
}

function tableVolume(pipe: GasPipe): PerMetre | undefined {
  const label = tube(pipe.tubeKind, pipe.size)?.label ?? pipe.size;
  if (label === null) return undefined;
  const found = figure('gas-installation-volume', `${pipe.tubeKind} ${label}`);
  if (found.is !== 'known') return boreVolume(pipe);
  return { m3PerM: found.lo, cite: found.cite, sureness: found.sureness, how: `${found.lo} m3/m` };
}

function volumeOf(
  title: string,
  pipes: readonly GasPipe[],
  meter: string | null,
  perMetre: (p: GasPipe) => PerMetre | undefined,
): Working {
  const steps: WorkingStep[] = [];
  const missing: string[] = [];
  const volumes = pipes.map((pipe): Quantity => {
    const per = perMetre(pipe);
    if (pipe.lengthM.hi === null) missing.push(`length of ${pipe.label}`);
    if (!per) missing.push(`the size of a pipe (${midSentence(pipe.label)})`);
    if (!per) return anything('m3', 4, pipe.lengthM.sureness);
    const { lo, hi } = pipe.lengthM;
    const middle = best(pipe.lengthM);
    const volume: Quantity = {
      lo: lo * per.m3PerM,
      hi: hi === null ? null : hi * per.m3PerM,
      value: middle === null ? null : middle * per.m3PerM,
      unit: 'm3',
      digits: 4,
      sureness: leastSure(pipe.lengthM.sureness, per.sureness),
    };
    steps.push(step(pipe.label, `${figures(pipe.lengthM, 1)} m, ${per.how}`, volume, citesOf(per.cite)));
    return volume;
  });
  const pipe = volumes.length === 0 ? exact(0, 'm3', 4) : addQuantities(volumes);
  const share = constant('gas-installation-volume-rule', 'fittings');
  const rule = figure('gas-installation-volume-rule', 'fittings');
  const fittings: Quantity = {
    ...pipe,
    lo: pipe.lo * share,
    hi: pipe.hi === null ? null : pipe.hi * share,
    value: pipe.value === null ? null : pipe.value * share,
  };
  const metered = meter === null ? null : figure('gas-meters', meter, 'volumeM3');
  const inMeter = metered?.is === 'known' ? quantityOf(metered, 4) : anything('m3', 4);
  if (metered?.is !== 'known') missing.push(meter === null ? 'size of the meter' : `volume of meter ${meter}`);
  const whole = addQuantities([inMeter, pipe, fittings]);
  steps.push(step('Pipe', '', pipe), step('Fittings', `${share} of the pipe`, fittings, citesOf(rule.cite)));
  steps.push(
    step('Meter', meter ?? 'not told', metered?.is === 'known' ? inMeter : null, citesOf(metered?.cite)),
    step('Installation volume', 'meter + pipe + fittings', whole),
  );
  return { title, steps, result: whole.hi === null ? null : whole, missing: [...new Set(missing)], assumed: [] };
}

/**
 * Volume of the gas installation, m3: meter + pipe + a tenth of the pipe, in both ways of counting the pipe.
 * Sizes the table does not list go by their bore in both. A pipe of unknown size leaves the low side only.
 */
export function installationVolume(pipes: readonly GasPipe[], meter: string | null): InstallationVolume {
  const byTable = volumeOf('Installation volume by the table', pipes, meter, tableVolume);
  const byBore = volumeOf('Installation volume by the bore', pipes, meter, boreVolume);
  const most = constant('gas-installation-limits', 'most', 'volumeM3');
  const limit = figure('gas-installation-limits', 'most', 'volumeM3');
  const last = (w: Working): Quantity => w.steps[w.steps.length - 1]?.result ?? anything('m3', 4);
  const [a, b] = [last(byTable), last(byBore)];
  const wider: Quantity = {
    ...a,
    lo: Math.max(a.lo, b.lo),
    hi: a.hi === null || b.hi === null ? null : Math.max(a.hi, b.hi),
  };
  return {
    byTable,
    byBore,
    limit: limit.is === 'known' ? quantityOf(limit) : exact(most, 'm3', 3),
    verdict: againstMost(wider, most),
  };
}

import { services } from '../catalogue/services.ts';
import { bendCount } from '../network/bends.ts';
import { between, exact, type Quantity, roundQuantity } from '../report/quantity.ts';
import type { RunFacts } from '../report/report.ts';
import { roundWorking, type Working } from '../report/working.ts';
import type { Given } from './given.ts';
import { sayRun } from './say-names.ts';

function lengthOf(given: Given, run: string): Quantity {
  const edges = (given.network.edgesOfRun.get(run) ?? []).flatMap((e) => given.network.edges.get(e) ?? []);
  const lo = edges.reduce((sum, e) => sum + e.lengthMm.lo, 0) / 1000;
  const open = edges.some((e) => e.lengthMm.hi === null);
  const hi = edges.reduce((sum, e) => sum + (e.lengthMm.hi ?? 0), 0) / 1000;
  return open ? between(lo, null, 'm', 1) : hi - lo < 0.05 ? exact(lo, 'm', 1) : between(lo, hi, 'm', 1);
}

function bendsOf(given: Given, run: string): string {
  const b = bendCount(given.network, run);
  const words = [b.total90 > 0 ? `${b.total90} of 90` : '', b.total45 > 0 ? `${b.total45} of 45` : ''].filter(Boolean);
  if (b.unseen.hi > 0)
    words.push(`${b.unseen.lo === b.unseen.hi ? b.unseen.hi : `${b.unseen.lo} to ${b.unseen.hi}`} unseen`);
  if (b.unresolved > 0) words.push(`${b.unresolved} unresolved`);
  const most = Math.max(0, ...b.betweenOpenable.map((p) => p.total90 + p.total45 + p.unresolved + p.unseen.hi));
  const turns = words.length === 0 ? 'no bends' : `bends: ${words.join(', ')}`;
  return b.betweenOpenable.length > 1 ? `${turns}; at most ${most} between places that come apart` : turns;
}

/** Sums worked out along each run: for gas, one for each section it is part of. */
function workingsByRun(given: Given): ReadonlyMap<string, readonly Working[]> {
  const found = new Map<string, Working[]>();
  for (const { section, result } of given.gas.sections.values()) {
    const working = roundWorking(result.working);
    for (const run of section.runs) {
      const here = found.get(run);
      if (here) here.push(working);
      else found.set(run, [working]);
    }
  }
  return found;
}

/** Every live run, in the order of services. */
export function runFacts(given: Given): RunFacts[] {
  const workings = workingsByRun(given);
  const order = (run: string): number =>
    services.get(given.plan.runs[run]?.service ?? '')?.order ?? Number.MAX_SAFE_INTEGER;
  return [...given.network.edgesOfRun.keys()]
    .sort((a, b) => order(a) - order(b) || (a < b ? -1 : 1))
    .map((run) => ({
      run,
      name: sayRun(given.plan, run),
      service: given.plan.runs[run]?.service ?? '',
      lengthM: roundQuantity(lengthOf(given, run)),
      bends: bendsOf(given, run),
      workings: workings.get(run) ?? [],
    }));
}

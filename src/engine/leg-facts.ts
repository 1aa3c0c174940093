import type { Fitting } from '../network/fitting.ts';
import { fittingAt } from '../network/fitting-at.ts';
import type { Edge } from '../network/network.ts';
import type { LegFacts } from '../report/report.ts';
import type { Given } from './given.ts';

function sayFitting(f: Fitting): string | null {
  switch (f.is) {
    case 'elbow':
      return `elbow ${f.degrees}`;
    case 'bend':
      return `bend ${f.degrees}`;
    case 'tee':
      return f.words;
    case 'reducer':
      return 'reducer';
    case 'transition':
      return 'change of tube';
    case 'coupling':
      return 'coupler to old pipe';
    case 'cap':
      return 'stop end';
    case 'unresolved':
      return 'unresolved';
    default:
      return null;
  }
}

/** A leg's share of a sum is finer than the sum: four decimals keep a millibar's last digit. */
const rounded = (n: number): number => Number(n.toFixed(4)) + 0;
const span = (q: { readonly lo: number; readonly hi: number | null }) => ({
  lo: rounded(q.lo),
  hi: q.hi === null ? null : rounded(q.hi),
});

/** Share of a leg in its section's figures, by length: the loss of a section is the same along it. */
function gasShare(given: Given, edge: Edge): Pick<LegFacts, 'dropMbar' | 'flowM3PerH' | 'equivalentM'> {
  const id = given.gas.trace.sectionOf.get(edge.id);
  const section = id === undefined ? undefined : given.gas.sections.get(id);
  if (!section) return { dropMbar: null, flowM3PerH: null, equivalentM: null };
  const whole = section.section.lengthMm.value;
  const share = whole !== null && whole > 0 && edge.lengthMm.value !== null ? edge.lengthMm.value / whole : null;
  const { drop, effectiveLength } = section.result;
  const { flow } = section.ask;
  const part = (q: typeof drop, k: number) => span({ lo: q.lo * k, hi: q.hi === null ? null : q.hi * k });
  return {
    dropMbar: share === null ? null : part(drop, share),
    equivalentM: share === null ? null : part(effectiveLength, share),
    flowM3PerH: flow.hi === null ? null : { lo: rounded(flow.lo), hi: rounded(flow.hi) },
  };
}

export function legFacts(given: Given): LegFacts[] {
  const { network } = given;
  return [...network.edges.values()].map((edge) => ({
    leg: edge.id,
    run: edge.run,
    lengthMm: { lo: rounded(edge.lengthMm.lo), hi: rounded(edge.lengthMm.hi ?? edge.lengthMm.lo) },
    ...gasShare(given, edge),
    fittings: [...new Set([edge.a, edge.b])].flatMap((v) =>
      network.vertices.has(v) ? (sayFitting(fittingAt(network, v)) ?? []) : [],
    ),
  }));
}

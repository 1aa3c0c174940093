import { type Allowance, allowanceClasses } from '../../network/allowances.ts';
import type { Section, Trace } from '../../network/trace.ts';
import { tube } from '../../reference/tubes.ts';
import type { Given } from '../given.ts';
import { fittingMetres } from '../hydraulics/fitting-loss.ts';
import { roughnessOf, tubeLoss } from '../hydraulics/tube-loss.ts';
import { waterAt } from '../hydraulics/water.ts';

/** Loss along a way, kPa; `hi` null where a length or a fitting is open above. */
export interface Loss {
  readonly lo: number;
  readonly hi: number | null;
}

/** Pipe and fittings of a way, ready to be asked at many flows. */
export interface LossParts {
  readonly parts: readonly {
    readonly boreMm: number;
    readonly rough: { readonly lo: number; readonly hi: number };
    readonly metres: Loss;
  }[];
  /** Sizes and fittings no table has a figure for. */
  readonly missing: readonly string[];
}

const charged = new WeakMap<Trace, ReadonlyMap<string, readonly Allowance[]>>();
function chargesOf(given: Given, trace: Trace): ReadonlyMap<string, readonly Allowance[]> {
  const found = charged.get(trace) ?? allowanceClasses(given.network, trace);
  charged.set(trace, found);
  return found;
}

const add = (a: Loss, b: Loss, times = 1): Loss => ({
  lo: a.lo + times * b.lo,
  hi: a.hi === null || b.hi === null ? null : a.hi + times * b.hi,
});

/** Changes of size and tube have no line in the table; what they lose is small beside the rest. */
const FREE: ReadonlySet<string> = new Set(['reducer', 'transition', 'unresolved']);

export function lossParts(given: Given, trace: Trace, sections: readonly Section[]): LossParts {
  const charges = chargesOf(given, trace);
  const missing = new Set<string>();
  const seen = new Set<string>();
  const parts = sections.flatMap((section) => {
    const size = tube(section.tube.kind, section.tube.size);
    const rough = roughnessOf(section.tube.kind);
    if (!size || size.boreMm === null || rough === null || rough.hi === null) {
      missing.add('the bore of a pipe on the way');
      return [];
    }
    const { boreMm } = size;
    let metres: Loss = {
      lo: section.lengthMm.lo / 1000,
      hi: section.lengthMm.hi === null ? null : section.lengthMm.hi / 1000,
    };
    const fitting = (key: string): Loss | null => fittingMetres('water', key, boreMm);
    for (const leg of section.legs) {
      for (const a of charges.get(leg) ?? []) {
        const has = fitting(a.class);
        if (has) metres = add(metres, has);
        else if (!FREE.has(a.class)) missing.add('what a fitting on the way loses');
      }
      const edge = given.network.edges.get(leg);
      const elbow = edge?.bends ? fitting('elbow90') : null;
      if (edge?.bends && elbow)
        metres = add(metres, { lo: elbow.lo * edge.bends.lo, hi: elbow.hi === null ? null : elbow.hi * edge.bends.hi });
      for (const vertex of edge ? [edge.a, edge.b] : []) {
        if (seen.has(vertex)) continue;
        seen.add(vertex);
        for (const item of given.network.vertices.get(vertex)?.items ?? []) {
          const has = fitting(given.plan.items[item]?.kind ?? '');
          if (has) metres = add(metres, has);
          else missing.add('what a valve or filter on the way loses');
        }
      }
    }
    return [{ boreMm, rough: { lo: rough.lo, hi: rough.hi }, metres }];
  });
  return { parts, missing: [...missing] };
}

/** kPa lost along a way at a flow (litres a minute) of water of a temperature. Zero at rest. */
export function lossAt({ parts }: LossParts, flowLPerMin: number, tC: number): Loss {
  const water = waterAt(tC);
  if (water === null) return { lo: 0, hi: null };
  const flowKgPerS = (flowLPerMin / 60 / 1000) * water.densityKgM3;
  return parts.reduce<Loss>(
    (sum, { boreMm, rough, metres }) => {
      const [lo, hi] = [rough.lo, rough.hi].map((r) => tubeLoss({ flowKgPerS, boreMm, roughnessMm: r, tC })?.paPerM);
      if (lo === undefined || hi === undefined) return { lo: sum.lo, hi: null };
      return add(sum, { lo: (lo * metres.lo) / 1000, hi: metres.hi === null ? null : (hi * metres.hi) / 1000 });
    },
    { lo: 0, hi: 0 },
  );
}

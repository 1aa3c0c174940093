import { allowanceClasses } from '../../network/allowances.ts';
import type { Network } from '../../network/network.ts';
import type { Section, Trace } from '../../network/trace.ts';
import { FITTING_CLASSES, type FittingClass, type FittingCount } from '../gas/equivalent-length.ts';

export type FittingCounts = (section: Section) => FittingCount[];

const isRead = (of: string): of is FittingClass => (FITTING_CLASSES as readonly string[]).includes(of);

/**
 * Fittings charged to each section, with the unseen bends of a stretch as a range. A change of size adds nothing in the
 * cited tables; a place whose fitting is not resolved is a finding of its own and adds nothing here.
 */
export function sectionFittings(network: Network, trace: Trace): FittingCounts {
  const charged = allowanceClasses(network, trace);
  return (section) => {
    const counts = new Map<FittingClass, { lo: number; hi: number | null }>();
    const add = (of: FittingClass, lo: number, hi: number | null): void => {
      const now = counts.get(of) ?? { lo: 0, hi: 0 };
      counts.set(of, { lo: now.lo + lo, hi: now.hi === null || hi === null ? null : now.hi + hi });
    };
    for (const leg of section.legs) {
      for (const a of charged.get(leg) ?? []) if (isRead(a.class)) add(a.class, 1, 1);
      const bends = network.edges.get(leg)?.bends;
      // Nobody saw how they are made: an elbow is the dearer of the two, a pulled bend the cheaper.
      if (bends && bends.hi > 0) {
        add('bend90', bends.lo, bends.lo);
        add('elbow90', 0, bends.hi - bends.lo);
      }
    }
    return [...counts].map(([of, n]) => ({ class: of, count: n.lo === n.hi ? n.lo : n }));
  };
}

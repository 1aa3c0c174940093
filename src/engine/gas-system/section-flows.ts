import type { Section, Trace } from '../../network/trace.ts';
import { tube } from '../../reference/tubes.ts';
import { addQuantities, exact, type Quantity } from '../../report/quantity.ts';
import { effectiveLength } from '../gas/equivalent-length.ts';
import { anything, best } from '../gas/interval.ts';
import { physicalDrop } from '../gas/physical-drop.ts';
import type { PathSection } from '../gas/size-answers.ts';
import { ringFlows } from './ring-flows.ts';

export interface SectionFlow {
  readonly flow: Quantity;
  /** The gas goes against the way the tree was walked; only on a ring. */
  readonly against: boolean;
}

const none: Quantity = exact(0, 'm3/h', 2);

/** Everything beyond a section at once, no diversity. An unknown appliance leaves the low side only. */
export function treeFlow(section: Section, flows: ReadonlyMap<string, Quantity | null>): Quantity {
  if (!section.sound) return anything('m3/h', 2);
  const beyond = section.serves.map((v) => flows.get(v) ?? anything('m3/h', 2));
  return beyond.length === 0 ? none : addQuantities(beyond);
}

type AskOf = (section: Section, flow: Quantity) => PathSection;

/** Loss by the smooth-tube sum alone, for sharing the flow of a ring: mbar at a flow in m3/h. */
function lossOf(trace: Trace, askOf: AskOf): (section: string, flow: number) => number {
  const parts = new Map(
    trace.sections.map((s) => {
      const ask = askOf(s, none);
      const size = tube(ask.tubeKind, ask.size);
      return [
        s.id,
        {
          ask,
          size,
          length: effectiveLength(ask.tubeKind, size?.size ?? null, ask.lengthM, ask.fittings, ask.editions).length,
        },
      ];
    }),
  );
  return (id, flow) => {
    const part = parts.get(id);
    if (!part?.size || flow === 0) return 0;
    return best(physicalDrop(part.size, part.length, exact(flow, 'm3/h', 2), part.ask.gas)?.drop ?? none) ?? 0;
  };
}

/**
 * Flow of every section, m3/h. On a tree it is what lies beyond; round a ring it is shared so that both ways lose the
 * same by the smooth-tube sum, at the least, the best and the greatest demand.
 */
export function sectionFlows(
  trace: Trace,
  flows: ReadonlyMap<string, Quantity | null>,
  askOf: AskOf,
): ReadonlyMap<string, SectionFlow> {
  const tree = new Map(trace.sections.map((s) => [s.id, { flow: treeFlow(s, flows), against: false }]));
  const known = [...flows.values()].every((q) => q !== null && q.hi !== null);
  const sized = trace.sections.every((s) => !s.onRing || tube(s.tube.kind, s.tube.size));
  if (trace.rings.length === 0) return tree;
  const open = trace.sections.map((s): [string, SectionFlow] => [
    s.id,
    s.onRing ? { flow: anything('m3/h', 2), against: false } : (tree.get(s.id) ?? { flow: none, against: false }),
  ]);
  if (!known || !sized) return new Map(open);
  const loss = lossOf(trace, askOf);
  const at = (pick: (q: Quantity) => number) => ringFlows(trace, (vertex) => pick(flows.get(vertex) ?? none), loss);
  const [low, middle, high] = [at((q) => q.lo), at((q) => best(q) ?? q.lo), at((q) => q.hi ?? q.lo)];
  return new Map(
    trace.sections.map((s): [string, SectionFlow] => {
      const signed = [low, middle, high].map((m) => m.get(s.id) ?? 0);
      const sizes = signed.map(Math.abs);
      const flow: Quantity = {
        lo: Math.min(...sizes),
        hi: Math.max(...sizes),
        value: sizes[1] ?? null,
        unit: 'm3/h',
        digits: 2,
        sureness: 'derived',
      };
      return [s.id, { flow, against: (signed[1] ?? 0) < 0 }];
    }),
  );
}

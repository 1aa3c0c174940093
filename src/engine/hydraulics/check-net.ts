import type { HydraulicNet, NetLink, NetNode } from './hydraulic-net.ts';

const numbered = (n: number | undefined): boolean => n === undefined || Number.isFinite(n);

function nodeFault(n: NetNode): string | null {
  if (!numbered(n.headM)) return `The head held at ${n.id} is no number.`;
  return numbered(n.demandLPerS) ? null : `What is drawn at ${n.id} is no number.`;
}

function linkFault(l: NetLink, nodes: ReadonlyMap<string, number>): string | null {
  for (const end of [l.from, l.to]) if (!nodes.has(end)) return `${l.id} ends at ${end}, which is no node.`;
  if (l.from === l.to) return `${l.id} starts and ends at ${l.from}.`;
  if (!(l.boreMm > 0 && Number.isFinite(l.boreMm))) return `${l.id} has no bore.`;
  const least: readonly (readonly [number, string])[] = [
    [l.lengthM, 'length'],
    [l.roughnessMm, 'roughness'],
    [l.k, 'loss of fittings'],
    [l.pump?.r ?? 0, 'slope of the pump'],
  ];
  for (const [n, what] of least)
    if (!(n >= 0 && Number.isFinite(n))) return `The ${what} of ${l.id} is below zero or no number.`;
  return numbered(l.pump?.h0M) ? null : `The lift of the pump in ${l.id} is no number.`;
}

const twice = (ids: readonly string[]): string | undefined => {
  const seen = new Set<string>();
  return ids.find((id) => seen.size === seen.add(id).size);
};

/** The first thing that keeps the net from being summed, in words; null where it is sound. `nodes`: id to its place. */
export function netFault(net: HydraulicNet, nodes: ReadonlyMap<string, number>): string | null {
  const again = twice(net.nodes.map((n) => n.id)) ?? twice(net.links.map((l) => l.id));
  if (again !== undefined) return `${again} is there twice.`;
  for (const n of net.nodes) {
    const fault = nodeFault(n);
    if (fault !== null) return fault;
  }
  for (const l of net.links) {
    const fault = linkFault(l, nodes);
    if (fault !== null) return fault;
  }
  return null;
}

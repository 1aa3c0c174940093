import { netFault } from './check-net.ts';
import type { HydraulicNet, NetMethod, Solved } from './hydraulic-net.ts';
import { linkLaw } from './link-law.ts';
import { type NetPart, netParts, type PlacedLink } from './net-parts.ts';
import { settleRings } from './settle-rings.ts';
import { type Found, solveTree } from './solve-tree.ts';
import { waterAt } from './water.ts';

const no = (why: string): Solved => ({ ok: false, why });
const NAMED = 5;

function viscosityOf(net: HydraulicNet, method: NetMethod): number | null {
  if (method.viscosityM2PerS !== undefined) return method.viscosityM2PerS > 0 ? method.viscosityM2PerS : null;
  const water = waterAt(net.tC);
  return water && water.viscosityPaS / water.densityKgM3;
}

function adrift(net: HydraulicNet, part: NetPart): string {
  const ids = part.order.flatMap((n) => net.nodes[n]?.id ?? []);
  const more = ids.length > NAMED ? ` and ${ids.length - NAMED} more` : '';
  return `No pipe joins ${ids.slice(0, NAMED).join(', ')}${more} to a place whose head is told.`;
}

/**
 * Steady flows and heads of a net of water pipes, trees, rings, several sources and pumps. A part that hangs as a tree on
 * one held node is summed straight; anything else is settled in turns. Never throws: a net that makes no sense, hangs
 * on nothing, or does not settle says so.
 */
export function solveNetwork(net: HydraulicNet, method: NetMethod = {}): Solved {
  const places = new Map(net.nodes.map((n, i) => [n.id, i] as const));
  const fault = netFault(net, places);
  if (fault !== null) return no(fault);
  const viscosity = viscosityOf(net, method);
  if (viscosity === null) return no(`Water at ${net.tC} degrees has no figures.`);
  const links: PlacedLink[] = net.links.map((link, index) => ({
    index,
    link,
    from: places.get(link.from) ?? 0,
    to: places.get(link.to) ?? 0,
  }));
  const parts = netParts(net.nodes, links);
  const loose = parts.find((p) => p.held.length === 0);
  if (loose) return no(adrift(net, loose));
  const laws = net.links.map((link) => linkLaw(link, viscosity, method));
  const demand = Float64Array.from(net.nodes, (n) => (n.demandLPerS ?? 0) / 1000);
  const found: Found = {
    flow: new Float64Array(links.length),
    head: Float64Array.from(net.nodes, (n) => n.headM ?? 0),
  };
  let [iterations, work] = [0, 0];
  for (const part of parts) {
    if (part.held.length === 1 && part.links.length === part.order.length - 1) {
      solveTree(part, demand, laws, found);
      work += 2 * part.links.length;
      continue;
    }
    const settled = settleRings(part, demand, laws, found);
    iterations += settled.iterations;
    work += settled.work;
    if (!settled.settled) return no(`The flows between ${part.order.length} nodes did not settle.`);
  }
  return {
    ok: true,
    flowLPerS: new Map(net.links.map((l, i) => [l.id, (found.flow[i] ?? 0) * 1000])),
    headM: new Map(net.nodes.map((n, i) => [n.id, found.head[i] ?? 0])),
    iterations,
    work,
  };
}

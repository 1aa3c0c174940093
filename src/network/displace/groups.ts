import type { AxisIndex, Triple } from './frame.ts';
import type { Stays, Together } from './spread.ts';

/** Nodes whose move along an axis is settled to the same figure. */
export interface Group {
  readonly mm: number;
  readonly nodes: readonly string[];
}

const SAME_MM = 1e-6;

type Told = ReadonlyMap<string, Triple>;

function grouped(
  nodes: Iterable<string>,
  by: (node: string) => number | undefined,
  shift: (node: string) => number,
): Group[] {
  const groups: { mm: number; nodes: string[] }[] = [];
  for (const node of nodes) {
    const own = by(node);
    if (own === undefined) continue;
    const mm = own - shift(node);
    const group = groups.find((g) => Math.abs(g.mm - mm) < SAME_MM);
    if (group) group.nodes.push(node);
    else groups.push({ mm, nodes: [node] });
  }
  return groups;
}

/**
 * Nodes that are told where to go, or stay. Where there are none, what a height is measured from carries the rest along.
 * `shift` is what the falls on the way add to a node's move, over that of the node they are reckoned from.
 */
export function groupsIn(
  part: Together,
  { told, carried }: { readonly told: Told; readonly carried: ReadonlyMap<string, number> },
  stays: Stays,
  axis: AxisIndex,
  shift: (node: string) => number = () => 0,
): Group[] {
  const firm = grouped(part.nodes, (node) => told.get(node)?.[axis] ?? (stays(node) ? 0 : undefined), shift);
  if (firm.length > 0 || axis !== 2) return firm;
  return byFarthest(grouped(part.nodes, (node) => carried.get(node), shift)).slice(0, 1);
}

/** What moves farthest first, so that a jog is looked for from there. */
export const byFarthest = (groups: readonly Group[]): Group[] =>
  [...groups].sort((a, b) => Math.abs(b.mm) - Math.abs(a.mm));

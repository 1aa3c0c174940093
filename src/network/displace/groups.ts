import type { AxisIndex, Triple } from './frame.ts';
import type { Stays, Together } from './spread.ts';

/** Nodes whose move along an axis is settled to the same figure. */
export interface Group {
  readonly mm: number;
  readonly nodes: readonly string[];
}

const SAME_MM = 1e-6;

/** `shift` is what the falls on the way add to a node's move, over that of the node they are reckoned from. */
export function groupsIn(
  part: Together,
  told: ReadonlyMap<string, Triple>,
  stays: Stays,
  axis: AxisIndex,
  shift: (node: string) => number = () => 0,
): Group[] {
  const groups: { mm: number; nodes: string[] }[] = [];
  for (const node of part.nodes) {
    const own = told.get(node)?.[axis] ?? (stays(node) ? 0 : undefined);
    if (own === undefined) continue;
    const mm = own - shift(node);
    const group = groups.find((g) => Math.abs(g.mm - mm) < SAME_MM);
    if (group) group.nodes.push(node);
    else groups.push({ mm, nodes: [node] });
  }
  return groups;
}

/** What moves farthest first, so that a jog is looked for from there. */
export const byFarthest = (groups: readonly Group[]): Group[] =>
  [...groups].sort((a, b) => Math.abs(b.mm) - Math.abs(a.mm));

import { Refusal } from './changes.ts';
import { groupsIn } from './groups.ts';
import { type LegLaw, otherNode } from './law.ts';
import { sayRun } from './say.ts';
import type { Asked } from './solve.ts';
import { cutsBetween, type Together } from './spread.ts';

/** Moves along the two level axes, by node. */
export type LevelMoves = readonly [ReadonlyMap<string, number>, ReadonlyMap<string, number>];

/**
 * mm a leg must drop more than before to keep its fall per metre, now that its way in plan has changed. What its ends
 * part across it is a jog, and falls as well.
 */
export function fallChange(law: LegLaw, level: LevelMoves): number {
  if (law.fallMm === null || law.fallMm === 0 || law.axis === null || law.axis === 2) return 0;
  const change = (k: 0 | 1): number => (level[k].get(law.leg.b) ?? 0) - (level[k].get(law.leg.a) ?? 0);
  const was = Math.abs(law.v[law.axis]);
  const is = Math.abs(law.v[law.axis] + change(law.axis)) + Math.abs(change(law.axis === 0 ? 1 : 0));
  return law.fallMm * (is / was - 1);
}

/** How much more each node moves up than the first, if every fall keeps its figure. */
function shifts(part: Together, first: string, level: LevelMoves): Map<string, number> {
  const at = new Map<string, LegLaw[]>();
  for (const law of part.links) {
    for (const n of [law.leg.a, law.leg.b]) at.set(n, [...(at.get(n) ?? []), law]);
  }
  const shift = new Map([[first, 0]]);
  for (const [node, up] of shift) {
    for (const law of at.get(node) ?? []) {
      const other = otherNode(law.leg, node);
      if (shift.has(other)) continue;
      const more = fallChange(law, level);
      shift.set(other, up + (law.leg.a === node ? more : -more));
    }
  }
  return shift;
}

/**
 * Up and down where pipes fall. Every fall keeps its mm per m; where the pipes are held at two ends the longest fall
 * between them gives, as long as it still runs the same way. Throws a Refusal where it would run uphill.
 */
export function solveFalls(asked: Asked, level: LevelMoves, part: Together, moved: Map<string, number>): void {
  const { pipes } = asked;
  const stays = (node: string): boolean => asked.stays(node, 2);
  const [first] = part.nodes;
  if (first === undefined) return;
  const shift = shifts(part, first, level);
  const at = (node: string): number => shift.get(node) ?? 0;
  const refuse = (why: string) => new Refusal(`${sayRun(pipes.plan, part.links[0]?.leg.run)} cannot follow: ${why}`);
  const [one, other, ...more] = groupsIn(part, asked, stays, 2, at);
  if (more.length > 0) throw refuse('it would have to change its fall in more than one place.');
  if (!one || !other) {
    // Nothing holds its height: what has not moved in plan keeps it.
    const still = [...part.nodes].find((n) => !level.some((axis) => axis.has(n))) ?? first;
    const base = one?.mm ?? -at(still);
    for (const node of part.nodes) moved.set(node, base + at(node));
    return;
  }
  const able = cutsBetween(part, one.nodes, other.nodes, stays).filter(({ law, near }) => {
    if (law.fallMm === null) return false;
    const give = near === law.leg.a ? other.mm - one.mm : one.mm - other.mm;
    return (law.fallMm + fallChange(law, level) + give) * law.fallMm > 0;
  });
  const cut = [...able].sort((a, b) => b.law.lengthMm - a.law.lengthMm)[0];
  if (!cut) throw refuse('it would no longer run downhill.');
  const side = cut.side();
  for (const node of part.nodes) moved.set(node, (side.has(node) ? one.mm : other.mm) + at(node));
}

import { fallChange, type LevelMoves, solveFalls } from './falls.ts';
import { AXES, type AxisIndex, type Triple } from './frame.ts';
import { byFarthest, groupsIn } from './groups.ts';
import { Crossed, type Jog, Jogs, type Only } from './jogs.ts';
import type { Pipework } from './law.ts';
import { reachedFrom, type Spread, type Together, together } from './spread.ts';

export interface Solved {
  /** mm along the axes, for every node that moves. */
  readonly moved: ReadonlyMap<string, Triple>;
  readonly jogs: readonly Jog[];
}

/** `told`: nodes whose move is given, in mm along the axes. `loose`: slanting legs that take up a move along themselves. */
export interface Asked {
  readonly pipes: Pipework;
  readonly told: ReadonlyMap<string, Triple>;
  /** mm up, for corners whose height is measured from something that has moved. */
  readonly carried: ReadonlyMap<string, number>;
  /** Along this axis. */
  readonly stays: (node: string, axis: AxisIndex) => boolean;
  readonly loose: ReadonlySet<string>;
}

const SAME_MM = 1e-6;

/** Everything that goes along takes the same move; where it is held, a leg on the way there takes a jog. */
function solveTogether(asked: Asked, axis: AxisIndex, part: Together, moved: Map<string, number>, jogs: Jogs): void {
  const stays = (node: string): boolean => asked.stays(node, axis);
  const [one, ...others] = byFarthest(groupsIn(part, asked, stays, axis));
  if (!one) return;
  for (const node of part.nodes) moved.set(node, one.mm);
  const [other, ...more] = others;
  const whole = other && more.length === 0 ? jogs.between(part, one, other, stays, axis) : undefined;
  if (whole && other) {
    const side = whole.side();
    for (const node of part.nodes) if (!side.has(node)) moved.set(node, other.mm);
    return;
  }
  // Held in more than one direction: each of them is parted by itself.
  let rest = part;
  for (const held of others) {
    for (const node of held.nodes) {
      if (!reachedFrom(rest, one.nodes, stays).has(node)) continue;
      const cut = jogs.between(rest, one, { mm: held.mm, nodes: [node] }, stays, axis);
      if (!cut) throw jogs.stuck(part, 'it is held at both sides, and no leg of it can take a jog. Draw it anew.');
      rest = { ...rest, links: rest.links.filter((law) => law !== cut.law) };
    }
  }
  for (const held of others) for (const node of reachedFrom(rest, held.nodes, stays)) moved.set(node, held.mm);
  const apart = others.every((held) =>
    held.nodes.every((node) => Math.abs((moved.get(node) ?? 0) - held.mm) < SAME_MM),
  );
  if (!apart) throw jogs.stuck(part, 'its ends are moved by different amounts. Draw it anew.');
}

function attempt(asked: Asked, only: Only): Solved {
  const { pipes, told, loose } = asked;
  const jogs = new Jogs(pipes, only);
  const byAxis: [Map<string, number>, Map<string, number>, Map<string, number>] = [new Map(), new Map(), new Map()];
  const level: LevelMoves = [byAxis[0], byAxis[1]];
  const run = (axis: AxisIndex, starts: Iterable<string>): void => {
    const stays = (node: string): boolean => asked.stays(node, axis);
    const spread: Spread = { pipes, axis, stays, loose };
    const done = new Set<string>();
    for (const start of starts) {
      if (done.has(start)) continue;
      const part = together(spread, start);
      for (const node of part.nodes) if (!stays(node)) done.add(node);
      if (axis === 2 && part.links.some((law) => law.fallMm !== null)) solveFalls(asked, level, part, byAxis[2]);
      else solveTogether(asked, axis, part, byAxis[axis], jogs);
    }
  };
  const toldAlong = (axis: AxisIndex) => [...told].filter(([, by]) => Math.abs(by[axis]) > SAME_MM).map(([n]) => n);
  run(0, toldAlong(0));
  run(1, toldAlong(1));
  const fallsChanged = [...new Set([...byAxis[0].keys(), ...byAxis[1].keys()])].filter((node) =>
    pipes.at.legsAt(node).some((leg) => {
      const law = pipes.law(leg);
      return law && Math.abs(fallChange(law, level)) > SAME_MM;
    }),
  );
  run(2, [...toldAlong(2), ...asked.carried.keys(), ...fallsChanged]);
  const moved = new Map<string, Triple>();
  for (const node of new Set(byAxis.flatMap((m) => [...m.keys()]))) {
    const by = AXES.map((axis) => (asked.stays(node, axis) ? 0 : (byAxis[axis].get(node) ?? 0)));
    if (by.every((mm) => Math.abs(mm) < SAME_MM)) continue;
    moved.set(node, [by[0] ?? 0, by[1] ?? 0, by[2] ?? 0]);
  }
  return { moved, jogs: jogs.taken };
}

/** Every place that has to move so that all pipes stay joined and keep their ways. Throws a Refusal where that cannot be. */
export function solve(asked: Asked): Solved {
  const only = new Map<string, AxisIndex>();
  for (;;) {
    try {
      return attempt(asked, only);
    } catch (e) {
      // One leg can step aside both ways at once if it lies along neither: tried once for each run.
      if (!(e instanceof Crossed) || only.has(e.run)) throw e;
      only.set(e.run, e.axis);
    }
  }
}

import { Refusal } from './changes.ts';
import { fallChange, type LevelMoves, solveFalls } from './falls.ts';
import { AXES, type AxisIndex, type Triple } from './frame.ts';
import { byFarthest, groupsIn } from './groups.ts';
import type { LegLaw, Pipework } from './law.ts';
import { sayRun } from './say.ts';
import { type Cut, cutsBetween, type Spread, type Together, together } from './spread.ts';

/** A leg that is parted in its middle, so that one end can stay while the other goes along. */
export interface Jog {
  readonly law: LegLaw;
  readonly axes: readonly AxisIndex[];
}

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

/** Runs that must take their jog in a leg along one axis, since they are moved across it in both ways. */
type Only = ReadonlyMap<string, AxisIndex>;

class Crossed extends Error {
  readonly run: string;
  readonly axis: AxisIndex;

  constructor(run: string, axis: AxisIndex) {
    super(`run ${run} is moved across two ways`);
    this.run = run;
    this.axis = axis;
  }
}

function canJog(law: LegLaw, axis: AxisIndex, mm: number, only: Only): boolean {
  if (law.axis === null) return false;
  const wanted = only.get(law.leg.run);
  if (wanted !== undefined && wanted !== law.axis) return false;
  if (!law.downhill) return true;
  // Pipe that falls is never jogged upwards, and a drop steps aside at 45, for which it needs as much height.
  return axis !== 2 && (law.axis !== 2 || law.lengthMm >= mm);
}

/** The nearest leg with room for the jog, or else the longest. */
function legForJog(cuts: readonly Cut[], axis: AxisIndex, mm: number, only: Only): Cut | undefined {
  const able = cuts.filter(({ law }) => canJog(law, axis, mm, only));
  const roomy = able.find(({ law }) => law.lengthMm >= mm);
  return roomy ?? [...able].sort((a, b) => b.law.lengthMm - a.law.lengthMm)[0];
}

function stuck(pipes: Pipework, part: Together, why: string): Refusal {
  return new Refusal(`${sayRun(pipes.plan, part.links[0]?.leg.run)} cannot follow: ${why}`);
}

/** Everything that goes along takes the same move; where its ends are held apart, one leg takes a jog. */
function solveTogether(
  asked: Asked,
  axis: AxisIndex,
  part: Together,
  moved: Map<string, number>,
  jogs: Jog[],
  only: Only,
): void {
  const { pipes } = asked;
  const stays = (node: string): boolean => asked.stays(node, axis);
  const [one, other, ...more] = byFarthest(groupsIn(part, asked, stays, axis));
  if (!one) return;
  if (!other) {
    for (const node of part.nodes) moved.set(node, one.mm);
    return;
  }
  if (more.length > 0) throw stuck(pipes, part, 'its ends are moved by different amounts.');
  const cuts = cutsBetween(part, one.nodes, other.nodes, stays);
  const mm = Math.abs(one.mm - other.mm);
  const before = jogs.findIndex((j) => cuts.some(({ law }) => law === j.law) && canJog(j.law, axis, mm, only));
  const cut = before < 0 ? legForJog(cuts, axis, mm, only) : cuts.find(({ law }) => law === jogs[before]?.law);
  if (!cut) throw stuck(pipes, part, 'it is held at both sides, and no one leg of it can take a jog. Draw it anew.');
  const { run } = cut.law.leg;
  const inRun = jogs.find((j) => j.law.leg.run === run);
  if (inRun && inRun.law !== cut.law) {
    const [first] = inRun.axes;
    if (only.has(run) || first === undefined || first === axis || inRun.axes.length > 1) {
      throw stuck(pipes, part, 'it would need more than one jog. Draw it anew.');
    }
    throw new Crossed(run, AXES.find((k) => k !== first && k !== axis) ?? 2);
  }
  if (before < 0) jogs.push({ law: cut.law, axes: [axis] });
  else jogs[before] = { law: cut.law, axes: [...(jogs[before]?.axes ?? []), axis] };
  const side = cut.side();
  for (const node of part.nodes) moved.set(node, side.has(node) ? one.mm : other.mm);
}

function attempt(asked: Asked, only: Only): Solved {
  const { pipes, told, loose } = asked;
  const jogs: Jog[] = [];
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
      else solveTogether(asked, axis, part, byAxis[axis], jogs, only);
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
  return { moved, jogs };
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

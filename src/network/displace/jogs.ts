import { Refusal } from './changes.ts';
import { AXES, type AxisIndex } from './frame.ts';
import type { Group } from './groups.ts';
import type { LegLaw, Pipework } from './law.ts';
import { sayRun } from './say.ts';
import { type Cut, cutsBetween, type Stays, type Together } from './spread.ts';

/** A leg that is parted in its middle, so that one end can stay while the other goes along. */
export interface Jog {
  readonly law: LegLaw;
  readonly axes: readonly AxisIndex[];
}

/** Runs that must take their jog in a leg along one axis, since they are moved across it in both ways. */
export type Only = ReadonlyMap<string, AxisIndex>;

/** A run needs jogs two ways in two legs; one leg along `axis` could take both. */
export class Crossed extends Error {
  readonly run: string;
  readonly axis: AxisIndex;

  constructor(run: string, axis: AxisIndex) {
    super(`run ${run} is moved across two ways`);
    this.run = run;
    this.axis = axis;
  }
}

/** One on either side of what is moved in the middle of a run. */
const MOST_IN_A_RUN = 2;

/** The jogs a move has come to need so far. */
export class Jogs {
  readonly #pipes: Pipework;
  readonly #only: Only;
  readonly #taken: Jog[] = [];

  constructor(pipes: Pipework, only: Only) {
    this.#pipes = pipes;
    this.#only = only;
  }

  get taken(): readonly Jog[] {
    return this.#taken;
  }

  stuck(part: Together, why: string): Refusal {
    return new Refusal(`${sayRun(this.#pipes.plan, part.links[0]?.leg.run)} cannot follow: ${why}`);
  }

  /** Parts two groups at one leg, and takes a jog there; undefined where no one leg can. */
  between(part: Together, one: Group, other: Group, stays: Stays, axis: AxisIndex): Cut | undefined {
    const cuts = cutsBetween(part, one.nodes, other.nodes, stays);
    const mm = Math.abs(one.mm - other.mm);
    const before = this.#taken.findIndex((j) => cuts.some(({ law }) => law === j.law) && this.#able(j.law, axis, mm));
    if (before >= 0) {
      const jog = this.#taken[before];
      if (jog && !jog.axes.includes(axis)) this.#taken[before] = { law: jog.law, axes: [...jog.axes, axis] };
      return cuts.find(({ law }) => law === jog?.law);
    }
    const cut = this.#choose(cuts, axis, mm);
    if (cut) this.#take(part, cut.law, axis);
    return cut;
  }

  #able(law: LegLaw, axis: AxisIndex, mm: number): boolean {
    if (law.axis === null) return false;
    const wanted = this.#only.get(law.leg.run);
    if (wanted !== undefined && wanted !== law.axis) return false;
    if (!law.downhill) return true;
    // Pipe that falls is never jogged upwards, and a drop steps aside at 45, for which it needs as much height.
    return axis !== 2 && (law.axis !== 2 || law.lengthMm >= mm);
  }

  /** The nearest leg with room for the jog, or else the longest. */
  #choose(cuts: readonly Cut[], axis: AxisIndex, mm: number): Cut | undefined {
    const able = cuts.filter(({ law }) => this.#able(law, axis, mm));
    const roomy = able.find(({ law }) => law.lengthMm >= mm);
    return roomy ?? [...able].sort((a, b) => b.law.lengthMm - a.law.lengthMm)[0];
  }

  #take(part: Together, law: LegLaw, axis: AxisIndex): void {
    const { run } = law.leg;
    const inRun = this.#taken.filter((j) => j.law.leg.run === run);
    const otherWay = inRun.flatMap((j) => j.axes).find((k) => k !== axis);
    if (otherWay !== undefined && !this.#only.has(run)) {
      throw new Crossed(run, AXES.find((k) => k !== otherWay && k !== axis) ?? 2);
    }
    if (otherWay !== undefined || inRun.length >= MOST_IN_A_RUN) {
      throw this.stuck(part, 'it would need one jog after the other. Draw it anew.');
    }
    this.#taken.push({ law, axes: [axis] });
  }
}

import { tube } from '../../reference/tubes.ts';
import type { Given } from '../given.ts';
import { type BendsAlong, bendsAlong } from './bends-along.ts';
import { type Drain, type DrainStep, drainsOf, kindOf } from './drains.ts';
import { type Lie, lieOf } from './gradient.ts';
import { type RoundPart, surroundings } from './surroundings.ts';

export interface CondensateStep extends DrainStep {
  readonly lie: Lie;
  /** Null where nothing tells inside from outside. */
  readonly parts: readonly RoundPart[] | null;
  /** Null where nobody read the size, or no table has its bore. */
  readonly boreMm: number | null;
  /** Part of it lies outside, in the cold, or in a wall with the outside right beyond it. */
  readonly cold: 'no' | 'maybe' | 'yes';
}

export interface CondensateDrain extends Drain {
  readonly steps: readonly CondensateStep[];
  /** Pushed by a pump: it need not fall. */
  readonly pumped: boolean;
  readonly bends: BendsAlong;
  /** Metres outside or unheated; `hi` takes in what may be. Null where rooms are not drawn. */
  readonly coldM: { readonly lo: number; readonly hi: number } | null;
}

const COLD = new Set(['outside', 'cold']);

function coldness(parts: readonly RoundPart[], after: RoundPart | undefined): 'no' | 'maybe' | 'yes' {
  if (parts.some((p) => COLD.has(p.round))) return 'yes';
  // A pipe that ends in the wall it goes through is still the pipe that goes through it.
  if (parts[parts.length - 1]?.round === 'wall' && after && COLD.has(after.round)) return 'yes';
  return parts.some((p) => p.round === 'maybeCold') ? 'maybe' : 'no';
}

const firstPastWalls = (later: readonly (readonly RoundPart[] | null)[]): RoundPart | undefined =>
  later.flatMap((p) => p ?? []).find((p) => p.round !== 'wall');

function lengthOf(parts: readonly RoundPart[], of: (round: RoundPart['round']) => boolean): number {
  return parts.filter((p) => of(p.round)).reduce((sum, p) => sum + p.toMm - p.fromMm, 0);
}

const known = new WeakMap<Given, readonly CondensateDrain[]>();

function work(given: Given): CondensateDrain[] {
  const around = surroundings(given);
  return drainsOf(given, 'condensate').map((drain) => {
    const rounds = drain.steps.map((s) => around.parts(s));
    const steps = drain.steps.map((step, i): CondensateStep => {
      const parts = rounds[i] ?? null;
      return {
        ...step,
        lie: lieOf(step),
        parts,
        boreMm: tube(step.edge.tube.kind, step.edge.tube.size)?.boreMm ?? sizeOfWaste(step),
        cold: parts ? coldness(parts, firstPastWalls(rounds.slice(i + 1))) : 'no',
      };
    });
    const all = steps.flatMap((s) => s.parts ?? []);
    const coldM = around.told
      ? {
          lo: lengthOf(all, (r) => COLD.has(r)) / 1000,
          hi: lengthOf(all, (r) => COLD.has(r) || r === 'maybeCold') / 1000,
        }
      : null;
    const pumped = kindOf(given, drain.source) === 'condensate-pump';
    return { ...drain, steps, pumped, coldM, bends: bendsAlong(given.network, drain) };
  });
}

/** Overflow pipe is listed with the waste pipe it is sold beside. */
const sizeOfWaste = ({ edge }: DrainStep): number | null =>
  edge.tube.kind === 'plastic-overflow' ? (tube('waste', edge.tube.size)?.boreMm ?? null) : null;

/** Every way condensate takes, with how each piece lies and what is round it. Worked out once for each plan and case. */
export function condensateDrains(given: Given): readonly CondensateDrain[] {
  const found = known.get(given) ?? work(given);
  known.set(given, found);
  return found;
}

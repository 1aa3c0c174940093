import { type VoidStretch, voidFinder } from '../../geometry/void-stretches.ts';
import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import { levelOf } from '../text/say-level.ts';
import type { DrawnLeg } from './drawn-leg.ts';

/** Shorter in a void than this, a leg only enters or leaves it. */
const LEAST_MM = 400;

/** "over the battens": what the joists a stretch meets have to say; undefined where it meets none, or none is told. */
function passing(plan: Plan, stretch: VoidStretch): string | undefined {
  const ways = new Set(stretch.joists.map((j) => j.passes));
  const [way] = ways;
  if (ways.size !== 1 || way === null || way === undefined) return undefined;
  const noun = plan.voids[stretch.void]?.joists?.kind === 'battens' ? 'battens' : 'joists';
  return `${way} the ${noun}`;
}

/** What is said of level legs that run in a void: their height, and over, through or under. Once for each run and void. */
export type VoidWords = (legs: readonly DrawnLeg[]) => ReadonlyMap<DrawnLeg, string>;

export function voidWords(plan: Plan, storey: string, alive: Alive): VoidWords {
  if (!Object.values(plan.voids).some((v) => v.kind !== 'slab' && v.joists)) return () => new Map();
  const finder = voidFinder(plan, { has: (id) => alive.has('voids', id) });
  return (legs) => {
    const words = new Map<DrawnLeg, string>();
    const longest = new Map<string, { leg: DrawnLeg; mm: number; say: string }>();
    for (const leg of legs) {
      const z = leg.placeA.at.z;
      if (leg.endOn || leg.map === 'stretches' || leg.state === 'strip' || Math.abs(z - leg.placeB.at.z) > 1) continue;
      for (const stretch of finder.stretches({ a: leg.placeA.at, b: leg.placeB.at })) {
        const say = stretch.lengthMm < LEAST_MM ? undefined : passing(plan, stretch);
        const key = `${leg.run} ${stretch.void}`;
        const before = longest.get(key);
        if (say !== undefined && (!before || stretch.lengthMm > before.mm)) {
          longest.set(key, { leg, mm: stretch.lengthMm, say: `${leg.letters} at ${levelOf(plan, z, storey)}, ${say}` });
        }
      }
    }
    for (const { leg, say } of longest.values()) if (!words.has(leg)) words.set(leg, say);
    return words;
  };
}

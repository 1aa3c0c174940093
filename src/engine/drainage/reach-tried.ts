import type { Plan } from '../../plan/plan.ts';
import type { ReachBlock } from '../../report/report.ts';
import { sayOpening } from '../say-names.ts';
import { MOST_JOISTS } from './reach-figures.ts';
import type { WayPiece } from './reach-net.ts';
import { type Profile, type ProfileBlock, profileOf } from './reach-profile.ts';
import type { UnderWay } from './reach-under.ts';

/** What is known of the fall wanted and of the heights: each from the worst to the best that may be true. */
export interface Heights {
  readonly tailZ: { readonly lo: number; readonly mm: number; readonly hi: number };
  readonly rise: { readonly lo: number; readonly mm: number; readonly hi: number };
  readonly mmPerM: { readonly wanted: number; readonly least: number };
  readonly floorZ: number;
  readonly dropMm: number;
  readonly mayBeBuried: boolean;
}

/** One way with what stands in it: as wanted, at its worst and at its best. */
export interface Tried {
  readonly how: 'inside' | 'outside' | 'under';
  readonly pieces: readonly WayPiece[];
  readonly told: Profile;
  readonly worst: Profile;
  readonly best: Profile;
  readonly outsideMm: number;
  readonly blocks: readonly ReachBlock[];
  /** Sentence parts, the worst first. */
  readonly says: readonly string[];
  readonly state: 'pass' | 'check' | 'stop';
  /** Tail must be at least so high for the end to be reached this way; null where height does not help. */
  readonly leastZ: { readonly lo: number; readonly mm: number; readonly hi: number } | null;
}

const span = (a: number, b: number): string => {
  const [lo, hi] = [Math.round(Math.min(a, b)), Math.round(Math.max(a, b))];
  return lo === hi ? `${lo}` : `${lo} to ${hi}`;
};

function sayBlock(plan: Plan, b: ProfileBlock, floorZ: number): string {
  if (b.what === 'floor') return `runs into the floor ${Math.round(-b.toZ + floorZ)} too low`;
  if (b.what === 'open') return 'has to cross the open above the floor';
  return `crosses the ${sayOpening(plan, b.id ?? '').toLowerCase()} at ${span(b.fromZ - floorZ, b.toZ - floorZ)}`;
}

/** Blocks of a profile as the report tells them. */
function blocksOf(plan: Plan, storey: string, profile: Profile, floorZ: number): ReachBlock[] {
  return profile.blocks.map((b) => ({
    what: sayBlock(plan, b, floorZ),
    ids: b.id === null ? [] : [b.id],
    storey,
    at: b.at,
  }));
}

interface Ask {
  readonly plan: Plan;
  readonly storey: string;
  readonly heights: Heights;
  /** Tail of the appliance as high as it can be hung, above the datum. */
  readonly highestZ: number;
}

function leastOf(told: Profile, h: Heights, highestZ: number): Tried['leastZ'] {
  const endZ = h.tailZ.mm - h.rise.mm;
  if (told.blocks.some((b) => b.startZ === null)) return null;
  const over = Math.max(Number.NEGATIVE_INFINITY, ...told.blocks.map((b) => (b.startZ ?? 0) + h.dropMm));
  const at = (mmPerM: number): number => Math.max(over, endZ + h.dropMm + (told.lengthMm * mmPerM) / 1000);
  const spread = [h.rise.mm - h.rise.hi, h.rise.mm - h.rise.lo] as const;
  const least = { lo: at(h.mmPerM.least) + spread[0], mm: at(h.mmPerM.wanted), hi: at(h.mmPerM.wanted) + spread[1] };
  return least.mm > highestZ ? null : least;
}

const outsideOf = (pieces: readonly WayPiece[]): number =>
  pieces.reduce((sum, p) => sum + (p.outside === true ? p.mm : 0), 0);

function stateOf(told: Profile, worst: Profile, best: Profile): Tried['state'] {
  const clear = (p: Profile): boolean => p.blocks.length === 0 && p.arrivesMm >= 0;
  if (clear(told) && clear(worst)) return 'pass';
  return clear(best) ? 'check' : 'stop';
}

function profiles(pieces: readonly WayPiece[], h: Heights, startAt: (z: number) => number) {
  const of = (tailZ: number, rise: number, mmPerM: number): Profile =>
    profileOf(pieces, {
      startZ: startAt(tailZ - h.dropMm),
      mmPerM,
      endZ: tailZ - rise,
      floorZ: h.floorZ,
      mayBeBuried: h.mayBeBuried,
    });
  return {
    told: of(h.tailZ.mm, h.rise.mm, h.mmPerM.wanted),
    worst: of(h.tailZ.lo, h.rise.lo, h.mmPerM.wanted),
    best: of(h.tailZ.hi, h.rise.hi, h.mmPerM.least),
  };
}

/** A way above the floor, inside or outside. */
export function tryWay(ask: Ask, how: 'inside' | 'outside', pieces: readonly WayPiece[]): Tried {
  const { heights: h, plan, storey } = ask;
  const { told, worst, best } = profiles(pieces, h, (z) => z);
  const blocks = blocksOf(plan, storey, told, h.floorZ);
  const state = stateOf(told, worst, best);
  const inside = pieces[pieces.length - 1]?.outside === false;
  const through = inside && !told.under && h.tailZ.mm - h.rise.mm < h.floorZ;
  const says = blocks.map((b) => b.what);
  if (through) says.push('down through the floor');
  if (told.buried) says.push('ends in the ground');
  if (told.under) says.push('ends under the floor');
  const leastZ = leastOf(told, h, ask.highestZ);
  return { how, pieces, told, worst, best, outsideMm: outsideOf(pieces), blocks, says, state, leastZ };
}

/** A way through the void under the tail. Joists across it want holes at changing heights, which few may have. */
export function tryUnder(ask: Ask, under: UnderWay): Tried {
  const { heights: h, storey } = ask;
  const ground = { ...h, floorZ: under.bottomZ };
  const { told, worst, best } = profiles(under.pieces, ground, (z) => Math.min(z, under.topZ));
  const name = under.space.name === '' ? 'the floor void' : under.space.name.toLowerCase();
  const blocks: ReachBlock[] = told.blocks.map((b) => ({
    what: `${name} is too shallow for the fall`,
    ids: [under.space.id],
    storey,
    at: b.at,
  }));
  const says = [...blocks.map((b) => b.what)];
  let state = stateOf(told, worst, best);
  if (under.joists > 0 && under.firstJoist) {
    const many = under.joists > MOST_JOISTS;
    const what = many
      ? `${under.joists} joists across: holes at changing heights`
      : `${under.joists} joist across to be holed`;
    blocks.push({ what, ids: [under.space.id], storey, at: under.firstJoist });
    says.unshift(what);
    state = many ? 'stop' : state === 'pass' ? 'check' : state;
  }
  if (state !== 'stop') says.push(`down through the floor, ${name}`);
  // What limits it is the void: hanging the appliance higher changes nothing.
  const outsideMm = outsideOf(under.pieces);
  return { how: 'under', pieces: under.pieces, told, worst, best, outsideMm, blocks, says, state, leastZ: null };
}

import RBush from 'rbush';
import type { Shift, Vec } from '../display-list.ts';
import { type Chain, chainsOf } from './chains.ts';
import type { DrawnLeg } from './drawn-leg.ts';
import { parallel } from './joints.ts';
import type { PipesInView } from './pipes-in-view.ts';

export interface Bank {
  /** Members in order along the first one's `n`. */
  readonly members: readonly Chain[];
  /** Distinct places in order along `n`; two members one after the other in one line share a place. */
  readonly slots: number;
}

/** Further apart than this no scale that shows pipes brings them together. */
const NEAR_MM = 120;
/** Sharing less length than this, two lines only pass each other. */
const SHARED_MM = 150;
/** More lines than this are not a bank but a field; spreading them would lead them astray. */
const MOST = 12;

interface ChainBox {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
  readonly chain: Chain;
}

function boxOf(chain: Chain): ChainBox {
  const box = {
    minX: Number.POSITIVE_INFINITY,
    minY: Number.POSITIVE_INFINITY,
    maxX: Number.NEGATIVE_INFINITY,
    maxY: Number.NEGATIVE_INFINITY,
    chain,
  };
  for (const { a, b } of chain.legs) {
    box.minX = Math.min(box.minX, a[0], b[0]);
    box.minY = Math.min(box.minY, a[1], b[1]);
    box.maxX = Math.max(box.maxX, a[0], b[0]);
    box.maxY = Math.max(box.maxY, a[1], b[1]);
  }
  return box;
}

const shared = (p: Chain, q: Chain): number => Math.min(p.upTo, q.upTo) - Math.max(p.from, q.from);

function beside(p: Chain, q: Chain): boolean {
  return parallel(p.along, q.along) && Math.abs(p.level - q.level) < NEAR_MM && shared(p, q) > SHARED_MM;
}

/**
 * Which of two lies further along `n`. Lines on one another are put in the order in which their corners nest: of two
 * that turn the same way at an end, the longer is the outer.
 */
function order(p: Chain, q: Chain): number {
  const apart = p.level - q.level;
  if (Math.abs(apart) > 0.5) return apart;
  if (p.turnUpTo !== q.turnUpTo) return p.turnUpTo - q.turnUpTo;
  if (p.turnUpTo !== 0 && Math.abs(p.upTo - q.upTo) > 0.5) return -p.turnUpTo * (p.upTo - q.upTo);
  if (p.turnFrom !== q.turnFrom) return p.turnFrom - q.turnFrom;
  if (p.turnFrom !== 0 && Math.abs(p.from - q.from) > 0.5) return -p.turnFrom * (q.from - p.from);
  const height = (p.legs[0]?.readerA ?? 0) - (q.legs[0]?.readerA ?? 0);
  return height || ((p.legs[0]?.record.id ?? '') < (q.legs[0]?.record.id ?? '') ? -1 : 1);
}

/** Is there a wall within reach of a place, that way? */
export type WallProbe = (at: Vec, way: Vec) => boolean;

/** A bank along a wall is spread into the room. */
function anchorOf(first: Chain, last: Chain, n: Vec, wall: WallProbe): number {
  const beside = (chain: Chain, way: Vec): boolean =>
    chain.legs.some((leg) => {
      const at = (t: number): Vec => [leg.a[0] + (leg.b[0] - leg.a[0]) * t, leg.a[1] + (leg.b[1] - leg.a[1]) * t];
      return wall(at(0.25), way) || wall(at(0.5), way) || wall(at(0.75), way);
    });
  const before = beside(first, [-n[0], -n[1]]);
  const after = beside(last, n);
  return before === after ? 0.5 : before ? 0 : 1;
}

function bankOf(members: readonly Chain[], wall: WallProbe): { bank: Bank; shifts: Map<DrawnLeg, Shift> } | undefined {
  const sorted = [...members].sort(order);
  const slots: Chain[][] = [];
  for (const chain of sorted) {
    const last = slots.at(-1);
    const fits = last?.every((c) => Math.abs(c.level - chain.level) < 0.5 && shared(c, chain) <= 0);
    if (last && fits) last.push(chain);
    else slots.push([chain]);
  }
  if (slots.length < 2 || slots.length > MOST) return undefined;
  const n = (sorted[0] as Chain).n;
  const level = (slot: readonly Chain[] | undefined): number => slot?.[0]?.level ?? 0;
  const gaps = slots.slice(1).map((slot, i) => Math.max(0, level(slot) - level(slots[i])));
  const anchor = anchorOf(sorted[0] as Chain, sorted.at(-1) as Chain, n, wall);
  const shifts = new Map<DrawnLeg, Shift>();
  slots.forEach((slot, index) => {
    for (const chain of slot) for (const leg of chain.legs) shifts.set(leg, { n, gaps, index, anchor });
  });
  return { bank: { members: sorted, slots: slots.length }, shifts };
}

/** Lines that run side by side nearer than can be read, and how each of their legs moves when they are spread. */
export function banksOf(
  pipes: PipesInView,
  wall: WallProbe = () => false,
): { banks: readonly Bank[]; shifts: ReadonlyMap<DrawnLeg, Shift> } {
  const chains = chainsOf(pipes);
  const index = new RBush<ChainBox>();
  const boxes = chains.map(boxOf);
  index.load(boxes);
  const root = new Map<Chain, Chain>();
  const find = (c: Chain): Chain => {
    const up = root.get(c);
    if (up === undefined || up === c) return c;
    const top = find(up);
    root.set(c, top);
    return top;
  };
  for (const { chain, minX, minY, maxX, maxY } of boxes) {
    const around = { minX: minX - NEAR_MM, minY: minY - NEAR_MM, maxX: maxX + NEAR_MM, maxY: maxY + NEAR_MM };
    for (const { chain: other } of index.search(around)) {
      if (other !== chain && beside(chain, other)) root.set(find(other), find(chain));
    }
  }
  const groups = new Map<Chain, Chain[]>();
  for (const chain of chains) {
    const top = find(chain);
    const group = groups.get(top);
    if (group) group.push(chain);
    else groups.set(top, [chain]);
  }
  const banks: Bank[] = [];
  const shifts = new Map<DrawnLeg, Shift>();
  for (const members of groups.values()) {
    const made = members.length > 1 ? bankOf(members, wall) : undefined;
    if (!made) continue;
    banks.push(made.bank);
    for (const [leg, shift] of made.shifts) shifts.set(leg, shift);
  }
  return { banks, shifts };
}

import { distance3, dot3, scale3, sub3, unit3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { BankMember, BankTask, LaidBank } from './bank.ts';
import { layBank } from './lay-bank.ts';
import { carriedAlong, evenly, waysOf } from './nest.ts';

/** A bank whose row is told by its way on the first leg; members are numbered as they are told. */
export interface RowTask extends Omit<BankTask, 'across'> {
  readonly row: Xyz;
}

export type LaidRow =
  | { readonly ok: true; readonly order: readonly number[]; readonly bank: LaidBank }
  | { readonly ok: false; readonly why: string; readonly pair: readonly [number, number] | null };

/** Members by where their tails lie along the row; along each other where they lie straight across it. */
function byTails(members: readonly BankMember[], side: 'start' | 'end', row: Xyz, spacingMm: number): number[] | null {
  const tails = members.flatMap((m, i) => (m[side].is === 'tail' ? [{ i, at: m[side].tail.at }] : []));
  if (tails.length < 2) return null;
  const spread = (along: Xyz): number => {
    const at = tails.map((t) => dot3(t.at, along));
    return Math.max(...at) - Math.min(...at);
  };
  let along = row;
  if (spread(row) < (spacingMm * (tails.length - 1)) / 2) {
    const [first] = tails;
    const far = [...tails].sort((a, b) => distance3(b.at, first?.at ?? a.at) - distance3(a.at, first?.at ?? a.at))[0];
    if (first && far && far !== first) along = unit3(sub3(far.at, first.at));
  }
  const sorted = [...tails].sort((a, b) => dot3(a.at, along) - dot3(b.at, along) || a.i - b.i).map((t) => t.i);
  const others = members.map((_, i) => i).filter((i) => !sorted.includes(i));
  return [...sorted, ...others];
}

/** Whose order wins where two are equally good: that of the tails, or the one that was told. */
export type Wins = 'tails' | 'told';

/** Orders worth trying, each once, the one that wins first. */
export function ordersFor(task: RowTask, wins: Wins): number[][] {
  const { members, spacingMm, row } = task;
  const atEnd = carriedAlong(row, waysOf(task.path)).at(-1) ?? row;
  const told = members.map((_, i) => i);
  const tails = [byTails(members, 'end', atEnd, spacingMm), byTails(members, 'start', row, spacingMm)];
  const tried = (wins === 'told' ? [told, ...tails] : [...tails, told]).flatMap((o) =>
    o ? [o, [...o].reverse()] : [],
  );
  const seen = new Set<string>();
  return tried.filter((o) => !seen.has(o.join()) && seen.add(o.join()));
}

/** Lays the bank with its members in this order along the row. What is laid is in the order they were told. */
export function layInOrder(task: RowTask, order: readonly number[], below?: number): LaidRow {
  const places = evenly(order.length, task.spacingMm);
  const members = order.flatMap((i) => task.members[i] ?? []);
  const laid = layBank({ ...task, members, across: places.map((mm) => scale3(task.row, mm)) }, below);
  if (!laid.ok) {
    const [one, other] = laid.pair ?? [];
    const pair = one === undefined || other === undefined ? null : ([order[one] ?? 0, order[other] ?? 0] as const);
    return { ok: false, why: laid.why, pair };
  }
  const told = task.members.map((_, i) => laid.bank.members[order.indexOf(i)]);
  return { ok: true, order, bank: { ...laid.bank, members: told.flatMap((m) => m ?? []) } };
}

/** Tries the orders of the tails and the one told, both ways each, and keeps the cheapest that has no clash. */
export function layInBestOrder(task: RowTask, wins: Wins = 'tails'): LaidRow {
  let best: LaidRow | null = null;
  let refused: LaidRow | null = null;
  for (const order of ordersFor(task, wins)) {
    const laid = layInOrder(task, order, best?.ok ? best.bank.cost - 1 : undefined);
    if (!laid.ok) refused ??= laid;
    else best = laid;
  }
  return best ?? refused ?? { ok: false, why: 'A bank has two runs or more.', pair: null };
}

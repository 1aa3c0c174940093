import type { LaidMember } from '../../network/bank/bank.ts';
import { layBank } from '../../network/bank/lay-bank.ts';
import { layInBestOrder } from '../../network/bank/order.ts';
import { rowOf } from '../../network/bank/read-bank.ts';
import type { Plan } from '../../plan/plan.ts';
import { refuse } from '../commands/define-command.ts';
import { serviceWord } from '../commands/service-word.ts';
import type { BankCorner } from './bank-place.ts';
import { type FreeTail, freeTails } from './bank-tails.ts';
import { memberOf, type Standing } from './lay-again.ts';
import { endAt } from './lay-new.ts';

export interface Extended {
  readonly corners: readonly BankCorner[];
  readonly laid: readonly LaidMember[];
  readonly ends: readonly (FreeTail | null)[];
  /** Runs of the row in the order it is laid in now, where that is another one. */
  readonly order: readonly string[] | null;
}

function tailsAt(plan: Plan, point: string, { read }: Standing, option: string | null) {
  const record = plan.points[point] ?? refuse('That point is no longer there.');
  const services = read.members.map((m) => plan.runs[m.run]?.service ?? '');
  const tails = freeTails(plan, point, services, option);
  if (tails.every((t) => t === null)) {
    refuse(`${record.name} has no free connection for ${services.map(serviceWord).join(', ')}.`);
  }
  return tails;
}

/**
 * Works out a bank that goes on from its open ends, and to an appliance where one is told: then a row that starts in the
 * open takes the order of the tails, and one that starts at tails keeps its own while another is no shorter.
 */
export function extended(
  plan: Plan,
  now: Standing,
  more: readonly BankCorner[],
  point: string | null,
  option: string | null,
): Extended {
  const { members, spacingMm } = now.read;
  if (!members.every((m) => m.end.is === 'open')) refuse('The bank has no open ends there to go on from.');
  const corners = [...now.corners, ...more];
  const path = corners.map((c) => c.at);
  const ends = point === null ? members.map(() => null) : tailsAt(plan, point, now, option);
  const asked = (keep: boolean) => members.map((m, i) => ({ ...memberOf(plan, m, keep), end: endAt(ends[i]) }));
  const kept = () => layBank({ members: asked(true), spacingMm, path, across: members.map((m) => m.across) });
  const free = members.every((m) => m.start.is === 'open');
  const task = { members: asked(false), spacingMm, path, row: rowOf(now.read) };
  const anew = point === null ? null : layInBestOrder(task, free ? 'tails' : 'told');
  if (anew?.ok && anew.order.some((told, i) => told !== i)) {
    return { corners, ends, laid: anew.bank.members, order: anew.order.flatMap((i) => members[i]?.run ?? []) };
  }
  const same = kept();
  if (same.ok) return { corners, ends, laid: same.bank.members, order: null };
  return anew?.ok ? { corners, ends, laid: anew.bank.members, order: null } : refuse(same.why);
}

import { services } from '../../catalogue/services.ts';
import { sub3, unit3 } from '../../geometry/vec.ts';
import type { BankEnd, BankMember } from '../../network/bank/bank.ts';
import { firstRow, type RowWay, waysOf } from '../../network/bank/nest.ts';
import { layInBestOrder, type RowTask } from '../../network/bank/order.ts';
import { odMm } from '../../network/tube-sizes.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Tube } from '../../plan/records/pipework.ts';
import { refuse } from '../commands/define-command.ts';
import { serviceWord } from '../commands/service-word.ts';
import type { BankCorner } from './bank-place.ts';
import { type FreeTail, freeTails } from './bank-tails.ts';

/** A pipe that is to run in a bank. */
export interface BankPipe {
  readonly service: string;
  readonly tube: Tube;
}

export const sayPipe = (service: string, name = ''): string =>
  name === '' ? `the ${serviceWord(service)} run` : `the run ${name}`;

/** Pipes that run downhill by themselves cannot keep their fall in a bank that is level. */
export function mayBeMember(service: string, name = ''): void {
  if (!services.get(service)?.runsDownhill) return;
  const said = sayPipe(service, name);
  refuse(
    `${said.charAt(0).toUpperCase()}${said.slice(1)} runs downhill by its own fall, and a bank lies level: lay it by itself.`,
  );
}

export const radiusOf = (tube: Tube, insulationMm = 0): number => (odMm(tube) ?? 0) / 2 + insulationMm;

export const open: BankEnd = { is: 'open' };
export const endAt = (tail: FreeTail | null | undefined): BankEnd => (tail ? { is: 'tail', tail: tail.tail } : open);

/** Two pipes of a bank end at the same appliance, or none does. */
function tailsFor(plan: Plan, point: string | null, pipes: readonly BankPipe[], option: string | null) {
  if (point === null) return pipes.map(() => null);
  const record = plan.points[point] ?? refuse('That point is no longer there.');
  const tails = freeTails(
    plan,
    point,
    pipes.map((p) => p.service),
    option,
  );
  if (tails.every((t) => t === null)) {
    const said = pipes.map((p) => serviceWord(p.service)).join(', ');
    refuse(`${record.name} has no free connection for ${said}.`);
  }
  return tails;
}

/** Way the tails of a side lie, for a row that nothing else tells. */
function asideOf(tails: readonly (FreeTail | null)[]): Xyz | undefined {
  const at = tails.flatMap((t) => (t ? [t.tail.at] : []));
  const [first, last] = [at[0], at.at(-1)];
  return first && last && first !== last ? unit3(sub3(last, first)) : undefined;
}

export interface NewBank {
  readonly pipes: readonly BankPipe[];
  readonly spacingMm: number;
  readonly row: RowWay;
  readonly corners: readonly BankCorner[];
  readonly start: string | null;
  readonly end: string | null;
}

/** Works out a bank that is not there yet; refuses in words. Members come back in the order they were told. */
export function workOut(plan: Plan, bank: NewBank, option: string | null) {
  for (const { service } of bank.pipes) mayBeMember(service);
  const starts = tailsFor(plan, bank.start, bank.pipes, option);
  const ends = tailsFor(plan, bank.end, bank.pipes, option);
  const path = bank.corners.map((c) => c.at);
  const ways = waysOf(path);
  const members = bank.pipes.map(
    (p, i): BankMember => ({
      name: sayPipe(p.service),
      radiusMm: radiusOf(p.tube),
      start: endAt(starts[i]),
      end: endAt(ends[i]),
    }),
  );
  const row = firstRow(ways, bank.row, asideOf(ends) ?? asideOf(starts));
  const task: RowTask = { members, spacingMm: bank.spacingMm, path, row };
  const laid = layInBestOrder(task);
  if (!laid.ok) return refuse(laid.why);
  return { order: laid.order, members: laid.bank.members, starts, ends };
}

import { dot3 } from '../../geometry/vec.ts';
import type { BankEnd, BankMember, LaidMember } from '../../network/bank/bank.ts';
import { layBank } from '../../network/bank/lay-bank.ts';
import { type ReadBank, type ReadMember, readBank } from '../../network/bank/read-bank.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { removeAll } from '../commands/cascade.ts';
import { type CommandContext, refuse } from '../commands/define-command.ts';
import { heightOf, raised } from '../commands/place-arg.ts';
import type { BankCorner } from './bank-place.ts';
import type { FreeTail } from './bank-tails.ts';
import { mayBeMember, radiusOf, sayPipe } from './lay-new.ts';
import { writeMember } from './write-member.ts';

/** A bank as it runs now, with the corners of its middle as places that can be written again. */
export interface Standing {
  readonly read: ReadBank;
  readonly corners: readonly BankCorner[];
}

function cornersOfBank(plan: Plan, read: ReadBank): BankCorner[] {
  const [first] = read.members;
  return read.path.map((at, k): BankCorner => {
    const i = first?.corners[k] ?? 0;
    const node = plan.nodes[first?.chain.nodes[i] ?? ''];
    const was = first?.chain.places[i];
    if (!node || !was) return refuse('A corner of the bank is no longer there.');
    const storey = node.place.on === 'storey' ? node.place.storey : (plan.points[node.place.point]?.storey ?? '');
    return { at, storey, height: raised(heightOf(node), at.z - was.z) };
  });
}

/** Reads a bank that is to be laid again; refuses where it cannot be, in words. */
export function standing(plan: Plan, group: string, ctx: CommandContext): Standing {
  if (!plan.groups[group]) refuse('That bank is no longer there.');
  const read =
    readBank(plan, group) ?? refuse('The runs of that bank do not run beside each other any more: draw them anew.');
  for (const { run, chain } of read.members) {
    const record = plan.runs[run];
    mayBeMember(record?.service ?? '', record?.name);
    if (ctx.option !== null && chain.legs.some((l) => plan.legs[l]?.option === null)) {
      refuse('Pipe that was there before is in that bank, so it stays where it is.');
    }
  }
  return { read, corners: cornersOfBank(plan, read) };
}

/** The widest a member is, with its lagging. */
export function widest(plan: Plan, { chain }: ReadMember): number {
  const radii = chain.legs.flatMap((id) => {
    const leg = plan.legs[id];
    return leg ? [radiusOf(leg.tube, leg.insulation?.thicknessMm ?? 0)] : [];
  });
  return Math.max(0, ...radii);
}

/** What past the bank may be laid anew, and what is kept as it is as long as nothing has to step aside. */
export function memberOf(plan: Plan, member: ReadMember, keep: boolean): BankMember {
  const run = plan.runs[member.run];
  const end = (e: BankEnd): BankEnd => (e.is === 'tail' && !keep ? { is: 'tail', tail: e.tail } : e);
  return {
    name: sayPipe(run?.service ?? '', run?.name),
    radiusMm: widest(plan, member),
    start: end(member.start),
    end: end(member.end),
  };
}

function ownTail(plan: Plan, member: ReadMember, side: 'start' | 'end'): FreeTail | null {
  const end = member[side];
  const node = plan.nodes[member.chain.nodes.at(side === 'start' ? 0 : -1) ?? ''];
  if (end.is !== 'tail' || node?.place.on !== 'connection') return null;
  return { point: node.place.point, connection: node.place.connection, tail: end.tail };
}

export interface Again {
  readonly corners: readonly BankCorner[];
  readonly laid: readonly LaidMember[];
  readonly members: readonly ReadMember[];
  /** Tails that are new to a member's end; its own where null. */
  readonly ends?: readonly (FreeTail | null)[];
}

/** Writes members that were there, and takes away pipe they have no more. */
export function writeAgain(draft: Plan, ctx: CommandContext, { corners, laid, members, ends }: Again): string[] {
  const lost: string[] = [];
  const made: string[] = [];
  const tasks = members.map((m, i) => ({
    m,
    laid: laid[i] as LaidMember,
    tails: { start: ownTail(draft, m, 'start'), end: ends?.[i] ?? ownTail(draft, m, 'end') },
  }));
  for (const { m, laid: one, tails } of tasks) {
    const tube = draft.legs[m.chain.legs[0] ?? '']?.tube ?? { kind: 'copper', size: null };
    const written = writeMember(draft, ctx, corners, { run: m.run, laid: one, old: m, tails, tube });
    lost.push(...written.lost);
    made.push(...written.legs.filter((l) => !m.chain.legs.includes(l)));
  }
  removeAll(
    ctx.before,
    draft,
    lost.map((id) => ({ map: 'legs', id })),
  );
  return made;
}

export interface Change {
  readonly corners: readonly BankCorner[];
  readonly members: readonly ReadMember[];
  readonly across: readonly Xyz[];
  readonly spacingMm: number;
  /** Members whose ends are kept as they are where the others find a way beside them; all others find theirs anew. */
  readonly keep?: ReadonlySet<string>;
}

const NONE: ReadonlySet<string> = new Set();

/** Lays members anew across their path and writes them; refuses where two would run into each other. */
export function layAgain(draft: Plan, ctx: CommandContext, change: Change): string[] {
  const { corners, members, across, spacingMm } = change;
  const path = corners.map((c) => c.at);
  const lay = (keep: ReadonlySet<string>) =>
    layBank({ members: members.map((m) => memberOf(ctx.before, m, keep.has(m.run))), spacingMm, path, across });
  const first = lay(change.keep ?? NONE);
  const laid = first.ok || !change.keep ? first : lay(NONE);
  if (!laid.ok) return refuse(laid.why);
  return writeAgain(draft, ctx, { corners, laid: laid.bank.members, members });
}

/** Is a member the first or last of the row? -1, 1, or 0 in between. */
export function sideOf(members: readonly ReadMember[], run: string, row: Xyz): -1 | 0 | 1 {
  const at = members.map((m) => ({ run: m.run, mm: dot3(m.across, row) })).sort((a, b) => a.mm - b.mm);
  if (at[0]?.run === run) return -1;
  return at.at(-1)?.run === run ? 1 : 0;
}

import { distance3, dot3, sub3, unit3 } from '../../geometry/vec.ts';
import type { LaidMember, LaidPlace } from '../../network/bank/bank.ts';
import type { ReadMember } from '../../network/bank/read-bank.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef, Xyz } from '../../plan/records/parts.ts';
import type { Leg, PlanNode, Tube } from '../../plan/records/pipework.ts';
import type { CommandContext } from '../commands/define-command.ts';
import { refuse } from '../commands/define-command.ts';
import { raised } from '../commands/place-arg.ts';
import type { BankCorner } from './bank-place.ts';
import type { FreeTail } from './bank-tails.ts';

/** A member as it is to be written: new, or over what it was. */
export interface ToWrite {
  readonly run: string;
  readonly laid: LaidMember;
  readonly old: ReadMember | null;
  readonly tails: { readonly start: FreeTail | null; readonly end: FreeTail | null };
  readonly tube: Tube;
}

interface Stop {
  /** Its number in the chain as it was; null for a new node. */
  readonly was: number | null;
  readonly at: Xyz;
  readonly place: PlanNode['place'];
}

const refOf = (tail: FreeTail, mm: number): HeightRef => ({
  from: 'connection',
  of: tail.point,
  mm,
  connection: tail.connection,
});

class Writer {
  private readonly draft: Plan;
  private readonly ctx: CommandContext;
  private readonly corners: readonly BankCorner[];
  private readonly task: ToWrite;

  constructor(draft: Plan, ctx: CommandContext, corners: readonly BankCorner[], task: ToWrite) {
    this.draft = draft;
    this.ctx = ctx;
    this.corners = corners;
    this.task = task;
  }

  private placeOf({ at, lean }: LaidPlace, side: 'start' | 'end', isTail: boolean): PlanNode['place'] {
    const tail = this.task.tails[side];
    if (isTail && tail) return { on: 'connection', point: tail.point, connection: tail.connection };
    const corner = this.corners['corner' in lean ? lean.corner : side === 'start' ? 0 : this.corners.length - 1];
    if (!corner) return refuse('The bank has no corners.');
    const height =
      'tail' in lean && tail ? refOf(tail, at.z - tail.tail.at.z) : raised(corner.height, at.z - corner.at.z);
    const storey = 'tail' in lean && tail ? (this.draft.points[tail.point]?.storey ?? corner.storey) : corner.storey;
    return { on: 'storey', storey, x: at.x, y: at.y, height };
  }

  /** A node that stays what it is and steps aside: its height keeps what it is told from. */
  private stepped(was: number, at: Xyz): Stop {
    const { old } = this.task;
    const node = this.draft.nodes[old?.chain.nodes[was] ?? ''];
    const before = old?.chain.places[was];
    if (!node || !before) return refuse('A corner of the bank is no longer there.');
    if (node.place.on === 'connection') return { was, at, place: { ...node.place } };
    const height = raised(node.place.height, at.z - before.z);
    return { was, at, place: { ...node.place, x: at.x, y: at.y, height } };
  }

  /** What stands in a leg of the parallel part, brought onto the leg as it lies now. */
  private between(k: number, a: Xyz, b: Xyz): Stop[] {
    const { old } = this.task;
    const [from, to] = [old?.corners[k], old?.corners[k + 1]];
    if (!old || from === undefined || to === undefined) return [];
    const way = unit3(sub3(b, a));
    const full = distance3(a, b);
    const stops: Stop[] = [];
    for (let i = from + 1; i < to; i++) {
      const along = dot3(sub3(old.chain.places[i] as Xyz, a), way);
      if (along <= 0 || along >= full) refuse('Something stands in a pipe of the bank just where it would turn.');
      stops.push(this.stepped(i, { x: a.x + way.x * along, y: a.y + way.y * along, z: a.z + way.z * along }));
    }
    return stops;
  }

  private outer(side: 'start' | 'end'): Stop[] {
    const { laid, old, tails } = this.task;
    const list = laid[side];
    if (tails[side] || !old) {
      const tail = side === 'start' ? 0 : list.length - 1;
      return list.map((p, i): Stop => ({ was: null, at: p.at, place: this.placeOf(p, side, i === tail) }));
    }
    const first = side === 'start' ? 0 : (old.corners.at(-1) ?? 0);
    return list.map((p, i) => this.stepped(first + i, p.at));
  }

  private middle(): Stop[] {
    const { laid, old } = this.task;
    const known = old?.corners.length ?? 0;
    const all = [...laid.start, ...laid.middle, ...laid.end];
    const stops: Stop[] = [];
    const legs = this.corners.length - 1;
    for (let k = 0; k <= legs; k++) {
      const i = all.findIndex((p) => laid.middle.includes(p) && 'corner' in p.lean && p.lean.corner === k);
      const mine = all[i];
      if (mine) {
        const open = old && k < known ? (old.corners[k] ?? null) : null;
        stops.push({ was: open, at: mine.at, place: this.placeOf(mine, 'end', false) });
      }
      const a = mine?.at ?? laid.start.at(-1)?.at;
      const b = laid.middle.find((p) => 'corner' in p.lean && p.lean.corner === k + 1)?.at ?? laid.end[0]?.at;
      if (k < legs && a && b) stops.push(...this.between(k, a, b));
    }
    return stops;
  }

  /** Puts a place into a node: the one that was there, one that is over, or a new one. */
  private nodeFor(stop: Stop, spare: string[]): string {
    const { old, run } = this.task;
    const id = stop.was === null ? (spare.shift() ?? this.ctx.ids.next('n')) : (old?.chain.nodes[stop.was] ?? '');
    const node = this.draft.nodes[id];
    if (node) node.place = stop.place;
    else {
      const option = this.draft.runs[run]?.option ?? null;
      this.draft.nodes[id] = { id, place: stop.place, turn: null, option };
    }
    return id;
  }

  write(): { readonly legs: readonly string[]; readonly lost: readonly string[] } {
    const { old } = this.task;
    const stops = [...this.outer('start'), ...this.middle(), ...this.outer('end')];
    const kept = stops.flatMap((s, i) => (s.was === null ? [] : [{ i, was: s.was }]));
    const [i0, i1] = [kept[0], kept.at(-1)];
    const chain = old?.chain;
    const spareStart = chain ? chain.nodes.slice(0, i0?.was ?? (old?.corners[0] ?? 0) + 1) : [];
    const spareEnd = chain ? chain.nodes.slice(i1 ? i1.was + 1 : (old?.corners[0] ?? 0) + 1).reverse() : [];
    const middle = i0 ? i0.i : this.task.laid.start.length;
    const nodes: string[] = [];
    for (let i = 0; i < middle; i++) nodes[i] = this.nodeFor(stops[i] as Stop, spareStart);
    // From the tail inwards, so that the node on the tail stays the one it was.
    for (let i = stops.length - 1; i >= middle; i--) {
      const stop = stops[i] as Stop;
      nodes[i] = this.nodeFor(stop, stop.was === null ? spareEnd : []);
    }
    const pivot = i0 ?? { i: middle - 1, was: old?.corners[0] ?? 0 };
    const legs = this.legs(nodes, pivot);
    const lost = (chain?.legs ?? []).filter((l) => !legs.includes(l));
    return { legs, lost };
  }

  /** Legs are told over from where the chain keeps its place: those beside it stay the ones they were. */
  private legs(nodes: readonly string[], pivot: { readonly i: number; readonly was: number }): string[] {
    const { old, run, tube } = this.task;
    const was = old?.chain.legs ?? [];
    const like = this.draft.legs[was[0] ?? ''];
    return nodes.slice(1).map((b, i) => {
      const a = nodes[i] as string;
      const id = was[pivot.was + i - pivot.i] ?? this.ctx.ids.next('l');
      const there = this.draft.legs[id];
      if (there) {
        const forwards = old?.chain.nodes.indexOf(there.a) ?? 0;
        const turned = forwards > (old?.chain.nodes.indexOf(there.b) ?? 0);
        [there.a, there.b] = turned ? [b, a] : [a, b];
      } else this.draft.legs[id] = newLeg(id, run, [a, b], like, tube, this.draft.runs[run]?.option ?? null);
      return id;
    });
  }
}

function newLeg(
  id: string,
  run: string,
  [a, b]: readonly [string, string],
  like: Leg | undefined,
  tube: Tube,
  option: string | null,
): Leg {
  const insulation = like?.insulation ? { ...like.insulation } : null;
  const sureness = like?.sureness ?? 'seen';
  return { id, run, a, b, tube: { ...(like?.tube ?? tube) }, insulation, option, sureness };
}

/** Writes one member into the draft. Gives its legs, and those it has no more, which are to be taken away. */
export const writeMember = (draft: Plan, ctx: CommandContext, corners: readonly BankCorner[], task: ToWrite) =>
  new Writer(draft, ctx, corners, task).write();

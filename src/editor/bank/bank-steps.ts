import { distance3 } from '../../geometry/vec.ts';
import { readBank } from '../../network/bank/read-bank.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { KeyInput } from '../editor-api.ts';
import type { Pick } from '../input/pick.ts';
import type { SnapOptions } from '../snap/define-snap.ts';
import type { ToolEvent } from '../tools/define-tool.ts';
import { frameOf, lastPlace } from '../tools/live-run.ts';
import { type BankContext, emptyBankMemory } from './bank-memory.ts';
import { showBank, standingOf } from './bank-preview.ts';
import { firstCorner, nextCorners, placeOf, pointOf } from './bank-told.ts';

const MOST_DIGITS = 6;
/** A corner of a bank is in the open: pipes of others are no place for it. */
const CATCHES = ['connection', 'alignment', 'rightAngle', 'openingEdge', 'wallFace', 'level', 'grid'];

/** A pick that is only a place, for what the next corner is told from. */
const pickAt = (at: Xyz): Pick => ({ at, fixed: 'xyz', source: 'bank', word: null, target: null });

export function leave(ctx: BankContext): string {
  Object.assign(ctx.memory, emptyBankMemory());
  ctx.draft(null);
  ctx.caught(null);
  ctx.typed('');
  return 'idle';
}

/** Way of the last leg of the middle, as it is seen. */
function wayOf(ctx: BankContext): readonly [number, number] | undefined {
  const { plane } = frameOf(ctx);
  const path = standingOf(ctx)?.read.path ?? ctx.memory.corners.flatMap((c) => placeOf(ctx.plan, c) ?? []);
  for (let k = path.length - 1; k > 0; k--) {
    const [a, b] = [plane.onto(path[k - 1] as Xyz), plane.onto(path[k] as Xyz)];
    const mm = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (mm > 1) return [(b[0] - a[0]) / mm, (b[1] - a[1]) / mm];
  }
  return undefined;
}

export function options(ctx: BankContext): SnapOptions {
  const from = lastPlace(ctx);
  const { plane } = frameOf(ctx);
  const way = wayOf(ctx);
  return {
    only: CATCHES,
    ...(from ? { from } : {}),
    ...(way ? { way: [way[0], way[1]] as const } : {}),
    ...(from && plane.kind === 'face' ? { depth: plane.depth(from) } : {}),
  };
}

/** The bank whose open end lies under the pointer. */
function bankAt(ctx: BankContext, event: ToolEvent): string | null {
  const pick = event.snap({ only: ['node'] });
  const node = pick.target?.is === 'node' ? pick.target.node : null;
  if (node === null) return null;
  for (const group of Object.values(ctx.plan.groups)) {
    const read = readBank(ctx.plan, group.id);
    const open = read?.members.every((m) => m.end.is === 'open');
    if (open && read?.members.some((m) => m.chain.nodes.at(-1) === node)) return group.id;
  }
  return null;
}

/** First tap: on a tail the bank starts at that appliance, on the open end of a bank it goes on, else in the open. */
export function begin(ctx: BankContext, event: ToolEvent): string {
  const { memory, inHand } = ctx;
  const goesOn = bankAt(ctx, event);
  if (goesOn !== null) {
    memory.group = goesOn;
    const end = standingOf(ctx)?.corners.at(-1);
    if (!end) return leave(ctx);
    memory.start = pickAt(end.at);
    ctx.setInHand({ height: end.height });
    return 'starting';
  }
  if (inHand.bank.members.length < 2) {
    ctx.say('A bank has two runs or more: add them under "In hand".');
    return 'idle';
  }
  const pick = event.snap(options(ctx));
  const point = pointOf(ctx.plan, pick);
  memory.from = point;
  if (point !== null) memory.start = pick;
  else {
    const corner = firstCorner(ctx, pick);
    const at = corner && placeOf(ctx.plan, corner);
    if (!corner || !at) return leave(ctx);
    memory.corners = [corner];
    memory.start = pickAt(at);
  }
  return 'starting';
}

function goneOn(ctx: BankContext, at: Xyz): void {
  ctx.memory.start = pickAt(at);
  ctx.memory.typed = '';
  ctx.memory.aim = null;
}

/** One placed corner: one step, once the bank has a leg to be laid. Gives the next state. */
export function place(ctx: BankContext): string {
  const { memory, inHand, plan } = ctx;
  const next = nextCorners(ctx);
  const last = next?.path.at(-1);
  const at = (last && placeOf(plan, last)) ?? lastPlace(ctx);
  if (!next || !at) return 'aiming';
  const before = { corners: memory.corners, group: memory.group, last: lastPlace(ctx) ?? null };
  const end = next.point === null ? null : { point: next.point };
  if (memory.group === null) {
    const path = [...memory.corners, ...next.path];
    if (path.length < 2) {
      if (end) {
        ctx.say('A bank needs a straight part before it can end: place another corner first.');
        return 'aiming';
      }
      memory.corners = path;
      memory.steps = [...memory.steps, before];
      goneOn(ctx, at);
      showBank(ctx);
      return 'aiming';
    }
    const start = memory.from === null ? null : { point: memory.from };
    const out = ctx.commit('bank.lay', { ...inHand.bank, path, start, end });
    if (!out.ok) return 'aiming';
    memory.group = out.made[0] ?? null;
  } else if (!ctx.commit('bank.extend', { group: memory.group, path: next.path, end }).ok) return 'aiming';
  if (end) return leave(ctx);
  memory.steps = [...memory.steps, before];
  goneOn(ctx, at);
  showBank(ctx);
  return 'aiming';
}

function takeBack(ctx: BankContext): string {
  const { memory } = ctx;
  if (memory.typed !== '') memory.typed = memory.typed.slice(0, -1);
  else {
    const step = memory.steps.at(-1);
    if (!step) return leave(ctx);
    const laid = memory.group !== null;
    if (laid && !ctx.undo().ok) return 'aiming';
    memory.steps = memory.steps.slice(0, -1);
    memory.corners = [...step.corners];
    memory.group = step.group;
    if (step.last) goneOn(ctx, step.last);
  }
  showBank(ctx);
  return 'aiming';
}

export function typedKey(ctx: BankContext, { key }: KeyInput): string | undefined {
  const { memory } = ctx;
  if (/^\d$/.test(key)) {
    memory.typed = (memory.typed + key).replace(/^0+/, '').slice(0, MOST_DIGITS);
    showBank(ctx);
    return 'aiming';
  }
  if (key.startsWith('Arrow')) return aimAlong(ctx, key);
  if (key === 'Backspace') return takeBack(ctx);
  if (key === 'Enter') return memory.typed === '' ? leave(ctx) : place(ctx);
  if (key !== 'Escape') return undefined;
  if (memory.typed === '') return leave(ctx);
  memory.typed = '';
  showBank(ctx);
  return 'aiming';
}

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
/** So far off an arrow points: only its way counts, the length is typed. */
const POINTS_MM = 1000;

/** With a length typed an arrow says which way, as it is seen; without one it is for the cross. */
function aimAlong(ctx: BankContext, key: string): string | undefined {
  const { memory } = ctx;
  const way = ARROWS[key];
  const from = lastPlace(ctx);
  if (memory.typed === '' || !way || !from) return undefined;
  const { plane } = frameOf(ctx);
  const [s, t] = plane.onto(from);
  memory.aim = pickAt(plane.place([s + way[0] * POINTS_MM, t + way[1] * POINTS_MM], plane.depth(from)));
  showBank(ctx);
  return 'aiming';
}

/** Steps taken back elsewhere take the bank with them. */
export function catchUp(ctx: BankContext): string | undefined {
  const { memory, plan } = ctx;
  if (memory.group !== null && !plan.groups[memory.group]) return leave(ctx);
  const end = standingOf(ctx)?.read.path.at(-1);
  const from = lastPlace(ctx);
  if (memory.group !== null && !end) return leave(ctx);
  if (end && from && distance3(end, from) > 1) {
    memory.start = pickAt(end);
    memory.steps = [];
  }
  showBank(ctx);
  return undefined;
}

import { services } from '../../catalogue/services.ts';
import { distance3, scale3 } from '../../geometry/vec.ts';
import { placesOfMember } from '../../network/bank/bank.ts';
import { layBank } from '../../network/bank/lay-bank.ts';
import { evenly, firstRow, waysOf } from '../../network/bank/nest.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { Refused } from '../commands/define-command.ts';
import { aimed, frameOf, lastPlace } from '../tools/live-run.ts';
import type { BankContext, Preview } from './bank-memory.ts';
import { type BankPlace, cornerOf } from './bank-place.ts';
import { nextCorners, placeOf } from './bank-told.ts';
import { extended } from './extended.ts';
import { type Standing, standing } from './lay-again.ts';
import { open, radiusOf, sayPipe, workOut } from './lay-new.ts';

const NO_IDS = { next: (prefix: string) => `shown-${prefix}` };

const optionOf = ({ state }: BankContext): string | null =>
  state.chosen.when === 'before' ? null : state.chosen.option;

/** The bank that is being laid, read once for as long as the plan is the same. */
export function standingOf(ctx: BankContext): Standing | null {
  const { memory, plan, state } = ctx;
  if (memory.group === null) return null;
  if (memory.read?.plan !== plan) {
    const context = { ids: NO_IDS, before: plan, chosen: state.chosen, option: optionOf(ctx) };
    memory.read = { plan, standing: orNull(() => standing(plan, memory.group ?? '', context)) };
  }
  return memory.read.standing;
}

function orNull<T>(work: () => T): T | null {
  try {
    return work();
  } catch (cause) {
    if (cause instanceof Refused) return null;
    throw cause;
  }
}

function refusing(middle: readonly Xyz[], work: () => Preview['lines']): Preview {
  try {
    return { lines: work(), middle, why: null };
  } catch (cause) {
    if (!(cause instanceof Refused)) throw cause;
    return { lines: [], middle, why: cause.message };
  }
}

/** The parallel part of a bank that is not there yet, however its ends will go. */
function parallelOnly(ctx: BankContext, path: readonly Xyz[]): Preview['lines'] {
  const { members, spacingMm, row } = ctx.inHand.bank;
  const on = firstRow(waysOf(path), row);
  const laid = layBank({
    members: members.map((p) => ({ name: sayPipe(p.service), radiusMm: radiusOf(p.tube), start: open, end: open })),
    spacingMm,
    path,
    across: evenly(members.length, spacingMm).map((mm) => scale3(on, mm)),
  });
  if (!laid.ok) throw new Refused(laid.why);
  return laid.bank.members.map((m, i) => ({ service: members[i]?.service ?? '', pts: placesOfMember(m) }));
}

function newBank(ctx: BankContext, corners: readonly BankPlace[], point: string | null, path: readonly Xyz[]): Preview {
  return refusing(path, () => {
    if (point === null) return parallelOnly(ctx, path);
    const { members: pipes, spacingMm, row } = ctx.inHand.bank;
    const told = corners.map((c) => cornerOf(ctx.plan, c));
    const laid = workOut(ctx.plan, { pipes, spacingMm, row, corners: told, start: null, end: point }, optionOf(ctx));
    return laid.members.map((m, i) => ({ service: pipes[i]?.service ?? '', pts: placesOfMember(m) }));
  });
}

/** A bank that is there, with more corners, and to an appliance. What lies well before its end is not shown anew. */
function longer(ctx: BankContext, now: Standing, told: readonly BankPlace[], point: string | null): Preview {
  const { plan } = ctx;
  const { members, path } = now.read;
  const more = orNull(() => told.map((c) => cornerOf(plan, c))) ?? [];
  return refusing([path.at(-1) as Xyz, ...more.map((c) => c.at)], () => {
    const { laid } = extended(plan, now, more, point, optionOf(ctx));
    return laid.map((m, i) => {
      const from = m.middle.findIndex((p) => 'corner' in p.lean && p.lean.corner >= path.length - 2);
      const pts = [...(from < 0 ? [] : m.middle.slice(from)), ...m.end].map((p) => p.at);
      return { service: plan.runs[members[i]?.run ?? '']?.service ?? '', pts };
    });
  });
}

function worked(ctx: BankContext): Preview | null {
  const { memory, plan } = ctx;
  const next = nextCorners(ctx);
  if (!next) return null;
  const now = standingOf(ctx);
  if (now) {
    const end = now.read.path.at(-1);
    if (next.path.length === 0 && next.point === null) return { lines: [], middle: end ? [end] : [], why: null };
    return longer(ctx, now, next.path, next.point);
  }
  const corners = [...memory.corners, ...next.path];
  const path = corners.flatMap((c) => placeOf(plan, c) ?? []);
  if (path.length < 2) return { lines: [], middle: path, why: null };
  return newBank(ctx, corners, memory.from === null ? next.point : null, path);
}

/** What a tap would lay now. A way to an appliance takes long to find, so it is kept while the same is told. */
function previewOf(ctx: BankContext): Preview | null {
  const { memory, plan, inHand } = ctx;
  const next = nextCorners(ctx);
  if (!next) return null;
  const key = JSON.stringify([memory.group, memory.from, memory.corners, next, inHand.bank]);
  if (memory.shown?.key === key && memory.shown.plan === plan) return memory.shown.preview;
  const preview = worked(ctx);
  if (preview) memory.shown = { key, plan, preview };
  return preview;
}

const middleOf = (a: Xyz, b: Xyz): Xyz => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, z: (a.z + b.z) / 2 });
const LIVE_PEN = 0.7;
/** A line between two places of the path that is told but cannot be laid. */
const PATH_PEN = 0.35;

function labelsOf(ctx: BankContext, pts: readonly Xyz[]) {
  const { plane } = frameOf(ctx);
  return pts.slice(1).flatMap((to, i) => {
    const from = pts[i] as Xyz;
    const mm = Math.round(distance3(from, to));
    const upright = plane.kind === 'plan' && Math.hypot(to.x - from.x, to.y - from.y) < 1;
    return mm === 0
      ? []
      : [{ at: middleOf(from, to), text: upright ? `${to.z > from.z ? 'up' : 'down'} ${mm}` : `${mm}` }];
  });
}

/** Letters of the row beside its end, in the order they are seen: left to right, or top to bottom. */
function rowAt(ctx: BankContext, { lines, middle }: Preview): { readonly at: Xyz; readonly text: string }[] {
  const { plane } = frameOf(ctx);
  const ends = lines.flatMap(({ service, pts }) => {
    const at = pts.at(-1);
    return at ? [{ on: plane.onto(at), text: services.get(service)?.tag ?? service }] : [];
  });
  const at = middle.at(-1);
  if (!at || ends.length === 0) return [];
  const spread = (k: 0 | 1): number => Math.max(...ends.map((e) => e.on[k])) - Math.min(...ends.map((e) => e.on[k]));
  const flat = spread(0) >= spread(1);
  const seen = ends.sort((a, b) => (flat ? a.on[0] - b.on[0] : b.on[1] - a.on[1]));
  return [{ at, text: seen.map((e) => e.text).join(' · ') }];
}

/** Shows every member in its beat, the lengths of the middle, and the letters of the row at its end. */
export function showBank(ctx: BankContext): void {
  const preview = ctx.memory.aim ? previewOf(ctx) : null;
  ctx.typed(ctx.memory.typed);
  const pick = aimed(ctx);
  if (!preview) {
    ctx.caught(pick?.word ?? null);
    ctx.draft(pick ? { marks: [{ mark: 'aim', at: pick.at }] } : null);
    return;
  }
  ctx.caught(preview.why ?? pick?.word ?? null);
  const last = lastPlace(ctx);
  const aim = preview.middle.at(-1) ?? pick?.at;
  const lines = preview.lines.flatMap(({ service, pts }) => {
    const style = services.get(service)?.style ?? service;
    return pts
      .slice(1)
      .map((to, i) => ({ pts: [pts[i] as Xyz, to], ink: `service:${style}`, pen: LIVE_PEN, beat: style }));
  });
  const told = lines.length === 0 && last && pick ? [{ pts: [last, pick.at], ink: 'live', pen: PATH_PEN }] : [];
  const { plane } = frameOf(ctx);
  const upright = preview.lines.flatMap(({ pts }) =>
    pts.slice(1).flatMap((to, i) => {
      const from = pts[i] as Xyz;
      if (plane.kind !== 'plan' || Math.hypot(to.x - from.x, to.y - from.y) > 1) return [];
      return [{ mark: to.z > from.z ? 'rise' : 'drop', at: to }];
    }),
  );
  ctx.draft({
    lines: [...lines, ...told],
    marks: [...upright, ...(aim ? [{ mark: 'aim', at: aim }] : [])],
    labels: [...labelsOf(ctx, preview.middle), ...rowAt(ctx, preview)],
  });
}

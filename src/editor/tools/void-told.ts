import type { HeightRef, Xy } from '../../plan/records/parts.ts';
import { storeyOf } from '../panes.ts';
import type { Ctx } from './void-memory.ts';

/** Between which heights a void of each kind lies until somebody measures: all told from floor and ceiling. */
function between(ctx: Ctx, storey: string): { bottom: HeightRef | null; top: HeightRef | null } {
  const deep = ctx.plan.storeys[storey]?.buildUpMm ?? ctx.assumptions.buildUpMm;
  const floor = (mm: number): HeightRef => ({ from: 'floor', of: storey, mm });
  const ceiling = (mm: number): HeightRef => ({ from: 'ceiling', of: storey, mm });
  const kind = ctx.inHand.voidKind;
  if (kind === 'ceiling') return { bottom: ceiling(0), top: ceiling(deep) };
  if (kind === 'floor' || kind === 'slab') return { bottom: floor(-deep), top: floor(0) };
  return { bottom: floor(0), top: ceiling(0) };
}

/** The void as it will be, less its joists. */
export function toldVoid(ctx: Ctx, outline: readonly Xy[]) {
  const storey = storeyOf(ctx.state.panes);
  return { storey, kind: ctx.inHand.voidKind, outline, ...between(ctx, storey) };
}

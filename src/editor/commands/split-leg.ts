import type { Plan } from '../../plan/plan.ts';
import type { HeightRef } from '../../plan/records/parts.ts';
import type { Leg } from '../../plan/records/pipework.ts';
import type { CommandContext } from './define-command.ts';

/** Kept on the later part of something that was split; the file format keeps fields it does not list. */
export interface From {
  from?: string;
}

/**
 * Puts a node into a leg. The first part keeps the id; the other records where it came from. A surveyed leg gets a
 * surveyed node, whatever is in hand. Items that pointed along the leg from its far end point along the new part.
 */
export function splitLeg(
  draft: Plan,
  leg: Leg,
  at: { readonly storey: string; readonly x: number; readonly y: number; readonly height: HeightRef },
  ctx: CommandContext,
): string {
  const node = ctx.ids.next('n');
  const part = ctx.ids.next('l');
  draft.nodes[node] = { id: node, place: { on: 'storey', ...at }, turn: null, option: leg.option };
  const rest: Leg & From = {
    id: part,
    run: leg.run,
    a: node,
    b: leg.b,
    tube: { ...leg.tube },
    insulation: leg.insulation && { ...leg.insulation },
    option: leg.option,
    sureness: leg.sureness,
    from: leg.id,
  };
  draft.legs[part] = rest;
  for (const item of Object.values(draft.items)) {
    if (item.along === leg.id && item.node === leg.b) item.along = part;
  }
  for (const option of Object.values(draft.options)) {
    const fate = option.fates[leg.id];
    if (fate !== undefined) option.fates[part] = fate;
  }
  const first = draft.legs[leg.id];
  if (first) first.b = node;
  return node;
}

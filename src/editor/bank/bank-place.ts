import * as v from 'valibot';
import { resolveHeight } from '../../geometry/heights.ts';
import type { Plan } from '../../plan/plan.ts';
import { type HeightRef, heightRef, id, mm, type Xyz } from '../../plan/records/parts.ts';
import { refuse } from '../commands/define-command.ts';

/** A corner of a bank's middle: always in the open, as its members lie beside it. */
export const bankPlace = v.object({ storey: id<'storey'>(), x: mm, y: mm, height: heightRef });
export type BankPlace = v.InferOutput<typeof bankPlace>;

/** A corner with its place in space. */
export interface BankCorner {
  readonly at: Xyz;
  readonly storey: string;
  readonly height: HeightRef;
}

export function cornerOf(plan: Plan, { storey, x, y, height }: BankPlace): BankCorner {
  if (!plan.storeys[storey]) refuse('That floor is no longer there.');
  const z = resolveHeight(plan, height)?.z ?? refuse('That height is told from something that has no height itself.');
  return { at: { x, y, z }, storey, height };
}

import { FORMAT, MINOR, VERSION } from '../../plan/envelope.ts';
import type { Plan } from '../../plan/plan.ts';

export interface WriteWith {
  /** When, as the caller's clock says it; kept as it is given. */
  readonly savedAt: string;
  /** Name and version of what writes, so that an unreadable file says where it came from. */
  readonly writer: string;
  readonly blobs: Readonly<Record<string, string>>;
}

/**
 * A plan as a file. The plan's part of the bytes depends on the plan alone: order of names as they stand, numbers in
 * their shortest form, one step of indentation a level.
 */
export function writePlan(plan: Plan, { savedAt, writer, blobs }: WriteWith): string {
  const envelope = { format: FORMAT, version: VERSION, minor: MINOR, writer, savedAt, plan, blobs };
  return `${JSON.stringify(envelope, null, 1)}\n`;
}

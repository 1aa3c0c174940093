import type { Pixels, TracePlace } from '../../geometry/trace-place.ts';
import type { Plan } from '../../plan/plan.ts';
import type { BlobRef } from '../../plan/records/statements.ts';
import { refuse } from './define-command.ts';

export interface Trace {
  readonly record: BlobRef;
  readonly place: TracePlace;
  readonly pixels: Pixels;
}

/** A picture that lies under the drawing and may be moved. Refuses where it is gone, is no trace, or is locked. */
export function looseTrace(draft: Plan, id: string): Trace {
  const record = draft.blobRefs[id] ?? refuse('That picture is no longer there.');
  const { place, pixels } = record;
  if (record.kind !== 'trace' || !place) return refuse('That picture does not lie under the drawing.');
  if (!pixels) return refuse('Nobody knows how large that picture is: put it under the drawing again.');
  if (place.locked) refuse(`${sayTrace(record)} is locked: unlock it first.`);
  return { record, place, pixels };
}

export const sayTrace = (record: BlobRef | undefined): string => record?.name || 'the picture';

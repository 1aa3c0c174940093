import * as v from 'valibot';
import { text } from './records/parts.ts';

export const FORMAT = 'kickset-plan';
/** Raised when an older Kickset could no longer read the file rightly. Newer than this opens read-only. */
export const VERSION = 1;
/** Raised when records or fields are added. Unknown ones are kept, and the plan stays editable. */
export const MINOR = 2;

export const envelopeSchema = v.looseObject({
  format: v.literal(FORMAT),
  version: v.pipe(v.number(), v.integer(), v.minValue(1)),
  minor: v.pipe(v.number(), v.integer(), v.minValue(0)),
  writer: text,
  savedAt: text,
  plan: v.looseObject({}),
  /** Photos and traced plans by the hash of their bytes, base64; may be empty where they travel apart. */
  blobs: v.record(v.string(), v.string()),
});
export type Envelope = v.InferOutput<typeof envelopeSchema>;

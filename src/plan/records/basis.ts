import * as v from 'valibot';
import { date, finite, id, record, text } from './parts.ts';

/**
 * What the sums rest on. `editions` pins one table id per topic: a newer edition is offered, never applied by itself.
 * Null is "not told": the sums then take the table's own figure and say so.
 */
export const basis = record({
  surveyDate: v.nullable(date),
  gas: v.picklist(['natural', 'propane']),
  calorificValueMJPerM3: v.nullable(finite),
  editions: v.record(v.string(), v.string()),
  designFlowC: v.nullable(finite),
  designReturnC: v.nullable(finite),
  /** Incoming cold water and what the hot water is set to, in degrees C. Null or left out: not told. */
  coldC: v.exactOptional(v.nullable(finite)),
  hotC: v.exactOptional(v.nullable(finite)),
});

/** Somebody's leave for the work: of what, from whom, when asked and when given. */
export const permission = record({
  what: text,
  from: text,
  asked: v.nullable(date),
  given: v.nullable(date),
  note: text,
});

/** What was read on the day of the survey: "standing gas pressure", a figure and its unit. */
export const reading = record({
  what: text,
  value: v.nullable(finite),
  unit: text,
  on: v.nullable(date),
  place: text,
  note: text,
  /** What kind of figure it is, where the sums use it: "mains-flowing". Left out: only kept. */
  kind: v.exactOptional(text),
  /** The thing it was read at, where that is drawn. */
  point: v.exactOptional(v.nullable(id<'point'>())),
});

/**
 * One test or commissioning record: what was tested, by which edition, what was read. `figures` are told by their
 * key; null is a blank still to be filled. The result is the engineer's own word.
 */
export const testRecord = record({
  kind: text,
  part: text,
  edition: text,
  on: v.nullable(date),
  figures: v.record(v.string(), v.nullable(finite)),
  result: text,
  by: text,
  note: text,
});

/** A signature as it was written: strokes of x, y pairs in a box of 1000 across, and the name in letters. */
const signature = record({ name: text, on: v.nullable(date), strokes: v.array(v.array(finite)) });

/**
 * A situation somebody judged unsafe. `classification` is the engineer's own word: nothing here proposes one. `photo`
 * is a picture kept with the job.
 */
export const unsafeSituation = record({
  what: text,
  place: text,
  classification: text,
  notice: text,
  photo: v.nullable(id<'blobRef'>()),
  on: v.nullable(date),
  signed: v.array(signature),
});

/** Something that must be decided or done before a day: before the pour, before the plaster. */
export const holdPoint = record({ what: text, before: text, on: v.nullable(date), owner: text, done: v.boolean() });

/** What the title block of a sheet tells besides the job: its number, the day it is given out, and what changed since the last. */
const issue = record({ number: text, revision: text, reason: text, createdBy: text, on: v.nullable(date) });

/** Who, where and why, in the user's own words. All of it stays on the device. */
export const job = record({
  address: text,
  customer: text,
  owner: text,
  reason: text,
  note: text,
  permissions: v.exactOptional(v.array(permission)),
  readings: v.exactOptional(v.array(reading)),
  holdPoints: v.exactOptional(v.array(holdPoint)),
  issue: v.exactOptional(issue),
  tests: v.exactOptional(v.array(testRecord)),
  unsafe: v.exactOptional(v.array(unsafeSituation)),
});

export type Basis = v.InferOutput<typeof basis>;
export type Permission = v.InferOutput<typeof permission>;
export type Reading = v.InferOutput<typeof reading>;
export type TestRecord = v.InferOutput<typeof testRecord>;
export type UnsafeSituation = v.InferOutput<typeof unsafeSituation>;
export type HoldPoint = v.InferOutput<typeof holdPoint>;
export type Issue = v.InferOutput<typeof issue>;
export type Job = v.InferOutput<typeof job>;

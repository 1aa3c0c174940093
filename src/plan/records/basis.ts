import * as v from 'valibot';
import { date, finite, record, text } from './parts.ts';

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
});

export type Basis = v.InferOutput<typeof basis>;
export type Permission = v.InferOutput<typeof permission>;
export type Reading = v.InferOutput<typeof reading>;
export type HoldPoint = v.InferOutput<typeof holdPoint>;
export type Issue = v.InferOutput<typeof issue>;
export type Job = v.InferOutput<typeof job>;

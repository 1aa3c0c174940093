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

/** Who, where and why, in the user's own words. All of it stays on the device. */
export const job = record({
  address: text,
  customer: text,
  owner: text,
  reason: text,
  note: text,
});

export type Basis = v.InferOutput<typeof basis>;
export type Job = v.InferOutput<typeof job>;

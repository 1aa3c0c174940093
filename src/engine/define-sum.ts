import type { SumInput } from '../report/sum-card.ts';
import { roundWorking, type Working } from '../report/working.ts';

export type SumValues = Readonly<Record<string, number | string>>;

export interface Sum {
  readonly id: string;
  readonly title: string;
  /** What it is about, as lists of sums are parted: "gas", "heating", "hot and cold", "drains", "building", "pipework". */
  readonly topic: string;
  readonly inputs: readonly SumInput[];
  /** A pure function of checked inputs; an input left out is simply not in `values`. */
  readonly work: (values: SumValues) => Working;
  readonly example: {
    readonly values: SumValues;
    readonly result: number;
    readonly within: number;
    readonly from: string;
  };
}

export const defineSum = (sum: Sum): Sum => sum;

export type Checked = { readonly ok: true; readonly values: SumValues } | { readonly ok: false; readonly why: string };

function checkOne(input: SumInput, given: string): number | string | Error {
  if (input.kind === 'choice') {
    if (input.choices?.includes(given)) return given;
    return new Error(`${input.key} is one of ${input.choices?.join(', ')}, not "${given}"`);
  }
  const n = given.trim() === '' ? Number.NaN : Number(given);
  if (!Number.isFinite(n)) return new Error(`${input.key} is a number in ${input.unit || 'no unit'}, not "${given}"`);
  if (input.least !== undefined && n < input.least)
    return new Error(`${input.key} is at least ${input.least} ${input.unit}, not ${n}`);
  if (input.most !== undefined && n > input.most)
    return new Error(`${input.key} is at most ${input.most} ${input.unit}, not ${n}`);
  return n;
}

/** Words from a form or a command line into values; a slip becomes one clear sentence. */
export function checkInputs(sum: Sum, given: Readonly<Record<string, string>>): Checked {
  const values: Record<string, number | string> = {};
  for (const key of Object.keys(given)) {
    if (!sum.inputs.some((i) => i.key === key)) {
      return {
        ok: false,
        why: `${sum.id} does not ask for "${key}"; it asks for ${sum.inputs.map((i) => i.key).join(', ')}`,
      };
    }
  }
  for (const input of sum.inputs) {
    const text = given[input.key];
    if (text === undefined) {
      if (input.required)
        return {
          ok: false,
          why: `${sum.id} needs ${input.key} (${input.label}${input.unit ? `, ${input.unit}` : ''})`,
        };
      continue;
    }
    const value = checkOne(input, text);
    if (value instanceof Error) return { ok: false, why: value.message };
    values[input.key] = value;
  }
  return { ok: true, values };
}

/** A sum from words: worked out, or the sentence that says which of them cannot be used. */
export function workSum(
  sum: Sum,
  given: Readonly<Record<string, string>>,
): { ok: true; working: Working } | { ok: false; why: string } {
  const checked = checkInputs(sum, given);
  return checked.ok ? { ok: true, working: roundWorking(sum.work(checked.values)) } : checked;
}

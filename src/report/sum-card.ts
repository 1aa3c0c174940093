import type { CitedSource } from './report.ts';
import type { Working } from './working.ts';

/** One figure a sum asks for: stable key and unit, so that scripts can lean on them. */
export interface SumInput {
  readonly key: string;
  readonly label: string;
  readonly kind: 'number' | 'choice';
  readonly unit: string;
  readonly required: boolean;
  readonly choices?: readonly string[];
  /** What a choice is called where it is shown, if not by itself. */
  readonly words?: Readonly<Record<string, string>>;
  readonly least?: number;
  readonly most?: number;
}

/** What a form needs to know of a sum: what it asks for, and one worked example with its source. */
export interface SumCard {
  readonly id: string;
  readonly title: string;
  readonly topic: string;
  readonly inputs: readonly SumInput[];
  readonly example: { readonly values: Readonly<Record<string, number | string>>; readonly from: string };
}

/** A sum worked out, with the text of what it cites; or one sentence that says which figure cannot be used. */
export type SumAnswer =
  | { readonly ok: true; readonly working: Working; readonly sources: readonly CitedSource[] }
  | { readonly ok: false; readonly why: string };

/** The port through which a form reaches the sums. */
export interface Sums {
  readonly list: () => Promise<readonly SumCard[]>;
  readonly work: (sum: string, told: Readonly<Record<string, string>>) => Promise<SumAnswer>;
}

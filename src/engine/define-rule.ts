import type { Plan } from '../plan/plan.ts';
import type { Figure } from '../reference/figure.ts';
import type { FindingPlace, Outcome } from '../report/finding.ts';
import type { Quantity } from '../report/quantity.ts';
import type { Cite, Working } from '../report/working.ts';
import type { Given } from './given.ts';

/** Words that fill the {braces} of a rule's sentences. */
export type Words = Readonly<Record<string, string>>;

/** What a rule says of one thing: nothing at all, or a finding without its text. */
export interface Fault {
  readonly outcome: Outcome;
  readonly ids: readonly string[];
  readonly words?: Words;
  readonly legs?: readonly string[];
  readonly found?: Quantity | null;
  readonly wanted?: Quantity | null;
  readonly wantedIs?: 'atMost' | 'atLeast';
  readonly at?: FindingPlace | null;
  readonly more?: number;
  readonly missing?: readonly string[];
  readonly working?: Working | null;
  readonly unverified?: boolean;
  readonly cites?: readonly Cite[];
  /** The limit an appliance's own sheet may give in place of the general one: its id, and the thing it is held for. */
  readonly limit?: { readonly id: string; readonly scope: string | null };
  /** Which of the rule's sentences to say; `fault` unless the outcome is "can't tell". */
  readonly say?: string;
}

export interface Sentences {
  /** What is wrong. */
  readonly title: string;
  /** Why it matters. */
  readonly why: string;
  /** What to do. */
  readonly todo: string;
}

export interface Example {
  readonly name: string;
  readonly given: () => Plan;
  /** Outcome expected of this rule alone; 'pass' means it says nothing. */
  readonly expect: Outcome | 'pass';
  readonly found?: { readonly lo: number; readonly hi: number; readonly tolerance: number };
  /** Where the expected figure comes from, when there is one. */
  readonly from?: string;
}

export interface Rule<P extends Readonly<Record<string, Figure>> = Readonly<Record<string, Figure>>> {
  readonly id: string;
  readonly topic: string;
  readonly since: string;
  readonly basis: 'law' | 'requirement' | 'recommendation' | 'practice';
  readonly lifeSafety: boolean;
  readonly cites: readonly Cite[];
  /** What has to be known before this can be answered; named in a "can't tell". */
  readonly needs: readonly string[];
  /** Every number of the rule, out of the tables. Read once per plan, because editions are the plan's choice. */
  readonly params: (given: Given) => P;
  readonly judge: (given: Given, params: P) => readonly Fault[];
  readonly say: { readonly fault: Sentences; readonly cantTell: Sentences; readonly pass: string } & Readonly<
    Record<string, Sentences | string>
  >;
  readonly examples: readonly Example[];
}

export function defineRule<P extends Readonly<Record<string, Figure>>>(rule: Rule<P>): Rule<P> {
  return rule;
}

/** "{a} meets {b}" with a and b told. A word that was not told stays in its braces, and a test finds it. */
export function fill(sentence: string, words: Words): string {
  return sentence.replace(/\{(\w+)\}/g, (braces, key: string) => words[key] ?? braces);
}

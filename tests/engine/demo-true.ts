/** One thing the engine says of a demo plan, with why it is true of that house. */
export interface TrueFinding {
  readonly demo: string;
  readonly option: string;
  readonly when: 'before' | 'after';
  readonly outcome: string;
  readonly rule: string;
  readonly ids: readonly string[];
  readonly because: string;
}

export const said =
  (demo: string, when: TrueFinding['when'], option = 'A') =>
  (outcome: string, rule: string, ids: readonly string[], because: string): TrueFinding => ({
    demo,
    option,
    when,
    outcome,
    rule,
    ids,
    because,
  });

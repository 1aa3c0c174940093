import { type KnownWord, type TableCite, type Unknown, word } from '../../reference/figure.ts';
import type { Sureness } from '../../report/quantity.ts';

/** `no`: not there. `ask`: the table says nothing, so nobody may take it for allowed. */
export interface Allowed {
  readonly answer: 'yes' | 'no' | 'ask';
  readonly sureness: Sureness;
  readonly note: string | null;
  readonly cite: TableCite;
}

function allowed(found: KnownWord | Unknown): Allowed {
  if (found.is !== 'known') return { answer: 'ask', sureness: 'practice', note: null, cite: found.cite };
  return {
    answer: found.word === 'yes' ? 'yes' : found.word === 'no' ? 'no' : 'ask',
    sureness: found.sureness,
    note: found.note,
    cite: found.cite,
  };
}

/** Where a joint is: a service by its system, and for gas also in screed, slab or chase, or where nobody can reach it. */
export type JoinPlace = 'gas' | 'gas buried' | 'gas hidden' | 'heating' | 'cold' | 'hot' | 'condensate' | 'discharge';

/** May pipes be joined this way there? `joining` as the plan stores it ("endFeed", "pushFit", ...). */
export const joiningAllowed = (where: JoinPlace, joining: string): Allowed =>
  allowed(word('joining-allowed', where, joining));

/** May this kind of tube carry this service? */
export const tubeAllowed = (system: Exclude<JoinPlace, 'gas buried' | 'gas hidden'>, tubeKind: string): Allowed =>
  allowed(word('tube-allowed', system, tubeKind));

import { type Figure, figure } from '../../reference/figure.ts';
import { type Editions, edition, editionsOf } from '../../reference/tables.ts';

const TOPIC = 'condensate-fall';

/** Falls that guides of several years ask for, mm in a metre: the one the job goes by, and the least any of them asks. */
export interface FallsWanted {
  /** The edition the job has pinned, or the newest. Unknown where it pins one that is not here. */
  readonly wanted: Figure;
  /** The least of all editions that is not above `wanted`: below it no guide would have it. */
  readonly least: Figure;
}

/** Fall of condensate by edition. */
export function condensateFalls(editions: Editions): FallsWanted {
  const pinned = edition(TOPIC, editions);
  const all = editionsOf(TOPIC).map((t) => figure(t, 'least', 'mmPerM'));
  const [first] = all;
  if (!first) throw new Error(`no table has the topic "${TOPIC}"`);
  const wanted: Figure = pinned
    ? figure(pinned, 'least', 'mmPerM')
    : { is: 'unknown', say: 'the fall of the edition the job has pinned', cite: first.cite };
  // An older edition that somebody pinned is what the job goes by, and nothing newer.
  const known = all.flatMap((f) => (f.is === 'known' ? [f] : [])).sort((a, b) => a.lo - b.lo);
  return { wanted, least: known[0] ?? wanted };
}

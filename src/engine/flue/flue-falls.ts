import { type Figure, figure } from '../../reference/figure.ts';
import { type Editions, edition, editionsOf } from '../../reference/tables.ts';

const TOPIC = 'flue-fall';

export interface FlueFalls {
  /** Back to the boiler, mm in a metre: of the edition the job has pinned, or the newest. */
  readonly wanted: Figure;
  /** The least any edition asks, where that is not more. */
  readonly least: Figure;
}

/** Fall of a flue back to its boiler, by edition. Unknown where the job pins one that is not here. */
export function flueFalls(editions: Editions): FlueFalls {
  const pinned = edition(TOPIC, editions);
  const all = editionsOf(TOPIC).map((t) => figure(t, 'least', 'mmPerM'));
  const [first] = all;
  if (!first) throw new Error(`no table has the topic "${TOPIC}"`);
  const wanted: Figure = pinned
    ? figure(pinned, 'least', 'mmPerM')
    : { is: 'unknown', say: 'the fall of the edition the job has pinned', cite: first.cite };
  const known = all.flatMap((f) => (f.is === 'known' ? [f] : [])).sort((a, b) => a.lo - b.lo);
  return { wanted, least: known[0] ?? wanted };
}

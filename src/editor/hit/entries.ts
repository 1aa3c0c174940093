import { buildingEntries, roomEntries } from './building-entries.ts';
import { outsideEntries } from './outside-entries.ts';
import { photoEntries } from './photo-entries.ts';
import { type Entry, type Gather, pipeworkEntries } from './pipework-entries.ts';
import { pointEntries } from './point-entries.ts';

/** Everything of a plan that shows in a view and stands in a case, or is taken out by it. */
export function* entriesOf(g: Gather): Generator<Entry> {
  yield* pipeworkEntries(g);
  yield* pointEntries(g);
  yield* buildingEntries(g);
  yield* roomEntries(g);
  yield* outsideEntries(g);
  yield* photoEntries(g);
}

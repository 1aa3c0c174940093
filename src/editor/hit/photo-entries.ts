import { photoPlace } from '../../geometry/photo-place.ts';
import { type Entry, entry, type Gather } from './pipework-entries.ts';

/** Photos by where they were taken of, as the plan shows them. */
export function* photoEntries(g: Gather): Generator<Entry> {
  if (g.view.kind === 'face') return;
  for (const photo of Object.values(g.plan.blobRefs)) {
    const place = photoPlace(g.plan, photo);
    if (place?.storey !== g.storey || !place) continue;
    yield entry('photo', photo.id, { is: 'spot', at: g.plane.onto({ ...place.at, z: 0 }) });
  }
}

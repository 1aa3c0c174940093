import { groundStorey } from '../../geometry/ground.ts';
import { floorOnto } from '../input/work-plane.ts';
import { type Entry, entry, type Gather } from './pipework-entries.ts';

/** Roofs by the lines of their outline, since whole rooms lie under them; ground by the line that was levelled. */
export function* outsideEntries(g: Gather): Generator<Entry> {
  if (g.view.kind === 'face') return;
  for (const roof of Object.values(g.plan.roofs)) {
    if (roof.storey !== g.storey) continue;
    const ring = floorOnto(g.plane, roof.outline);
    yield entry('roof', roof.id, { is: 'area', ring, holes: [ring] });
  }
  for (const ground of Object.values(g.plan.grounds)) {
    if (groundStorey(g.plan, ground) !== g.storey) continue;
    const pts = floorOnto(g.plane, ground.line);
    for (const [i, a] of pts.entries()) {
      const b = pts[i + 1];
      if (b) yield entry('ground', ground.id, { is: 'line', a, b });
      else if (pts.length === 1) yield entry('ground', ground.id, { is: 'spot', at: a });
    }
  }
}

import { sayFigures } from '../../report/quantity.ts';
import type { Row, State } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import { flueRoutes } from '../flue/flue-routes.ts';
import { byState, type Judged, worstState } from '../flue/judge-distance.ts';
import { terminalDistances } from '../flue/terminal-distances.ts';
import { routeRows, terminalRows } from './flue-rows.ts';

/** Stops counted, else the distance with least to spare against what is wanted of it. */
function answerOf(distances: readonly Judged[]): string {
  const stops = distances.filter((d) => d.state === 'stop').length;
  if (stops > 0) return stops === 1 ? '1 stop' : `${stops} stops`;
  const spare = (d: Judged): number => d.found.lo - (d.wanted?.lo ?? 0);
  const [nearest] = distances.filter((d) => d.wanted && d.table !== 'flue-plume').sort((a, b) => spare(a) - spare(b));
  return nearest?.wanted ? `${sayFigures(nearest.found)} mm, ${sayFigures(nearest.wanted)} wanted` : '';
}

export default defineSection({
  id: 'flue',
  order: 22,
  write(given) {
    const terminals = terminalDistances(given);
    const routes = flueRoutes(given);
    const fresh = terminals.filter((t) => t.terminal.isNew);
    const judged = (fresh.length > 0 ? fresh : terminals).flatMap((t) => t.distances).sort(byState);
    if (terminals.length === 0 && routes.length === 0) return null;
    const state: State = worstState(judged.map((d) => d.state));
    const rows: Row[] = [
      ...[...terminals]
        .sort((a, b) => Number(b.terminal.isNew) - Number(a.terminal.isNew))
        .flatMap((t) => terminalRows(given, t)),
      ...routes.flatMap((r) => routeRows(given, r)),
      {
        kind: 'note',
        say: 'The sheet of the appliance goes first: it has its own terminal distances, longest flue and fall. Only what is drawn is measured.',
        unverified: false,
        cites: [{ source: 'approved-document-j-distances', clause: 'fanned draught', table: 'flue-distances' }],
      },
    ];
    return { title: 'Flue', answer: answerOf(judged), state, rows };
  },
});

import type { Editor, Selected } from '../../editor/editor-api.ts';
import { hostedXy } from '../../geometry/hosting.ts';
import { nodePlace } from '../../geometry/places.ts';
import type { Case, Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Difference } from '../../report/tally.ts';
import { coveredPx } from '../app/covered.ts';
import { lowerSheet } from '../app/screen.ts';
import { ghosts } from '../ghosts/ghosts.ts';
import { selectedOf } from '../panels/show-ids.ts';
import { shownDifference } from './shown-difference.ts';

interface Place {
  readonly at: Xyz;
  readonly storey: string;
}

function nodeAt(plan: Plan, id: string | undefined): Place | null {
  const node = id === undefined ? undefined : plan.nodes[id];
  const place = node && nodePlace(plan, node);
  return place ? { at: place.at, storey: place.storey } : null;
}

/** Middle of two places; the first where there is no second or it is on another floor. */
function middle(a: Place | null, b: Place | null): Place | null {
  if (!a || !b || a.storey !== b.storey) return a ?? b;
  const of = (axis: 'x' | 'y' | 'z'): number => (a.at[axis] + b.at[axis]) / 2;
  return { storey: a.storey, at: { x: of('x'), y: of('y'), z: of('z') } };
}

/** The leg of a run in the middle of those that were drawn: there is most to be seen of it. */
function runAt(plan: Plan, run: string): Place | null {
  const pipes = [...Object.values(plan.legs), ...Object.values(plan.stretches)].filter((p) => p.run === run);
  const pipe = pipes[Math.floor(pipes.length / 2)];
  return pipe ? middle(nodeAt(plan, pipe.a), nodeAt(plan, pipe.b)) : null;
}

/** Where something stands, for the drawing to go to; null where nobody knows. */
export function placeOf(plan: Plan, { map, id }: Selected): Place | null {
  if (map === 'runs') return runAt(plan, id);
  if (map === 'items') return nodeAt(plan, plan.items[id]?.node);
  const point = map === 'points' ? plan.points[id] : undefined;
  if (point?.place.on === 'storey') return { at: { x: point.place.x, y: point.place.y, z: 0 }, storey: point.storey };
  if (point?.place.on === 'wall') {
    const host = hostedXy(plan, point.place);
    return host ? { at: { ...host.at, z: 0 }, storey: point.storey } : null;
  }
  const space = map === 'voids' ? plan.voids[id] : undefined;
  const corner = space?.outline[0];
  if (space && corner) return { at: { x: corner.x, y: corner.y, z: 0 }, storey: space.storey };
  const wall = plan.walls[map === 'openings' ? (plan.openings[id]?.wall ?? '') : id];
  if (!wall) return null;
  return { at: { x: (wall.a.x + wall.b.x) / 2, y: (wall.a.y + wall.b.y) / 2, z: 0 }, storey: wall.storey };
}

/**
 * Shows one difference on the drawing: the case it stands in, with the other one faint under it, and what it is about
 * chosen. What is gone is shown where it was.
 */
export function showDifference(editor: Editor, d: Difference, from: Case, to: Case): void {
  const gone = d.after.length === 0;
  const [shown, other] = gone ? [from, to] : [to, from];
  // Before the work the option that it is compared with stays in hand.
  editor.setCase(shown.when === 'before' ? { ...shown, option: other.option } : shown);
  ghosts.setState({ other });
  const { plan } = editor.store.getState();
  const selection = selectedOf(plan, gone ? d.before : d.after);
  shownDifference.selection = selection;
  editor.select(selection);
  lowerSheet();
  const [first] = selection;
  const place = first ? placeOf(plan, first) : null;
  if (!place) return;
  editor.showPlace(place.at, place.storey);
  const { camera } = editor.store.getState().panes.plan;
  const [x, y] = camera.centre;
  editor.setCamera('plan', { ...camera, centre: [x, y - (coveredPx() / 2) * camera.mmPerPx] });
}

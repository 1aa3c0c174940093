import { services } from '../../catalogue/services.ts';
import { sayTubeSize } from '../../catalogue/tubes.ts';
import type { Vec } from '../../drawing/display-list.ts';
import type { EditorState, Selected } from '../../editor/editor-api.ts';
import { hitTest } from '../../editor/hit/hit-test.ts';
import { viewIndex } from '../../editor/hit/view-index.ts';
import { TOLERANCE_PX } from '../../editor/input/tolerance.ts';
import type { WorkPlane } from '../../editor/input/work-plane.ts';
import { floorZ } from '../../geometry/heights.ts';
import { nodePlace } from '../../geometry/places.ts';
import { roomAt } from '../../geometry/rooms.ts';
import type { Plan } from '../../plan/plan.ts';
import { nameOf } from '../panels/name-of.ts';

/** More than these lie there, is all that is said of the others. */
const MOST_NAMED = 3;

const across = (mm: number): string => `${Math.abs(Math.round(mm))} ${mm < 0 ? 'left' : 'right'}`;
const upward = (mm: number): string => `${Math.abs(Math.round(mm))} ${mm < 0 ? 'down' : 'up'}`;

/** Off some place, across and up; what is nought is not said. */
function sayOff(from: Vec, at: Vec): string {
  const [dx, dy] = [Math.round(at[0] - from[0]), Math.round(at[1] - from[1])];
  return [dx === 0 ? '' : across(dx), dy === 0 ? '' : upward(dy)].filter((t) => t !== '').join(', ');
}

const fromLast = (from: Vec, at: Vec): string => {
  const off = sayOff(from, at);
  return off === '' ? 'at the last place' : `${off} from the last place`;
};

/** Height of the middle of a pipe above its floor. */
function heightOf(plan: Plan, a: string, b: string): string {
  const z = [a, b].flatMap((id) => {
    const node = plan.nodes[id];
    const place = node && nodePlace(plan, node);
    return place ? [Math.round(place.at.z - (floorZ(plan, place.storey) ?? 0))] : [];
  });
  const [lo, hi] = [Math.min(...z), Math.max(...z)];
  if (z.length === 0) return '';
  return lo === hi ? ` at ${lo}` : ` from ${lo} to ${hi}`;
}

/** What lies under the cross, with its height where it is a pipe: "Gas 22 at 2420". */
function sayUnder(plan: Plan, { map, id }: Selected): string {
  if (map === 'legs') {
    const leg = plan.legs[id];
    const service = services.get(plan.runs[leg?.run ?? '']?.service ?? '')?.label ?? '';
    if (leg) return `${service} ${sayTubeSize(leg.tube)}${heightOf(plan, leg.a, leg.b)}`;
  }
  const unseen = map === 'stretches' ? plan.stretches[id] : undefined;
  return unseen ? `${nameOf(plan, { map, id })}${heightOf(plan, unseen.a, unseen.b)}` : nameOf(plan, { map, id });
}

/** Where the cross is: from the last place of what is drawn, else in its room, else from the lower left of the house. */
function sayPlace(state: EditorState, plane: WorkPlane, at: Vec, outer: Vec | undefined): string {
  const { plan, draft, cursor, panes } = state;
  const from = draft?.pane === cursor?.pane ? draft?.lines.at(-1)?.pts[0] : undefined;
  const start = from && state.tool !== 'point' ? plane.onto(from) : undefined;
  if (plane.kind === 'face') {
    const { view } = panes.face ?? panes.plan;
    const wall = view.kind === 'face' ? plan.walls[view.wall] : undefined;
    const off = at[1] - ((wall && floorZ(plan, wall.storey)) ?? 0);
    return start
      ? `${fromLast(start, at)}, ${Math.round(off)} off floor`
      : `${Math.round(at[0])} along, ${Math.round(off)} off floor`;
  }
  const { view } = panes.plan;
  const xyz = plane.place(at, 0);
  const room = view.kind === 'plan' ? roomAt(plan, view.storey, xyz) : undefined;
  const named = room?.rooms.map((id) => plan.rooms[id]?.name ?? '').find((n) => n !== '');
  const where = room ? `in ${named ?? 'a room without a name'}` : '';
  if (start) return [fromLast(start, at), where].filter((t) => t !== '').join(', ');
  const ring = room?.outline.map((p) => plane.onto({ ...p, z: 0 }));
  const corner: Vec = ring
    ? [Math.min(...ring.map(([x]) => x)), Math.min(...ring.map(([, y]) => y))]
    : (outer ?? [0, 0]);
  return `${across(at[0] - corner[0])}, ${upward(at[1] - corner[1])} ${where === '' ? 'from the lower left of the drawing' : where}`;
}

/** What the cross catches, where it is and what lies under it, as one short sentence. Empty where no cross is shown. */
export function sayCursor(state: EditorState): string {
  const { cursor, panes, plan, chosen } = state;
  const pane = cursor && panes[cursor.pane];
  const index = pane && viewIndex(plan, pane.view, chosen);
  if (!cursor || !pane || !index) return '';
  const tolerance = TOLERANCE_PX.mouse * pane.camera.mmPerPx;
  const hits = hitTest(index, cursor.at, tolerance).filter((h) => h.map !== 'rooms' && h.map !== 'nodes');
  const names = [...new Set(hits.map((h) => sayUnder(plan, h)))];
  const box = index.box;
  const under = [
    ...names.slice(0, MOST_NAMED),
    ...(names.length > MOST_NAMED ? [`${names.length - MOST_NAMED} more`] : []),
  ].join(', ');
  const caught = state.caught !== null && !/^grid /.test(state.caught) ? state.caught : '';
  const parts = [
    caught,
    sayPlace(state, index.plane, cursor.at, box ? [box.minX, box.minY] : undefined),
    under === '' ? '' : `over: ${under}`,
  ];
  return `${parts.filter((p) => p !== '').join(', ')}.`;
}

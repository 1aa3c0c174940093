import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Box, Fragment, Wish } from '../display-list.ts';
import { remember } from '../memo/remember.ts';
import { stateOf } from '../pipes/pipes-in-view.ts';
import { makeFragment } from './fragment.ts';
import { openingFragment } from './opening.fragment.ts';
import { pointFragment } from './point.fragment.ts';
import { voidFragment } from './void.fragment.ts';
import { floorsFragment, wallsFragment } from './wall.fragment.ts';

const around = (x: number, y: number, by: number): Box => ({ minX: x - by, minY: y - by, maxX: x + by, maxY: y + by });
/** Until rooms have outlines, a name may move this far from its seed. */
const NAME_ROOM_MM = 1200;

/** Everything of a storey seen from above but its pipes. */
export function planFragments(plan: Plan, storeyId: string, alive: Alive, stripped: boolean): Fragment[] {
  const storey = plan.storeys[storeyId];
  if (!storey) return [];
  const walls = Object.values(plan.walls).filter((w) => w.storey === storeyId && alive.has('walls', w.id));
  const ids = new Set<string>(walls.map((w) => w.id));
  const openings = Object.values(plan.openings).filter((o) => ids.has(o.wall) && alive.has('openings', o.id));
  const found: Fragment[] = [];
  if (walls.length > 0) {
    found.push(remember(storey, 'floors', plan, walls, () => floorsFragment(storeyId, walls)));
    found.push(
      remember(storey, 'walls', plan, [...walls, 0, ...openings], () => wallsFragment(storeyId, walls, openings)),
    );
  }
  for (const v of Object.values(plan.voids)) {
    if (v.storey === storeyId && alive.has('voids', v.id))
      found.push(remember(v, 'void', plan, [], () => voidFragment(v)));
  }
  for (const opening of openings) {
    const wall = plan.walls[opening.wall];
    if (wall) found.push(remember(opening, 'opening', plan, [wall], () => openingFragment(wall, opening)));
  }
  for (const room of Object.values(plan.rooms)) {
    if (room.storey !== storeyId || room.name === '') continue;
    found.push(
      remember(room, 'name', plan, [], () => {
        const second = room.ceilingMm === null ? null : `ceiling ${Math.round(room.ceilingMm)}`;
        const { x, y } = room.seed;
        const wish: Wish = { w: 'name', at: [x, y], text: room.name, second, within: around(x, y, NAME_ROOM_MM) };
        return makeFragment(room.id, 'rooms', 'room', [], [wish]);
      }),
    );
  }
  for (const point of Object.values(plan.points)) {
    const state = point.storey === storeyId ? stateOf(alive, 'points', point.id, stripped) : null;
    if (state) found.push(remember(point, 'point', plan, [state], (traced) => pointFragment(traced, point, state)));
  }
  return found;
}

import { groundStorey } from '../../geometry/ground.ts';
import { photoPlace } from '../../geometry/photo-place.ts';
import { faceAt, type RoomFace, roomFaces } from '../../geometry/rooms.ts';
import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Room } from '../../plan/records/building.ts';
import type { Fragment, Vec, Wish } from '../display-list.ts';
import { remember } from '../memo/remember.ts';
import { stateOf } from '../pipes/pipes-in-view.ts';
import { makeFragment } from './fragment.ts';
import { groundFragment } from './ground.fragment.ts';
import { openingFragment } from './opening.fragment.ts';
import { photoFragment } from './photo.fragment.ts';
import { pointFragment } from './point.fragment.ts';
import { roofFragment } from './roof.fragment.ts';
import { turnedFragment } from './turned.ts';
import { coversFloor, voidFragment } from './void.fragment.ts';
import { floorsFragment, wallsFragment } from './wall.fragment.ts';

/** Where no walls close a room in, its name may move this far from its seed. */
const NAME_ROOM_MM = 1200;

const square = (x: number, y: number): Vec[] => [
  [x - NAME_ROOM_MM, y - NAME_ROOM_MM],
  [x + NAME_ROOM_MM, y - NAME_ROOM_MM],
  [x + NAME_ROOM_MM, y + NAME_ROOM_MM],
  [x - NAME_ROOM_MM, y + NAME_ROOM_MM],
];

/** A room's name and what its ceiling is, where that differs from the floor's. */
function nameFragment(room: Room, face: RoomFace | undefined): Fragment {
  const second = room.ceilingMm === null ? null : `ceiling ${Math.round(room.ceilingMm)}`;
  const { x, y } = room.seed;
  const ring = face ? face.outline.map((p): Vec => [p.x, p.y]) : square(x, y);
  const wish: Wish = { w: 'name', at: [x, y], text: room.name, second, ring };
  return makeFragment(room.id, 'rooms', 'room', [], [wish]);
}

/** Everything of a storey seen from above but its pipes, the house turned by so much. */
export function planFragments(
  plan: Plan,
  storeyId: string,
  alive: Alive,
  stripped: boolean,
  turnDeg: number,
): Fragment[] {
  const storey = plan.storeys[storeyId];
  if (!storey) return [];
  const walls = Object.values(plan.walls).filter((w) => w.storey === storeyId && alive.has('walls', w.id));
  const ids = new Set<string>(walls.map((w) => w.id));
  const openings = Object.values(plan.openings).filter((o) => ids.has(o.wall) && alive.has('openings', o.id));
  const { faces } = roomFaces(plan, storeyId, ids);
  const found: Fragment[] = [];
  if (walls.length > 0) {
    found.push(remember(storey, 'floors', plan, walls, () => floorsFragment(storeyId, faces)));
    const quarters = Math.round(turnDeg / 90);
    const leansOn = [...walls, 0, ...openings, quarters];
    found.push(remember(storey, 'walls', plan, leansOn, () => wallsFragment(storeyId, walls, openings, quarters)));
  }
  const voids = Object.values(plan.voids).filter((v) => v.storey === storeyId && alive.has('voids', v.id));
  for (const v of voids) {
    const covers = coversFloor(v, voids);
    found.push(remember(v, 'void', plan, [covers], () => voidFragment(v, covers)));
  }
  for (const roof of Object.values(plan.roofs)) {
    if (roof.storey === storeyId) found.push(remember(roof, 'roof', plan, [], (traced) => roofFragment(traced, roof)));
  }
  for (const ground of Object.values(plan.grounds)) {
    if (groundStorey(plan, ground) !== storeyId) continue;
    found.push(remember(ground, 'ground', plan, [storeyId], (traced) => groundFragment(traced, ground, storeyId)));
  }
  for (const opening of openings) {
    const wall = plan.walls[opening.wall];
    if (wall) found.push(remember(opening, 'opening', plan, [wall], () => openingFragment(wall, opening)));
  }
  for (const room of Object.values(plan.rooms)) {
    if (room.storey !== storeyId || room.name === '') continue;
    const face = faceAt(faces, room.seed);
    found.push(remember(room, 'name', plan, [face?.outline], () => nameFragment(room, face)));
  }
  for (const point of Object.values(plan.points)) {
    const state = point.storey === storeyId ? stateOf(alive, 'points', point.id, stripped) : null;
    if (state) found.push(remember(point, 'point', plan, [state], (traced) => pointFragment(traced, point, state)));
  }
  for (const photo of Object.values(plan.blobRefs)) {
    const place = photoPlace(plan, photo);
    if (place?.storey !== storeyId) continue;
    found.push(remember(photo, 'photo', plan, [place.at.x, place.at.y], () => photoFragment(photo, place)));
  }
  return found.map((fragment) => turnedFragment(fragment, turnDeg));
}

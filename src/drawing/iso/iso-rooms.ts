import { floorZ } from '../../geometry/heights.ts';
import { insideOutline } from '../../geometry/outlines.ts';
import { roomFaces } from '../../geometry/rooms.ts';
import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xy, Xyz } from '../../plan/records/parts.ts';
import type { Fragment, LineStyle, Vec } from '../display-list.ts';
import { makeFragment } from '../fragments/fragment.ts';
import { PEN } from '../look/tokens.ts';
import { levelMark } from '../text/say-level.ts';
import type { IsoPlane } from './iso-plane.ts';

const FLOOR: LineStyle = { ink: 'hairline', pen: PEN.dimension, dash: [], fit: false };
/** Places of a pipe that are asked for the room they are in. */
const PARTS = [0, 0.25, 0.5, 0.75, 1];

export interface Stretching {
  readonly a: Xyz;
  readonly b: Xyz;
  readonly storey: string;
}

/** The floor of every room that pipes run through, faint, with its name; and of the storey its level, once. */
export function isoRooms(plan: Plan, alive: Alive, pipes: readonly Stretching[], plane: IsoPlane): Fragment[] {
  const storeys = [...new Set(pipes.map((p) => p.storey))];
  return storeys.flatMap((storey) => {
    const here = pipes.filter((p) => p.storey === storey);
    const places = here.flatMap(({ a, b }): Xy[] =>
      PARTS.map((t) => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t })),
    );
    const standing = { has: (id: string) => alive.has('walls', id) };
    const faces = roomFaces(plan, storey, standing).faces.filter((f) =>
      places.some((p) => insideOutline(p, f.outline)),
    );
    return faces.map((face): Fragment => {
      const [first] = face.rooms;
      const room = first === undefined ? undefined : plan.rooms[first];
      const z = floorZ(plan, room?.id ?? storey) ?? 0;
      const ring = face.outline.map((p): Vec => plane.at({ ...p, z }));
      const id = room?.id ?? `${storey} ${ring[0]?.join(' ') ?? ''}`;
      const name = room?.name ?? '';
      const floor = storeys.length > 1 ? (plan.storeys[storey]?.name ?? 'floor') : 'floor';
      const level = `${floor} ${levelMark(plan, z, storey)}`;
      const seed = room ? plane.at({ ...room.seed, z }) : ring[0];
      return makeFragment(
        id,
        'rooms',
        'void',
        [{ t: 'line', pts: ring, closed: true, style: FLOOR }],
        seed && name !== '' ? [{ w: 'name', at: seed, text: name, second: level, ring, small: true }] : [],
      );
    });
  });
}

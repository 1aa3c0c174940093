import { faceAt, type RoomFace, roomFaces } from '../../../geometry/rooms.ts';
import type { Plan } from '../../../plan/plan.ts';
import type { Finding } from '../../../report/finding.ts';

const WHOLE_JOB = 'The whole job';

/** The room a finding lies in, else its floor; what lies nowhere belongs to the whole job. Rooms are looked up once a floor. */
export function placesOf(plan: Plan): (finding: Finding) => string {
  const faces = new Map<string, readonly RoomFace[]>();
  return ({ at, ids }) => {
    const told = ids.map((id) => plan.rooms[id]).find((room) => room !== undefined);
    if (told) return told.name;
    if (at === null) return WHOLE_JOB;
    const known = faces.get(at.storey) ?? roomFaces(plan, at.storey).faces;
    faces.set(at.storey, known);
    const room = plan.rooms[faceAt(known, at)?.rooms[0] ?? ''];
    if (room && room.name !== '') return room.name;
    const storey = plan.storeys[at.storey]?.name ?? '';
    return storey === ''
      ? WHOLE_JOB
      : known.length > 0 && !faceAt(known, at)
        ? `${storey}, outside or in a wall`
        : storey;
  };
}

import { connectionPlace, pointFrame } from '../../../geometry/hosting.ts';
import { faceAt, type RoomFace, roomFaces } from '../../../geometry/rooms.ts';
import type { Point } from '../../../plan/records/pipework.ts';
import { standingBuilding } from '../../clearance/crossings.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { discharges } from '../../drainage/discharges.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { vessel } from './houses.ts';

function roomsApart(given: Given, faces: readonly RoomFace[], a: Point, b: Point): boolean {
  if (a.storey !== b.storey) return true;
  const [p, q] = [pointFrame(given.plan, a), pointFrame(given.plan, b)];
  if (!p || !q) return false;
  const [x, y] = [faceAt(faces, p.origin), faceAt(faces, q.origin)];
  return x !== undefined && y !== undefined && x !== y;
}

function judge(given: Given): Fault[] {
  const all = discharges(given);
  const known = new Map<string, readonly RoomFace[]>();
  const facesOf = (storey: string): readonly RoomFace[] => {
    const faces = known.get(storey) ?? roomFaces(given.plan, storey, standingBuilding(given.network)).faces;
    known.set(storey, faces);
    return faces;
  };
  return all.vessels.flatMap((v) =>
    all.tundishesOf(v).flatMap((t): Fault[] => {
      const apart = roomsApart(given, facesOf(v.storey), v, t);
      if (!apart && t.fields.seen !== false) return [];
      const at = connectionPlace(given.plan, t.id, 'in')?.at;
      return [
        {
          outcome: apart ? 'stop' : 'check',
          say: apart ? 'fault' : 'hidden',
          ids: [t.id, v.id],
          words: { vessel: midSentence(sayPoint(given.plan, v.id)) },
          at: at ? atPlace(t.storey, at) : null,
        },
      ];
    }),
  );
}

function nextRoom() {
  const e = vessel();
  for (const [id, x0, x1] of [
    ['a', -3000, -250],
    ['b', -250, 3000],
  ] as const) {
    e.wall(`${id}0`, [x0, -2000], [x1, -2000]).wall(`${id}1`, [x1, -2000], [x1, 2000]);
    e.wall(`${id}2`, [x1, 2000], [x0, 2000]).wall(`${id}3`, [x0, 2000], [x0, -2000]);
  }
  return e.plan;
}

export default defineRule({
  id: 'discharge/sight',
  topic: 'drains',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'water-fittings-guidance', clause: 'G19.3a' }],
  needs: ['rooms', 'whether the tundish can be seen'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: 'The tundish of the {vessel} is in another room',
      why: 'It belongs in the same space as its valve, so that who sees it run knows where it comes from.',
      todo: 'Set it beside the vessel.',
    },
    hidden: {
      title: 'Nobody sees the tundish of the {vessel}',
      why: 'A safety valve that opens unseen goes on until the vessel fails.',
      todo: 'Bring it into sight, or add a device that warns.',
    },
    cantTell: {
      title: "Can't tell whether the tundish of the {vessel} is seen",
      why: 'Its place is not known.',
      todo: 'Set its height and room.',
    },
    pass: 'The tundish is in the same space, in sight.',
  },
  examples: [
    { name: 'beside the vessel', given: () => vessel().plan, expect: 'pass' },
    { name: 'behind the wall', given: nextRoom, expect: 'stop' },
    { name: 'boxed in', given: () => vessel({ tundish: { seen: false } }).plan, expect: 'check' },
  ],
});

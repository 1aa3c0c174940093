import { ceilingZ, floorZ } from '../../../geometry/heights.ts';
import { insideArea } from '../../../geometry/outlines.ts';
import { alongLine } from '../../../geometry/segments.ts';
import { distance3 } from '../../../geometry/vec.ts';
import type { HeightRef } from '../../../plan/records/parts.ts';
import { type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { sayRoom } from '../../building/rooms-beside.ts';
import type { VoidPart } from '../../building/void-parts.ts';
import { gasInRooms, type InRoom } from '../../building/way-out.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atEdge } from '../../places.ts';
import { sayRun } from '../../say-names.ts';
import { isLivedIn } from '../../space/room-kinds.ts';
import { walled } from './houses.ts';

type Params = { readonly least: Figure };

function hiddenOf(given: Given): ReadonlyMap<string, readonly VoidPart[]> {
  const made = new Map<string, VoidPart[]>();
  for (const part of given.voidParts.filter((p) => p.pipe.edge.service === 'gas')) {
    const { id } = part.pipe.edge;
    const row = made.get(id);
    if (row) row.push(part);
    else made.set(id, [part]);
  }
  return made;
}

/** What of a pipe shows in its room: between floor and ceiling, less what lies in a void there. */
function shows(given: Given, part: InRoom, hidden: ReadonlyMap<string, readonly VoidPart[]>): number {
  const { a, b } = part.pipe.body;
  const [floor, ceiling] = [floorZ(given.plan, part.room.id), ceilingZ(given.plan, part.room.id)];
  const z = (a.z + b.z) / 2;
  if (floor === undefined || ceiling === undefined || z < floor || z > ceiling) return 0;
  const long = distance3(a, b);
  const away = (hidden.get(part.pipe.edge.id) ?? []).filter((v) => {
    const middle = alongLine(part.pipe.body, long === 0 ? 0 : (v.fromMm + v.toMm) / 2 / long);
    return insideArea(middle, part.face.outline, part.face.holes);
  });
  return Math.max(0, part.lengthMm - away.reduce((sum, v) => sum + v.lengthMm, 0));
}

function judge(given: Given, { least }: Params): Fault[] {
  if (least.is !== 'known') return [];
  const parts = gasInRooms(given, isLivedIn);
  if (parts.length === 0) return [];
  const hidden = hiddenOf(given);
  const groups = new Map<string, { readonly part: InRoom; readonly mm: number }[]>();
  for (const part of parts) {
    const mm = shows(given, part, hidden);
    const key = `${part.pipe.run}|${part.room.id}`;
    if (mm > 0) groups.set(key, [...(groups.get(key) ?? []), { part, mm }]);
  }
  return [...groups.values()].flatMap((all): Fault[] => {
    const metres = all.reduce((sum, { mm }) => sum + mm, 0) / 1000;
    const [longest] = [...all].sort((a, b) => b.mm - a.mm);
    if (!longest || metres < least.lo) return [];
    const { pipe, room } = longest.part;
    return [
      {
        outcome: pipe.heightAssumed ? 'cantTell' : 'note',
        ids: [pipe.run, room.id],
        legs: all.map(({ part }) => part.pipe.edge.id),
        words: { run: sayRun(given.plan, pipe.run), room: sayRoom(room), metres: metres.toFixed(1) },
        found: exact(metres, 'm', 1),
        at: atEdge(given.network, pipe.edge.id),
        missing: pipe.heightAssumed ? ['its height'] : [],
      },
    ];
  });
}

/** A room 3000 long with gas along it at a height, out through the walls at both ends. */
function along(z: number, name: string, ceiling: boolean, assumed = false) {
  const e = walled(name).run('g', 'gas', [
    [-500, 1000, z],
    [3500, 1000, z],
  ]);
  const at = (mm: number): HeightRef => ({ from: 'datum', of: null, mm });
  if (ceiling) {
    const outline = [
      { x: 0, y: 0 },
      { x: 3000, y: 0 },
      { x: 3000, y: 2500 },
      { x: 0, y: 2500 },
    ];
    e.plan.voids.v = {
      id: 'v',
      storey: 'ground',
      name: 'false ceiling',
      kind: 'ceiling',
      outline,
      bottom: at(2200),
      top: at(2400),
      joists: null,
      holes: [],
      bearings: [],
      ventilated: null,
      mayBeCut: null,
      option: null,
      sureness: 'seen',
    };
  }
  if (assumed)
    for (const node of Object.values(e.plan.nodes))
      if (node.place.on === 'storey') node.place.height.assumed = { lo: z - 300, hi: z + 300 };
  return e.plan;
}

export default defineRule<Params>({
  id: 'space/gas-in-sight',
  topic: 'space',
  since: '2',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'judgement of a drawing', table: 'in-sight' }],
  needs: ['what the room is used for', 'height of the pipe', 'voids'],
  params: () => ({ least: figure('in-sight', 'least', 'm') }),
  judge,
  say: {
    fault: {
      title: '{run}: {metres} m show in the {room}',
      why: 'No void hides it there, and whoever lives there will see it every day.',
      todo: 'Say so before the price is agreed; a box over gas wants ventilation, and joints in it are judged as hidden.',
    },
    cantTell: {
      title: "{run}: can't tell whether {metres} m show in the {room}",
      why: 'Whoever lives there will see it every day if no floor or ceiling hides it. Not known: {missing}.',
      todo: 'Measure how high it runs.',
    },
    pass: 'No gas pipe shows in a room that people live in.',
  },
  examples: [
    {
      name: 'along the lounge below its ceiling',
      given: () => along(2300, 'Lounge', false),
      expect: 'note',
      found: { lo: 3, hi: 3, tolerance: 0.01 },
      from: 'the room is 3000 long inside',
    },
    { name: 'above a false ceiling of the lounge', given: () => along(2300, 'Lounge', true), expect: 'pass' },
    { name: 'in the floor below the lounge', given: () => along(-100, 'Lounge', false), expect: 'pass' },
    { name: 'along a utility room', given: () => along(2300, 'Utility', false), expect: 'pass' },
    { name: 'at a height nobody measured', given: () => along(2300, 'Lounge', false, true), expect: 'cantTell' },
  ],
});

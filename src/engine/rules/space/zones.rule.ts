import { type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { isBathroom } from '../../space/room-kinds.ts';
import { byFace, isNewPoint, newBoilers, type Sited, site, standing } from '../../space/sited.ts';
import { nearZone, type Wet, wetsOf, ZONE_2_MM } from '../../space/zones.ts';
import { add, inRoom, walled } from './houses.ts';

type Params = { readonly zone2: Figure; readonly socket: Figure; readonly newest: Figure };

/** Things with mains in them that may be drawn near a bath. */
const WIRED = ['boiler', 'switch', 'socket', 'receiver', 'thermostat', 'condensate-pump', 'consumer-unit'];

interface Met {
  readonly wet: Wet;
  readonly thing: Sited;
  readonly mm: number;
  readonly fault: Pick<Fault, 'outcome' | 'say' | 'wanted' | 'unverified'>;
}

/** Said only where this job sets the one or the other: what was there before is not its business. */
function meet(given: Given, wet: Wet, thing: Sited, params: Params): Met[] {
  const { zone2, socket, newest } = params;
  if (zone2.is !== 'known' || socket.is !== 'known' || newest.is !== 'known') return [];
  if (!isNewPoint(given, wet.of.point) && !isNewPoint(given, thing.point)) return [];
  if (thing.point.storey !== wet.of.point.storey) return [];
  const { mm, low } = nearZone(wet, thing);
  if (thing.point.kind === 'socket' && thing.point.fields.shaver !== true) {
    if (mm >= socket.lo) return [];
    const between = mm >= newest.lo;
    return [
      {
        wet,
        thing,
        mm,
        fault: {
          outcome: between ? 'note' : 'check',
          say: between ? 'editions' : 'socket',
          wanted: socket,
          unverified: between,
        },
      },
    ];
  }
  if (!low || mm >= ZONE_2_MM || thing.point.fields.ipx4 === true || thing.point.fields.what === 'cord') return [];
  return [{ wet, thing, mm, fault: { outcome: 'check', say: mm === 0 ? 'fault' : 'zone2', wanted: zone2 } }];
}

/** A bathroom that gets a boiler, and no bath or shower in it: its zones lie somewhere. */
function undrawn(given: Given): Fault[] {
  const wet = new Set(wetsOf(given).map((w) => w.of.face));
  return newBoilers(given).flatMap(({ point, body, room, face }): Fault[] => {
    if (!room || !isBathroom(room) || wet.has(face)) return [];
    return [
      {
        outcome: 'cantTell',
        ids: [point.id, room.id],
        at: atPlace(point.storey, body.frame.origin),
        words: { thing: sayPoint(given.plan, point.id) },
        missing: ['where bath and shower stand'],
      },
    ];
  });
}

function judge(given: Given, params: Params): Fault[] {
  const wets = wetsOf(given);
  if (wets.length === 0) return undrawn(given);
  const things = byFace(WIRED.flatMap((kind) => standing(given, kind)).flatMap((p) => site(given, p) ?? []));
  const faults = wets.flatMap((wet): Fault[] => {
    const met = (things.get(wet.of.face) ?? []).flatMap((thing) => meet(given, wet, thing, params));
    const worst = [...met].sort(
      (a, b) => Number(a.fault.outcome === 'note') - Number(b.fault.outcome === 'note') || a.mm - b.mm,
    )[0];
    if (!worst) return [];
    const { point, body } = worst.thing;
    return [
      {
        ...worst.fault,
        ids: [wet.of.point.id, point.id],
        at: atPlace(point.storey, body.frame.origin),
        words: {
          thing: sayPoint(given.plan, point.id),
          wet: midSentence(sayPoint(given.plan, wet.of.point.id)),
          socket: params.socket.is === 'known' ? (params.socket.lo / 1000).toFixed(1) : '',
          newest: params.newest.is === 'known' ? (params.newest.lo / 1000).toFixed(1) : '',
        },
        found: exact(worst.mm, 'mm', 0),
        wantedIs: 'atLeast',
        more: met.length - 1,
      },
    ];
  });
  return [...faults, ...undrawn(given)];
}

/** A bath along the far wall of a room 3000 by 2500, and a thing somewhere else in it. */
const bathAnd = (kind: string, at: readonly [number, number, number], fields = {}) =>
  add(add(walled('Bathroom').plan, 'bath', 'bath', [850, 2500, 0], {}, null, 0), kind, 'thing', at, fields);
const wide = (x: number) => {
  const e = walled('Bathroom')
    .wall('n2', [3050, 2550], [6050, 2550])
    .wall('e2', [6050, 2550], [6050, -50])
    .wall('s2', [6050, -50], [3050, -50]);
  delete e.plan.walls.e;
  return add(add(e.plan, 'bath', 'bath', [850, 2500, 0], {}, null, 0), 'socket', 'thing', [x, 2500, 450], {}, 'A', 0);
};

export default defineRule<Params>({
  id: 'space/zones',
  topic: 'space',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [
    { source: 'bathroom-zones-page', clause: 'zones 1 and 2', table: 'bathroom-zones' },
    { source: 'bathroom-electrics-page', clause: 'IPX4 in the zones; sockets', table: 'bathroom-zones' },
  ],
  needs: ['where bath and shower stand', 'where boiler, switches and sockets are'],
  params: () => ({
    zone2: figure('bathroom-zones', 'zone 2', 'mm'),
    socket: figure('bathroom-zones', 'socket', 'mm'),
    newest: figure('bathroom-zones', 'socket, newest', 'mm'),
  }),
  judge,
  say: {
    fault: {
      title: '{thing} lies in zone 1 of the {wet}',
      why: 'Over a bath or shower water reaches it: only what is IPX4 or better and made for there may be fixed.',
      todo: 'Move it out of the zones, or have an electrician look at its sheet for zone 1.',
    },
    zone2: {
      title: '{thing} lies in zone 2 of the {wet}',
      why: 'Within arm reach of bath or shower only what is IPX4 or better may be fixed.',
      todo: 'Move it further off, or tell that it is IPX4 or better.',
    },
    socket: {
      title: '{thing} is too near the {wet}',
      why: 'A mains socket stays {socket} m from zone 1; {newest} m in the newest edition, unverified.',
      todo: 'Put it outside the room or further off; an electrician decides.',
    },
    editions: {
      title: '{thing} is near the {wet}: two editions differ',
      why: 'A mains socket stays {socket} m from zone 1 by the page that was read, {newest} m in the newest edition, unverified.',
      todo: 'Ask the electrician which edition goes, and move it if need be.',
    },
    cantTell: {
      title: "{thing} is in a bathroom: can't tell whether it lies in a zone",
      why: 'Round bath and shower only some things may be fixed. Not known: {missing}.',
      todo: 'Draw the bath and the shower tray.',
    },
    pass: 'Nothing electrical of this job lies in a zone of a bath or shower.',
  },
  examples: [
    { name: 'a switch across the room', given: () => bathAnd('switch', [1500, 0, 1200]), expect: 'pass' },
    { name: 'a switch over the bath', given: () => bathAnd('switch', [850, 2450, 1200]), expect: 'check' },
    {
      name: 'a switch beside the bath',
      given: () => bathAnd('switch', [2043, 2450, 1200]),
      expect: 'check',
      found: { lo: 300, hi: 300, tolerance: 1 },
      from: 'bath to 1700, switch from 2000',
    },
    {
      name: 'splash-proof beside the bath',
      given: () => bathAnd('switch', [2043, 2450, 1200], { ipx4: true }),
      expect: 'pass',
    },
    { name: 'a switch above the zones', given: () => bathAnd('switch', [850, 2450, 2300]), expect: 'pass' },
    { name: 'a socket in a small bathroom', given: () => bathAnd('socket', [2900, 0, 450]), expect: 'check' },
    { name: 'a socket where two editions differ', given: () => wide(4500), expect: 'note' },
    { name: 'a socket far off', given: () => wide(5000), expect: 'pass' },
    {
      name: 'a boiler in a bathroom without a bath drawn',
      given: () => inRoom({}, 1500, 'Bathroom'),
      expect: 'cantTell',
    },
  ],
});

import type { Row } from '../../report/section.ts';
import type { Given } from '../given.ts';
import { midSentence, sayPoint, sentence } from '../say-names.ts';
import { cableMetres, cablesFor, nearestOf } from '../space/cable-way.ts';
import { isNewPoint, type Sited, site, standing } from '../space/sited.ts';
import { fact } from '../tests-due/row-makers.ts';

/** What an electrician reads off the drawing, and what has to be asked before anybody is sent. */
export interface ForElectrician {
  readonly drawn: readonly Row[];
  readonly ask: readonly Row[];
}

const NOTHING: ForElectrician = { drawn: [], ask: [] };
const ask = (label: string, say: string, ids: readonly string[] = []): ForElectrician => ({
  drawn: [],
  ask: [fact(label, null, say, ids)],
});
const roomOf = (s: Sited): string => (s.room ? `in the ${midSentence(s.room.name || s.room.use)}` : 'in no room drawn');

/** A thing at its end of a cable from another, with the least metres between. */
function wired(label: string, thing: Sited, from: Sited | null, by: readonly Sited[], say: string): Row {
  const metres = from && cableMetres(from, thing, by);
  const ids = [thing.point.id, ...(from ? [from.point.id] : [])];
  return fact(label, metres, say, ids);
}

/** The fused spur of a boiler: drawn, with its cable from the consumer unit, or to be asked for. */
export function spurOf(given: Given, boiler: Sited): ForElectrician {
  const name = sayPoint(given.plan, boiler.point.id);
  const spur = nearestOf(given, 'switch', boiler, (s) => s.point.fields.what === 'spur' && s.face === boiler.face);
  const unit = nearestOf(given, 'consumer-unit', boiler);
  const by = cablesFor(given, [name, 'boiler', 'spur']);
  const to = spur ?? boiler;
  const feed = unit ? [wired('Feed from the consumer unit', to, unit, by, 'square to the house')] : [];
  const spare = unit?.point.fields.spareWay;
  const way =
    unit === null
      ? ask('Consumer unit', 'none drawn: where it is, and whether it has room').ask
      : spare === true
        ? []
        : ask(
            sentence(sayPoint(given.plan, unit.point.id)),
            spare === false ? 'no spare way: feed from where?' : 'a spare way?',
            [unit.point.id],
          ).ask;
  if (spur) {
    const say = `${roomOf(spur)}, for the ${midSentence(name)}`;
    return { drawn: [wired('Fused spur', spur, boiler, [], say), ...feed], ask: way };
  }
  const missing = ask('Fused spur', `none drawn in its room: where is that of the ${midSentence(name)} to go?`, [
    boiler.point.id,
  ]);
  return { drawn: feed, ask: [...missing.ask, ...way] };
}

const isWireless = (given: Given): boolean => standing(given, 'thermostat').some((t) => t.fields.wireless === true);

/** Thermostats and their receiver, with the controls cable where they are wired. */
export function controlsOf(given: Given, boiler: Sited): ForElectrician {
  const stats = standing(given, 'thermostat').flatMap((p) => site(given, p) ?? []);
  const receivers = standing(given, 'receiver').flatMap((p) => site(given, p) ?? []);
  const by = cablesFor(given, ['thermostat', 'receiver', 'controls']);
  const drawn = [
    ...stats.map((s) => {
      const { wireless } = s.point.fields;
      const how = wireless === true ? 'wireless' : wireless === false ? 'wired' : 'wired or wireless not told';
      return wired('Room thermostat', s, wireless === true ? null : boiler, by, `${how}, ${roomOf(s)}`);
    }),
    ...receivers.map((s) => wired('Receiver', s, boiler, by, roomOf(s))),
  ];
  const asked = [
    ...(stats.length === 0 ? ask('Room thermostat', 'none drawn: kept, new, wired or wireless?').ask : []),
    ...(receivers.length === 0 && isWireless(given)
      ? ask('Receiver', 'none drawn: at the boiler or built in?').ask
      : []),
  ];
  return { drawn, ask: asked };
}

const WIRED_WATER: readonly (readonly [kind: string, say: string])[] = [
  ['cylinder', 'its thermostat, its high limit and its motor valve; an immersion heater?'],
  ['preheat-vessel', 'its heater and its thermostat; what feeds them?'],
  ['zone-valves', 'each motor and its switch to the wiring centre'],
  ['diverting-valve', 'its motor to the wiring centre'],
];

/** Cylinders and motor valves: each wants wiring that no drawing of pipes shows. */
export function hotWaterWiring(given: Given, boiler: Sited): ForElectrician {
  const all = WIRED_WATER.flatMap(([kind, say]) =>
    standing(given, kind).flatMap((p) => {
      const sited = site(given, p);
      return sited ? [{ sited, say }] : [];
    }),
  );
  // A preheat vessel has a heater of its own: no cable of the boiler's goes to it.
  const drawn = all
    .filter(({ sited }) => sited.point.kind !== 'preheat-vessel')
    .map(({ sited }) => {
      const name = sentence(sayPoint(given.plan, sited.point.id));
      return wired(`${name} to the boiler`, sited, boiler, cablesFor(given, [name]), 'square to the house');
    });
  const asked = all.flatMap(
    ({ sited, say }) => ask(sentence(sayPoint(given.plan, sited.point.id)), say, [sited.point.id]).ask,
  );
  return { drawn, ask: asked };
}

/** A new condensate pump: it wants a feed, and its overflow switch must stop the boiler. */
export function pumpWiring(given: Given, boiler: Sited): ForElectrician {
  const pumps = standing(given, 'condensate-pump').filter((p) => isNewPoint(given, p));
  const parts = pumps.flatMap((p): ForElectrician[] => {
    const sited = site(given, p);
    if (!sited) return [];
    const name = sentence(sayPoint(given.plan, p.id));
    const stops = p.fields.overflowStops;
    const feed = ask(name, 'where is its feed to come from?', [p.id]).ask;
    if (stops === true) {
      const say = 'cut-out to the boiler: its overflow switch stops it';
      return [{ drawn: [wired(name, sited, boiler, cablesFor(given, [name, 'pump']), say)], ask: feed }];
    }
    const say =
      stops === false
        ? 'its overflow switch does not stop the boiler: can it?'
        : 'does its overflow switch stop the boiler?';
    return [{ drawn: [], ask: [...feed, fact(name, null, say, [p.id])] }];
  });
  return joined(parts);
}

export const joined = (parts: readonly ForElectrician[]): ForElectrician =>
  parts.length === 0 ? NOTHING : { drawn: parts.flatMap((p) => p.drawn), ask: parts.flatMap((p) => p.ask) };

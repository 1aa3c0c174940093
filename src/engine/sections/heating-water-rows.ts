import type { Vertex } from '../../network/network.ts';
import { constant, figure } from '../../reference/figure.ts';
import { exact, type Quantity, roundQuantity, sayFigures } from '../../report/quantity.ts';
import type { Row, State } from '../../report/section.ts';
import { quantityOf } from '../gas/said.ts';
import type { Given } from '../given.ts';
import { dose } from '../heating/content.ts';
import type { DrainDown } from '../heating-system/drain-down.ts';
import { unvalved } from '../heating-system/isolating.ts';
import type { VesselCheck } from '../heating-system/vessel-check.ts';
import { vesselWorking } from '../heating-system/vessel-working.ts';
import type { WaterContent } from '../heating-system/water-content.ts';
import type { Trap } from '../heating-system/water-levels.ts';
import { isHeating, type WaterSystem } from '../heating-system/water-systems.ts';
import { midSentence, sayAll, sayPoint, sayRun } from '../say-names.ts';

type Ids = readonly string[];
const fact = (label: string, of: Quantity | null, say: string, ids: Ids = []): Row => ({
  kind: 'fact',
  label,
  figure: of && roundQuantity(of),
  say,
  ids,
});
const heading = (label: string, say = ''): Row => ({ kind: 'heading', label, say, ids: [] });
const verdict = (label: string, state: State, say: string, ids: Ids): Row => ({
  kind: 'verdict',
  label,
  state,
  say,
  ids,
});

/** "70 to 120 litres", "at least 12 litres". */
export const sayLitres = (q: Quantity): string => `${sayFigures({ ...q, digits: 0 })} litres`;

/** Litres of the parts nobody measured or read a sheet for, said as a share of the whole. */
function sayAssumed(content: WaterContent): string {
  const known = content.parts.filter((p) => !p.assumed);
  const litres = known.reduce((sum, p) => sum + p.litres.lo, 0);
  const rest = content.parts.length - known.length;
  if (rest === 0) return 'all of it drawn or told';
  return `${litres.toFixed(1)} litres of it drawn or told, the rest by what is usual`;
}

export function contentRows(content: WaterContent): Row[] {
  const { litres, parts, missing } = content;
  return [
    {
      kind: 'answer',
      label: 'Water in the system',
      of: sayAssumed(content),
      figure: roundQuantity(litres),
      bar: { figure: roundQuantity(litres), limit: null, state: 'none' },
      say: missing.length === 0 ? '' : `not known: ${sayAll(missing)}`,
      room: null,
      ids: [...content.system.boilers.map((b) => b.id)],
    },
    ...parts.map((p) => fact(p.label, p.litres, p.say, p.ids)),
  ];
}

const VESSEL_SAYS: Readonly<Record<VesselCheck['verdict'], readonly [State, string]>> = {
  pass: ['pass', 'it takes what the water grows by'],
  small: ['check', 'too small for the water in the system'],
  cantTell: ['cantTell', "can't tell yet"],
};

export const vesselState = (c: VesselCheck): State => (c.content.system.changed ? VESSEL_SAYS[c.verdict][0] : 'none');

function sayVerdict(c: VesselCheck): string {
  const [, say] = VESSEL_SAYS[c.verdict];
  if (c.missing.length > 0) return `${say}: ${sayAll(c.missing)} not known`;
  if (c.wanted === null) return `${say}: the charge leaves no room below the relief valve`;
  return `${say}: ${sayFigures(c.there)} litres, ${sayFigures(c.wanted)} wanted`;
}

function usualFill(): string {
  const usual = figure('heating-cold-fill', 'usual', 'bar');
  return usual.is === 'known' ? `; ${sayFigures(quantityOf(usual))} is usual in a house of two storeys` : '';
}

export function vesselRows(given: Given, c: VesselCheck): Row[] {
  const ids = c.vessels.map((v) => v.id);
  const untold = c.there.lo > 0 ? 'one more is not told' : 'not told';
  const there = c.there.hi === null ? untold : c.there.hi === 0 ? 'none' : 'as told';
  return [
    heading('Expansion vessel', sayAll(c.vessels.map((v) => midSentence(sayPoint(given.plan, v.id))))),
    fact('Vessel there', c.there.hi === null && c.there.lo === 0 ? null : c.there, there, ids),
    verdict('Vessel against what is wanted', vesselState(c), sayVerdict(c), ids),
    fact('Cold fill', c.pressures.fillBar, `at the gauge, system cold${usualFill()}`, ids),
    ...vesselWorking(c).steps.map(
      (s): Row => ({
        kind: 'sum',
        label: s.label,
        how: s.how ?? '',
        result: s.result && roundQuantity(s.result),
        cites: s.cites,
        ids,
      }),
    ),
  ];
}

export function treatmentRows(content: WaterContent): Row[] {
  const cite = figure('heating-treatment', 'inhibitor', 'share').cite;
  const litres = dose(content.litres);
  const whole =
    litres.hi === null ? 'more, once the water is known' : `round up to ${Math.ceil(litres.hi)} if in doubt`;
  return [
    heading('Treatment'),
    fact('Inhibitor', litres, whole),
    {
      kind: 'note',
      say: `${(constant('heating-treatment', 'inhibitor', 'share') * 100).toFixed(0)} in a hundred of the water, rounded up; what the bottle says goes first.`,
      unverified: false,
      cites: [cite],
    },
  ];
}

const metresUp = (v: Vertex): Quantity => exact((v.place?.at.z ?? 0) / 1000, 'm', 2);

const sayTrap = (given: Given, t: Trap): string => midSentence(sayRun(given.plan, t.run));

export function drainRows(given: Given, d: DrainDown): Row[] {
  const { lowestCock, lowest, runsOut, unseen, stays, highs, lows } = d;
  const storey = (v: Vertex): string => given.plan.storeys[v.place?.storey ?? '']?.name.toLowerCase() ?? '';
  const rows: Row[] = [heading('Emptying and bleeding')];
  if (lowestCock) rows.push(fact('Lowest drain cock', metresUp(lowestCock), `${storey(lowestCock)}, above the datum`));
  else rows.push(fact('Lowest drain cock', null, unseen ? 'none drawn; look for one on the old pipe' : 'none drawn'));
  if (lowest) rows.push(fact('Lowest drawn pipe', metresUp(lowest), `${storey(lowest)}, above the datum`));
  if (runsOut) {
    const where = lowestCock === null || unseen ? 'where the old pipe can be emptied' : 'with every cock open';
    rows.push(fact('Runs out', runsOut, where));
    rows.push(fact('Stays in dips of drawn pipe', exact(stays, 'litres', 1), 'open a joint there'));
  }
  if (!d.content.system.changed) return rows;
  const list = (label: string, of: readonly Trap[], state: State, say: (t: Trap) => string): void => {
    if (of.length === 0) rows.push(verdict(label, 'pass', 'none in new pipe', []));
    for (const t of of) rows.push(verdict(label, state, `${sayTrap(given, t)}: ${say(t)}`, [t.run]));
  };
  list('Highs without a vent', highs, 'check', (t) => `${t.depthMm.toFixed(0)} above the way out for air`);
  list('Dips without a drain', lows, 'note', (t) => `${t.depthMm.toFixed(0)} deep, ${t.litres.toFixed(1)} litres`);
  return rows;
}

/** Places of a kind of item on the heating pipes of a system. */
function itemsOf(given: Given, system: WaterSystem, kind: string): { readonly n: number; readonly runs: string[] } {
  const runs = new Set<string>();
  let n = 0;
  for (const v of system.vertices.values()) {
    const here = v.items.filter((i) => given.plan.items[i]?.kind === kind).length;
    if (here === 0) continue;
    n += here;
    for (const id of v.edges) {
      const e = given.network.edges.get(id);
      if (e && isHeating(e)) runs.add(e.run);
    }
  }
  return { n, runs: [...runs].sort() };
}

const PARTS: readonly (readonly [kind: string, label: string, none: string])[] = [
  ['filter', 'Filter', 'none drawn'],
  ['filling-loop', 'Filling loop', 'none drawn; the boiler may bring its own'],
  ['air-vent', 'Air vents', 'none drawn'],
];

/** What could be changed without emptying the rest, by the valves that are drawn. */
function isolatingRow(given: Given, system: WaterSystem): Row {
  const open = unvalved(given, system);
  if (open.length === 0) return fact('Isolating valves', null, 'boiler and coil can be shut off', []);
  const said = open.map(
    (u) => `${midSentence(sayPoint(given.plan, u.point.id))} (${sayAll(u.tails.map((t) => t.toLowerCase()))})`,
  );
  const say = `none drawn that shut off the ${sayAll(said)}; it may bring its own`;
  return fact(
    'Isolating valves',
    null,
    say,
    open.map((u) => u.point.id),
  );
}

export function partRows(given: Given, system: WaterSystem): Row[] {
  return [
    heading('Parts in line'),
    ...PARTS.map(([kind, label, none]) => {
      const { n, runs } = itemsOf(given, system, kind);
      const on = sayAll([...new Set(runs.map((r) => midSentence(sayRun(given.plan, r))))]);
      return fact(label, n === 0 ? null : exact(n, '', 0), n === 0 ? none : `on the ${on}`, runs);
    }),
    isolatingRow(given, system),
  ];
}

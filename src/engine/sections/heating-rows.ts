import { figure } from '../../reference/figure.ts';
import { between, exact, type Quantity, sayFigures, sayQuantity } from '../../report/quantity.ts';
import type { Row } from '../../report/section.ts';
import { citesOf } from '../gas/said.ts';
import { designFlow, litresPerMin } from '../heating/design-flow.ts';
import type { HeatCircuit, HeatWay } from '../heating-system/circuits.ts';
import { lossOf } from '../heating-system/circuits.ts';
import { headState } from '../heating-system/pump-head.ts';
import type { HeatingSystem, HeatSection } from '../heating-system/solve-heating.ts';
import { midSentence, sayAll, sentence } from '../say-names.ts';

const OWN = { source: 'own-sums', clause: 'flow and loss of heating pipes' };

const HELD: Readonly<Record<string, string>> = {
  pass: 'the pump has more than that left',
  check: 'more than the pump has left',
  note: 'near what the pump has left, or part of the way is not known',
  cantTell: 'what the pump has left is not told: set it on the boiler from its sheet',
};

/** "within 14.0 kPa": what a pump keeps for all that nobody drew. */
function sayLeft(lost: Quantity, head: number | null): string | null {
  if (head === null || lost.lo > head) return null;
  const left = between(Math.max(0, head - (lost.hi ?? head)), head - lost.lo, 'kPa', 1);
  return lost.hi === null ? `at most ${left.hi?.toFixed(1)} kPa left` : `${sayQuantity(left)} left`;
}

/** What the index way counts, and what lies behind it that it cannot. */
function sayIndex(way: HeatWay): string {
  const to = `to ${midSentence(way.load.name)}${way.closed ? ' and back' : ', its return not drawn to the boiler'}`;
  return way.own === null ? `drawn pipe ${to}; what lies behind is not in it` : `pipe ${to}, with what stands there`;
}

export function answerRow(c: HeatCircuit): Row[] {
  const { index, lost, head } = c;
  if (index === null || lost === null) return [];
  const state = headState(lost, head);
  return [
    {
      kind: 'answer',
      label: c.name,
      of: sayIndex(index),
      figure: lost,
      bar: { figure: lost, limit: head, state },
      say: HELD[state] ?? '',
      room: sayLeft(lost, head),
      ids: [c.boiler.id],
    },
  ];
}

const litres = (flow: Quantity, tC: number): string => {
  const q = litresPerMin(flow, tC);
  return q === null ? '' : `${sayFigures(q)} litres a minute`;
};

/** Heat of the whole circuit into water: the sum with its steps. */
export function flowRows(system: HeatingSystem, c: HeatCircuit): Row[] {
  const { flowC, returnC, differenceK } = system.temps;
  const flow = designFlow(c.kW, system.temps);
  if (flow === null || c.kW.lo === 0) return [];
  const perHour = litresPerMin(flow, (flowC + returnC) / 2);
  return [
    {
      kind: 'sum',
      label: 'Design flow',
      how: `${sayFigures(c.kW)} kW over the heat of water x ${differenceK} K (${flowC} flow, ${returnC} return)`,
      result: flow,
      cites: citesOf(...system.temps.cites, OWN),
      ids: [c.boiler.id],
    },
    {
      kind: 'fact',
      label: 'The same by volume',
      figure: perHour,
      say: `at ${(flowC + returnC) / 2} degrees`,
      ids: [c.boiler.id],
    },
  ];
}

/** "7.0 kW, 5.2 litres a minute, 49 Pa/m; 0.41 kPa over 7.2 m with 2 elbows". */
function saySection(system: HeatingSystem, s: HeatSection): string {
  const tC = s.section.service === 'heatingReturn' ? system.temps.returnC : system.temps.flowC;
  const { result, ask } = s;
  const heat = s.loads === null && s.kW.lo === 0 ? 'its heat is not known' : `${sayFigures(s.kW)} kW`;
  const water = s.flow.hi === null && s.flow.lo === 0 ? '' : `, ${litres(s.flow, tC)}`;
  if (result === null || ask === null) return `${heat}${water}; its size or its inside is not known`;
  const parts = s.inLine.say === '' ? '' : ` with ${s.inLine.say}`;
  const length = `${sayFigures(ask.lengthM)} m${parts}`;
  if (result.loss.hi === null && result.loss.lo === 0) return `${heat}; ${length}`;
  const unsettled = result.regime === 'transitional' ? ', between smooth and turbulent flow' : '';
  return `${heat}${water}, ${sayFigures(result.paPerM)} Pa/m${unsettled}; ${sayFigures(result.loss)} kPa over ${length}`;
}

export function pipeRows(system: HeatingSystem, c: HeatCircuit): Row[] {
  return ['heatingFlow', 'heatingReturn'].flatMap((service): Row[] => {
    const of = c.sections.filter((s) => s.section.service === service);
    if (of.length === 0) return [];
    const label = service === 'heatingFlow' ? 'Flow pipe' : 'Return pipe';
    return [
      { kind: 'heading', label, say: 'velocity of each stretch', ids: [c.boiler.id] },
      ...of.map(
        (s): Row => ({
          kind: 'fact',
          label: s.label,
          figure: s.result && (s.result.velocity.hi !== null || s.result.velocity.lo > 0) ? s.result.velocity : null,
          say: saySection(system, s),
          ids: s.section.runs,
        }),
      ),
    ];
  });
}

/** What each way loses, and what its lockshield has to take up so that all lose alike. */
export function loadRows(c: HeatCircuit): Row[] {
  if (c.ways.length === 0) return [];
  const balanced = new Map(c.balance?.ways.map((w) => [w.id, w]));
  const rows = c.ways.map((w): Row => {
    const b = balanced.get(w.load.id);
    const own = w.own === null ? 'what it loses itself is not told' : `${sayQuantity(w.own)} in it and its valves`;
    const way = `${sayQuantity(lossOf(w))} ${w.closed ? 'there and back' : 'in the pipe that is drawn'}, ${own}`;
    const take =
      b === undefined
        ? ''
        : b.kv === null
          ? '; it is the index, whose lockshield stays open'
          : `; its lockshield takes up ${b.excessKPa.toFixed(1)} kPa more: set to kv ${b.kv.toFixed(2)} m3/h`;
    return {
      kind: 'fact',
      label: sentence(w.load.name),
      figure: w.load.kW,
      say: `${w.load.kW === null ? 'its heat is not told; ' : ''}${way}${take}`,
      ids: [w.load.point],
    };
  });
  const duty =
    c.balance === null ? '' : `the pump moves the whole flow against ${c.balance.pumpKPa.toFixed(1)} kPa, best figure`;
  return [{ kind: 'heading', label: 'What takes the heat', say: duty, ids: [c.boiler.id] }, ...rows];
}

/** Limits as each source has them, beside the figures of the drawing. */
export function limitNotes(): Row[] {
  const at = (row: string, column: string) => figure('heating-velocity', row, column);
  const note = (say: string, ...of: ReturnType<typeof at>[]): Row => ({
    kind: 'note',
    say,
    unverified: false,
    cites: citesOf(...of.map((f) => f.cite)),
  });
  const told = (f: ReturnType<typeof at>): string => (f.is === 'known' ? sayFigures(exact(f.lo, '', 1)) : 'not read');
  const [noise, dirt, course] = [at('noise', 'most'), at('dirt', 'least'), at('course', 'most')];
  const loss = at('course', 'mostPaPerM');
  const pa = loss.is === 'known' ? sayFigures({ ...exact(loss.lo, '', 0) }) : 'not read';
  return [
    note(
      `Above ${told(noise)} m/s it is noisy; below ${told(dirt)} m/s dirt may settle, as it does in most tails.`,
      noise,
      dirt,
    ),
    note(`For sizing a course asks for at most ${told(course)} m/s and ${pa} Pa/m.`, course, loss),
  ];
}

export function assumedRows(system: HeatingSystem, circuits: readonly HeatCircuit[]): Row[] {
  const assumed = (say: string, ids: readonly string[]): Row => ({ kind: 'assumed', say, ids });
  const parts = [...new Set(circuits.flatMap((c) => c.sections.flatMap((s) => s.inLine.assumed)))];
  const untold = [...new Set(circuits.flatMap((c) => c.loads.filter((l) => l.kW === null)))];
  const radiators = circuits.some((c) => c.ways.some((w) => w.load.kind === 'radiator' && w.own !== null));
  return [
    ...(system.temps.assumed === null ? [] : [assumed(`${sentence(system.temps.assumed)}.`, [])]),
    ...(untold.length === 0
      ? []
      : [
          assumed(
            `Heat not told of ${sayAll(untold.map((l) => midSentence(l.name)))}: ${system.bound === null ? 'nor what the boiler gives' : `no more than the ${sayFigures({ ...system.bound, lo: system.bound.hi ?? 0 })} kW of the boiler`}.`,
            untold.map((l) => l.point),
          ),
        ]),
    ...parts.map((p) => assumed(`${sentence(p)}.`, [])),
    ...(radiators
      ? [assumed('Radiators and their valves lose what is usual until their sheets are read; lockshields open.', [])]
      : []),
  ];
}

import { READING_KINDS } from '../../catalogue/reading-kinds.ts';
import type { TableCite } from '../../reference/figure.ts';
import { againstLeast, exact, type Quantity, roundQuantity, sayFigures } from '../../report/quantity.ts';
import type { Row, State } from '../../report/section.ts';
import { citesOf } from '../gas/said.ts';
import type { Given } from '../given.ts';
import { midSentence, sayPoint, saySize, sentence } from '../say-names.ts';
import { HEIGHT_KPA, KPA_A_BAR } from '../water/height.ts';
import { HEAT } from '../water/hot-flow.ts';
import type { Arrival } from '../water-system/arrivals.ts';
import type { CombiFlow } from '../water-system/combi-flow.ts';
import { mainsOf } from '../water-system/mains-readings.ts';
import type { SectionLoad } from '../water-system/section-loads.ts';

const inBar = (q: Quantity): Quantity => ({
  ...q,
  lo: q.lo / KPA_A_BAR,
  hi: q.hi === null ? null : q.hi / KPA_A_BAR,
  value: q.value === null ? null : q.value / KPA_A_BAR,
  unit: 'bar',
  digits: 2,
});

const note = (say: string, cite?: TableCite): Row => ({ kind: 'note', say, unverified: false, cites: citesOf(cite) });

/** What was measured, and the line drawn through it; without a reading, what to measure. */
export function readingRows(given: Given): Row[] {
  const m = mainsOf(given);
  const bar = (kpa: number | null): number | null => (kpa === null ? null : kpa / KPA_A_BAR);
  const fact = (label: string, value: number | null, unit: string, digits: number): Row[] =>
    value === null
      ? []
      : [{ kind: 'fact', label, figure: exact(value, unit, digits, 'page'), say: `read at ${m.where}`, ids: [] }];
  const wanted = READING_KINDS.filter(
    (k) =>
      (k.id === 'mains-standing' && m.standingKpa === null) ||
      (k.id === 'mains-flowing' && m.flowingKpa === null) ||
      (k.id === 'mains-flow' && m.flow === null),
  );
  return [
    ...fact('Standing pressure', bar(m.standingKpa), 'bar', 1),
    ...fact('Pressure while it flows', bar(m.flowingKpa), 'bar', 1),
    ...fact('Flow', m.flow, 'litres/min', 1),
    ...(wanted.length === 0
      ? []
      : [note(`To measure: ${wanted.map((k) => `${midSentence(k.what)} at the ${k.place}`).join(', ')}.`)]),
    ...(m.curve
      ? [
          note(
            `Between no flow and the flow measured, pressure is taken to fall with the square of the flow, and ${HEIGHT_KPA / KPA_A_BAR} bar a metre of height. Nothing is said above the flow that was measured.`,
            { source: 'own-sums', clause: 'what is drawn on from measured pressure', table: 'water-mains' },
          ),
        ]
      : []),
  ];
}

const stateOf = (makes: Quantity | null, reaches: Quantity | null): State =>
  makes === null || reaches === null
    ? 'cantTell'
    : reaches.hi !== null && reaches.hi < makes.lo
      ? 'check'
      : reaches.lo >= (makes.hi ?? makes.lo)
        ? 'pass'
        : 'note';

export const combiState = (c: CombiFlow): State =>
  c.isNew || (c.makes && c.byMains) ? stateOf(c.makes, c.byMains) : 'none';

/** "at most 16.0": only what the mains hold it to is known. */
export const sayGives = (q: Quantity): string =>
  q.lo === 0 && q.hi !== null ? `at most ${q.hi.toFixed(q.digits)}` : sayFigures(q);

/** What binds: the mains, the heat of the boiler, or either within the doubt of the other. */
function sayHeld({ makes, byMains, kw }: CombiFlow): string {
  if (makes === null || byMains === null) return 'only one of boiler and mains is known';
  const boiler = kw === null ? "the boiler's own flow holds it" : `the ${kw} kW of the boiler hold it`;
  const most = makes.hi ?? makes.lo;
  if (byMains.hi !== null && byMains.hi < makes.lo) return 'the mains hold it back';
  if (byMains.lo >= most) return `${boiler}, the mains could give more`;
  // All of what it can warm is below what was read; only whether that comes with pressure enough is open.
  if (byMains.hi === null || most <= byMains.hi) {
    const usual = makes.value === null ? sayFigures(makes) : makes.value.toFixed(makes.digits);
    const { lo, hi, digits } = byMains;
    const came = hi === null ? `${lo.toFixed(digits)} or more` : `up to ${hi.toFixed(digits)}`;
    return `${boiler} at about ${usual}, where the mains bring ${came} if pressure is left`;
  }
  return 'mains and boiler are near each other';
}

export function combiRows(given: Given, c: CombiFlow): Row[] {
  const name = sayPoint(given.plan, c.point.id);
  const state = combiState(c);
  const ids = [c.point.id];
  const fact = (label: string, q: Quantity | null, say: string): Row[] =>
    q ? [{ kind: 'fact', label, figure: roundQuantity(q), say, ids }] : [];
  const rise = c.rise ? `at a rise of ${sayFigures(c.rise)} K` : 'at no rise that makes sense';
  const heat = c.byHeat?.steps[0];
  return [
    ...(c.gives
      ? [
          {
            kind: 'answer' as const,
            label: name,
            of: `hot water ${rise}, all of it at one tap`,
            figure: roundQuantity(c.gives),
            bar: { figure: roundQuantity(c.gives), limit: null, state },
            say: sayHeld(c),
            room: null,
            ids,
          },
        ]
      : []),
    ...(heat
      ? [
          {
            kind: 'sum' as const,
            label: 'By its heat',
            how: heat.how ?? '',
            result: heat.result && roundQuantity(heat.result),
            cites: heat.cites,
            ids,
          },
        ]
      : []),
    ...fact('By its sheet', c.bySheet, rise),
    ...fact('By the mains', c.byMains, 'what reaches its cold inlet'),
    ...(c.makes
      ? []
      : [note(`What the ${midSentence(name)} makes is not told: set its hot water flow or heat output.`)]),
    ...c.notes.map((n): Row => ({ kind: 'assumed', say: `${sentence(n)}.`, ids })),
  ];
}

export const heatNote = (): Row => note('Litres a minute are 60 x kW / (4.19 x rise).', HEAT.litre.cite);

export function arrivalRows(given: Given, all: readonly Arrival[]): Row[] {
  if (all.length === 0) return [];
  return [
    { kind: 'heading', label: 'What arrives', say: 'one outlet open at a time', ids: [] },
    ...all.map((a): Row => {
      const verdict = a.kpa && a.need ? againstLeast(a.kpa, a.need.lo) : null;
      const needs = a.need ? `, ${sayFigures(inBar(a.need))} bar wanted` : '';
      const short = verdict === 'stop' || verdict === 'check' ? ', it may not run well' : '';
      const not = a.missing.length > 0 ? `; not counted: ${a.missing.join(', ')}` : '';
      return {
        kind: 'fact',
        label: `${sayPoint(given.plan, a.point.id)}, ${a.of}`,
        figure: a.kpa && roundQuantity(inBar(a.kpa)),
        say: `at ${sayFigures(a.flow)} litres a minute${needs}${short}${not}`,
        ids: [a.point.id],
      };
    }),
  ];
}

function placeOf(given: Given, vertex: string): string {
  const v = given.network.vertices.get(vertex);
  return v?.point ? sayPoint(given.plan, v.point) : (v?.edges.length ?? 0) > 2 ? 'tee' : 'change of size';
}

export function speedRows(given: Given, loads: readonly SectionLoad[], scale: string): Row[] {
  const fresh = loads.filter((l) => l.isNew && l.flow.hi !== null);
  if (fresh.length === 0) return [];
  return [
    { kind: 'heading', label: 'Flow and velocity of the new pipe', say: `${scale} scale`, ids: [] },
    ...fresh.map((l): Row => {
      const units = l.units ? `${sayFigures(l.units)} units, ` : '';
      const from = midSentence(placeOf(given, l.section.to));
      return {
        kind: 'fact',
        label: `${sentence(placeOf(given, l.section.from))} to ${from}, ${saySize(l.section.tube)}`,
        figure: l.velocity && roundQuantity(l.velocity),
        say: `${units}${sayFigures(l.flow)} l/s; ${sayFigures(exact(l.limit.lo, 'm/s', 1))} m/s at most`,
        ids: l.section.runs,
      };
    }),
    note(
      'Of several outlets the flow lies between that of the greatest and that of all at once, where the graph of the standard was not read.',
      fresh[0]?.limit.cite,
    ),
  ];
}

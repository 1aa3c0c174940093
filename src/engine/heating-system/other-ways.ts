import { usualSizes } from '../../catalogue/usual-sizes.ts';
import { figure, type Known } from '../../reference/figure.ts';
import { table } from '../../reference/tables.ts';
import { type TubeSize, tube } from '../../reference/tubes.ts';
import type { Quantity } from '../../report/quantity.ts';
import type { Given } from '../given.ts';
import { heatOf } from '../heating/design-flow.ts';
import type { PipeLoss } from '../heating/section-loss.ts';
import { scaled, total } from '../heating/spread.ts';
import { type HeatCircuit, lossOf, lossOfIndex, NOT_KNOWN } from './circuits.ts';
import type { HeatingSystem, HeatSection } from './solve-heating.ts';

const COPPER = 'copper';
const STEPS = usualSizes(COPPER);

/** The index way made or run another way: what it would lose, kPa, and the velocity in its fastest primary. */
export interface OtherWay {
  readonly lost: Quantity;
  readonly velocity: Quantity | null;
}

export interface OtherSize extends OtherWay {
  readonly size: TubeSize;
  /** It is drawn so. */
  readonly chosen: boolean;
  readonly change: readonly { readonly leg: string; readonly kind: string; readonly size: string }[];
}

export interface OtherDifference extends OtherWay {
  readonly kelvin: Known;
  readonly title: string;
  /** Flow against that of the design. */
  readonly times: number;
}

/** Pipes of the index way that everything goes through: from the boiler to the first tee, and back from the last. */
export function primariesOf(circuit: HeatCircuit): readonly HeatSection[] {
  const all = circuit.loads.length;
  return (circuit.index?.sections ?? []).filter((s) => s.loads?.length === all);
}

const fastest = (of: readonly (PipeLoss | null)[]): Quantity | null =>
  of.reduce<Quantity | null>((most, r) => (r && (most === null || r.velocity.lo > most.lo) ? r.velocity : most), null);

/** Its new copper primaries in the size below, their own, and the next ones up; none where none of them is new. */
export function otherSizes(given: Given, circuit: HeatCircuit): readonly OtherSize[] {
  const { index } = circuit;
  const primaries = primariesOf(circuit);
  const fresh = new Set(primaries.filter((s) => !s.kept && s.section.tube.kind === COPPER));
  const places = [...fresh].map((s) => STEPS.indexOf(s.section.tube.size ?? ''));
  if (index === null || fresh.size === 0) return [];
  const [least, most] = [Math.min(...places), Math.max(...places)];
  return STEPS.slice(Math.max(0, least - 1), most + 2).flatMap((id): OtherSize[] => {
    const size = tube(COPPER, id);
    if (!size || size.boreMm === null) return [];
    const bore = size.boreMm;
    const made = new Map([...fresh].map((s) => [s, s.tried({ kind: COPPER, boreMm: bore }, 1)]));
    const results = index.sections.map((s) => made.get(s) ?? s.result);
    const change = [...fresh]
      .filter((s) => s.section.tube.size !== id)
      .flatMap((s) => s.section.legs)
      .filter((leg) => given.network.edges.get(leg)?.state === 'new')
      .map((leg) => ({ leg, kind: COPPER, size: id }));
    return [
      {
        size,
        lost: lossOfIndex(
          circuit.ways,
          lossOf(
            index,
            total(
              results.map((r) => r?.loss ?? NOT_KNOWN),
              'kPa',
              1,
            ),
          ),
        ),
        velocity: fastest([...made.values()]),
        chosen: change.length === 0,
        change,
      },
    ];
  });
}

/** The same heat at the other differences that houses are run at: less of it a litre, so more litres. */
export function otherDifferences(system: HeatingSystem, circuit: HeatCircuit): readonly OtherDifference[] {
  const { index } = circuit;
  const own = heatOf(system.temps);
  if (index === null || own === null) return [];
  const primaries = new Set(primariesOf(circuit));
  const seen = new Set([system.temps.differenceK]);
  return table('heating-design').rows.flatMap((row): OtherDifference[] => {
    const kelvin = figure('heating-design', row.key, 'differenceK');
    if (kelvin.is !== 'known' || seen.has(kelvin.lo)) return [];
    seen.add(kelvin.lo);
    const there = heatOf({ flowC: system.temps.flowC, returnC: system.temps.flowC - kelvin.lo });
    if (there === null) return [];
    const times = own / there;
    const tried = index.sections.map((s) => ({ of: s, result: s.tried(null, times) }));
    const pipes = total(
      tried.map((t) => t.result?.loss ?? NOT_KNOWN),
      'kPa',
      1,
    );
    // What stands at the end loses with the square of its flow, as its flow factor has it.
    const end = index.own === null ? null : scaled(index.own, times * times);
    return [
      {
        kelvin,
        title: row.title ?? row.key,
        times,
        lost: lossOfIndex(circuit.ways, lossOf({ ...index, own: end }, pipes)),
        velocity: fastest(tried.filter((t) => primaries.has(t.of)).map((t) => t.result)),
      },
    ];
  });
}

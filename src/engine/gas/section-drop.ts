import { type Editions, edition, editionsOf } from '../../reference/tables.ts';
import { type TubeSize, tube } from '../../reference/tubes.ts';
import { between, leastSure, type Quantity } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import { midSentence, sayTubeKind } from '../say-names.ts';
import { bestOf, bothMethods } from './both-methods.ts';
import { effectiveLength, type FittingCount } from './equivalent-length.ts';
import type { GasKind } from './heat-input.ts';
import { anything } from './interval.ts';
import { type PhysicalDrop, physicalDrop } from './physical-drop.ts';
import { citesOf, step } from './said.ts';
import { methodSteps, sectionNotes } from './section-words.ts';
import { type TableDrop, tableDrop } from './table-drop.ts';

/** One part of a path: one tube, one flow. A change of tube or a tee starts the next. */
export interface SectionAsk {
  readonly label: string;
  readonly tubeKind: string;
  /** Null where nobody could read it. */
  readonly size: string | null;
  /** Measured length, m, centre to centre. */
  readonly lengthM: Quantity;
  readonly fittings: readonly FittingCount[];
  /** m3/h: everything downstream at once, no diversity. */
  readonly flow: Quantity;
  readonly gas: GasKind;
  readonly editions: Editions;
}

export interface SectionDrop {
  readonly working: Working;
  /** By the published table, mbar; `lo` 0 where it only says "at most". Null where it has no figure. */
  readonly table: Quantity | null;
  /** By the smooth-tube sum with its method error, mbar. Null where the tube has no bore or friction law. */
  readonly physical: Quantity | null;
  /** The interval that holds both, mbar. `hi` null: something is not known, and this is the low side only. */
  readonly drop: Quantity;
  readonly effectiveLength: Quantity;
  readonly notes: readonly string[];
}

const mbar = (lo: number, hi: number | null, value: number | null, of: readonly Quantity[]): Quantity =>
  between(lo, hi, 'mbar', 2, leastSure(...of.map((q) => q.sureness)), value);

function missingOf(
  ask: SectionAsk,
  found: TubeSize | undefined,
  table: TableDrop | undefined,
  physical: PhysicalDrop | undefined,
): string[] {
  const missing: string[] = [];
  const kind = sayTubeKind({ kind: ask.tubeKind, size: ask.size });
  if (!found)
    missing.push(
      ask.size === null ? `the size of a pipe (${midSentence(ask.label)})` : `dimensions of ${kind} ${ask.size}`,
    );
  if (ask.lengthM.hi === null) missing.push(`length of ${ask.label}`);
  if (ask.flow.hi === null) missing.push(`flow in ${ask.label}`);
  if (physical?.pastLaw) missing.push(`a friction law for so great a flow in ${ask.label}`);
  if (!found) return missing;
  if (!table && !physical) missing.push(`a way to reckon ${kind} ${found.label}`);
  const topic = `gas-discharge-${found.kind}`;
  const pinnedElsewhere = editionsOf(topic).length > 0 && !edition(topic, ask.editions);
  if (ask.gas === 'natural' && pinnedElsewhere) missing.push('the edition of the discharge table the job has pinned');
  return missing;
}

/**
 * Loss of one section, mbar: the published table and the physical sum, and the interval that holds both.
 * Lengths, flows and fittings may be intervals: a longer or fuller pipe never loses less, so the ends go with the ends.
 * An unknown size, an open length or an open flow leaves the low side only, and `working.missing` names it.
 */
export function sectionDrop(ask: SectionAsk): SectionDrop {
  const known = dropped.get(ask) ?? work(ask);
  dropped.set(ask, known);
  return known;
}

/** Other sizes of one stretch leave the rest of the way as it was asked before. */
const dropped = new WeakMap<SectionAsk, SectionDrop>();

function work(ask: SectionAsk): SectionDrop {
  const found = tube(ask.tubeKind, ask.size);
  const effective = effectiveLength(
    ask.tubeKind,
    found?.size ?? null,
    ask.lengthM,
    found ? ask.fittings : [],
    ask.editions,
  );
  const length = effective.length;
  const lengthStep = step('Effective length', effective.how, length, effective.cites);
  const flowStep = step('Flow', 'all that is fed through it, at once', ask.flow);
  const table = found && ask.gas === 'natural' ? tableDrop(found, length, ask.flow, ask.editions) : undefined;
  const physical = found ? physicalDrop(found, length, ask.flow, ask.gas) : undefined;
  const missing = [...missingOf(ask, found, table, physical), ...effective.missing];

  const parts = [length, ask.flow];
  const asTable =
    table && table.most !== null
      ? mbar(table.least, table.most, table.value, [{ ...length, sureness: table.sureness }, ...parts])
      : null;
  const value = bestOf(physical?.drop ?? null, table);
  const both = ask.flow.hi === 0 ? { lo: 0, hi: 0 } : bothMethods(physical?.drop ?? null, table, value);
  const sure = [...parts, ...(physical ? [physical.drop] : []), ...(asTable ? [asTable] : [])];
  const open = missing.length > 0;
  const drop =
    both && found
      ? mbar(both.lo, open ? null : both.hi, open ? null : ask.flow.hi === 0 ? 0 : value, sure)
      : anything('mbar', 2, leastSure(...parts.map((q) => q.sureness)));
  const known = found ? methodSteps(ask, found, length, table, asTable, physical) : [];
  return {
    working: {
      title: ask.label,
      steps: [
        flowStep,
        lengthStep,
        ...known,
        step('Gas drop', 'the interval that holds both', drop, citesOf(table?.cite)),
      ],
      result: drop.hi === null ? null : drop,
      missing,
      assumed: [],
    },
    table: asTable,
    physical: physical?.drop ?? null,
    drop,
    effectiveLength: length,
    notes: found ? sectionNotes(table, ask, found) : [],
  };
}

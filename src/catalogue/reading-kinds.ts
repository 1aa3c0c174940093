import type { Plan } from '../plan/plan.ts';
import type { Reading } from '../plan/records/basis.ts';

/** A figure read on the day that the sums use, or that the figures after the work are held against. */
export interface ReadingKind {
  readonly id: string;
  /** Short word for a key. */
  readonly word: string;
  readonly what: string;
  readonly unit: string;
  /** Where it is usually taken. */
  readonly place: string;
}

export const READING_KINDS: readonly ReadingKind[] = [
  { id: 'gas-standing', word: 'Gas standing', what: 'Gas standing pressure', unit: 'mbar', place: 'meter' },
  { id: 'gas-working', word: 'Gas working', what: 'Gas working pressure', unit: 'mbar', place: 'meter' },
  { id: 'gas-inlet', word: 'Gas at boiler', what: 'Gas working pressure', unit: 'mbar', place: 'boiler inlet' },
  { id: 'gas-rate', word: 'Gas rate', what: 'Gas rate, boiler alone', unit: 'm³/h', place: 'meter' },
  { id: 'tightness-drop', word: 'Tightness', what: 'Tightness test, drop', unit: 'mbar', place: 'meter' },
  { id: 'mains-flow', word: 'Flow cup', what: 'Cold water flow', unit: 'litres a minute', place: 'kitchen tap' },
  { id: 'mains-standing', word: 'Water standing', what: 'Water standing pressure', unit: 'bar', place: 'kitchen tap' },
  { id: 'mains-flowing', word: 'Water flowing', what: 'Water flowing pressure', unit: 'bar', place: 'kitchen tap' },
];

/** The last reading of a kind that has a figure; undefined where none was taken. */
export function readingOf(plan: Plan, kind: string): (Reading & { readonly value: number }) | undefined {
  const unit = READING_KINDS.find((k) => k.id === kind)?.unit;
  return (plan.job.readings ?? []).findLast(
    (r): r is Reading & { value: number } => r.kind === kind && r.value !== null && r.unit === unit,
  );
}

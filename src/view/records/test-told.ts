import { type TestKind, testKind } from '../../catalogue/test-kinds.ts';
import type { Reading, TestRecord } from '../../plan/records/basis.ts';
import type { Ask, Told } from '../job/line-form.tsx';
import type { Expected } from './expected.ts';

const FIGURE = 'figure ';
const LINES = ['part', 'edition', 'on', 'result', 'by', 'note'] as const;

/** A record as the boxes of its form hold it. */
export function toldOf(test: TestRecord): Told {
  const figures = Object.entries(test.figures).map(([key, value]) => [`${FIGURE}${key}`, value] as const);
  return { ...Object.fromEntries(LINES.map((key) => [key, test[key]])), ...Object.fromEntries(figures) };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const words = (value: Told[string] | undefined): string => (typeof value === 'string' ? value : '');

/** The record that boxes tell. Figures no box asks for stay as they were. */
export function recordOf(was: TestRecord, told: Told): TestRecord {
  const figures: TestRecord['figures'] = { ...was.figures };
  for (const [key, value] of Object.entries(told))
    if (key.startsWith(FIGURE)) figures[key.slice(FIGURE.length)] = typeof value === 'number' ? value : null;
  const on = words(told.on);
  return {
    ...was,
    part: words(told.part),
    edition: words(told.edition),
    on: on === '' ? null : on,
    figures,
    result: words(told.result),
    by: words(told.by),
    note: words(told.note),
  };
}

export const blankRecord = (kind: TestKind, part: string, edition: string, on: string): TestRecord => ({
  kind: kind.id,
  part,
  edition: kind.byEdition ? edition : '',
  on,
  figures: Object.fromEntries(kind.figures.map((f) => [f.key, null])),
  result: '',
  by: '',
  note: '',
});

/** What was read before the work, in words; empty where it was not. */
function sayBefore(before: string | undefined, readings: readonly Reading[]): string {
  const found = readings.findLast((r) => before !== undefined && r.kind === before && r.value !== null);
  return found ? `As found: ${found.value} ${found.unit}.` : '';
}

/** A figure is expected; what is merely not known is said as it stands. */
function sayWanted(wanted: string): string {
  if (wanted === '') return '';
  return /^(can't tell|take it)/.test(wanted) ? `${capital(wanted)}.` : `Expected: ${wanted}.`;
}

/** What the form of a record asks: each blank with what is expected of it, and what was found before. */
export function asksOf(
  kindId: string,
  told: Told,
  expected: Expected,
  readings: readonly Reading[],
  asksEdition: boolean,
): readonly Ask[] {
  const kind = testKind(kindId);
  const figures = (kind?.figures ?? []).map((f): Ask => {
    const wanted = kind ? expected.of(kind, words(told.part), f.label, words(told.edition)) : '';
    const help = [sayWanted(wanted), sayBefore(f.before, readings)].filter((t) => t !== '');
    const label = f.unit === '' ? f.label : `${f.label}, ${f.unit}`;
    const common: Ask = { key: `${FIGURE}${f.key}`, label, kind: 'number', half: true };
    return help.length === 0 ? common : { ...common, help: help.join(' ') };
  });
  return [
    { key: 'part', label: 'Of what', kind: 'long' },
    { key: 'on', label: 'Tested on', kind: 'date' },
    ...(asksEdition ? [{ key: 'edition', label: 'Edition worked to', kind: 'text' } as const] : []),
    ...figures,
    { key: 'result', label: 'Result, in your own words', kind: 'long' },
    { key: 'by', label: 'Who tested', kind: 'text' },
    { key: 'note', label: 'Note', kind: 'long' },
  ];
}

export const figureKey = (key: string): string => `${FIGURE}${key}`;

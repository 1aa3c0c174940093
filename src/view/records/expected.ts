import { TEST_KINDS, type TestKind } from '../../catalogue/test-kinds.ts';
import { sayQuantity } from '../../report/quantity.ts';
import type { Row, Section } from '../../report/section.ts';

/** A test that the drawing asks for: which, and of what part. */
export interface Due {
  readonly kind: TestKind;
  readonly part: string;
}

/** When an edition of a standard may be worked to. "2026-03" where only the month is known. */
export interface EditionReach {
  readonly id: string;
  readonly from: string | null;
  readonly until: string | null;
  readonly say: string;
}

/** What the report expects of tests, found by the words that head it. */
export interface Expected {
  readonly due: readonly Due[];
  readonly editions: readonly EditionReach[];
  /** Words beside a blank; empty where nothing is expected. */
  readonly of: (kind: TestKind, part: string, label: string, edition: string) => string;
}

const MONTHS = 'January February March April May June July August September October November December'.split(' ');

/** "2026-09-30" of "30 September 2026", "2026-03" of "March 2026"; null of anything else. */
export function readDay(said: string): string | null {
  const [, day, month = '', year = ''] = /^(?:(\d{1,2}) )?([A-Z][a-z]+) (\d{4})$/.exec(said) ?? [];
  const at = MONTHS.indexOf(month);
  if (at < 0) return null;
  const found = `${year}-${String(at + 1).padStart(2, '0')}`;
  return day === undefined ? found : `${found}-${day.padStart(2, '0')}`;
}

const dayAfter = (say: string, word: string): string | null =>
  readDay(new RegExp(`${word} ((?:\\d{1,2} )?[A-Z][a-z]+ \\d{4})`).exec(say)?.[1] ?? '');

/** "1 minute" of "1 minutes". */
const sayOne = (said: string): string => said.replace(/^(1 [a-z]+)s$/, '$1');

function sayRow(row: Row): string {
  if (row.kind === 'fact') {
    const figure = row.figure ? sayOne(sayQuantity(row.figure)) : '';
    return figure !== '' && row.say !== '' ? `${figure}, ${row.say}` : figure + row.say;
  }
  if (row.kind !== 'sum' || row.result === null) return '';
  return row.how === '' ? sayQuantity(row.result) : `${sayQuantity(row.result)}: ${row.how}`;
}

/** Reads the chapter of tests. Without one nothing is expected, and nothing is due. */
export function readExpected(section: Pick<Section, 'rows'> | undefined): Expected {
  const said = new Map<string, string>();
  const due: Due[] = [];
  const editions: EditionReach[] = [];
  let at: Due | null = null;
  for (const row of section?.rows ?? []) {
    if (row.kind === 'heading') {
      const kind = TEST_KINDS.find((k) => k.title === row.label);
      at = kind ? { kind, part: row.say } : null;
      // What every part of a test has in common is no test of its own.
      if (at && (at.part !== '' || at.kind.parts.length === 0)) due.push(at);
    } else if (at && (row.kind === 'fact' || row.kind === 'sum')) {
      const id = /^Edition (\d+)$/.exec(row.label)?.[1];
      if (id !== undefined && row.kind === 'fact')
        editions.push({ id, from: dayAfter(row.say, 'from'), until: dayAfter(row.say, 'until'), say: row.say });
      said.set(`${at.kind.id}|${at.part}|${row.label}`, sayRow(row));
    }
  }
  const of: Expected['of'] = (kind, part, label, edition) => {
    for (const where of [part, ''])
      for (const words of [`${label}, edition ${edition}`, label]) {
        const found = said.get(`${kind.id}|${where}|${words}`);
        if (found !== undefined) return found;
      }
    return '';
  };
  return { due, editions, of };
}

/** Editions that may be worked to on a day; all where the day is not told. */
export const editionsOn = (all: readonly EditionReach[], day: string | null): readonly EditionReach[] =>
  day === null ? all : all.filter((e) => (e.from === null || day >= e.from) && (e.until === null || day <= e.until));

/** The edition a day leaves no choice of; empty where there are several, or none known. */
export function proposedEdition(all: readonly EditionReach[], day: string | null): string {
  const [only, ...rest] = editionsOn(all, day);
  return only && rest.length === 0 ? only.id : '';
}

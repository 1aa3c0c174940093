import { testKind } from '../../catalogue/test-kinds.ts';
import type { TestRecord, UnsafeSituation } from '../../plan/records/basis.ts';
import type { SaidLine } from '../job/job-lines.tsx';
import { sayDate } from '../job/say-job.ts';
import { timedM3PerH } from './timed-rate.ts';

const joined = (...parts: readonly string[]): string => parts.filter((p) => p !== '').join('; ');

/** The figure that tells most of a record, and its figures in the order of the form. */
function figuresOf(test: TestRecord): readonly string[] {
  const known = testKind(test.kind)?.figures ?? [];
  return known.flatMap(({ key, label, unit }) => {
    const value = test.figures[key];
    return typeof value === 'number' ? [`${label.toLowerCase()} ${value}${unit === '' ? '' : ` ${unit}`}`] : [];
  });
}

const rateOf = ({ figures }: TestRecord): number | null =>
  timedM3PerH(figures.volumeM3 ?? null, figures.volumeFt3 ?? null, figures.seconds ?? null);

export function sayTest(test: TestRecord): SaidLine {
  const figures = figuresOf(test);
  const blank = figures.length === 0 && test.result === '';
  const rate = test.kind === 'gas-rate' ? rateOf(test) : null;
  const edition = test.edition === '' ? '' : /^\d+$/.test(test.edition) ? `edition ${test.edition}` : test.edition;
  return {
    what: testKind(test.kind)?.title ?? test.kind,
    figure: blank ? 'still blank' : test.on === null ? '' : sayDate(test.on),
    more: joined(test.part, edition, rate === null ? '' : `${rate.toFixed(2)} m3/h`, ...figures, test.result, test.by),
    open: blank,
  };
}

export function sayUnsafe({ what, place, classification, on, signed }: UnsafeSituation): SaidLine {
  const names = signed.map((s) => (s.name === '' ? 'a signature' : s.name));
  return {
    what,
    figure: classification,
    more: joined(
      place,
      on === null ? '' : sayDate(on),
      names.length === 0 ? 'not signed' : `signed: ${names.join(', ')}`,
    ),
    open: signed.length === 0,
  };
}

export const answerTests = (all: readonly TestRecord[]): string =>
  all.length === 0 ? 'none' : `${all.length} written`;

export const answerUnsafe = (all: readonly UnsafeSituation[]): string =>
  all.length === 0 ? 'none' : `${all.length} ${all.length === 1 ? 'situation' : 'situations'}`;

/** Today as a record writes it, by the clock of the device. */
export function today(now = new Date()): string {
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

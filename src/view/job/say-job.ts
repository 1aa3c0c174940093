import type { HoldPoint, Permission, Reading } from '../../plan/records/basis.ts';
import type { SaidLine } from './job-lines.tsx';

/** "1 June 2026" of "2026-06-01"; what is no date is left as it stands. */
export function sayDate(iso: string): string {
  const at = new Date(`${iso}T12:00:00`);
  return Number.isNaN(at.getTime())
    ? iso
    : at.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
}

const joined = (...parts: readonly string[]): string => parts.filter((p) => p !== '').join('; ');

export function sayPermission({ what, from, asked, given, note }: Permission): SaidLine {
  const figure = given !== null ? 'given' : asked !== null ? 'asked' : 'to ask';
  const when = given !== null ? `given ${sayDate(given)}` : asked !== null ? `asked ${sayDate(asked)}` : '';
  return { what, figure, more: joined(from === '' ? '' : `from ${from}`, when, note), open: given === null };
}

export function sayHoldPoint({ what, before, on, owner, done }: HoldPoint): SaidLine {
  const by = joined(before === '' ? '' : `before ${before}`, on === null ? '' : sayDate(on), owner);
  return { what, figure: done ? 'done' : 'open', more: by, open: !done };
}

export function sayReading({ what, value, unit, on, place, note }: Reading): SaidLine {
  const figure = value === null ? 'not read' : `${value}${unit === '' ? '' : ` ${unit}`}`;
  return { what, figure, more: joined(place, on === null ? '' : sayDate(on), note), open: value === null };
}

const count = (n: number, word: string): string => (n === 0 ? '' : `${n} ${word}`);
const listed = (parts: readonly string[]): string => parts.filter((p) => p !== '').join(', ') || 'none';

export const answerPermissions = (all: readonly Permission[]): string =>
  listed([
    count(all.filter((p) => p.given !== null).length, 'given'),
    count(all.filter((p) => p.given === null && p.asked !== null).length, 'asked'),
    count(all.filter((p) => p.given === null && p.asked === null).length, 'to ask'),
  ]);

/** The next one that is open: "12 June 2026, condensate branch". */
export function answerHoldPoints(all: readonly HoldPoint[]): string {
  const open = all.filter((h) => !h.done).sort((a, b) => ((a.on ?? '9') < (b.on ?? '9') ? -1 : 1));
  const [next] = open;
  if (!next) return all.length === 0 ? 'none' : 'all done';
  return next.on === null ? `${open.length} open` : `${sayDate(next.on)}, ${next.what}`;
}

export function answerReadings(all: readonly Reading[]): string {
  return all.length === 0 ? 'none' : `${all.length} ${all.length === 1 ? 'reading' : 'readings'}`;
}

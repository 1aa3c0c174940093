import { testKind } from '../../catalogue/test-kinds.ts';
import type { TestRecord } from '../../plan/records/basis.ts';
import { exact, sayFigures } from '../../report/quantity.ts';
import type { Row } from '../../report/section.ts';
import type { Given } from '../given.ts';
import { editionsOn, tightnessEditions } from './edition-by-date.ts';
import { rateInKw, type Timed, timedRate } from './gas-rate.ts';

/** What a record of a gas rate says was timed; null where a figure of it is still blank. */
function timedOf({ figures }: TestRecord): Timed | null {
  const { volumeM3, volumeFt3, seconds } = figures;
  if (typeof seconds !== 'number') return null;
  if (typeof volumeM3 === 'number') return { volume: volumeM3, dial: 'm3', seconds };
  return typeof volumeFt3 === 'number' ? { volume: volumeFt3, dial: 'ft3', seconds } : null;
}

function sayRate(given: Given, test: TestRecord): string {
  const { gas, calorificValueMJPerM3 } = given.plan.basis;
  const told = test.figures.rateM3PerH;
  const timed = timedOf(test);
  const rate = timed ? timedRate(timed) : typeof told === 'number' && told > 0 ? exact(told, 'm3/h', 2, 'page') : null;
  if (!rate) return '';
  const { inputs } = rateInKw(rate, { gas, calorificMJPerM3: calorificValueMJPerM3 });
  if (!inputs) return `${sayFigures(rate)} m3/h`;
  const net = inputs.net ? `, ${sayFigures(inputs.net)} net` : '';
  return `${sayFigures(rate)} m3/h, ${sayFigures(inputs.gross)} kW gross${net}`;
}

function sayFound(given: Given, test: TestRecord): string {
  if (test.kind === 'gas-rate') return sayRate(given, test);
  const known = testKind(test.kind)?.figures ?? [];
  const said = known.flatMap(({ key, label, unit }) => {
    const value = test.figures[key];
    return typeof value === 'number' ? [`${label.toLowerCase()} ${value}${unit === '' ? '' : ` ${unit}`}`] : [];
  });
  return said.join('; ');
}

/** "3" of "3", "edition 3"; null of words that name no edition known here. */
export function editionIn(words: string): string | null {
  const id = /(\d+)\s*$/.exec(words.trim())?.[1];
  return tightnessEditions().some((e) => e.id === id) ? (id ?? null) : null;
}

function isOutOfDate(test: TestRecord): boolean {
  const id = editionIn(test.edition);
  if (!testKind(test.kind)?.byEdition || test.on === null || id === null) return false;
  return !editionsOn(test.on).some((e) => e.id === id);
}

/** The records that were written, with what was found: nothing is judged but an edition that was not in force that day. */
export function writtenRows(given: Given): Row[] {
  const tests = given.plan.job.tests ?? [];
  if (tests.length === 0) return [];
  return [
    { kind: 'heading', label: 'Written down', say: '', ids: [] },
    ...tests.map((t): Row => {
      const title = [testKind(t.kind)?.title ?? t.kind, t.part].filter((s) => s !== '').join(': ');
      const found = sayFound(given, t);
      if (isOutOfDate(t))
        return {
          kind: 'verdict',
          label: title,
          state: 'check',
          say: `edition ${editionIn(t.edition)} was not in force on the day it is dated`,
          ids: [],
        };
      const say = [found === '' ? 'no figure yet' : `found ${found}`, t.result].filter((s) => s !== '').join('; ');
      return { kind: 'fact', label: title, figure: null, say, ids: [] };
    }),
  ];
}

import type { Row, State } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import type { Given } from '../given.ts';
import { pressureRows, purgeRows, rateRows } from '../tests-due/gas-due-rows.ts';
import { gasInstallation } from '../tests-due/gas-installation.ts';
import { note } from '../tests-due/row-makers.ts';
import { tightnessRows } from '../tests-due/tightness-rows.ts';
import { commissioningRows, condensateDueRows, waterRows } from '../tests-due/water-due-rows.ts';
import { writtenRows } from '../tests-due/written-rows.ts';

function gasRows(given: Given): Row[] {
  const pipe = gasInstallation(given);
  const appliances = given.gas.appliances.filter((a) => a.path.length > 0);
  if (!pipe || appliances.length === 0) return [];
  return [
    ...tightnessRows(given, pipe),
    ...purgeRows(given, pipe, appliances),
    ...pressureRows(given, appliances),
    ...rateRows(appliances),
  ];
}

/** Only what is out of its place is marked: a stop before a check. What is merely not told yet wants no looking at. */
const stateOf = (rows: readonly Row[]): State => {
  const states = rows.flatMap((r) => (r.kind === 'verdict' ? [r.state] : []));
  return (['stop', 'check'] as const).find((s) => states.includes(s)) ?? 'none';
};

export default defineSection({
  id: 'tests',
  order: 45,
  write(given) {
    const written = writtenRows(given);
    const gas = gasRows(given);
    const rest = [...waterRows(given), ...commissioningRows(given), ...condensateDueRows(given)];
    const rows = [...written, ...gas, ...rest];
    if (rows.length === 0) return null;
    const tests = given.plan.job.tests?.length ?? 0;
    const caution =
      'What is found is held beside what is wanted, and the engineer decides. Gas work is for registered engineers only.';
    return {
      title: 'Tests and records',
      answer: tests === 0 ? 'none written' : `${tests} written`,
      state: stateOf(rows),
      rows: [...rows, note(caution, [])],
    };
  },
});

import type { Row, State } from '../../report/section.ts';
import { defineSection } from '../define-section.ts';
import { inletsOfVessels } from '../supply/inlets.ts';
import { mixersOf, wantsBalance } from '../supply/mixers.ts';
import { backflowRows, inletRows, mixerRows } from './cold-supply-rows.ts';

const RANK: readonly State[] = ['stop', 'check', 'cantTell', 'note', 'pass', 'none'];

const stateOf = (rows: readonly Row[]): State =>
  rows.flatMap((r) => (r.kind === 'verdict' ? [r.state] : [])).sort((a, b) => RANK.indexOf(a) - RANK.indexOf(b))[0] ??
  'none';

export default defineSection({
  id: 'cold-supply',
  order: 24,
  write(given) {
    const mixers = mixersOf(given);
    const inlets = inletsOfVessels(given);
    // Without a pipe to any of it there is nothing to say of where the cold comes from.
    const drawn = mixers.filter((m) => m.hot.steps.length > 0 || m.cold.steps.length > 0);
    const rows = [...mixerRows(given, drawn), ...inlets.flatMap((i) => inletRows(given, i)), ...backflowRows(given)];
    if (rows.length === 0) return null;
    const wanted = drawn.filter((m) => wantsBalance(m.point));
    const balanced = wanted.filter((m) => m.balance.is === 'balanced').length;
    return {
      title: 'Cold supply',
      answer: wanted.length === 0 ? '' : `${balanced} of ${wanted.length} balanced`,
      state: stateOf(rows),
      rows,
    };
  },
});

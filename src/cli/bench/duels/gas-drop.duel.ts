import { sums } from '../../../engine/evaluate.ts';
import { inverse } from '../../../reference/inverse.ts';
import { table } from '../../../reference/tables.ts';
import { defineDuel } from '../duel.ts';

const ASKED = { kw: 37.41, cv: 38.7, m: 9, size: '22', elbow90: 2 };
/** m3/h of that input at that calorific value. */
const FLOW = (ASKED.kw * 3.6) / ASKED.cv;

export default defineDuel({
  id: 'gas-drop',
  ours: 'gas drop of a run: flow, fittings, table, smooth-tube sum, interval, working',
  peer: 'the published table alone, read backwards',
  atMost: null,
  prepare() {
    const sum = sums.get('gas-run');
    if (!sum) throw new Error('there is no sum gas-run');
    const discharge = table('gas-discharge-copper');
    const row = discharge.rows.find((r) => r.key.startsWith(ASKED.size))?.key ?? '';
    const peer = () => inverse(discharge, row, FLOW);
    const [whole, read] = [sum.work(ASKED).result, peer()];
    if (read.is !== 'known' || !whole) throw new Error('one of the two cannot tell');
    const alone = ASKED.m / read.at;
    if (whole.lo > 1.5 * alone || (whole.hi ?? 0) < alone) throw new Error('the two are of different pipes');
    return { ours: () => sum.work(ASKED), peer };
  },
});

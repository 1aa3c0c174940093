import { table } from '../../reference/tables.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import type { Working, WorkingStep } from '../../report/working.ts';
import { cannot, step } from '../gas/said.ts';
import { HEIGHT_KPA, KPA_A_BAR } from './height.ts';
import { hotFlow, riseOf } from './hot-flow.ts';
import { flowAt, isCurve, lesser } from './mains-curve.ts';

/** Readings of the mains; null for what was not read. */
export interface MainsAsk {
  readonly standingBar: number | null;
  readonly flowingBar: number | null;
  /** litres a minute. */
  readonly flow: number | null;
  /** What has to be left at the inlet of the heater. */
  readonly leastBar: number | null;
  /** How much higher than the reading the inlet lies; below zero where it is lower. */
  readonly upM: number | null;
}

export interface HotFlowAsk {
  readonly kw: number;
  readonly coldC: number;
  readonly wantC: number;
  readonly mains: MainsAsk;
}

interface ByMains {
  readonly flow: Quantity | null;
  readonly steps: readonly WorkingStep[];
  readonly notes: readonly string[];
}

const UNIT = 'litres/min';
const cite = () => {
  const { source, clause } = table('water-mains');
  return { source, clause, table: 'water-mains' };
};

function byMains({ standingBar, flowingBar, flow, leastBar, upM }: MainsAsk): ByMains {
  if (flow === null)
    return { flow: null, steps: [], notes: ['no flow of the mains was told: the heat alone is counted'] };
  const atMost = (say: string): ByMains => {
    const most: Quantity = { lo: 0, hi: flow, value: null, unit: UNIT, digits: 1, sureness: 'page' };
    return { flow: most, steps: [step('The mains bring', 'no more than was read', most)], notes: [say] };
  };
  if (standingBar === null || flowingBar === null)
    return atMost('without both pressures nothing is said of what is left');
  const curve = { standingKpa: standingBar * KPA_A_BAR, flowingKpa: flowingBar * KPA_A_BAR, flow };
  if (!isCurve(curve)) return atMost('the readings make no sense together: pressure has to fall while it flows');
  const needKpa = (leastBar ?? 0) * KPA_A_BAR + (upM ?? 0) * HEIGHT_KPA;
  const found = flowAt(curve, needKpa);
  if (found === null) return atMost('the readings make no sense together');
  const need = exact(needKpa / KPA_A_BAR, 'bar', 2);
  const brings: Quantity = found.atLeast
    ? { ...exact(found.flow, UNIT, 1), hi: null, value: null }
    : exact(found.flow, UNIT, 1);
  const how = found.atLeast
    ? 'all that was read, and more was not measured'
    : `${flow} x the root of what may be lost over what was lost`;
  return {
    flow: brings,
    steps: [
      step(
        'Pressure it needs at the reading',
        `${leastBar ?? 0} bar left at the inlet and ${upM ?? 0} m of height`,
        need,
        [cite()],
      ),
      step('The mains bring', how, brings, [cite()]),
    ],
    notes: [
      ...(leastBar === null ? ['the least pressure at the inlet is not told: any is taken to do'] : []),
      ...(upM === null ? ['no height between reading and inlet is told, so none is counted'] : []),
      'no loss of pipe between reading and inlet is counted',
    ],
  };
}

const holds = (heat: Quantity, mains: Quantity): string =>
  mains.lo >= heat.lo
    ? 'the heat holds it, the mains could bring more'
    : mains.hi !== null && mains.hi <= heat.lo
      ? 'the mains hold it'
      : 'the mains may hold it';

/** Hot water of a heat output: what it warms, and no more than the mains bring. Litres a minute; null without a rise. */
export function hotFlowSum({ kw, coldC, wantC, mains }: HotFlowAsk): Working {
  const title = 'Hot water at a heat output';
  const rise = riseOf(exact(coldC, '°C', 0, 'page'), exact(wantC, '°C', 0, 'page'));
  if (rise === null) return cannot(title, ['hot water that is warmer than the cold']);
  const heat = hotFlow(exact(kw, 'kW', 1, 'page'), rise);
  if (heat.result === null) return heat;
  const { flow, steps, notes } = byMains(mains);
  const result = flow === null ? heat.result : lesser(heat.result, flow);
  const least = flow === null ? [] : [step('Lesser of the two', holds(heat.result, flow), result)];
  return {
    title,
    steps: [step('Rise', `${wantC} less ${coldC}`, rise), ...heat.steps, ...steps, ...least],
    result,
    missing: [],
    assumed: [...heat.assumed, ...notes],
  };
}

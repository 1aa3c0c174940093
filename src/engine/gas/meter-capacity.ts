import { figure } from '../../reference/figure.ts';
import { againstMost, type Quantity, type Verdict } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import { cannot, citesOf, quantityOf, step } from './said.ts';

export interface MeterCheck {
  readonly working: Working;
  /** m3/h; null where the meter is not in the table. */
  readonly capacity: Quantity | null;
  readonly verdict: Verdict | 'cantTell';
}

/** Does the meter pass the flow of every appliance at once? `meter` is a row of the meters table, null where not read. */
export function meterCapacity(meter: string | null, flow: Quantity): MeterCheck {
  const title = 'Meter';
  if (meter === null)
    return {
      working: cannot(title, ['size of the meter'], [step('Flow', '', flow)]),
      capacity: null,
      verdict: 'cantTell',
    };
  const found = figure('gas-meters', meter, 'capacityM3PerH');
  if (found.is !== 'known')
    return {
      working: cannot(title, [`capacity of meter ${meter}`], [step('Flow', '', flow)]),
      capacity: null,
      verdict: 'cantTell',
    };
  const capacity = quantityOf(found);
  const verdict = againstMost(flow, capacity.lo);
  return {
    working: {
      title,
      steps: [
        step('Flow', 'every appliance at its largest', flow),
        step('Capacity', meter, capacity, citesOf(found.cite)),
      ],
      result: flow.hi === null ? null : flow,
      missing: flow.hi === null ? ['flow through the meter'] : [],
      assumed: [],
    },
    capacity,
    verdict,
  };
}

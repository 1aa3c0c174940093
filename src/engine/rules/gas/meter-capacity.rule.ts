import { figure } from '../../../reference/figure.ts';
import { againstMost, exact } from '../../../report/quantity.ts';
import { defineRule } from '../../define-rule.ts';
import { example } from '../../example.ts';
import { meterCapacity } from '../../gas/meter-capacity.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';

function check(given: Given) {
  const { meter } = given.gas;
  if (!meter) return null;
  if (meter.ratedM3PerH === null) return { meter, ...meterCapacity(meter.kind, meter.flow) };
  const capacity = exact(meter.ratedM3PerH, 'm3/h', 1, 'page');
  return {
    meter,
    capacity,
    verdict: againstMost(meter.flow, capacity.lo),
    working: meterCapacity(meter.kind, meter.flow).working,
  };
}

const house = (fields: Record<string, number | string | null>, kw: number) =>
  example()
    .point('gas-meter', 'meter', [0, 0, 500], fields)
    .point('boiler', 'boiler', [3000, 0, 1300], { inputKwHotWater: kw, inputBasis: 'gross' })
    .run(
      'g',
      'gas',
      [{ point: 'meter', connection: 'outlet' }, [75, -115, 2300], { point: 'boiler', connection: 'gas' }],
      { size: '28x0.9' },
    ).plan;

export default defineRule({
  id: 'gas/meter-capacity',
  topic: 'gas',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'piped-gas-design-guide', clause: 'meters', table: 'gas-meters' }],
  needs: ['meter', 'heat input of every appliance'],
  params: (given) => ({ capacity: figure('gas-meters', given.gas.meter?.kind ?? '', 'capacityM3PerH') }),
  judge(given) {
    const found = check(given);
    if (!found || found.verdict === 'pass' || given.gas.appliances.length === 0) return [];
    const { meter, capacity, verdict, working } = found;
    const vertex = given.gas.trace.sources[0]?.vertex;
    const shared = {
      ids: [meter.point],
      words: { name: meter.name },
      found: meter.flow,
      wanted: capacity,
      at: atVertex(given.network, vertex),
      working,
    };
    if (verdict === 'cantTell') {
      // A meter nobody has read yet is asked for only where the flow could matter to the commonest house meter.
      const usual = figure('gas-meters', 'G4', 'capacityM3PerH');
      const small = usual.is === 'known' && meter.flow.hi !== null && meter.flow.hi <= usual.lo;
      return meter.kind === null && small ? [] : [{ outcome: 'cantTell', ...shared, missing: working.missing }];
    }
    return [{ outcome: verdict, ...shared }];
  },
  say: {
    fault: {
      title: 'More gas than the meter passes',
      why: 'Everything burning at once asks more of the {name} than it is rated for.',
      todo: 'Ask the supplier for a larger meter before the boiler is ordered.',
    },
    cantTell: {
      title: "Can't tell whether the meter is large enough",
      why: 'The sum is missing: {missing}.',
      todo: 'Read the plate of the meter.',
    },
    pass: 'The meter passes it.',
  },
  examples: [
    { name: 'a usual meter and boiler', given: () => house({ meter: 'G4' }, 30), expect: 'pass' },
    { name: 'a small meter', given: () => house({ meter: 'G2.5' }, 60), expect: 'stop' },
    { name: 'much gas and nobody read the meter', given: () => house({ meter: null }, 65), expect: 'cantTell' },
  ],
});

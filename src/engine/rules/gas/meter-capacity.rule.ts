import { figure } from '../../../reference/figure.ts';
import { againstMost, exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
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

/** Meters on pipes of their own. Two on the same pipes are another rule's, and have no figures at all. */
function severalMeters(given: Given): Fault[] {
  const { sources, illegal } = given.gas.trace;
  if (sources.length < 2 || illegal.some((i) => i.kind === 'twoSources')) return [];
  return [
    {
      outcome: 'cantTell',
      ids: sources.map((s) => s.point),
      missing: ['what each of the meters feeds'],
      at: atVertex(given.network, sources[0]?.vertex),
      say: 'several',
    },
  ];
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
    if (given.gas.appliances.length === 0) return [];
    if (!found) return severalMeters(given);
    if (found.verdict === 'pass') return [];
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
    several: {
      title: "Can't tell whether each meter is large enough",
      why: 'There are several meters, and what each of them feeds is not added up apart.',
      todo: 'Add up what hangs on each, and hold it against its plate.',
    },
    pass: 'The meter passes it.',
  },
  examples: [
    { name: 'a usual meter and boiler', given: () => house({ meter: 'G4' }, 30), expect: 'pass' },
    { name: 'a small meter', given: () => house({ meter: 'G2.5' }, 60), expect: 'stop' },
    {
      name: 'two meters, each on pipes of its own',
      given: () => {
        const e = example();
        for (const [k, x] of [
          ['1', 0],
          ['2', 9000],
        ] as const) {
          e.point('gas-meter', `m${k}`, [x, 0, 500]).point('boiler', `b${k}`, [x + 3000, 0, 1300], { class: '24' });
          e.run(`g${k}`, 'gas', [
            { point: `m${k}`, connection: 'outlet' },
            [x + 75, -115, 2300],
            { point: `b${k}`, connection: 'gas' },
          ]);
        }
        return e.plan;
      },
      expect: 'cantTell',
    },
    { name: 'much gas and nobody read the meter', given: () => house({ meter: null }, 65), expect: 'cantTell' },
  ],
});

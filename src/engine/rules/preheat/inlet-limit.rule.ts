import { type Figure, figure } from '../../../reference/figure.ts';
import { between, exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { assess } from '../../preheat/assess.ts';
import { preheatsOf } from '../../preheat/preheats.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { INLET_LIMITS } from '../../supply/inlet-limits.ts';
import { inletsOf } from '../../supply/way-back.ts';
import { preheatHouse } from './houses.ts';

type Params = { readonly ordinary: Figure; readonly made: Figure; readonly opens: Figure };

const sayRange = (f: Figure): string => (f.is === 'known' ? `${f.lo.toFixed(0)} to ${f.hi?.toFixed(0)}` : '');

function judge(given: Given, params: Params): Fault[] {
  return preheatsOf(given).flatMap((preheat): Fault[] => {
    const { heater, vessel } = preheat;
    const { inlet, states, limitC, missing } = assess(given, preheat);
    const t = states[0]?.trace.inletC;
    if (!heater || !t || (inlet !== 'stop' && inlet !== 'cantTell')) return [];
    const [at] = inletsOf(given, heater);
    return [
      {
        outcome: inlet,
        ...(inlet === 'cantTell' && heater.kind === 'boiler' ? { say: 'boiler' } : {}),
        ids: [heater.id, vessel.id],
        words: {
          heater: midSentence(sayPoint(given.plan, heater.id)),
          vessel: midSentence(sayPoint(given.plan, vessel.id)),
          ordinary: sayRange(params.ordinary),
          made: sayRange(params.made),
          opens: sayRange(params.opens),
        },
        found: inlet === 'stop' ? (t.lo === t.hi ? exact(t.hi, '°C', 0) : between(t.lo, t.hi, '°C', 0)) : null,
        wanted: inlet === 'stop' && limitC !== null ? exact(limitC, '°C', 0, 'page') : null,
        ...(inlet === 'stop' ? { limit: { id: INLET_LIMITS.c, scope: heater.id } } : {}),
        missing: inlet === 'cantTell' ? missing : [],
        at: at === undefined ? null : atVertex(given.network, `${heater.id}/${at}`),
        unverified: false,
      },
    ];
  });
}

export default defineRule<Params>({
  id: 'preheat/inlet-limit',
  topic: 'water',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [
    { source: 'solar-combi-pages', clause: 'most boilers of the kind were not made for a warm inlet' },
    { source: 'trade-practice', clause: 'warming water ahead of a heater', table: 'preheat-temperatures' },
  ],
  needs: ['the warmest inlet of the sheet', 'how hot the vessel can get', 'what the valve between them is set to'],
  params: () => ({
    ordinary: figure('preheat-temperatures', 'inlet, ordinary'),
    made: figure('preheat-temperatures', 'inlet, for preheat'),
    opens: figure('preheat-temperatures', 'safety valve'),
  }),
  judge,
  say: {
    fault: {
      title: 'The {heater} gets hotter water than it takes',
      why: 'At the high limit of the {vessel} its inlet is warmer than its sheet allows: seals and sensors fail, and water leaves it hotter than it is set to.',
      todo: 'Set a mixing valve ahead of it, at what the sheet allows, or a diverting valve that sends hotter water past it.',
    },
    boiler: {
      title: "Can't tell whether the {heater} takes what the {vessel} sends it",
      why: 'Not known: {missing}. Ordinary boilers of the kind commonly take {ordinary} °C, those made for it {made} °C.',
      todo: 'Read the sheet of the boiler and the thermostats of the vessel, and set them here before anything is joined.',
    },
    cantTell: {
      title: "Can't tell whether the {heater} takes what the {vessel} sends it",
      why: 'Not known: {missing}. Where no limit thermostat holds it, water may get as hot as what opens a safety valve, {opens} °C.',
      todo: 'Read the sheet of the one and the limit thermostat of the other, and set them here.',
    },
    pass: 'What comes to it at the worst is within what its sheet allows.',
  },
  examples: [
    { name: 'nothing known of either', given: () => preheatHouse(), expect: 'cantTell' },
    { name: 'nothing known of a combi', given: () => preheatHouse({ heater: 'boiler' }), expect: 'cantTell' },
    {
      name: 'a store that takes what the vessel gives',
      given: () => preheatHouse({ vessel: { highestC: 75 }, heaterFields: { inletMaxC: 80 } }),
      expect: 'pass',
    },
    {
      name: 'an ordinary combi on a hot vessel',
      given: () => preheatHouse({ heater: 'boiler', vessel: { highestC: 75 }, heaterFields: { inletMaxC: 30 } }),
      expect: 'stop',
      found: { lo: 75, hi: 75, tolerance: 0 },
      from: 'told on the vessel; nothing between cools it',
    },
    {
      name: 'a mixing valve between',
      given: () =>
        preheatHouse({
          heater: 'boiler',
          heaterFields: { inletMaxC: 30 },
          mixing: { setC: 28, failsShut: true, hasChecks: true },
        }),
      expect: 'pass',
    },
    {
      name: 'a mixing valve nobody read',
      given: () =>
        preheatHouse({ heater: 'boiler', vessel: { highestC: 75 }, heaterFields: { inletMaxC: 60 }, mixing: {} }),
      expect: 'cantTell',
    },
    {
      name: 'a diverting valve that sends hotter past it',
      given: () =>
        preheatHouse({
          heater: 'boiler',
          vessel: { highestC: 75 },
          heaterFields: { inletMaxC: 60 },
          diverting: { sendsAboveC: 48 },
        }),
      expect: 'pass',
    },
  ],
});

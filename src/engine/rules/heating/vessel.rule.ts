import { type Figure, figure } from '../../../reference/figure.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { type VesselCheck, vesselChecks } from '../../heating-system/vessel-check.ts';
import { vesselWorking } from '../../heating-system/vessel-working.ts';
import { atPoint } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { waterHouse } from './water-houses.ts';

type Params = { readonly relief: Figure; readonly reserve: Figure };

/** An open system has a cistern where a sealed one has a vessel: with a heat-only boiler that has to be told. */
const open = (c: VesselCheck): boolean =>
  c.vessels.every((v) => v.kind === 'boiler' && v.fields.type === 'heatOnly' && v.fields.vesselLitres == null);

function faultOf(given: Given, c: VesselCheck): Fault[] {
  const [at] = c.vessels;
  if (!at || !c.content.system.changed || c.verdict === 'pass') return [];
  const litres = c.content.litres;
  const shared = {
    ids: [at.id],
    at: atPoint(given.plan, at.id),
    words: { what: midSentence(sayPoint(given.plan, at.id)) },
    wanted: c.wanted,
    wantedIs: 'atLeast' as const,
    working: vesselWorking(c),
  };
  if (c.verdict === 'small') return [{ ...shared, outcome: 'check', found: c.there }];
  const holds =
    litres.hi !== null && litres.hi > litres.lo
      ? [`what the system holds, within ${litres.lo.toFixed(0)} to ${litres.hi.toFixed(0)} litres`]
      : [];
  const missing = [
    ...(open(c) ? ['whether it is sealed or has a cistern'] : []),
    ...(c.missing.length > 0 ? c.missing : holds),
  ];
  const say = !open(c) && c.missing.length === 0 ? 'content' : 'cantTell';
  return [{ ...shared, outcome: 'cantTell', say, found: c.there.hi === null ? null : c.there, missing }];
}

export default defineRule<Params>({
  id: 'heating/vessel',
  topic: 'heating',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'en-12828', clause: 'annex D', table: 'heating-vessel' }],
  needs: ['the vessel in the sheet of the boiler', 'what the system holds'],
  params: () => ({
    relief: figure('heating-vessel', 'relief', 'bar'),
    reserve: figure('heating-vessel', 'reserve', 'litres'),
  }),
  judge: (given) => vesselChecks(given).flatMap((c) => faultOf(given, c)),
  say: {
    fault: {
      title: 'The vessel at the {what} is too small for the water in the system',
      why: 'What heated water grows by has nowhere to go: the relief valve lifts each time it is hot, and the pressure is gone when it is cold.',
      todo: 'Set a second vessel on the return, or a larger one; their litres add up.',
    },
    cantTell: {
      title: "Can't tell whether the vessel is large enough",
      why: 'Not known: {missing}. One that is too small lifts the relief valve each time it is hot.',
      todo: 'Take the vessel from the sheet of the boiler, and tell what is known of the old system.',
    },
    content: {
      title: 'Whether the vessel at the {what} is large enough hangs on the water in the old system',
      why: 'Not known: {missing}. One that is too small lifts the relief valve each time it is hot.',
      todo: 'Count the radiators on the old pipe and put in what they hold; where that cannot be done, price a second vessel.',
    },
    pass: 'The vessel takes what the water grows by.',
  },
  examples: [
    { name: 'a small system', given: () => waterHouse({ boiler: { vesselLitres: 8 } }), expect: 'pass' },
    {
      name: 'one radiator that holds a great deal',
      given: () => waterHouse({ boiler: { vesselLitres: 8 }, radiator: { litres: 55 }, tails: { litresBehind: 300 } }),
      expect: 'check',
    },
    { name: 'its sheet not at hand', given: () => waterHouse(), expect: 'cantTell' },
    {
      name: 'nobody knows what lies behind old tails',
      given: () => waterHouse({ boiler: { vesselLitres: 8 }, tails: {} }),
      expect: 'cantTell',
    },
    {
      name: 'the litres behind old tails only by what is usual',
      given: () => waterHouse({ boiler: { vesselLitres: 8 }, tails: { heatingKw: 12 } }),
      expect: 'cantTell',
    },
    { name: 'nothing is changed', given: () => waterHouse({ option: null }), expect: 'pass' },
  ],
});

import { type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { assess } from '../../preheat/assess.ts';
import { type Preheat, preheatsOf } from '../../preheat/preheats.ts';
import { valveFaults } from '../../preheat/valve-faults.ts';
import { midSentence, sayAll, sayPoint } from '../../say-names.ts';
import { GOOD, preheatHouse } from './houses.ts';

type Params = { readonly above: Figure; readonly to: Figure };

interface Judged {
  readonly bad: string[];
  readonly untold: string[];
  readonly worst: boolean;
}

function judgeOne(given: Given, preheat: Preheat, above: number): Judged {
  const { vessel, valves, past, outletValve, outlets } = preheat;
  const { states, inlet } = assess(given, preheat);
  const [high] = states;
  const bad: string[] = [];
  const untold: string[] = [];
  let worst = false;
  const mixing = [...valves.filter((v) => v.kind === 'mixing-valve'), past?.valve, outletValve].flatMap((v) => v ?? []);
  for (const valve of new Map(mixing.map((v) => [v.id, v])).values()) {
    const faults = valveFaults(given, valve);
    const say = midSentence(sayPoint(given.plan, valve.id));
    bad.push(...faults.bad.map((b) => `the ${say} ${b}`));
    if (vessel.option !== null || valve.option !== null) untold.push(...faults.untold);
    worst ||= faults.letsHotBy;
  }
  if (past && past.bare.length > 0) {
    bad.push(
      `what goes past the heater comes to the ${midSentence(sayPoint(given.plan, past.bare[0]?.id ?? ''))} unmixed`,
    );
    worst = true;
  }
  const hotter = high?.vessel.told === true && high.vessel.c > above;
  // What the inlet rule stops already wants the same valve.
  if (hotter && mixing.length === 0 && outlets.length > 0 && inlet !== 'stop')
    bad.push('no valve blends it on its way to the outlets');
  return { bad, untold, worst };
}

function judge(given: Given, { above, to }: Params): Fault[] {
  if (above.is !== 'known' || to.is !== 'known') return [];
  const byVessel = new Map<string, Preheat[]>();
  for (const p of preheatsOf(given)) byVessel.set(p.vessel.id, [...(byVessel.get(p.vessel.id) ?? []), p]);
  return [...byVessel].flatMap(([vessel, preheats]): Fault[] => {
    const judged = preheats.map((p) => judgeOne(given, p, above.lo));
    const once = (of: readonly (readonly string[])[]): string[] => [...new Set(of.flat())];
    const [bad, untold] = [once(judged.map((j) => j.bad)), once(judged.map((j) => j.untold))];
    const record = preheats[0]?.vessel;
    const out = record?.connections.find((c) => given.network.kinds.circuit(c.service) === 'hot');
    const shared = {
      ids: [vessel],
      words: {
        vessel: midSentence(sayPoint(given.plan, vessel)),
        bad: sayAll(bad),
        above: above.lo.toFixed(0),
        to: to.lo.toFixed(0),
      },
      at: out ? atVertex(given.network, `${vessel}/${out.id}`) : null,
    };
    if (bad.length > 0) {
      const high = typeof record?.fields.highestC === 'number' ? exact(record.fields.highestC, '°C', 0, 'page') : null;
      return [{ ...shared, outcome: judged.some((j) => j.worst) ? 'stop' : 'check', found: high, unverified: false }];
    }
    return untold.length > 0 ? [{ ...shared, outcome: 'cantTell', missing: untold }] : [];
  });
}

const hot = { highestC: 90 };

export default defineRule<Params>({
  id: 'preheat/blending',
  topic: 'water',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [
    { source: 'textbook-hot-water', clause: 'stores that may get hotter: in-line blending', table: 'preheat-limits' },
    { source: 'document-g-recalled', clause: '3.65' },
  ],
  needs: ['the mixing and diverting valves behind the vessel', 'the cold that is mixed in'],
  params: () => ({ above: figure('preheat-limits', 'blending above'), to: figure('preheat-limits', 'blended to') }),
  judge,
  say: {
    fault: {
      title: 'Hot water of the {vessel} is not held back as it should be',
      why: 'As drawn, {bad}. On a hot day the vessel scalds whoever stands under the shower: a mixing valve needs cold of the same pressure, has to shut when that fails, and check valves keep one side out of the other.',
      todo: 'Put that right. A store that may get above {above} °C is blended in line to at most {to} °C.',
    },
    cantTell: {
      title: "Can't tell whether the hot water of the {vessel} is held back",
      why: 'Not known: {missing}.',
      todo: 'Read it from the sheet of the valve, and set it there.',
    },
    pass: 'A mixing valve with balanced cold that fails shut stands between it and the outlets, or it never gets so hot.',
  },
  examples: [
    {
      name: 'a good mixing valve ahead of a combi',
      given: () => preheatHouse({ heater: 'boiler', heaterFields: { inletMaxC: 30 }, mixing: { setC: 28, ...GOOD } }),
      expect: 'pass',
    },
    {
      name: 'a valve that stays open when the cold fails',
      given: () => preheatHouse({ mixing: { setC: 50, hasChecks: true, failsShut: false } }),
      expect: 'stop',
    },
    {
      name: 'its cold not drawn',
      given: () => preheatHouse({ mixing: { setC: 50, ...GOOD }, mixingCold: 'none' }),
      expect: 'stop',
    },
    {
      name: 'its cold off the main',
      given: () => preheatHouse({ mixing: { setC: 50, ...GOOD }, mixingCold: 'main' }),
      expect: 'check',
    },
    {
      name: 'no check valves',
      given: () => preheatHouse({ mixing: { setC: 50, failsShut: true, hasChecks: false } }),
      expect: 'check',
    },
    { name: 'nothing told of the valve', given: () => preheatHouse({ mixing: { setC: 50 } }), expect: 'cantTell' },
    {
      name: 'hotter than a store may be unblended',
      given: () => preheatHouse({ vessel: hot, heaterFields: { inletMaxC: 95 } }),
      expect: 'check',
      found: { lo: 90, hi: 90, tolerance: 0 },
      from: 'told on the vessel',
    },
    {
      name: 'the same, blended on the way to the shower',
      given: () => preheatHouse({ vessel: hot, heaterFields: { inletMaxC: 95 }, outlet: { setC: 48, ...GOOD } }),
      expect: 'pass',
    },
    {
      name: 'sent past a combi to a shower without a valve',
      given: () => preheatHouse({ heater: 'boiler', heaterFields: { inletMaxC: 60 }, diverting: { sendsAboveC: 48 } }),
      expect: 'stop',
    },
    {
      name: 'sent past a combi through a mixing valve',
      given: () =>
        preheatHouse({
          heater: 'boiler',
          heaterFields: { inletMaxC: 60 },
          diverting: { sendsAboveC: 48 },
          outlet: { setC: 46, ...GOOD },
        }),
      expect: 'pass',
    },
  ],
});

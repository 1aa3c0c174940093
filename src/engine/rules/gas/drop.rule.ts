import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import { pressureLimit } from '../../gas/pressure-limit.ts';
import type { GasAppliance } from '../../gas-system/solve-gas.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { midSentence } from '../../say-names.ts';

/** New pipe is cured by a size up; where only kept pipe could be wider, somebody has to measure first. */
function sayOf(given: Given, appliance: GasAppliance): string {
  const anyNew = appliance.path.some((id) => given.gas.sections.get(id)?.ask.kept === false);
  if (appliance.verdict === 'stop') return anyNew ? 'fault' : 'keptFault';
  return anyNew ? 'newPipe' : 'keptPipe';
}

function judgeOne(given: Given, a: GasAppliance): Fault[] {
  if (a.verdict === 'pass') return [];
  const { drop, working } = a.drop;
  const unfed = a.path.length === 0;
  const missing = [...new Set([...(unfed ? ['a meter that feeds it'] : []), ...a.load.missing, ...working.missing])];
  const shared = {
    ids: [a.point],
    words: { name: midSentence(a.name) },
    legs: a.path.flatMap((id) => given.gas.sections.get(id)?.section.legs ?? []),
    found: unfed ? null : drop,
    wanted: a.limit,
    limit: { id: `gas-drop/${given.plan.basis.gas}`, scope: a.point },
    at: atVertex(given.network, a.vertex),
    working: unfed ? null : working,
    cites: given.gas.cites,
  };
  if (a.verdict === 'cantTell')
    return [
      {
        outcome: 'cantTell',
        ...shared,
        missing: missing.length > 0 ? missing : ['a way through the ring or past two meters'],
      },
    ];
  return [{ outcome: a.verdict, ...shared, missing, say: sayOf(given, a) }];
}

const house = (size: string | null, kw: number | null, metres: number, option: string | null = 'A') =>
  example()
    .point('gas-meter', 'meter', [0, 0, 500])
    .point('boiler', 'boiler', [metres * 1000, 0, 1300], { inputKwHotWater: kw, inputBasis: 'gross' }, option)
    .run(
      'g',
      'gas',
      [
        { point: 'meter', connection: 'outlet' },
        [75, -115, 2300],
        [metres * 1000, -115, 2300],
        { point: 'boiler', connection: 'gas' },
      ],
      { size, option },
    ).plan;

export default defineRule({
  id: 'gas/drop',
  topic: 'gas',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'bs6891-2015', clause: 'pressure loss between meter and appliance' }],
  needs: ['heat input of every appliance', 'size and length of every section'],
  params: (given) => {
    const limit = pressureLimit(given.plan.basis.gas, given.plan.basis.editions);
    return {
      limit: limit
        ? { is: 'known' as const, ...limit.limit, cite: { table: '', ...limit.cite }, note: null }
        : {
            is: 'unknown' as const,
            say: 'the limit of the edition the job has pinned',
            cite: { source: 'bs6891-2015', clause: '', table: '' },
          },
    };
  },
  judge: (given) => given.gas.appliances.flatMap((a) => judgeOne(given, a)),
  say: {
    fault: {
      title: 'Too much gas drop to the {name}',
      why: 'With everything burning, the appliance is starved: it locks out, burns badly, or starves another.',
      todo: 'Take a larger size from the meter on, a shorter way, or fewer elbows; the way out that helps most is in the gas drop panel.',
    },
    keptFault: {
      title: 'Too much gas drop to the {name}',
      why: 'By its length and size the pipe that is there starves the appliance with everything burning.',
      todo: 'Measure the working pressure at the appliance with everything burning; where it is low, a larger size or a shorter way.',
    },
    newPipe: {
      title: 'Gas drop to the {name} may be over the limit',
      why: 'The limit lies inside what the figures leave open, so it may be passed or not.',
      todo: 'New pipe: go a size up on the section that loses most.',
    },
    keptPipe: {
      title: 'Gas drop to the {name} may be over the limit',
      why: 'The limit lies inside what the figures leave open, and the pipe on this way is there already.',
      todo: 'Old pipe: measure the working pressure at the appliance with everything burning.',
    },
    cantTell: {
      title: "Can't tell the gas drop to the {name}",
      why: 'The sum is missing: {missing}.',
      todo: 'Read it on site, or put in what is known: a bound is enough where it decides.',
    },
    pass: 'Gas drop is within the limit.',
  },
  examples: [
    { name: 'a short run of 28', given: () => house('28x0.9', 24, 5), expect: 'pass' },
    { name: 'the same in 15', given: () => house('15x0.7', 24, 5), expect: 'stop' },
    { name: 'the same in 15 that was always there', given: () => house('15x0.7', 24, 5, null), expect: 'stop' },
    { name: 'new pipe with the limit inside what is not known', given: () => house('22x0.9', 24, 28), expect: 'check' },
    { name: 'the same pipe, there already', given: () => house('22x0.9', 24, 28, null), expect: 'check' },
    {
      name: 'a boiler no meter feeds yet',
      given: () =>
        example()
          .point('boiler', 'boiler', [3000, 0, 1300], { inputKwHotWater: 24, inputBasis: 'gross' })
          .run('g', 'gas', [[0, -81, 900], [3000, -81, 900], { point: 'boiler', connection: 'gas' }]).plan,
      expect: 'cantTell',
    },
    { name: 'no input read', given: () => house('22x0.9', null, 5), expect: 'cantTell' },
  ],
});

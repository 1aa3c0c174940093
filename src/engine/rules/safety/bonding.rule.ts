import { type Figure, figure } from '../../../reference/figure.ts';
import { sayFigures } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atPoint } from '../../places.ts';
import { midSentence, sayAll, sayPoint } from '../../say-names.ts';
import { type Bond, bondsOf } from '../../space/bonds.ts';
import { add } from '../space/houses.ts';

type Params = { readonly conductor: Figure; readonly along: Figure };

const FROM = { outlet: 'from the outlet', entry: 'from where the pipe comes in' } as const;

/** What is wrong with a clamp that is there: its cable first, then its place. */
function ofClamp(given: Given, bond: Bond, { conductor, along }: Params): Fault[] {
  const { clamp } = bond;
  if (!clamp || conductor.is !== 'known' || along.is !== 'known') return [];
  const shared = {
    ids: [clamp.id],
    at: atPoint(given.plan, clamp.id),
    words: {
      name: sayPoint(given.plan, clamp.id),
      service: bond.service,
      from: FROM[bond.from],
      found: bond.along ? sayFigures(bond.along) : '',
      mm2: bond.conductor ? sayFigures(bond.conductor) : '',
      wanted: `${conductor.lo}`,
      most: `${along.lo}`,
    },
  };
  const faults: Fault[] = [];
  if (bond.conductor && bond.conductor.lo < conductor.lo)
    faults.push({ outcome: 'check', ...shared, found: bond.conductor, wanted: conductor, wantedIs: 'atLeast' });
  if (bond.beforeBranch === false) faults.push({ outcome: 'check', say: 'branch', ...shared, unverified: false });
  if (bond.along && bond.along.lo > along.lo) {
    const limit = { found: bond.along, wanted: along, wantedIs: 'atMost' as const, unverified: false };
    faults.push({ outcome: 'check', say: 'far', ...shared, ...limit });
  }
  const [worst] = faults;
  return worst ? [{ ...worst, more: faults.length - 1 }] : [];
}

function lackOf({ clamp, told, touched, conductor, along, service, source }: Bond): string[] {
  if (!touched || told !== null || (clamp === null && source.fields.incoming === 'plastic')) return [];
  if (clamp === null) return [`the clamp on the ${service} pipe`];
  const lack = conductor === null ? [`the size of the cable on the ${service} pipe`] : [];
  return along === null ? [...lack, `how far along the ${service} pipe its clamp is`] : lack;
}

function judge(given: Given, params: Params): Fault[] {
  const bonds = bondsOf(given);
  const wrong = bonds.flatMap((b): Fault[] => {
    if (b.clamp || b.told !== 'missing') return ofClamp(given, b, params);
    const words = { source: midSentence(sayPoint(given.plan, b.source.id)), wanted: '', most: '' };
    return [{ outcome: 'check', say: 'missing', ids: [b.source.id], at: atPoint(given.plan, b.source.id), words }];
  });
  const open = bonds.map((bond) => ({ bond, lack: lackOf(bond) })).filter((o) => o.lack.length > 0);
  const [first] = open;
  if (!first) return wrong;
  const told: Fault = {
    outcome: 'cantTell',
    ids: open.map(({ bond }) => bond.clamp?.id ?? bond.source.id),
    at: atPoint(given.plan, first.bond.source.id),
    words: { services: sayAll([...new Set(open.map(({ bond }) => bond.service))]) },
    missing: [...new Set(open.flatMap((o) => o.lack))],
    unverified: false,
  };
  return [...wrong, told];
}

/** New gas pipe from a meter, along a wall, a tee 400 along it, and a clamp at a place. */
function house(at: readonly [number, number, number] | null, fields = {}, meter = {}) {
  const e = example()
    .point('gas-meter', 'm', [0, 0, 300], meter, null)
    .run('g', 'gas', [{ point: 'm', connection: 'outlet' }, [75, -115, 1100], [75, -115, 1800]]);
  e.run('h', 'gas', [e.nodesOf('g')[1] ?? '', [1500, -115, 1100]]);
  if (at) add(e.plan, 'bonding-clamp', 'clamp', at, { pipe: 'gas', conductorMm2: 10, ...fields }, null, 0);
  return e.plan;
}

/** The outlet stands at 700; the clamp on the pipe with its middle so far above it. */
const ON = (mm: number): [number, number, number] => [75, -85, 670 + mm];

export default defineRule<Params>({
  id: 'safety/bonding',
  topic: 'safety',
  since: '2',
  basis: 'requirement',
  lifeSafety: true,
  cites: [
    { source: 'bonding-quotation', clause: 'regulation 544.1.2', table: 'bonding' },
    { source: 'bs-7671', clause: '544.1.1, a house supply', table: 'bonding' },
    { source: 'gas-safety-regulations-1998-d', clause: 'regulation 18(2)' },
  ],
  needs: ['the clamps on gas and water', 'the size of their cables'],
  params: () => ({
    conductor: figure('bonding', 'conductor', 'mm2'),
    along: figure('bonding', 'from meter', 'mm'),
  }),
  judge,
  say: {
    fault: {
      title: '{name}: cable of {mm2} mm² on the {service} pipe, and {wanted} is usual',
      why: 'In a fault the pipe becomes live, and a thin cable may not carry that until the fuse goes. {wanted} mm² is from memory.',
      todo: 'Report it in writing; an electrician decides whether the supply asks for more.',
    },
    branch: {
      title: '{name} sits after a branch of the {service} pipe',
      why: 'If that branch or what lies before it is cut, the rest of the house is no longer bonded.',
      todo: 'Have it moved to before the first branch, within {most} mm of the outlet or the place of entry.',
    },
    far: {
      title: '{name} sits {found} mm along the {service} pipe {from}; at most {most} is wanted',
      why: 'Far along, work on the pipe before it leaves the house without its bond.',
      todo: 'Have it moved nearer where that is practicable, before any branch.',
    },
    missing: {
      title: 'No main bonding at the {source}',
      why: 'In a fault metal pipe may become live and stay so, in every room it reaches.',
      todo: 'Tell the owner in writing that an electrician must look at it; use a temporary bond before cutting metal pipe.',
    },
    cantTell: {
      title: "Can't tell about the main bonding of {services}",
      why: 'New pipe starts where it comes in, and whoever joins it should tell of bonding that is missing or thin. Not known: {missing}.',
      todo: 'Look, draw the clamp and read its cable, or tell on the meter or stop tap that there is none.',
    },
    pass: 'Main bonding is where it belongs, or this job leaves the places of entry alone.',
  },
  examples: [
    {
      name: 'on the first of the pipe',
      given: () => house(ON(300)),
      expect: 'pass',
    },
    {
      name: 'a thin cable',
      given: () => house(ON(300), { conductorMm2: 6 }),
      expect: 'check',
      found: { lo: 6, hi: 6, tolerance: 0 },
      from: 'told on the clamp',
    },
    { name: 'after the tee', given: () => house([1000, -85, 1070]), expect: 'check' },
    {
      name: 'far from the meter',
      given: () => house(ON(300), { fromMeterMm: 750 }),
      expect: 'check',
      found: { lo: 750, hi: 750, tolerance: 0 },
      from: 'told on the clamp',
    },
    { name: 'looked for and not there', given: () => house(null, {}, { mainBonding: 'missing' }), expect: 'check' },
    { name: 'not needed', given: () => house(null, {}, { mainBonding: 'notNeeded' }), expect: 'pass' },
    { name: 'nothing drawn where gas starts', given: () => house(null), expect: 'cantTell' },
    { name: 'cable not read', given: () => house(ON(300), { conductorMm2: null }), expect: 'cantTell' },
  ],
});

import type { Point } from '../../../plan/records/pipework.ts';
import { constant, type Figure, word } from '../../../reference/figure.ts';
import { exact, type Quantity } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { type CondensateDrain, condensateDrains } from '../../drainage/condensate-drains.ts';
import { kindOf } from '../../drainage/drains.ts';
import { ExamplePlan } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { room } from './houses.ts';

interface Said {
  readonly outcome: Fault['outcome'];
  readonly say: string;
  readonly missing: string[];
  readonly found?: Quantity;
  readonly wanted?: Quantity;
}

/** A pump that hardly lifts or runs is not asked how far it can. */
const HARDLY_M = constant('drain-judgement', 'pumped by less', 'mm') / 1000;

const told = (point: Point, key: string): number | null => {
  const value = point.fields[key];
  return typeof value === 'number' ? value : null;
};

/** How far above the pump its own pipe rises, m; null where a place is missing. */
function liftOf(out: CondensateDrain): number | null {
  const from = out.steps[0]?.a?.at.z;
  const heights = out.steps.flatMap((s) => [s.a?.at.z, s.b?.at.z]);
  if (from === undefined || heights.some((z) => z === undefined)) return null;
  return (Math.max(...heights.map((z) => z ?? from)) - from) / 1000;
}

const lengthOf = (out: CondensateDrain): number =>
  out.steps.reduce((sum, s) => sum + (s.edge.lengthMm.value ?? s.edge.lengthMm.lo), 0) / 1000;

function against(found: number | null, most: number | null, say: string, what: string): Said[] {
  if (found === null || found <= HARDLY_M) return [];
  if (most === null) return [{ outcome: 'cantTell', say: 'cantTell', missing: [what] }];
  if (found <= most) return [];
  return [{ outcome: 'stop', say, missing: [], found: exact(found, 'm', 1), wanted: exact(most, 'm', 1, 'page') }];
}

/** The worst thing, with everything that is missing in one "can't tell". */
function judgePump(
  point: Point,
  out: CondensateDrain | undefined,
  allowed: Point['fields'][string] | undefined,
): Said[] {
  const { overflowStops } = point.fields;
  const all: Said[] = [];
  if (allowed === false) all.push({ outcome: 'stop', say: 'notAllowed', missing: [] });
  if (overflowStops === false) all.push({ outcome: 'stop', say: 'fault', missing: [] });
  if (overflowStops !== true && overflowStops !== false)
    all.push({ outcome: 'cantTell', say: 'cantTell', missing: ['whether its overflow switch stops the boiler'] });
  if (out) {
    all.push(...against(liftOf(out), told(point, 'liftM'), 'tooHigh', 'how high it lifts'));
    all.push(...against(lengthOf(out), told(point, 'runM'), 'tooFar', 'how far it pumps'));
    if ((out.coldM?.lo ?? 0) > HARDLY_M) all.push({ outcome: 'check', say: 'outside', missing: [] });
  }
  const rank = ['stop', 'check', 'cantTell'];
  const [worst] = [...all].sort((a, b) => rank.indexOf(a.outcome) - rank.indexOf(b.outcome));
  if (!worst) return [];
  const missing = worst.outcome === 'cantTell' ? all.flatMap((s) => s.missing) : [];
  return [{ ...worst, missing }];
}

function judge(given: Given): Fault[] {
  const drains = condensateDrains(given);
  return Object.values(given.plan.points).flatMap((point): Fault[] => {
    if (point.kind !== 'condensate-pump' || !given.network.alive.has('points', point.id)) return [];
    const mine = drains.filter((d) => d.source?.point === point.id || d.end?.point === point.id);
    if (!mine.some((d) => d.steps.some((s) => s.edge.state === 'new'))) return [];
    const out = mine.find((d) => kindOf(given, d.source) === 'condensate-pump');
    const at = out?.source ?? mine[0]?.end;
    const from = mine.find((d) => d.end?.point === point.id)?.source?.point ?? '';
    const allowed = given.plan.points[from]?.fields.condensatePumpAllowed;
    return judgePump(point, out, allowed).map(({ found, wanted, ...said }) => ({
      ...said,
      ids: [point.id],
      words: { pump: midSentence(sayPoint(given.plan, point.id)) },
      found: found ?? null,
      wanted: wanted ?? null,
      legs: (out ?? mine[0])?.steps.map((s) => s.edge.id) ?? [],
      at: atVertex(given.network, at?.vertex),
    }));
  });
}

const HOSE = { kind: 'plastic', size: '10', joining: 'pushFit' } as const;
const GOOD = { liftM: 4, runM: 20, overflowStops: true };

const pumped = (fields: Point['fields'], out = false) => {
  const e = room();
  e.point('condensate-pump', 'pump', [-2500, -1500, 300], fields);
  e.point('standpipe', 's', [out ? 800 : -500, -1500, 0]);
  const x = out ? 800 : -500;
  return e.run(
    'k',
    'condensate',
    [
      { point: 'pump', connection: 'out' },
      [-2437.5, -1565, 2150],
      [x, -1565, 2150],
      [x, -1530, 2150],
      { point: 's', connection: 'in' },
    ],
    HOSE,
  ).plan;
};

export default defineRule<Readonly<Record<string, Figure>>>({
  id: 'condensate/pump',
  topic: 'drains',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'only where gravity cannot reach', table: 'condensate-ends' }],
  needs: ['whether the overflow switch stops the boiler', 'how high and how far it pumps'],
  params: () => ({}),
  judge: (given) => (word('condensate-ends', 'condensate-pump', 'condensate').is === 'known' ? judge(given) : []),
  say: {
    fault: {
      title: 'The {pump} does not stop the boiler when it is full',
      why: 'When it fails or its pipe blocks, the boiler goes on making water and the pump runs over.',
      todo: "Wire its high-level switch into the boiler's controls.",
    },
    notAllowed: {
      title: 'The sheet of the boiler allows no condensate pump, and {pump} takes its condensate',
      why: 'The appliance is proven with what its sheet allows, and with nothing else.',
      todo: 'Take the condensate away by gravity, or ask the maker of the boiler in writing.',
    },
    tooHigh: {
      title: 'The {pump} has to lift too high',
      why: 'Its pipe rises higher than its sheet says it lifts, so it runs and moves nothing.',
      todo: 'A lower way, or a pump that lifts more.',
    },
    tooFar: {
      title: 'The {pump} has to pump too far',
      why: 'Its pipe is longer than its sheet says it pumps along.',
      todo: 'A shorter way, or a stronger pump.',
    },
    outside: {
      title: 'The pipe of the {pump} goes outside',
      why: 'A small-bore pipe full of standing water freezes before anything else.',
      todo: 'Let it end indoors.',
    },
    cantTell: {
      title: "Can't tell whether the {pump} will do",
      why: 'Not known: {missing}.',
      todo: 'Read it off its sheet, and set it on the pump.',
    },
    pass: 'It lifts as high and as far as it has to, and stops the boiler when it is full.',
  },
  examples: [
    { name: 'strong enough, and wired', given: () => pumped(GOOD), expect: 'pass' },
    { name: 'not wired', given: () => pumped({ ...GOOD, overflowStops: false }), expect: 'stop' },
    {
      name: 'a weak pump',
      given: () => pumped({ ...GOOD, liftM: 1.5 }),
      expect: 'stop',
      found: { lo: 1.7, hi: 1.7, tolerance: 0.01 },
      from: 'from 450 up to 2150',
    },
    { name: 'a short reach', given: () => pumped({ ...GOOD, runM: 3 }), expect: 'stop' },
    {
      name: 'a boiler whose sheet allows none',
      given: () => {
        const plan = pumped(GOOD);
        const e = new ExamplePlan();
        Object.assign(e.plan, plan);
        e.point('boiler', 'b', [-2500, -1500, 1200], { condensatePumpAllowed: false });
        const into = [
          { point: 'b', connection: 'condensate' },
          { point: 'pump', connection: 'in' },
        ];
        return e.run('k0', 'condensate', into, { kind: 'plastic-overflow', size: '21.5', joining: 'solvent' }).plan;
      },
      expect: 'stop',
    },
    { name: 'out through the wall', given: () => pumped(GOOD, true), expect: 'check' },
    { name: 'nobody read the sheet', given: () => pumped({}), expect: 'cantTell' },
  ],
});

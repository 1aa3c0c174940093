import type { Point } from '../../../plan/records/pipework.ts';
import { type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { discharges, type TundishPipe } from '../../drainage/discharges.ts';
import { isNew } from '../../drainage/drains.ts';
import { aboveGround } from '../../drainage/outside-height.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayPoint, sayRun } from '../../say-names.ts';
import { away, LOW } from './houses.ts';

type Params = { readonly low: Figure; readonly gutter: Figure };
type Said = Pick<Fault, 'outcome' | 'say' | 'missing' | 'found' | 'wanted' | 'wantedIs'>;

const ask = (...missing: string[]): Said[] => [{ outcome: 'cantTell', say: 'cantTell', missing }];

function ofLow(given: Given, pipe: TundishPipe, end: Point, low: Figure): Said[] {
  if (low.is !== 'known') return [];
  const above = aboveGround(given, end, pipe.steps[pipe.steps.length - 1]?.b?.at ?? null);
  if (above !== null && above > low.lo)
    return [
      {
        outcome: end.fields.sharedGround === true ? 'stop' : 'check',
        say: end.fields.sharedGround === true ? 'overPath' : 'high',
        found: exact(above, 'mm', 0),
        wanted: low,
      },
    ];
  const missing = [
    ...(above === null ? ['how high above the ground it ends'] : []),
    ...(typeof end.fields.caged !== 'boolean' ? ['whether it has a wire cage'] : []),
  ];
  if (missing.length > 0) return ask(...missing);
  return end.fields.caged === false ? [{ outcome: 'check', say: 'bare' }] : [];
}

function ofOutside(given: Given, pipe: TundishPipe, end: Point, { low, gutter }: Params): Said[] {
  const { ends, gutterM } = end.fields;
  if (ends === 'gully') return [];
  if (ends === 'hopper') return [{ outcome: 'note', say: 'hopper' }];
  if (ends === 'roof') {
    if (typeof gutterM !== 'number') return ask('how far it is from plastic gutters');
    if (gutter.is !== 'known' || gutterM >= gutter.lo) return [];
    return [{ outcome: 'stop', say: 'gutter', found: exact(gutterM, 'm', 1), wanted: gutter, wantedIs: 'atLeast' }];
  }
  return ofLow(given, pipe, end, low);
}

function saidOf(given: Given, pipe: TundishPipe, params: Params): Said[] {
  const end = pipe.end === null ? null : (given.plan.points[pipe.end.point] ?? null);
  if (end === null) {
    const last = given.network.vertices.get(pipe.steps[pipe.steps.length - 1]?.to ?? '');
    const open = last && last.point === null && last.gone === null && !last.capped && last.edges.length === 1;
    return open ? [{ outcome: 'cantTell', say: 'open', missing: ['where it ends'] }] : [];
  }
  switch (end.kind) {
    case 'gully':
      if (end.fields.belowGrating === false) return [{ outcome: 'check', say: 'overGrating' }];
      return [];
    case 'soil-stack':
      if (end.fields.heatSafe === true) return [{ outcome: 'note', say: 'stack' }];
      return end.fields.heatSafe === false
        ? [{ outcome: 'stop', say: 'fault' }]
        : ask('whether the stack stands the heat');
    case 'outside-end':
      return ofOutside(given, pipe, end, params);
    default:
      return [];
  }
}

/** One thing to ask is asked once, however many pipes end so. */
function askedOnce(all: readonly Fault[]): Fault[] {
  const asked = new Map<string, Fault>();
  return [
    ...all.filter((f) => {
      if (f.outcome !== 'cantTell') return true;
      const key = `${f.say}|${f.missing?.join('|')}`;
      const first = asked.get(key);
      asked.set(
        key,
        first ? { ...first, more: (first.more ?? 0) + 1, legs: [...(first.legs ?? []), ...(f.legs ?? [])] } : f,
      );
      return false;
    }),
    ...asked.values(),
  ];
}

function judge(given: Given, params: Params): Fault[] {
  return askedOnce(allEnds(given, params));
}

function allEnds(given: Given, params: Params): Fault[] {
  return discharges(given).tundishPipes.flatMap((pipe): Fault[] => {
    const last = pipe.steps[pipe.steps.length - 1];
    if (!last || !isNew(pipe)) return [];
    const end = pipe.end?.point;
    return saidOf(given, pipe, params).map((said) => ({
      ...said,
      ids: end === undefined ? [last.edge.run] : [last.edge.run, end],
      legs: [last.edge.id],
      words: {
        run: sayRun(given.plan, last.edge.run),
        end: end === undefined ? 'end' : midSentence(sayPoint(given.plan, end)),
      },
      at: atVertex(given.network, last.to),
    }));
  });
}

export default defineRule<Params>({
  id: 'discharge/end',
  topic: 'drains',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'document-g-quoted', clause: '3.60 to 3.63', table: 'discharge-limits' }],
  needs: ['where and how it ends'],
  params: () => ({
    low: figure('discharge-limits', 'low end', 'mm'),
    gutter: figure('discharge-limits', 'gutter', 'm'),
  }),
  judge,
  say: {
    fault: {
      title: '{run} ends in a {end} that does not stand the heat',
      why: 'Boiling water and steam soften a plastic stack, and its joints let go inside the wall.',
      todo: 'Take it outside, or to a stack that is proven for it.',
    },
    stack: {
      title: '{run} ends in the {end}',
      why: 'A branch for it carries no sanitary fitting, has a seal that is no water trap, and is marked along its length.',
      todo: 'Set a mechanical seal in it, and mark it.',
    },
    overPath: {
      title: '{run} ends high over a place where people walk',
      why: 'When a valve opens, boiling water and steam come down on whoever passes.',
      todo: 'Bring it down to the ground with a cage, or below the grating of a gully.',
    },
    high: {
      title: '{run} ends high above the ground',
      why: 'Boiling water and steam spread the more the higher they come out.',
      todo: 'Bring it down to the ground with a cage, or below the grating of a gully.',
    },
    bare: {
      title: '{run} ends at the ground with no cage',
      why: 'A hand or a foot can come to what leaves it boiling.',
      todo: 'A wire cage that leaves the end in sight.',
    },
    overGrating: {
      title: '{run} ends above the grating of the {end}',
      why: 'Boiling water splashes off a grating.',
      todo: 'Take it below the grating and above the water.',
    },
    hopper: {
      title: '{run} ends in a hopper',
      why: 'It stands the heat only where hopper and downpipe are metal, and the end has to be in sight.',
      todo: 'Look at what it is made of.',
    },
    gutter: {
      title: '{run} ends on a roof too near plastic gutters',
      why: 'What runs off the roof is hot enough to sag them.',
      todo: 'End it further away, or bring it down.',
    },
    open: {
      title: '{run} ends nowhere yet',
      why: 'Where boiling water comes out decides whether it may come out at all.',
      todo: 'Draw it on to a gully or an outside end, and tell how it is made.',
    },
    cantTell: {
      title: "Can't tell whether {run} ends well",
      why: 'Not known: {missing}.',
      todo: 'Set it on the {end}.',
    },
    pass: 'It ends where it harms nobody.',
  },
  examples: [
    { name: 'low, with a cage', given: () => away(), expect: 'pass' },
    {
      name: 'below the grating of a gully',
      given: () => away({ kind: 'gully', end: {}, connection: 'discharge' }),
      expect: 'pass',
    },
    {
      name: 'above the grating',
      given: () => away({ kind: 'gully', end: { belowGrating: false }, connection: 'discharge' }),
      expect: 'check',
    },
    { name: 'low, no cage', given: () => away({ end: { ...LOW, caged: false } }), expect: 'check' },
    {
      name: 'a metre up over a path',
      given: () => away({ end: { ...LOW, aboveGroundMm: 1000, sharedGround: true } }),
      expect: 'stop',
      found: { lo: 1000, hi: 1000, tolerance: 0 },
      from: 'told on its end',
    },
    { name: 'a metre up', given: () => away({ end: { ...LOW, aboveGroundMm: 1000 } }), expect: 'check' },
    { name: 'into a hopper', given: () => away({ end: { ends: 'hopper' } }), expect: 'note' },
    { name: 'on a roof, far from gutters', given: () => away({ end: { ends: 'roof', gutterM: 4 } }), expect: 'pass' },
    { name: 'on a roof by the gutter', given: () => away({ end: { ends: 'roof', gutterM: 1 } }), expect: 'stop' },
    { name: 'on a roof, nobody measured', given: () => away({ end: { ends: 'roof' } }), expect: 'cantTell' },
    { name: 'into a stack', given: () => away({ kind: 'soil-stack', end: {}, alongM: 2 }), expect: 'cantTell' },
    {
      name: 'into a plastic stack',
      given: () => away({ kind: 'soil-stack', end: { heatSafe: false } }),
      expect: 'stop',
    },
    {
      name: 'into a stack that is proven',
      given: () => away({ kind: 'soil-stack', end: { heatSafe: true } }),
      expect: 'note',
    },
    { name: 'unfinished', given: () => away({ kind: null }), expect: 'cantTell' },
  ],
});

import type { Point } from '../../../plan/records/pipework.ts';
import { type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { discharges } from '../../drainage/discharges.ts';
import { type Drain, isNew } from '../../drainage/drains.ts';
import { aboveGround } from '../../drainage/outside-height.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayPoint, sayRun } from '../../say-names.ts';
import { endingAt, LOW, relief, usual } from './houses.ts';

type Params = { readonly low: Figure };
type Said = Pick<Fault, 'outcome' | 'say' | 'missing' | 'found' | 'wanted'>;

/** Drains of plastic with a trap in them, or with a pump: near-boiling water has no business there. */
const NEVER = new Set(['sink-waste', 'standpipe', 'soil-stack', 'rainwater-pipe', 'soakaway', 'condensate-drain']);
/** Ends that are well made where they are low: the rest are judged by what they are. */
const DOWN = new Set(['turnedBack', 'lowLevel', 'gully']);

function ofOpenEnd(given: Given, drain: Drain, end: Point | null, low: Figure): Said[] {
  if (low.is !== 'known') return [];
  const last = drain.steps[drain.steps.length - 1];
  const above = aboveGround(given, end, last?.b?.at ?? null);
  const how = end?.fields.ends;
  if (above !== null && above > low.lo) {
    const shared = end?.fields.sharedGround;
    const found = exact(above, 'mm', 0);
    // High over a place where people walk it must not stay; elsewhere somebody has to look what is below.
    const outcome = shared === true ? 'stop' : 'check';
    return [{ outcome, say: shared === true ? 'overPath' : 'high', found, wanted: low }];
  }
  if (how === 'hopper' || how === 'roof') return [{ outcome: 'check', say: 'hopper' }];
  const missing = [
    ...(above === null ? ['how high above the ground it ends'] : []),
    ...(typeof how === 'string' && DOWN.has(how) ? [] : ['whether its end is turned back to the wall']),
  ];
  return missing.length === 0 ? [] : [{ outcome: 'cantTell', say: 'cantTell', missing }];
}

function saidOf(given: Given, drain: Drain, low: Figure): Said[] {
  const end = drain.end === null ? null : (given.plan.points[drain.end.point] ?? null);
  if (end === null) {
    const last = given.network.vertices.get(drain.steps[drain.steps.length - 1]?.to ?? '');
    return last && last.point === null && last.gone === null && !last.capped && last.edges.length === 1
      ? ofOpenEnd(given, drain, null, low)
      : [];
  }
  if (end.kind === 'condensate-pump') return [{ outcome: 'stop', say: 'pump' }];
  if (NEVER.has(end.kind)) return [{ outcome: 'stop', say: 'fault' }];
  return end.kind === 'outside-end' ? ofOpenEnd(given, drain, end, low) : [];
}

function judge(given: Given, { low }: Params): Fault[] {
  return discharges(given).reliefs.flatMap((drain): Fault[] => {
    const last = drain.steps[drain.steps.length - 1];
    if (!isNew(drain) || !last) return [];
    const end = drain.end?.point;
    return saidOf(given, drain, low).map((said) => ({
      ...said,
      ids: end === undefined ? [last.edge.run] : [last.edge.run, end],
      legs: [last.edge.id],
      words: {
        run: sayRun(given.plan, last.edge.run),
        end: end === undefined ? 'end' : midSentence(sayPoint(given.plan, end)),
      },
      at: atVertex(given.network, last.to),
      unverified: true,
    }));
  });
}

const high = (sharedGround: boolean | null) =>
  endingAt('outside-end', { ends: 'turnedBack', aboveGroundMm: 2800, sharedGround });

function levelled(z: number) {
  const plan = relief([
    [184, -81, 1200],
    [184, 500, 1190],
    [184, 500, z],
  ]);
  plan.grounds.g = {
    id: 'g',
    line: [
      { x: 0, y: 600, z: 0 },
      { x: 3000, y: 600, z: 0 },
    ],
    kind: 'path',
    sureness: 'seen',
  };
  return plan;
}

export default defineRule<Params>({
  id: 'relief/end',
  topic: 'drains',
  since: '1',
  basis: 'requirement',
  lifeSafety: true,
  cites: [{ source: 'bs-6798', clause: 'discharge from the safety valve', table: 'relief-limits' }],
  needs: ['how and how high it ends'],
  params: () => ({ low: figure('relief-limits', 'low end', 'mm') }),
  judge,
  say: {
    fault: {
      title: '{run} ends in the {end}',
      why: 'Near-boiling water softens plastic waste, blows its trap, and nobody sees that the valve has opened.',
      todo: 'Take it outside to low level where it can be seen, or to a tundish with a drain that stands the heat.',
    },
    pump: {
      title: '{run} ends in the {end}',
      why: 'A condensate pump stands neither the heat nor the rush of a safety valve.',
      todo: 'Keep the two apart: re-route it, or use a relief kit that the appliance allows.',
    },
    overPath: {
      title: '{run} ends high over a place where people walk',
      why: 'When the valve opens it spits near-boiling water on whoever passes below.',
      todo: 'Bring it down the wall to low level, turned back to the wall; a shared wall wants consent.',
    },
    high: {
      title: '{run} ends high up',
      why: 'When the valve opens it spits near-boiling water on what is below.',
      todo: 'Bring it down to low level, or look that nobody ever stands there, and set it on its end.',
    },
    hopper: {
      title: '{run} ends on a roof or in a hopper',
      why: 'Near-boiling water harms felt and plastic rainwater goods.',
      todo: 'Look what it runs over and into: metal only, and the end in sight.',
    },
    cantTell: {
      title: "Can't tell whether {run} ends well",
      why: 'Not known: {missing}. It must end low, in sight, turned back to the wall.',
      todo: 'Set an outside end on it, and tell how it is made.',
    },
    pass: 'It ends low, where it harms nobody.',
  },
  examples: [
    { name: 'low and turned back', given: () => endingAt('outside-end', LOW), expect: 'pass' },
    { name: 'below the grating of a gully', given: () => endingAt('gully', {}, 'discharge'), expect: 'pass' },
    {
      name: 'cut short over a path',
      given: () => high(true),
      expect: 'stop',
      found: { lo: 2800, hi: 2800, tolerance: 0 },
      from: 'told on its end',
    },
    { name: 'cut short, nobody told over what', given: () => high(null), expect: 'check' },
    { name: 'an open end high above levelled ground', given: () => levelled(900), expect: 'check' },
    { name: 'an open end drawn low', given: () => levelled(150), expect: 'cantTell' },
    { name: 'on a roof', given: () => endingAt('outside-end', { ...LOW, ends: 'roof' }), expect: 'check' },
    { name: 'into a condensate pump', given: () => endingAt('condensate-pump'), expect: 'stop' },
    { name: 'into a sink waste', given: () => endingAt('sink-waste', {}, 'condensate'), expect: 'stop' },
    { name: 'nothing told of its end', given: () => usual(), expect: 'cantTell' },
  ],
});

import type { Xyz } from '../../../plan/records/parts.ts';
import { figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { findThreadings, type Threading } from '../../building/threading.ts';
import { sayVoid } from '../../building/void-parts.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atEdge } from '../../places.ts';
import { sayAll, sayRun } from '../../say-names.ts';
import { joisted } from './joist-examples.ts';

const FROM = { bay: 'between two joists', a: 'beyond the first joist', b: 'beyond the last joist' } as const;

/** "x 0": a place at the edge of the void, on the axis the pipe runs along. */
function saidEdge({ meetings }: Threading, p: Xyz): string {
  const body = meetings[0]?.pipe.body;
  const alongX = !body || Math.abs(body.b.x - body.a.x) >= Math.abs(body.b.y - body.a.y);
  return alongX ? `x ${Math.round(p.x)}` : `y ${Math.round(p.y)}`;
}

function toFault(given: Given, all: readonly Threading[]): Fault[] {
  const worst = [...all].sort((a, b) => (b.answer?.joints ?? 0) - (a.answer?.joints ?? 0) || b.pipeMm - a.pipeMm)[0];
  const first = worst?.meetings[0];
  if (!worst || !first) return [];
  const shared = {
    // Of the space alone: what is written beside it stays when one more pipe goes the same way.
    ids: [first.space.id],
    legs: all.flatMap((t) => t.meetings.map((m) => m.pipe.edge.id)),
    found: exact(worst.pipeMm, 'mm', 0),
    at: atEdge(given.network, first.pipe.edge.id),
    more: new Set(all.flatMap((t) => t.meetings.map((m) => m.run))).size - 1,
  };
  const runs = [...new Set(all.flatMap((t) => t.meetings.map((m) => m.run)))].sort();
  const named = {
    run: runs.length === 1 ? sayRun(given.plan, first.run) : `${runs.length} rigid pipes`,
    worst: runs.length === 1 ? '' : `Worst is ${sayRun(given.plan, first.run)}. `,
    space: sayVoid(first.space),
    count: `${worst.meetings.length}`,
  };
  const { answer } = worst;
  if (!answer) return [{ outcome: 'cantTell', ...shared, words: named, missing: ['the breadth of the joists'] }];
  const open = worst.openAt.map((p) => saidEdge(worst, p)).sort();
  const { drillOn } = worst;
  return [
    {
      outcome: 'check',
      ...shared,
      say: open.length > 0 ? 'fault' : drillOn ? 'drillOn' : 'closed',
      words: {
        ...named,
        length: (worst.pipeMm / 1000).toFixed(1),
        longest: `${Math.round(answer.longest.lo)}`,
        from: FROM[answer.from],
        joints: answer.joints === 1 ? '1 joint' : `${answer.joints} joints`,
        open: sayAll(open),
        more: drillOn ? (drillOn.joists === 1 ? '1 more joist' : `${drillOn.joists} more joists`) : '',
        edge: drillOn ? saidEdge(worst, drillOn.at) : '',
      },
      wanted: answer.longest,
      working: answer.working,
    },
  ];
}

/** Nine joists at 400 across a space 3600 long with 400 at each end; a pipe through as many as its ends take in. */
const row = (from: number, to: number, kind = 'copper', size = '22x0.9', breadthMm: number | null = 50) => {
  const e = joisted({ breadthMm });
  const space = e.plan.voids.v;
  if (space) space.outline = space.outline.map((p) => ({ ...p, y: p.y === 0 ? 0 : 3600 }));
  return e.run(
    'r',
    'cold',
    [
      [1200, from, 2500],
      [1200, to, 2500],
    ],
    { kind, size },
  ).plan;
};

/** The same with a beam at each end of the space. */
const closed = () => {
  const plan = row(100, 3500);
  const size = { widthMm: 3000, depthMm: 100, heightMm: 300 };
  for (const [id, y] of [
    ['b1', -200],
    ['b2', 3700],
  ] as const) {
    const place = {
      on: 'storey' as const,
      x: 1200,
      y,
      angleDeg: 0,
      height: { from: 'datum' as const, of: null, mm: 2400 },
    };
    plan.points[id] = {
      id,
      kind: 'beam',
      kindVersion: 1,
      name: '',
      storey: 'ground',
      place,
      size,
      connections: [],
      fields: {},
      thing: null,
      option: null,
      sureness: 'seen',
    };
  }
  return plan;
};

export default defineRule({
  id: 'structure/threading',
  topic: 'structure',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'pipe through joists', table: 'joist-threading' }],
  needs: ['centres and breadth of the joists'],
  params: () => ({ straight: figure('joist-threading', 'copper', 'straight') }),
  judge(given) {
    const groups = new Map<string, Threading[]>();
    for (const t of findThreadings(given)) {
      const first = t.meetings[0];
      if (!first || t.answer?.fits) continue;
      const key = `${first.space.id}|${t.answer ? 'known' : 'unknown'}`;
      groups.set(key, [...(groups.get(key) ?? []), t]);
    }
    return [...groups.values()].flatMap((all) => toFault(given, all));
  },
  say: {
    fault: {
      title: '{run}: up to {length} m straight through {count} joists of the {space}, which cannot be put in whole',
      why: '{worst}The longest straight piece that can be brought in line with the holes is {longest}, {from}: that is {joints} in the row.',
      todo: 'Feed whole lengths in from outside the space at {open} if what stands there may be bored; or count the joints in, or use pipe that bends.',
    },
    drillOn: {
      title: '{run}: up to {length} m straight through {count} joists of the {space}, which cannot be put in whole',
      why: '{worst}The longest straight piece that can be brought in line with the holes is {longest}, {from}: that is {joints} in the row.',
      todo: 'Count the joints in, use pipe that bends, or drill on through {more} to {edge} and feed whole lengths in there, if what stands there may be bored.',
    },
    closed: {
      title: '{run}: up to {length} m straight through {count} joists of the {space}, and no end to feed from',
      why: '{worst}The longest straight piece that can be brought in line with the holes is {longest}, {from}: that is {joints} in the row.',
      todo: 'Count the joints in, use pipe that bends, or go another way.',
    },
    cantTell: {
      title: "Can't tell how long a piece of {run} can be got through {count} joists of the {space}",
      why: 'The clear space between two joists is their centres less their breadth, and the breadth is not told.',
      todo: 'Measure one joist.',
    },
    pass: 'It goes in whole.',
  },
  examples: [
    {
      name: 'copper through eight joists',
      given: () => row(100, 3500),
      expect: 'check',
      found: { lo: 3400, hi: 3400, tolerance: 0.1 },
      from: 'the leg as drawn',
    },
    { name: 'copper through six joists in the middle', given: () => row(500, 2700), expect: 'check' },
    { name: 'copper with a beam at each end', given: closed, expect: 'check' },
    { name: 'bendable pipe through eight joists', given: () => row(100, 3500, 'plastic', '22'), expect: 'pass' },
    { name: 'through one joist', given: () => row(100, 350), expect: 'pass' },
    { name: 'joists of no known breadth', given: () => row(100, 3500, 'copper', '22x0.9', null), expect: 'cantTell' },
  ],
});

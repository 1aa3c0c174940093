import { grow } from '../../../geometry/boxes.ts';
import { pointBox, segmentToPoint } from '../../../geometry/point-box.ts';
import type { Point } from '../../../plan/records/pipework.ts';
import { figure, type Known } from '../../../reference/figure.ts';
import { edition } from '../../../reference/tables.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import { quantityOf } from '../../gas/said.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayPoint, sayRun } from '../../say-names.ts';

/** Rows of the clearance table by kind of point. */
const ROW: Readonly<Record<string, string>> = {
  'consumer-unit': 'consumer unit',
  'electricity-meter': 'electricity meter',
  socket: 'socket',
  switch: 'switch',
  'cable-route': 'cable',
};

const NOT_PINNED = 'the clearances of the edition this job has pinned';

/** Clear distance asked of this kind of equipment; in words what is missing where the pinned edition does not tell. */
function clearTo(given: Given, row: string): Known | string {
  const table = edition('gas-clearance', given.plan.basis.editions);
  const found = table && figure(table, row, 'mm');
  if (found?.is === 'known') return found;
  return found?.is === 'unknown' ? found.say : NOT_PINNED;
}

function judgeOne(given: Given, point: Point): Fault[] {
  const row = ROW[point.kind];
  if (row === undefined || !given.network.alive.has('points', point.id)) return [];
  const clear = clearTo(given, row);
  const body = pointBox(given.plan, point);
  const name = midSentence(sayPoint(given.plan, point.id));
  const cannot = (missing: string): Fault[] => [
    { outcome: 'cantTell', ids: [point.id], words: { name }, missing: [missing] },
  ];
  if (typeof clear === 'string') return cannot(clear);
  if (!body) return cannot(`the place of the ${name}`);
  const near = given.pipeIndex
    .search(grow(body.box, clear.lo))
    .filter((p) => p.edge.service === 'gas' && p.edge.state === 'new');
  const byRun = new Map<string, Fault>();
  for (const pipe of near) {
    given.counts.distances += 1;
    const found = segmentToPoint(pipe.body, body);
    const gap = found.distance - pipe.body.radiusMm;
    const worst = byRun.get(pipe.run)?.found?.lo ?? Number.POSITIVE_INFINITY;
    if (gap >= clear.lo || gap >= worst) continue;
    byRun.set(pipe.run, {
      outcome: 'check',
      ids: [pipe.run, point.id],
      legs: [pipe.edge.id],
      words: { name, run: sayRun(given.plan, pipe.run) },
      found: exact(Math.max(0, gap), 'mm', 0),
      wanted: quantityOf(clear, 0),
      wantedIs: 'atLeast',
      at: atPlace(pipe.storey, found.onLine, true),
      cites: [{ source: clear.cite.source, clause: clear.cite.clause, table: clear.cite.table }],
      unverified: clear.sureness === 'memory',
    });
  }
  return [...byRun.values()];
}

/** Nothing is asked of equipment on a job that lays no gas. */
function judge(given: Given): Fault[] {
  const laid = given.pipes.some((p) => p.edge.service === 'gas' && p.edge.state === 'new');
  return laid ? Object.values(given.plan.points).flatMap((p) => judgeOne(given, p)) : [];
}

const past = (kind: string, y: number) =>
  example()
    .point(kind, 'e', [1000, 0, 1500], {}, null)
    .run(
      'g',
      'gas',
      [
        [0, -y, 1550],
        [2000, -y, 1550],
      ],
      { size: '22x0.9' },
    ).plan;

export default defineRule({
  id: 'clash/gas-electrical',
  topic: 'clashes',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'gas-electric-2015', clause: 'separation', table: 'gas-clearance-2015' }],
  needs: ['place of the electrical equipment'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: '{run} is close to the {name}',
      why: 'A fault in the electrical equipment must not reach the gas pipe.',
      todo: 'Move the pipe away, or put a barrier of insulating material between the two.',
    },
    cantTell: {
      title: "Can't tell how near gas is to the {name}",
      why: 'The sum is missing: {missing}.',
      todo: 'Set its place and height, or pin an edition that tells it.',
    },
    pass: 'Gas pipe is clear of electrical equipment.',
  },
  examples: [
    { name: 'beside a consumer unit', given: () => past('consumer-unit', 160), expect: 'check' },
    { name: 'half a metre from a consumer unit', given: () => past('consumer-unit', 650), expect: 'pass' },
    {
      name: 'a consumer unit whose height nobody told',
      given: () => {
        const plan = past('consumer-unit', 650);
        const { e } = plan.points;
        if (e?.place.on === 'storey') e.place.height = { from: 'connection', of: null, mm: 0 };
        return plan;
      },
      expect: 'cantTell',
    },
    { name: 'clear of a socket by the later edition', given: () => past('socket', 200), expect: 'pass' },
  ],
});

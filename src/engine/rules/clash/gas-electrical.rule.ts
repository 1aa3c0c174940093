import { grow } from '../../../geometry/boxes.ts';
import { pointBox, segmentToPoint } from '../../../geometry/point-box.ts';
import type { Point } from '../../../plan/records/pipework.ts';
import { type Figure, figure } from '../../../reference/figure.ts';
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

function clearTo(given: Given, point: Point): Figure | null {
  const row = ROW[point.kind];
  const table = edition('gas-clearance', given.plan.basis.editions);
  return row && table ? figure(table, row, 'mm') : null;
}

function judgeOne(given: Given, point: Point): Fault[] {
  const clear = clearTo(given, point);
  if (!clear || !given.network.alive.has('points', point.id)) return [];
  const body = pointBox(given.plan, point);
  const name = midSentence(sayPoint(given.plan, point.id));
  if (clear.is !== 'known') return [];
  if (!body)
    return [
      { outcome: 'cantTell', ids: [point.id], words: { name, run: 'gas' }, missing: [`the place of the ${name}`] },
    ];
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
  judge: (given) => Object.values(given.plan.points).flatMap((p) => judgeOne(given, p)),
  say: {
    fault: {
      title: '{run} is close to the {name}',
      why: 'A fault in the electrical equipment must not reach the gas pipe.',
      todo: 'Move the pipe away, or put a barrier of insulating material between the two.',
    },
    cantTell: {
      title: "Can't tell how near gas is to the {name}",
      why: 'Its place is not known.',
      todo: 'Set its place and height.',
    },
    pass: 'Gas pipe is clear of electrical equipment.',
  },
  examples: [
    { name: 'beside a consumer unit', given: () => past('consumer-unit', 160), expect: 'check' },
    { name: 'half a metre from a consumer unit', given: () => past('consumer-unit', 650), expect: 'pass' },
    { name: 'clear of a socket by the later edition', given: () => past('socket', 200), expect: 'pass' },
  ],
});

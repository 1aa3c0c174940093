import { pointKinds } from '../../../catalogue/point-kinds.ts';
import type { Connection, Point } from '../../../plan/records/pipework.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayAll, sayPoint } from '../../say-names.ts';

/** Less than this is the rounding of a drawing. */
const HAIR_MM = 0.5;

/** How far a tail lies beside the case, mm; 0 within its width. */
const beside = (point: Point, tail: Connection): number => Math.max(0, Math.abs(tail.at.x) - point.size.widthMm / 2);

function judge(given: Given): Fault[] {
  const piped = new Map<string, Set<string>>();
  for (const vertex of given.network.vertices.values()) {
    if (vertex.point === null || vertex.connection === null || vertex.edges.length === 0) continue;
    piped.set(vertex.point, (piped.get(vertex.point) ?? new Set()).add(vertex.connection));
  }
  return [...piped].flatMap(([id, tails]): Fault[] => {
    const point = given.plan.points[id];
    if (!point || point.option === null || pointKinds.get(point.kind)?.group !== 'appliance') return [];
    const out = point.connections.filter((c) => tails.has(c.id) && beside(point, c) > HAIR_MM);
    const worst = [...out].sort((a, b) => beside(point, b) - beside(point, a))[0];
    if (!worst) return [];
    const said = out.map((c) => `${midSentence(c.label)} by ${Math.round(beside(point, c))}`);
    return [
      {
        outcome: 'note',
        ids: [id],
        words: { point: midSentence(sayPoint(given.plan, id)), tails: sayAll(said) },
        found: exact(beside(point, worst), 'mm', 0),
        at: atVertex(given.network, `${id}/${worst.id}`),
        more: out.length - 1,
      },
    ];
  });
}

const boiler = (across: number) => {
  const e = example().point('boiler', 'b', [0, 0, 1200]);
  const point = e.plan.points.b;
  if (point) {
    point.connections = point.connections.map((c) => (c.id === 'relief' ? { ...c, at: { ...c.at, x: across } } : c));
  }
  return e.run('p', 'boilerRelief', [{ point: 'b', connection: 'relief' }, [across, -81, 300]], { size: '15x0.7' })
    .plan;
};

export default defineRule({
  id: 'network/tail-outside',
  topic: 'pipework',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'pipework' }],
  needs: ['the width of the case and the places of its tails'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: 'Beside the case of the {point}: {tails}',
      why: 'Tails come out under a case, not beside it: either its width or these places were not read from its sheet.',
      todo: 'Read them off the sheet, and set case and tails to it.',
    },
    cantTell: {
      title: "Can't tell where the tails lie",
      why: 'The case has no width.',
      todo: 'Set it from its sheet.',
    },
    pass: 'Its tails lie under its case.',
  },
  examples: [
    {
      name: 'a relief beside the case',
      given: () => boiler(230),
      expect: 'note',
      found: { lo: 30, hi: 30, tolerance: 0.1 },
      from: '230 from the middle of a case 400 wide',
    },
    { name: 'a relief under the case', given: () => boiler(184), expect: 'pass' },
  ],
});

import { expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { example } from '../../src/engine/example.ts';

// A corner set from a void that nobody measured has no height: its legs were left out of every clash without a word.
test('a run with a corner of no height is told of', () => {
  const e = example().run('c', 'cold', [
    [0, 0, 300],
    [1000, 0, 300],
    [1000, 1000, 300],
  ]);
  const node = e.plan.nodes[e.nodesOf('c')[2] ?? ''];
  if (node?.place.on === 'storey') node.place.height = { from: 'voidBottom', of: 'v', mm: 40 };
  const outline = [
    { x: 0, y: 0 },
    { x: 3000, y: 0 },
    { x: 0, y: 3000 },
  ];
  const blank = { holes: [], bottom: null, top: null, joists: null, bearings: [], ventilated: null, mayBeCut: null };
  e.plan.voids.v = {
    id: 'v',
    storey: 'ground',
    name: '',
    kind: 'floor',
    outline,
    ...blank,
    option: null,
    sureness: 'seen',
  };
  const report = evaluate(e.plan, { option: 'A', when: 'after' });
  const found = report.findings.filter((f) => f.rule === 'network/no-height');
  expect(found.map((f) => [f.outcome, f.ids, f.legs])).toEqual([['cantTell', ['c'], ['c.2']]]);
  expect(found[0]?.at).toMatchObject({ x: 1000, y: 0, z: 300 });
});

// The same corner was told of twice: as a height that is missing, and as a turn that no fitting makes.
test('a corner beside a place of no height is not called a turn without a fitting', () => {
  const e = example().run('c', 'cold', [
    [0, 0, 300],
    [1000, 0, 300],
    [1000, 1000, 300],
    [1000, 2000, 300],
  ]);
  const node = e.plan.nodes[e.nodesOf('c')[2] ?? ''];
  if (node?.place.on === 'storey') node.place.height = { from: 'connection', of: null, mm: 0 };
  const report = evaluate(e.plan, { option: 'A', when: 'after' });
  expect(report.findings.filter((f) => f.outcome !== 'note').map((f) => f.rule)).toEqual(['network/no-height']);
});

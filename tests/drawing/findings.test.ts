import { describe, expect, test } from 'vitest';
import { annotate } from '../../src/drawing/annotate.ts';
import type { Item, MarkItem, View } from '../../src/drawing/display-list.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import { nameFindings } from '../../src/drawing/labels/finding-names.ts';
import type { Finding } from '../../src/report/finding.ts';
import { finding } from './finding.ts';
import { AFTER, PLAN_VIEW, page, room, run, wall } from './small-plan.ts';

const place = (x: number, y: number, ring = false, storey = 'S'): Finding['at'] => ({ storey, x, y, z: 400, ring });

function marked(findings: readonly Finding[], view: View = PLAN_VIEW, k = 50) {
  const plan = room(page());
  run(plan, 'g', [
    [500, 1500, 400],
    [3500, 1500, 400],
  ]);
  wall(plan, 'free', [500, 1400], [3500, 1400]);
  const list = annotate(fragments(plan, view, AFTER), { plan, view, mmPerPaperMm: k, findings });
  const items: Item[] = list.items.filter((g) => g.group === 'finding').flatMap((g) => [...g.items]);
  const marks = items.flatMap((i): MarkItem[] => (i.t === 'mark' && i.mark.startsWith('finding:') ? [i] : []));
  return { items, marks };
}

describe('names of findings', () => {
  test('numbered within their class, worst first, whatever the order they come in', () => {
    const all = [
      finding('b', 'check', null),
      finding('a', 'check', null),
      finding('z', 'stop', null),
      finding('q', 'cantTell', null),
      finding('n', 'note', null),
    ];
    const names = nameFindings(all);
    expect(Object.fromEntries(names)).toEqual({
      'z|z|A': 'S1',
      'a|a|A': 'C1',
      'b|b|A': 'C2',
      'q|q|A': '?1',
      'n|n|A': 'N1',
    });
    expect(nameFindings([...all].reverse())).toEqual(names);
  });
});

describe('marks of findings', () => {
  test('each stands off its place with the name it has in the panel', () => {
    const { marks } = marked([
      finding('clash', 'stop', place(1000, 1500, true)),
      finding('air', 'check', place(3000, 1500)),
    ]);
    expect(marks.map((m) => [m.mark, m.text, m.at])).toEqual([
      ['finding:stop', 'S1', [1000, 1500]],
      ['finding:check', 'C1', [3000, 1500]],
    ]);
    for (const m of marks) expect(Math.hypot(...(m.offsetMm ?? [0, 0]))).toBeGreaterThan(4);
  });

  test('a clash has its spot ringed, others a dot', () => {
    const { items } = marked([
      finding('clash', 'stop', place(1000, 1500, true)),
      finding('air', 'check', place(3000, 1500)),
    ]);
    const at = (mark: string) => items.flatMap((i) => (i.t === 'mark' && i.mark === mark ? [i.at] : []));
    expect(at('spot')).toEqual([[1000, 1500]]);
    expect(at('dot')).toEqual([[3000, 1500]]);
  });

  test('several at one place: the worst shows, with how many more', () => {
    const { marks, items } = marked([
      finding('a', 'note', place(1000, 1500)),
      finding('b', 'stop', place(1050, 1500)),
      finding('c', 'check', place(1000, 1550)),
    ]);
    expect(marks.map((m) => m.text)).toEqual(['S1']);
    expect(items.find((i) => i.t === 'text')).toMatchObject({ text: '+2' });
  });

  test('the same places are apart at a larger scale', () => {
    const two = [finding('a', 'note', place(1000, 1500)), finding('b', 'stop', place(1150, 1500))];
    expect(marked(two, PLAN_VIEW, 50).marks).toHaveLength(1);
    expect(marked(two, PLAN_VIEW, 20).marks).toHaveLength(2);
  });

  test('one on another floor, or with no place, has no mark here', () => {
    expect(marked([finding('a', 'stop', place(0, 0, false, 'T')), finding('b', 'stop', null)]).marks).toEqual([]);
  });

  test('on a face, only what is near it', () => {
    const view = { kind: 'face', wall: 'free', side: 'left' } as const;
    const { marks } = marked(
      [finding('near', 'stop', place(1000, 1500)), finding('far', 'stop', place(1000, 2900))],
      view,
    );
    expect(marks).toHaveLength(1);
    expect(marks[0]?.at).toEqual([3500 - 1000, 400]);
  });
});

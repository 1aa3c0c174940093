import { describe, expect, it } from 'vitest';
import { nextSizeUp, sizeUpChanges } from '../../../src/engine/gas/best-change.ts';
import { pathDrop } from '../../../src/engine/gas/path-drop.ts';
import { sectionDrop } from '../../../src/engine/gas/section-drop.ts';
import { sizeAnswers, sizeSteps } from '../../../src/engine/gas/size-answers.ts';
import { m3PerH, section } from './ask.ts';

const old = section('22', 6, 2, m3PerH(4), { label: 'old pipe' });

describe('sizes', () => {
  it('are those of the kind, smallest first', () => {
    expect(sizeSteps('copper')).toEqual(['15x0.7', '22x0.9', '28x0.9', '35x1.2']);
    expect(sizeSteps('pe')).toEqual([]);
  });

  it('kept pipe stays in the sum and keeps its size', () => {
    const kept = { ...old, kept: true };
    const answers = sizeAnswers([kept, section('22', 5, 1, m3PerH(3))], 1);
    expect(answers).toHaveLength(4);
    const same = sectionDrop(kept).drop;
    for (const a of answers) expect(a.sections[0]?.drop).toEqual(same);
    expect(answers[0]?.drop.lo).toBeGreaterThan(answers[2]?.drop.lo ?? 99);
    expect(sizeAnswers([kept], 1)).toEqual([]);
  });

  it('an unknown kept pipe leaves no size that passes', () => {
    const answers = sizeAnswers(
      [section(null, 3, 0, m3PerH(3), { label: 'old pipe' }), section('22', 2, 0, m3PerH(3))].map((s, i) => ({
        ...s,
        kept: i === 0,
      })),
      1,
    );
    expect(answers.map((a) => a.verdict)).toEqual(['cantTell', 'cantTell', 'cantTell', 'cantTell']);
    expect(answers[1]).toMatchObject({ metresLeft: null, missing: ['the size of a pipe (old pipe)'] });
  });
});

describe('the one change that helps most', () => {
  it('goes to the next size of the list', () => {
    expect(nextSizeUp('copper', '15')).toBe('22x0.9');
    expect(nextSizeUp('copper', '12')).toBe('15x0.7');
    expect(nextSizeUp('copper', '28x0.9')).toBe('35x1.2');
    expect(nextSizeUp('copper', '35')).toBeUndefined();
    expect(nextSizeUp('copper', null)).toBeUndefined();
  });

  it('is the section whose change brings the worst case lowest, and the totals are those of a whole sum again', () => {
    const path = [section('22', 12.92, 3, m3PerH(3.66)), section('22', 2.81, 3, m3PerH(2.96))];
    const changes = sizeUpChanges(path, 1, false);
    expect(changes.map((c) => c.index)).toEqual([0, 1]);
    expect(changes[0]).toMatchObject({ from: '22x0.9', to: '28x0.9', verdict: 'pass' });
    const [first, second] = path;
    if (!first || !second) throw new Error('two sections');
    expect(changes[0]?.drop).toEqual(
      pathDrop('', [sectionDrop({ ...first, size: '28x0.9' }), sectionDrop(second)]).drop,
    );
    expect(changes[1]?.drop.hi ?? 0).toBeGreaterThan(changes[0]?.drop.hi ?? 99);
  });

  it('leaves kept pipe alone unless asked, and the top of the list', () => {
    const path = [{ ...old, kept: true }, section('35', 5, 0, m3PerH(4))];
    expect(sizeUpChanges(path, 1, false)).toEqual([]);
    expect(sizeUpChanges(path, 1, true).map((c) => c.index)).toEqual([0]);
  });
});

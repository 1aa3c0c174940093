import { describe, expect, it } from 'vitest';
import { copiesOf } from '../../../src/cli/bench/copies.ts';
import { evaluate, give } from '../../../src/engine/evaluate.ts';
import { add, inRoom } from '../../../src/engine/rules/space/houses.ts';
import { obstaclesRound } from '../../../src/engine/space/obstacles.ts';
import { newBoilers } from '../../../src/engine/space/sited.ts';
import { demoPlan } from '../demo-file.ts';
import { AFTER, findingsOf } from './find.ts';

const round = (copies: number): readonly (readonly string[])[] => {
  const given = give(copiesOf(demoPlan('flat'), copies), AFTER);
  return newBoilers(given).map((b) => obstaclesRound(given, b, 2000).map((o) => `${o.is} ${o.say}`));
};

describe('what stands round a boiler', () => {
  it('is the same however many other houses are drawn', () => {
    const [alone] = round(1);
    const [first] = round(8);
    expect(alone?.length).toBeGreaterThan(3);
    expect(first).toEqual(alone);
  });

  it('is found in a bed of other things: the nearest stands for its side', () => {
    const plan = add(inRoom({ clearFrontMm: 600 }), 'obstacle', 'near', [1500, 700, 1200], {}, null);
    add(plan, 'obstacle', 'far', [1500, 1500, 1200], {}, null);
    const [found] = findingsOf('space/working-room', plan);
    expect(found?.found?.value).toBeLessThan(600);
    expect(found?.outcome).toBe('stop');
  });
});

describe('chapters of space and safety', () => {
  const sectionsOf = (name: string) => evaluate(demoPlan(name), AFTER).sections;

  it('tell every side of the new combi of the flat', () => {
    const rows = sectionsOf('flat').find((s) => s.id === 'working-room')?.rows ?? [];
    const left = rows.find((r) => r.kind === 'verdict' && r.label === 'To its left');
    expect(left).toMatchObject({ state: 'pass', say: '350 to the wall; 5 wanted by its sheet' });
    expect(rows.find((r) => r.kind === 'fact' && r.label === 'To lift')).toMatchObject({ figure: null });
  });

  it('tell the electrician of the cut-out of a condensate pump', () => {
    const rows = sectionsOf('extension').find((s) => s.id === 'electrician')?.rows ?? [];
    const pump = rows.filter((r) => r.kind === 'fact' && r.ids.includes('D-CP'));
    expect(pump.map((r) => (r.kind === 'fact' ? r.say : ''))).toEqual([
      'cut-out to the boiler: its overflow switch stops it',
      'where is its feed to come from?',
    ]);
  });

  it('say nothing to an electrician where no boiler is set', () => {
    const before = evaluate(demoPlan('semi'), { option: 'A', when: 'before' }).sections.map((s) => s.id);
    expect(before).not.toContain('electrician');
    expect(before).not.toContain('working-room');
  });
});

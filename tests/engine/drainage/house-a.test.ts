import { describe, expect, it } from 'vitest';
import { condensateDrains } from '../../../src/engine/drainage/condensate-drains.ts';
import { discharges } from '../../../src/engine/drainage/discharges.ts';
import { pipeSize } from '../../../src/engine/drainage/tundish-pipe-size.ts';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { give } from '../../../src/engine/given.ts';
import type { Case } from '../../../src/plan/plan.ts';
import { houseA } from './house-a.ts';

const AFTER: Case = { option: 'A', when: 'after' };
const report = evaluate(houseA(), AFTER);
const of = (rule: string, id: string) => report.findings.filter((f) => f.rule === rule && f.ids.includes(id));

describe('house A, condensate', () => {
  it('falls 51 mm in 1.12 m: enough for older guides, short of newer', () => {
    const [finding, ...rest] = of('condensate/fall', 'A-k1');
    expect(rest).toEqual([]);
    expect(finding).toMatchObject({ outcome: 'check', found: { value: expect.closeTo(45.54, 2) } });
    expect(finding?.wanted?.value).toBe(52.4);
    expect(finding?.why).toContain('43.7');
    expect(finding?.why).toContain('52.4');
  });

  it('eats 51 mm and its own width of the 200 between the joists, and has room there', () => {
    expect(of('condensate/in-void', 'A-k1')).toEqual([]);
    const row = report.sections
      .find((s) => s.id === 'condensate')
      ?.rows.find((r) => r.kind === 'fact' && r.label.startsWith('Depth'));
    expect(row).toMatchObject({
      figure: { value: expect.closeTo(72.5, 1) },
      say: expect.stringContaining('of 200 mm'),
    });
  });

  it('says that nothing tells inside from outside where no room is closed', () => {
    expect(condensateDrains(give(houseA(), AFTER))[0]?.coldM).toBeNull();
    const rows = report.sections.find((s) => s.id === 'condensate')?.rows ?? [];
    expect(rows.filter((r) => r.kind === 'assumed')).toHaveLength(1);
  });
});

describe('house A, discharge', () => {
  const { tundishPipes } = discharges(give(houseA(), AFTER));

  it.each([
    ['A-d1', 4.0, 2, 5.6, 400],
    ['A-d2', 5.1, 3, 7.5, 340],
  ])('%s: %d m and %d bends make %d of 9', (run, metres, bends, total, drop) => {
    const pipe = tundishPipes.find((p) => p.runs.includes(run));
    if (!pipe) throw new Error(`no pipe ${run}`);
    expect(pipe.lengthM.lo).toBeCloseTo(metres, 1);
    expect(pipe.bends).toMatchObject({ lo: bends, hi: bends });
    expect(pipe.straightDropMm).toBeCloseTo(drop, 6);
    const size = pipeSize(pipe);
    expect(size).toMatchObject({ outlet: 'G1/2', drawn: 22, verdict: 'pass' });
    expect(size.own?.most.lo).toBe(9);
    expect(size.own?.total.value).toBeCloseTo(total, 1);
  });

  it('prints each with the sizes and the metres left', () => {
    const section = report.sections.find((s) => s.id === 'discharge');
    expect(section?.state).toBe('pass');
    const answers = section?.rows.flatMap((r) => (r.kind === 'answer' ? [r.figure.value?.toFixed(1)] : []));
    expect(answers).toEqual(['5.6', '7.5']);
    const choices = section?.rows.flatMap((r) => (r.kind === 'choice' ? [`${r.label}; ${r.room}`] : []));
    expect(choices?.slice(0, 3)).toEqual([
      '22, at most 9 m; room for 3.4 m more',
      '28, at most 18 m; room for 12.0 m more',
      '35, at most 27 m; room for 20.2 m more',
    ]);
  });

  it('finds nothing wrong with size, drop and fall; only the ends are open', () => {
    for (const rule of ['discharge/size', 'discharge/straight-drop', 'discharge/fall', 'discharge/tundish']) {
      expect(report.findings.filter((f) => f.rule === rule)).toEqual([]);
    }
    expect(of('discharge/end', 'A-d1')).toMatchObject([{ outcome: 'cantTell' }]);
  });

  it('without its tundish the preheat vessel has none, and that stops', () => {
    const plan = houseA();
    delete plan.points['A-T2'];
    for (const id of ['A-d2.1', 'A-d2.2', 'A-d2.3', 'A-d2.4']) delete plan.legs[id];
    delete plan.runs['A-d2'];
    for (const [id, n] of Object.entries(plan.nodes))
      if (n.place.on === 'connection' && n.place.point === 'A-T2') delete plan.nodes[id];
    const vessel = plan.points['A-PV'];
    if (vessel) vessel.fields.tundish = 'missing';
    const found = evaluate(plan, AFTER).findings.filter((f) => f.rule === 'discharge/tundish');
    expect(found).toMatchObject([{ outcome: 'stop', lifeSafety: true, ids: ['A-PV'] }]);
  });
});

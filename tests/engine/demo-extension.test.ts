import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Finding } from '../../src/report/finding.ts';
import { demoPlan } from './demo-file.ts';
import { redraw, shift } from './demo-redraw.ts';

const ofRule = (plan: Plan, rule: string, option = 'A'): readonly Finding[] =>
  evaluate(plan, { option, when: 'after' }).findings.filter((f) => f.rule === rule);
const about = (found: readonly Finding[], run: string) =>
  found.filter((f) => f.ids.includes(run)).map((f) => f.outcome);

/** Gas to the hob tee, dropping beside the meter at another x. */
const gasAt = (plan: Plan, x: number) =>
  redraw(plan, 'D-g1', 'G', [
    [x, 400, 450],
    [x, 400, -300],
    [x, 7500, -300],
    [6600, 7500, -300],
    [6600, 7500, 2537],
    [6600, 8150, 2537],
    [5460, 8150, 2537],
  ]);

describe('joists of the extension', () => {
  test('beside the joist the gas may drop', () => {
    const plan = gasAt(shift(demoPlan('extension'), 'D-GM', { along: 200 }), 1100);
    expect(about(ofRule(plan, 'structure/joists'), 'D-g1')).toEqual([]);
  });

  test('flow outside the band is told', () => {
    const plan = redraw(demoPlan('extension'), 'D-f1', 'G', [
      [6640, 13430, 870],
      [6640, 12860, 870],
      [6640, 12860, 2537],
      [5700, 12860, 2537],
      [5700, 8210, 2537],
      [6660, 8210, 2537],
      [6660, 6560, 2537],
    ]);
    const [found] = ofRule(plan, 'structure/joists').filter((f) => f.ids.includes('D-f1'));
    expect(found?.outcome).toBe('stop');
    expect(found?.ids).toEqual(['D-f1', 'DV2']);
  });

  test('turned in the wrong order at the house end, flow and return cross at one height', () => {
    const plan = redraw(demoPlan('extension'), 'D-f1', 'G', [
      [6640, 13430, 870],
      [6640, 12860, 870],
      [6640, 12860, 2537],
      [5580, 12860, 2537],
      [5580, 7960, 2537],
      [6660, 7960, 2537],
      [6660, 6560, 2537],
    ]);
    const met = ofRule(plan, 'clash/runs').filter((f) => f.ids.includes('D-f1'));
    expect(met.map((f) => f.outcome)).toContain('stop');
    expect(met.flatMap((f) => f.ids)).toContain('D-r1');
  });

  test('a pipe through the steel is stopped', () => {
    const plan = redraw(demoPlan('extension'), 'D-r1', 'G', [
      [6640, 13170, 1150],
      [6640, 13060, 1150],
      [6640, 13060, 2537],
      [5220, 13060, 2537],
      [5220, 6500, 2537],
      [6430, 6500, 2537],
    ]);
    expect(about(ofRule(plan, 'structure/through-beam'), 'D-r1')).toEqual(['stop']);
  });
});

describe('ways out for condensate', () => {
  test('the rainwater gully is refused', () => {
    const plan = demoPlan('extension');
    const node = plan.nodes['D-FG.condensate'];
    const gully = plan.points['D-RG'];
    if (!node || gully?.connections[0] === undefined) throw new Error('no gully');
    node.place = { on: 'connection', point: 'D-RG', connection: gully.connections[0].id };
    const found = ofRule(plan, 'condensate/end', 'B');
    expect(found.map((f) => [f.outcome, f.ids.join()])).toEqual([['stop', 'D-RG,D-k1-B']]);
  });

  test('a branch without a day and an owner has to be told when', () => {
    const plan = demoPlan('extension');
    delete plan.job.holdPoints;
    const branch = plan.points['D-UF-D'];
    if (branch) branch.fields = { ...branch.fields, before: '' };
    expect(ofRule(plan, 'condensate/end', 'D').map((f) => f.outcome)).toEqual(['check']);
  });

  test('laid already, nothing is to be told of it', () => {
    const plan = demoPlan('extension');
    const branch = plan.points['D-UF-D'];
    if (branch) branch.fields = { ...branch.fields, laid: true };
    expect(ofRule(plan, 'condensate/end', 'D')).toEqual([]);
  });

  test('a pump that lifts one metre will not do', () => {
    const plan = demoPlan('extension');
    const pump = plan.points['D-CP'];
    if (pump) pump.fields = { ...pump.fields, liftM: 1 };
    const [found] = ofRule(plan, 'condensate/pump');
    expect(found?.outcome).toBe('stop');
    // From the hose outlet at 900 to the roof at 2600.
    expect(Math.abs((found?.found?.value ?? found?.found?.lo ?? 0) - 1.7)).toBeLessThanOrEqual(0.034);
  });
});

describe('what the extension closes in', () => {
  /** The extension told as work of option A, with the foul gully at a place. */
  const built = (x: number, y: number): Plan => {
    const plan = demoPlan('extension');
    for (const id of ['DXW', 'DXE', 'DXN'] as const) {
      const wall = plan.walls[id];
      if (wall) wall.option = 'A' as typeof wall.option;
    }
    const place = plan.points['D-FG']?.place;
    if (place?.on !== 'storey') throw new Error('no gully');
    Object.assign(place, { x, y });
    return plan;
  };
  const closed = (plan: Plan) => ofRule(plan, 'space/swallowed').map((f) => f.ids.filter((id) => id.startsWith('D-')));

  test('nothing as it was surveyed', () => expect(closed(built(7125, 7300))).toEqual([]));
  test('a gully that stood behind the house', () => expect(closed(built(6000, 9000))).toEqual([['D-FG']]));
});

test('the hot to the sink in 15 is borderline, not poor', () => {
  const plan = demoPlan('extension');
  expect(ofRule(plan, 'water/wait').map((f) => f.outcome)).toEqual(['check']);
  for (const leg of Object.values(plan.legs)) if (leg.run === 'D-h1') leg.tube = { ...leg.tube, size: '15x0.7' };
  expect(ofRule(plan, 'water/wait').map((f) => f.outcome)).not.toContain('check');
});

import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { HeightRef } from '../../src/plan/records/parts.ts';
import type { Finding } from '../../src/report/finding.ts';
import { demoPlan } from './demo-file.ts';

const findings = (plan: Plan): readonly Finding[] => evaluate(plan, { option: 'A', when: 'after' }).findings;
const answerOf = (plan: Plan, label: string) => {
  const section = evaluate(plan, { option: 'A', when: 'after' }).sections.find((s) => s.id === 'gas-drop');
  const row = section?.rows.find((r) => r.kind === 'answer' && r.label === label);
  if (row?.kind !== 'answer') throw new Error(`no answer for ${label}`);
  return row;
};
const legsOf = (plan: Plan, run: string) => Object.values(plan.legs).filter((leg) => leg.run === run);

function resize(plan: Plan, run: string, size: string): Plan {
  for (const leg of legsOf(plan, run)) leg.tube = { ...leg.tube, size };
  return plan;
}

const atFloor = (mm: number): HeightRef => ({ from: 'floor', of: 'B', mm });

/** Draws the cold again through free corners, from the stop tap to the boiler's tail. */
function redrawCold(plan: Plan, corners: readonly (readonly [x: number, y: number, z: number])[]): Plan {
  const old = legsOf(plan, 'B-c1');
  const [first, last] = [old[0], old.at(-1)];
  if (!first || !last) throw new Error('no cold');
  for (const leg of old) delete plan.legs[leg.id];
  const ids = corners.map(([x, y, z], i) => {
    const id = `cold-${i}`;
    plan.nodes[id] = {
      id,
      place: { on: 'storey', storey: 'B', x, y, height: atFloor(z) },
      turn: null,
      option: 'A',
    };
    return id;
  });
  const way = [first.a, ...ids, last.b];
  way.slice(1).forEach((b, i) => {
    const tube = i === way.length - 2 ? last.tube : first.tube;
    plan.legs[`cold-leg-${i}`] = { ...first, id: `cold-leg-${i}`, a: way[i] ?? b, b, tube };
  });
  return plan;
}

const coldClashes = (plan: Plan): Finding[] =>
  findings(plan).filter((f) => f.rule === 'clash/runs' && f.ids.includes('B-c1'));

describe('gas of the flat', () => {
  test('22 throughout stops, at about 1.3 mbar', () => {
    const plan = resize(demoPlan('flat'), 'B-g1', '22x0.9');
    const found = findings(plan).filter((f) => f.rule === 'gas/drop');
    // The hob hangs on the same 22 as far as its tee, so it is starved too.
    expect(found.map((f) => [f.outcome, f.ids[0]])).toEqual([
      ['stop', 'B-HB'],
      ['stop', 'B-NB'],
    ]);
    const { value, lo } = found[1]?.found ?? { value: null, lo: 0 };
    expect(Math.abs((value ?? 0) / 1.3 - 1)).toBeLessThanOrEqual(0.05);
    expect(lo).toBeGreaterThan(1);
    expect(answerOf(plan, 'New combi').bar.state).toBe('stop');
  });

  test('28 to the hob tee and then 22 passes, at about 0.57 mbar', () => {
    const { figure, bar } = answerOf(demoPlan('flat'), 'New combi');
    expect(Math.abs((figure.value ?? 0) / 0.57 - 1)).toBeLessThanOrEqual(0.05);
    expect(bar.state).toBe('pass');
    expect(figure.hi).toBeLessThan(1);
  });

  test('a boiler of a size nobody read makes every drop unknown above', () => {
    const plan = demoPlan('flat');
    const boiler = plan.points['B-NB'];
    if (boiler) boiler.fields = { type: 'combi' };
    const found = findings(plan).filter((f) => f.rule === 'gas/drop');
    expect(found.map((f) => [f.outcome, f.ids[0]])).toEqual([
      ['cantTell', 'B-HB'],
      ['cantTell', 'B-NB'],
    ]);
    expect(found.every((f) => f.found?.hi === null)).toBe(true);
  });
});

describe('the cold that meets the return', () => {
  test('is found where it is, 12 into it', () => {
    const [clash, ...more] = coldClashes(demoPlan('flat'));
    expect(more).toEqual([]);
    expect(clash?.ids).toEqual(['B-c1', 'B-r1']);
    expect(clash?.outcome).toBe('stop');
    expect([clash?.found?.lo, clash?.found?.hi, clash?.found?.unit]).toEqual([-12, -12, 'mm']);
    expect(Math.abs((clash?.at?.x ?? 0) - 920)).toBeLessThan(1);
    expect(Math.abs((clash?.at?.y ?? 0) - 6240)).toBeLessThanOrEqual(10);
    expect(Math.abs((clash?.at?.z ?? 0) - 400)).toBeLessThan(1);
    expect(clash?.at?.ring).toBe(true);
  });

  test('is not cured by lowering the cold: the return comes down there too', () => {
    const plan = demoPlan('flat');
    const tap = plan.points['B-ST'];
    if (tap?.place.on === 'wall') tap.place.height = atFloor(230);
    const low = redrawCold(plan, [[860, 6250, 330]]);
    const [clash] = coldClashes(low);
    expect([clash?.outcome, clash?.found?.lo, clash?.ids]).toEqual(['stop', -12, ['B-c1', 'B-r1']]);
    expect(Math.abs((clash?.at?.z ?? 0) - 330)).toBeLessThan(1);
  });

  test.each([6295, 6297, 6300])('is cured by bringing it along behind the return, at y %i', (y) => {
    const plan = redrawCold(demoPlan('flat'), [
      [2200, 6250, 400],
      [2200, y, 400],
      [860, y, 400],
      [860, y, 1170],
      [860, 6250, 1170],
    ]);
    expect(coldClashes(plan)).toEqual([]);
    expect(findings(plan).filter((f) => f.outcome === 'stop')).toEqual([]);
  });

  test('is not cured by half of that', () => {
    const plan = redrawCold(demoPlan('flat'), [
      [2200, 6250, 400],
      [2200, 6260, 400],
      [860, 6260, 400],
    ]);
    expect(coldClashes(plan).map((f) => [f.outcome, f.found?.lo])).toEqual([['stop', -2]]);
  });
});

describe('the relief down the shared wall', () => {
  const above = (mm: number): Plan => {
    const plan = demoPlan('flat');
    const end = plan.points['B-PE'];
    // The ground is at -2900; the open end is 60 above the underside of its symbol.
    if (end?.place.on === 'wall') end.place.height = { from: 'datum', of: null, mm: -2960 + mm } as HeightRef;
    return plan;
  };
  const ends = (plan: Plan) => findings(plan).filter((f) => f.rule === 'relief/end');

  test('may come down to 100 above the path', () => expect(ends(above(100))).toEqual([]));

  test('must not stop at first-floor height over the path', () => {
    const [found, ...more] = ends(above(2900));
    expect(more).toEqual([]);
    expect([found?.outcome, found?.found?.lo]).toEqual(['stop', 2900]);
  });
});

describe('the flue beside the kitchen window', () => {
  const along = (mm: number): Plan => {
    const plan = demoPlan('flat');
    const place = plan.points['B-NF']?.place;
    if (place?.on === 'wall') place.alongMm = (place.alongMm + mm) as typeof place.alongMm;
    return plan;
  };
  const near = (plan: Plan) =>
    findings(plan)
      .filter((f) => f.rule === 'flue/distance')
      .map((f) => [f.outcome, f.ids.join(), f.found?.lo, f.wanted?.lo]);

  test('stands as drawn', () => expect(near(along(0))).toEqual([]));
  test('400 nearer is 250 from it', () => expect(near(along(400))).toEqual([['stop', 'B-NF,bw3', 250, 300]]));
  test('300 back is 66 from the rainwater pipe', () => {
    expect(near(along(-300))).toEqual([['stop', 'B-NF,B-RW', 66, 150]]);
  });
});

test('hidden, the old flue is told for as long as it serves', () => {
  const before = evaluate(demoPlan('flat'), { option: 'A', when: 'before' }).findings;
  expect(before.filter((f) => f.rule === 'flue/hidden').map((f) => [f.outcome, f.ids.join()])).toEqual([
    ['check', 'B-EF'],
  ]);
  const plan = demoPlan('flat');
  const old = plan.points['B-EF'];
  if (old) old.fields = { ...old.fields, inspectable: true };
  expect(evaluate(plan, { option: 'A', when: 'before' }).findings.filter((f) => f.rule === 'flue/hidden')).toEqual([]);
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance3 } from '../../src/geometry/vec.ts';
import type { Move } from '../../src/network/displace/changes.ts';
import { displace } from '../../src/network/displace/displace.ts';
import { countingIds } from '../../src/plan/ids.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Xyz } from '../../src/plan/records/parts.ts';
import { applied, expectJoined, expectLean, expectStill, expectWaysKept, placeOf } from './displace-laws.ts';
import { house } from './house.ts';

type Growth = { from: number; axis: 0 | 1 | 2 | 'slant' | 'unseen'; mm: number; end: 'free' | 'point' | 'seen' };

const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
const growth = fc.record<Growth>({
  from: fc.nat(1000),
  axis: fc.constantFrom<Growth['axis']>(0, 1, 2, 0, 1, 2, 0, 1, 2, 'slant', 'unseen'),
  mm: fc.tuple(tenths(50, 3000), fc.boolean()).map(([mm, back]) => (back ? -mm : mm)),
  end: fc.constantFrom('free', 'free', 'free', 'free', 'point', 'seen'),
});
const vector = fc
  .tuple(tenths(-900, 900), tenths(-900, 900), tenths(-900, 900), fc.nat(7))
  .map(([x, y, z, keep]): Xyz => ({ x: keep & 1 ? x : 0, y: keep & 2 ? y : 0, z: keep & 4 ? z : 0 }));

/** A tree of legs along the axes, grown from the tail of a boiler; some ends on points, some legs that were there. */
function grown(growths: readonly Growth[], service: string): { plan: Plan; held: string[] } {
  const h = house().run('r0', service, { option: 'o' });
  h.point('boiler', 'boiler', [0, 0, 1000], { tail: [service, [0, 0, 0], 'down'] }, { option: 'o' });
  h.on('n0', 'boiler', 'tail');
  const places: [number, number, number][] = [[0, 0, 1000]];
  const open = [0];
  const held: string[] = [];
  growths.forEach(({ from, axis, mm, end }, i) => {
    const start = open[from % open.length]!;
    const place: [number, number, number] = [...places[start]!];
    const way =
      axis === 'slant' ? [1, 1, 0] : axis === 'unseen' ? [1, 0.5, 0] : [0, 1, 2].map((k) => Number(k === axis));
    for (const k of [0, 1, 2] as const) place[k] = Math.round((place[k] + mm * way[k]!) * 10) / 10;
    const id = places.push(place) - 1;
    const run = `r${from % 3}`;
    if (!h.plan.runs[run]) h.run(run, service, { option: 'o' });
    if (end === 'point') {
      h.point(`p${id}`, 'hob', place, { tail: [service, [0, 0, 0], 'up'] }).on(`n${id}`, `p${id}`, 'tail');
      held.push(`n${id}`);
    } else {
      h.node(`n${id}`, place);
      open.push(id);
    }
    if (axis === 'unseen') {
      h.stretch(`s${i}`, run, `n${start}`, `n${id}`);
      if (end !== 'point') held.push(`n${id}`);
      if (start !== 0) held.push(`n${start}`);
      return;
    }
    const old = end === 'seen' && start !== 0;
    if (old) held.push(`n${start}`, `n${id}`);
    h.leg(`l${i}`, run, `n${start}`, `n${id}`, { option: old ? null : 'o' });
  });
  return { plan: h.plan, held };
}

function moveOf(plan: Plan, kind: number, pick: number, by: Xyz): Move {
  const nodes = Object.keys(plan.nodes);
  const legs = Object.keys(plan.legs);
  if (kind === 0) return { point: 'boiler', by };
  if (kind === 1) return { leg: legs[pick % legs.length]!, by };
  return { node: nodes[pick % nodes.length]!, by };
}

describe('moving in a net of pipes along the axes', () => {
  let moved = 0;
  let jogged = 0;
  let refused = 0;

  it('keeps what was joined, what is held and the way every leg lies, or says why not', () => {
    fc.assert(
      fc.property(
        fc.array(growth, { minLength: 2, maxLength: 14 }),
        fc.nat(2),
        fc.nat(1000),
        vector,
        (growths, kind, pick, by) => {
          const { plan, held } = grown(growths, 'gas');
          const move = moveOf(plan, kind, pick, by);
          const text = JSON.stringify(plan);
          const answer = displace(plan, [move], { ids: countingIds(new Set(), 1000), holdSeen: true });
          expect(JSON.stringify(plan)).toBe(text);
          if (!answer.ok) {
            refused++;
            expect(answer.why).toMatch(/^[A-Z].*\.$/);
            return;
          }
          moved++;
          if (answer.changes.addedLegs.length > 0) jogged++;
          const after = applied(plan, answer.changes);
          expectJoined(plan, after);
          expectWaysKept(plan, after);
          expectLean(plan, answer.changes);
          expectStill(plan, after, kind === 0 ? held : [...held, 'n0']);
          if ('node' in move && move.node in after.nodes) {
            const was = placeOf(plan, move.node);
            const want = { x: was.x + by.x, y: was.y + by.y, z: was.z + by.z };
            expect(distance3(placeOf(after, move.node), want)).toBeLessThan(1e-6);
          }
          const byRun = new Map<string, number>();
          for (const leg of answer.changes.addedLegs) byRun.set(leg.run, (byRun.get(leg.run) ?? 0) + 1);
          // One jog on either side of what is moved, two legs each.
          for (const n of byRun.values()) expect(n).toBeLessThanOrEqual(4);
        },
      ),
      { numRuns: 800, seed: 42 },
    );
  });

  it('has met every kind of answer', () => {
    expect(Math.min(moved - jogged, jogged, refused)).toBeGreaterThan(50);
  });
});

describe('moving pipes that fall', () => {
  const FALL = 0.044;
  type Level = { axis: 0 | 1; mm: number; drop: number };
  const level = fc.record<Level>({ axis: fc.constantFrom(0, 1), mm: tenths(300, 3000), drop: tenths(50, 500) });

  /** From a boiler down, along with a fall, down, along…, and into a stack from above or from the side. */
  function falling(levels: readonly Level[], into: 'air' | 'top' | 'side') {
    const h = house().run('k', 'condensate', { option: 'o' });
    h.point('boiler', 'boiler', [0, 0, 3000], { tail: ['condensate', [0, 0, 0], 'down'] }, { option: 'o' });
    h.on('n0', 'boiler', 'tail').node('n1', [0, 0, 2800]).leg('l0', 'k', 'n0', 'n1', { option: 'o' });
    const at: [number, number, number] = [0, 0, 2800];
    let last = 'n1';
    const step = (id: string, axis: 0 | 1 | 2, mm: number, fall: number): void => {
      at[axis] = Math.round((at[axis] + mm) * 10) / 10;
      at[2] = Math.round((at[2] - fall) * 10) / 10;
      h.node(id, [...at]).leg(`l-${id}`, 'k', last, id, { option: 'o' });
      last = id;
    };
    levels.forEach(({ axis, mm, drop }, i) => {
      step(`a${i}`, axis, mm, mm * FALL);
      if (into !== 'side' || i < levels.length - 1) step(`b${i}`, 2, -drop, 0);
    });
    if (into !== 'air') {
      h.point('stack', 'hob', [...at], { boss: ['condensate', [0, 0, 0], 'up'] });
      h.plan.nodes[last]!.place = { on: 'connection', point: 'stack', connection: 'boss' };
    }
    return h.plan;
  }

  it('keeps every fall by the metre, and never turns one uphill', () => {
    let kept = 0;
    let changed = 0;
    let jogged = 0;
    fc.assert(
      fc.property(
        fc.array(level, { minLength: 1, maxLength: 4 }),
        fc.constantFrom('air', 'top', 'side'),
        fc.nat(2),
        fc.nat(1000),
        vector,
        (levels, into, kind, pick, by) => {
          const plan = falling(levels, into);
          const answer = displace(plan, [moveOf(plan, kind, pick, by)], { ids: countingIds(new Set(), 1000) });
          if (!answer.ok) return;
          const after = applied(plan, answer.changes);
          expectJoined(plan, after);
          if (answer.changes.addedLegs.length > 0) jogged++;
          let own = 0;
          for (const leg of Object.values(after.legs)) {
            const drop = (p: Plan): number => placeOf(p, p.legs[leg.id]!.a).z - placeOf(p, p.legs[leg.id]!.b).z;
            const along = (p: Plan): number => {
              const [a, b] = [placeOf(p, p.legs[leg.id]!.a), placeOf(p, p.legs[leg.id]!.b)];
              return Math.hypot(a.x - b.x, a.y - b.y);
            };
            // A step aside of a mm or two falls by less than a tenth.
            expect(drop(after)).toBeGreaterThan(along(after) < 5 && !plan.legs[leg.id] ? -1e-9 : 0);
            if (!plan.legs[leg.id] || answer.changes.legs[leg.id]) continue;
            if (along(plan) < 1) continue;
            const off = Math.abs(drop(after) - (drop(plan) / along(plan)) * along(after));
            if (off > 0.2) own++;
          }
          // Held at both ends, one fall between them may give.
          expect(own).toBeLessThanOrEqual(1);
          if (own === 0) kept++;
          else changed++;
        },
      ),
      { numRuns: 500, seed: 7 },
    );
    expect(kept).toBeGreaterThan(100);
    expect(changed).toBeGreaterThan(0);
    expect(jogged).toBeGreaterThan(50);
  });
});

import { expect } from 'vitest';
import { nodePlace } from '../../src/geometry/places.ts';
import { dot3, length3, sub3 } from '../../src/geometry/vec.ts';
import { type Changes, withChanges } from '../../src/network/displace/changes.ts';
import { laidOver } from '../../src/network/displace/laid-over.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Xyz } from '../../src/plan/records/parts.ts';
import { danglingReferences } from '../../src/plan/references.ts';

export const placeOf = (plan: Plan, node: string): Xyz => nodePlace(plan, plan.nodes[node]!)!.at;

function parts(plan: Plan): Map<string, string> {
  const root = new Map<string, string>();
  const find = (id: string): string => {
    const up = root.get(id);
    if (up === undefined || up === id) return id;
    const top = find(up);
    root.set(id, top);
    return top;
  };
  for (const pipe of [...Object.values(plan.legs), ...Object.values(plan.stretches)])
    root.set(find(pipe.a), find(pipe.b));
  return new Map([...Object.values(plan.legs), ...Object.values(plan.stretches)].map((p) => [p.id, find(p.a)]));
}

/** What was joined is joined, what was apart is apart, and every pointer leads somewhere. */
export function expectJoined(before: Plan, after: Plan): void {
  const [was, is] = [parts(before), parts(after)];
  const both = [...was.keys()].filter((id) => is.has(id)).sort();
  // Each pipe by the first pipe it is joined to.
  const firsts = (part: ReadonlyMap<string, string>) =>
    both.map((id) => both.find((first) => part.get(first) === part.get(id)));
  expect(firsts(is)).toEqual(firsts(was));
  expect(danglingReferences(after)).toEqual([]);
  for (const leg of Object.values(after.legs)) expect(leg.a).not.toBe(leg.b);
  for (const node of Object.values(after.nodes)) {
    if (node.place.on !== 'connection' || !(node.id in before.nodes)) continue;
    const here = [...Object.values(after.legs), ...Object.values(after.stretches)];
    const used = (pipes: readonly { a: string; b: string }[]) => pipes.some((p) => p.a === node.id || p.b === node.id);
    const hadPipe = used([...Object.values(before.legs), ...Object.values(before.stretches)]);
    if (hadPipe) expect(used(here)).toBe(true);
  }
}

/** Legs that were there lie as they lay: off their old way by no more than rounding. */
export function expectWaysKept(before: Plan, after: Plan): void {
  for (const leg of Object.values(before.legs)) {
    const now = after.legs[leg.id];
    if (!now) continue;
    const was = sub3(placeOf(before, leg.b), placeOf(before, leg.a));
    const is = sub3(placeOf(after, now.b), placeOf(after, now.a));
    const cross = length3({
      x: was.y * is.z - was.z * is.y,
      y: was.z * is.x - was.x * is.z,
      z: was.x * is.y - was.y * is.x,
    });
    expect(cross / length3(was)).toBeLessThan(0.2);
    expect(length3(is)).toBeGreaterThan(0);
  }
}

/** Held nodes stay. New pipe may come off straight old pipe further along: then the old pipe still lies where it lay. */
export function expectStill(before: Plan, after: Plan, nodes: readonly string[]): void {
  for (const id of nodes) {
    if (!(id in after.nodes)) continue;
    const by = sub3(placeOf(after, id), placeOf(before, id));
    if (length3(by) < 1e-9) continue;
    const old = Object.values(before.legs).filter((l) => l.option === null && (l.a === id || l.b === id));
    const ways = old.map((l) => sub3(placeOf(before, l.a === id ? l.b : l.a), placeOf(before, id)));
    expect(ways).toHaveLength(2);
    for (const way of ways) expect(Math.abs(dot3(way, by))).toBeCloseTo(length3(way) * length3(by), 6);
    expect(dot3(ways[0]!, ways[1]!)).toBeLessThan(0);
    const ahead = ways.find((way) => dot3(way, by) > 0)!;
    expect(length3(by)).toBeLessThan(length3(ahead));
  }
}

/** Only what differs is in the changes, and lengths are tenths of a mm. */
export function expectLean(before: Plan, changes: Changes): void {
  for (const [id, node] of [...Object.entries(changes.nodes), ...changes.addedNodes.map((n) => [n.id, n] as const)]) {
    expect(node).not.toEqual(before.nodes[id]);
    if (node.place.on !== 'storey') continue;
    const mm = [node.place.x, node.place.y, node.place.height.mm];
    expect(mm.map((n) => Math.round(n * 10) / 10)).toEqual(mm);
  }
}

/** The plan with the changes made; what only lies over it for a moment reads the same. */
export function applied(plan: Plan, changes: Changes): Plan {
  const made = withChanges(plan, changes);
  const shown = laidOver(plan, changes);
  for (const map of ['nodes', 'legs', 'stretches', 'points', 'items'] as const) {
    expect(new Set(Object.keys(shown[map]))).toEqual(new Set(Object.keys(made[map])));
    for (const [id, record] of Object.entries(made[map])) expect(shown[map][id]).toBe(record);
    for (const id of Object.keys(plan[map])) expect(id in shown[map]).toBe(id in made[map]);
  }
  return made;
}

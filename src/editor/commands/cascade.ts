import { floorZ, resolveHeight } from '../../geometry/heights.ts';
import { hostedXy } from '../../geometry/hosting.ts';
import { nodePlace } from '../../geometry/places.ts';
import type { Plan, RecordMap } from '../../plan/plan.ts';
import type { HeightRef } from '../../plan/records/parts.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { looseEnds } from './loose-ends.ts';

export interface Doomed {
  readonly map: RecordMap;
  readonly id: string;
}

/** The same height, told from the floor of its storey: for what leaned on something that goes. */
function standing(plan: Plan, height: HeightRef, storey: string): HeightRef {
  const z = resolveHeight(plan, height);
  const mm = (z?.z ?? 0) - (floorZ(plan, storey) ?? 0);
  if (!z || z.lo === z.hi) return { from: 'floor', of: storey, mm };
  return { from: 'floor', of: storey, mm, assumed: { lo: mm + z.lo - z.z, hi: mm + z.hi - z.z } };
}

/** Heights that lean on a void, a room or a point that goes keep the z they have. */
function freeHeights(before: Plan, draft: Plan, gone: ReadonlySet<string>): void {
  const leans = (h: HeightRef | null | undefined): h is HeightRef => h != null && h.of !== null && gone.has(h.of);
  for (const node of Object.values(draft.nodes)) {
    if (node.place.on === 'storey' && leans(node.place.height)) {
      node.place.height = standing(before, node.place.height, node.place.storey);
    }
  }
  for (const point of Object.values(draft.points)) {
    if (leans(point.place.height)) point.place.height = standing(before, point.place.height, point.storey);
  }
  for (const v of Object.values(draft.voids)) {
    if (leans(v.bottom)) v.bottom = standing(before, v.bottom, v.storey);
    if (leans(v.top)) v.top = standing(before, v.top, v.storey);
    if (v.joists && leans(v.joists.bottom)) v.joists.bottom = standing(before, v.joists.bottom, v.storey);
  }
  for (const roof of Object.values(draft.roofs)) {
    if (leans(roof.eaves.height)) roof.eaves.height = standing(before, roof.eaves.height, roof.storey);
  }
}

/** Pipes that met a point which goes end in the open at the same place. */
function freeTails(before: Plan, draft: Plan, gone: ReadonlySet<string>): void {
  for (const node of Object.values(draft.nodes)) {
    if (node.place.on !== 'connection' || !gone.has(node.place.point)) continue;
    const was = before.nodes[node.id];
    const place = was && nodePlace(before, was);
    const of = before.points[node.place.point];
    const storey = place?.storey ?? of?.storey ?? Object.keys(before.storeys)[0] ?? '';
    const z = place?.at.z ?? 0;
    const height: HeightRef = { from: 'floor', of: storey, mm: z - (floorZ(before, storey) ?? 0) };
    node.place = { on: 'storey', storey, x: place?.at.x ?? 0, y: place?.at.y ?? 0, height };
  }
}

/** Points on a wall that goes stay where they are, free in their storey. */
function freePoint(before: Plan, point: Point): void {
  if (point.place.on !== 'wall') return;
  const { height } = point.place;
  const host = hostedXy(before, point.place);
  const angleDeg = host ? (Math.atan2(host.right.y, host.right.x) * 180) / Math.PI : 0;
  point.place = { on: 'storey', x: host?.at.x ?? 0, y: host?.at.y ?? 0, angleDeg, height };
}

/** What else goes when these go. Everything that can stand without them stays. */
function follow(plan: Plan, doomed: readonly Doomed[]): Doomed[] {
  const all = new Map(doomed.map((d) => [`${d.map}/${d.id}`, d]));
  const queue = [...doomed];
  const add = (map: RecordMap, id: string): void => {
    if (all.has(`${map}/${id}`)) return;
    all.set(`${map}/${id}`, { map, id });
    queue.push({ map, id });
  };
  for (let d = queue.shift(); d; d = queue.shift()) {
    const { map, id } = d;
    for (const pipes of ['legs', 'stretches'] as const) {
      for (const p of Object.values(plan[pipes])) {
        if ((map === 'runs' && p.run === id) || (map === 'nodes' && (p.a === id || p.b === id))) add(pipes, p.id);
      }
    }
    if (map === 'walls') for (const o of Object.values(plan.openings)) if (o.wall === id) add('openings', o.id);
    if (map === 'nodes') for (const i of Object.values(plan.items)) if (i.node === id) add('items', i.id);
  }
  return [...all.values()];
}

function forget(draft: Plan, gone: ReadonlySet<string>): void {
  for (const item of Object.values(draft.items)) if (item.along !== null && gone.has(item.along)) item.along = null;
  for (const point of Object.values(draft.points))
    if (point.thing !== null && gone.has(point.thing)) point.thing = null;
  for (const option of Object.values(draft.options)) {
    for (const id of Object.keys(option.fates)) if (gone.has(id)) delete option.fates[id];
  }
  for (const ref of Object.values(draft.blobRefs)) if (ref.on !== null && gone.has(ref.on)) ref.on = null;
  for (const group of Object.values(draft.groups)) {
    const left = group.members.filter((id) => !gone.has(id));
    if (left.length === group.members.length) continue;
    group.members = left;
    if (left.length < 2) delete draft.groups[group.id];
  }
}

/**
 * Deletes records and mends what leaned on them: openings go with their wall, legs with their run or node, nodes and
 * runs with their last leg; points come off a wall and pipe ends off a point, each staying where it is. Acknowledgements,
 * overrides and list edits stay: they are statements of the user, and fit again if the thing comes back.
 */
export function removeAll(before: Plan, draft: Plan, doomed: readonly Doomed[]): void {
  const all = follow(before, doomed);
  const gone = new Set(all.map((d) => d.id));
  freeTails(before, draft, gone);
  freeHeights(before, draft, gone);
  for (const point of Object.values(draft.points)) {
    if (point.place.on === 'wall' && gone.has(point.place.wall)) freePoint(before, point);
  }
  const touched = all.flatMap(({ map, id }) => {
    const pipe = map === 'legs' || map === 'stretches' ? before[map][id] : undefined;
    return pipe ? [pipe] : [];
  });
  for (const { map, id } of all) delete (draft[map] as Record<string, unknown>)[id];
  const empty = looseEnds(draft, touched);
  for (const { map, id } of empty) delete (draft[map] as Record<string, unknown>)[id];
  forget(draft, new Set([...gone, ...empty.map((e) => e.id)]));
}

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

const LEANT_ON: readonly RecordMap[] = ['voids', 'rooms', 'points'];

/**
 * Heights that lean on a void, a room or a point that goes keep the z they have. What leans is looked for in the plan as
 * it was: reading every record of a draft is slow, and a command that deletes does not make such records before.
 */
function freeHeights(before: Plan, draft: Plan, all: readonly Doomed[]): void {
  const gone = new Set(all.filter((d) => LEANT_ON.includes(d.map)).map((d) => d.id));
  if (gone.size === 0) return;
  const leans = (h: HeightRef | null | undefined): h is HeightRef => h != null && h.of !== null && gone.has(h.of);
  for (const { id, place: was } of Object.values(before.nodes)) {
    const place = was.on === 'storey' && leans(was.height) ? draft.nodes[id]?.place : undefined;
    if (place?.on === 'storey' && was.on === 'storey') place.height = standing(before, was.height, was.storey);
  }
  for (const { id, place: was, storey } of Object.values(before.points)) {
    const point = leans(was.height) ? draft.points[id] : undefined;
    if (point) point.place.height = standing(before, was.height, storey);
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
function freeTails(before: Plan, draft: Plan, all: readonly Doomed[]): void {
  const gone = new Set(all.filter((d) => d.map === 'points').map((d) => d.id));
  if (gone.size === 0) return;
  for (const was of Object.values(before.nodes)) {
    if (was.place.on !== 'connection' || !gone.has(was.place.point)) continue;
    const node = draft.nodes[was.id];
    if (!node) continue;
    const place = nodePlace(before, was);
    const storey = place?.storey ?? before.points[was.place.point]?.storey ?? Object.keys(before.storeys)[0] ?? '';
    const mm = (place?.at.z ?? 0) - (floorZ(before, storey) ?? 0);
    const height: HeightRef = { from: 'floor', of: storey, mm };
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
  if (doomed.length === 0) return;
  const all = follow(before, doomed);
  const gone = new Set(all.map((d) => d.id));
  freeTails(before, draft, all);
  freeHeights(before, draft, all);
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

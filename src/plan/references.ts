import type { Plan, RecordMap } from './plan.ts';
import type { HeightRef } from './records/parts.ts';

/** One pointer from a record to another: where it stands, and what it names. */
export interface Reference {
  readonly map: RecordMap;
  readonly id: string;
  readonly field: string;
  readonly toMap: RecordMap;
  readonly toId: string;
}

function* heightReferences(map: RecordMap, id: string, field: string, h: HeightRef, plan: Plan): Generator<Reference> {
  if (h.of === null) return;
  const at = { map, id, field, toId: h.of };
  if (h.from === 'voidTop' || h.from === 'voidBottom') yield { ...at, toMap: 'voids' };
  else if (h.from === 'connection') yield { ...at, toMap: 'points' };
  else if (h.from === 'floor' || h.from === 'ceiling')
    yield { ...at, toMap: Object.hasOwn(plan.rooms, h.of) ? 'rooms' : 'storeys' };
}

/** Every pointer in the plan. The one list by which dangling ids are found and deletions cascade. */
export function* references(plan: Plan): Generator<Reference> {
  for (const w of Object.values(plan.walls)) {
    yield { map: 'walls', id: w.id, field: 'storey', toMap: 'storeys', toId: w.storey };
    if (w.option !== null) yield { map: 'walls', id: w.id, field: 'option', toMap: 'options', toId: w.option };
  }
  for (const o of Object.values(plan.openings)) {
    yield { map: 'openings', id: o.id, field: 'wall', toMap: 'walls', toId: o.wall };
    if (o.option !== null) yield { map: 'openings', id: o.id, field: 'option', toMap: 'options', toId: o.option };
  }
  for (const r of Object.values(plan.rooms))
    yield { map: 'rooms', id: r.id, field: 'storey', toMap: 'storeys', toId: r.storey };
  for (const r of Object.values(plan.roofs)) {
    yield { map: 'roofs', id: r.id, field: 'storey', toMap: 'storeys', toId: r.storey };
    yield* heightReferences('roofs', r.id, 'eaves.height', r.eaves.height, plan);
  }
  for (const vd of Object.values(plan.voids)) {
    yield { map: 'voids', id: vd.id, field: 'storey', toMap: 'storeys', toId: vd.storey };
    if (vd.option !== null) yield { map: 'voids', id: vd.id, field: 'option', toMap: 'options', toId: vd.option };
    if (vd.bottom) yield* heightReferences('voids', vd.id, 'bottom', vd.bottom, plan);
    if (vd.top) yield* heightReferences('voids', vd.id, 'top', vd.top, plan);
    if (vd.joists?.bottom) yield* heightReferences('voids', vd.id, 'joists.bottom', vd.joists.bottom, plan);
  }
  for (const p of Object.values(plan.points)) {
    yield { map: 'points', id: p.id, field: 'storey', toMap: 'storeys', toId: p.storey };
    if (p.place.on === 'wall')
      yield { map: 'points', id: p.id, field: 'place.wall', toMap: 'walls', toId: p.place.wall };
    yield* heightReferences('points', p.id, 'place.height', p.place.height, plan);
    if (p.option !== null) yield { map: 'points', id: p.id, field: 'option', toMap: 'options', toId: p.option };
    if (p.thing !== null) yield { map: 'points', id: p.id, field: 'thing', toMap: 'things', toId: p.thing };
  }
  for (const r of Object.values(plan.runs)) {
    if (r.option !== null) yield { map: 'runs', id: r.id, field: 'option', toMap: 'options', toId: r.option };
  }
  for (const n of Object.values(plan.nodes)) {
    if (n.place.on === 'storey') {
      yield { map: 'nodes', id: n.id, field: 'place.storey', toMap: 'storeys', toId: n.place.storey };
      yield* heightReferences('nodes', n.id, 'place.height', n.place.height, plan);
    } else yield { map: 'nodes', id: n.id, field: 'place.point', toMap: 'points', toId: n.place.point };
    if (n.option !== null) yield { map: 'nodes', id: n.id, field: 'option', toMap: 'options', toId: n.option };
  }
  for (const map of ['legs', 'stretches'] as const) {
    for (const l of Object.values(plan[map])) {
      yield { map, id: l.id, field: 'run', toMap: 'runs', toId: l.run };
      yield { map, id: l.id, field: 'a', toMap: 'nodes', toId: l.a };
      yield { map, id: l.id, field: 'b', toMap: 'nodes', toId: l.b };
      if (l.option !== null) yield { map, id: l.id, field: 'option', toMap: 'options', toId: l.option };
    }
  }
  for (const i of Object.values(plan.items)) {
    yield { map: 'items', id: i.id, field: 'node', toMap: 'nodes', toId: i.node };
    if (i.along !== null) yield { map: 'items', id: i.id, field: 'along', toMap: 'legs', toId: i.along };
    if (i.option !== null) yield { map: 'items', id: i.id, field: 'option', toMap: 'options', toId: i.option };
  }
  for (const g of Object.values(plan.groups)) {
    for (const m of g.members) yield { map: 'groups', id: g.id, field: 'members', toMap: 'runs', toId: m };
  }
  for (const e of Object.values(plan.listEdits)) {
    if (e.option !== null) yield { map: 'listEdits', id: e.id, field: 'option', toMap: 'options', toId: e.option };
  }
}

/** Pointers that lead nowhere, and nodes on a connection their point does not have. Empty in every sound plan. */
export function danglingReferences(plan: Plan): Reference[] {
  const lost: Reference[] = [];
  for (const r of references(plan)) if (!Object.hasOwn(plan[r.toMap], r.toId)) lost.push(r);
  for (const n of Object.values(plan.nodes)) {
    if (n.place.on !== 'connection') continue;
    const { point, connection } = n.place;
    const has = plan.points[point]?.connections.some((c) => c.id === connection);
    if (Object.hasOwn(plan.points, point) && !has) {
      lost.push({ map: 'nodes', id: n.id, field: 'place.connection', toMap: 'points', toId: `${point}/${connection}` });
    }
  }
  return lost;
}

import type { Plan } from '../../plan/plan.ts';
import type { HeightRef } from '../../plan/records/parts.ts';
import type { Fate } from '../../plan/records/statements.ts';

/** Middle to middle of two houses, mm: none of them reaches another, so that the pipes lie as dense at any number. */
const APART_MM = 30_000;

type Named = (id: string) => string;

/** Heights lean on things of their own house; floors and ceilings of storeys belong to all of them. */
function renamer(house: Plan, of: Named): (h: HeightRef) => HeightRef {
  return (h) => (h.of === null || Object.hasOwn(house.storeys, h.of) ? h : { ...h, of: of(h.of) });
}

/** Adds one house to `all`, moved by (dx, dy), every id of its own told by `named`. */
function addHouse(all: Plan, house: Plan, dx: number, dy: number, named: Named): void {
  const to = <P extends { readonly x: number; readonly y: number }>(p: P): P => ({ ...p, x: p.x + dx, y: p.y + dy });
  const rename = renamer(house, named);
  for (const w of Object.values(house.walls)) {
    all.walls[named(w.id)] = { ...w, id: named(w.id), a: to(w.a), b: to(w.b) };
  }
  for (const o of Object.values(house.openings)) {
    all.openings[named(o.id)] = { ...o, id: named(o.id), wall: named(o.wall) };
  }
  for (const v of Object.values(house.voids)) {
    all.voids[named(v.id)] = {
      ...v,
      id: named(v.id),
      outline: v.outline.map(to),
      holes: v.holes.map((hole) => hole.map(to)),
      bottom: v.bottom && rename(v.bottom),
      top: v.top && rename(v.top),
      joists: v.joists && {
        ...v.joists,
        first: to(v.joists.first),
        bottom: v.joists.bottom && rename(v.joists.bottom),
      },
      bearings: v.bearings.map((b) => ({ ...b, a: to(b.a), b: to(b.b) })),
    };
  }
  for (const r of Object.values(house.rooms)) {
    all.rooms[named(r.id)] = { ...r, id: named(r.id), seed: to(r.seed) };
  }
  for (const r of Object.values(house.roofs)) {
    const eaves = { ...r.eaves, a: to(r.eaves.a), b: to(r.eaves.b), height: rename(r.eaves.height) };
    all.roofs[named(r.id)] = { ...r, id: named(r.id), outline: r.outline.map(to), eaves };
  }
  for (const g of Object.values(house.grounds)) {
    all.grounds[named(g.id)] = { ...g, id: named(g.id), line: g.line.map(to) };
  }
  for (const p of Object.values(house.points)) {
    const height = rename(p.place.height);
    const place =
      p.place.on === 'wall' ? { ...p.place, wall: named(p.place.wall), height } : { ...to(p.place), height };
    all.points[named(p.id)] = { ...p, id: named(p.id), place };
  }
  for (const r of Object.values(house.runs)) all.runs[named(r.id)] = { ...r, id: named(r.id) };
  for (const n of Object.values(house.nodes)) {
    const place =
      n.place.on === 'storey'
        ? { ...to(n.place), height: rename(n.place.height) }
        : { ...n.place, point: named(n.place.point) };
    all.nodes[named(n.id)] = { ...n, id: named(n.id), place };
  }
  for (const map of ['legs', 'stretches'] as const) {
    for (const pipe of Object.values(house[map])) {
      const ends = { id: named(pipe.id), run: named(pipe.run), a: named(pipe.a), b: named(pipe.b) };
      Object.assign(all[map], { [ends.id]: { ...pipe, ...ends } });
    }
  }
  for (const i of Object.values(house.items)) {
    const along = i.along === null ? null : named(i.along);
    all.items[named(i.id)] = { ...i, id: named(i.id), node: named(i.node), along };
  }
}

/**
 * The same house over and over on a grid, as one plan: the work of a house must not grow with the number of houses.
 * Everything that was surveyed goes along; groups and pictures do not.
 */
export function copiesOf(house: Plan, count: number): Plan {
  const empty = {
    walls: {},
    openings: {},
    rooms: {},
    roofs: {},
    grounds: {},
    voids: {},
    points: {},
    runs: {},
    nodes: {},
    legs: {},
    stretches: {},
    items: {},
  };
  const all: Plan = { ...structuredClone(house), ...empty, groups: {}, blobRefs: {} };
  const fates: Record<string, Record<string, Fate>> = {};
  const side = Math.ceil(Math.sqrt(count));
  for (let k = 0; k < count; k++) {
    const named: Named = (id) => `${id}~${k}`;
    addHouse(all, house, (k % side) * APART_MM, Math.floor(k / side) * APART_MM, named);
    for (const option of Object.values(house.options)) {
      const own = fates[option.id] ?? {};
      for (const [id, fate] of Object.entries(option.fates)) own[named(id)] = fate;
      fates[option.id] = own;
    }
  }
  all.options = Object.fromEntries(Object.values(house.options).map((o) => [o.id, { ...o, fates: fates[o.id] ?? {} }]));
  return all;
}

/** How many copies of a house have about this many legs. */
export const copiesFor = (house: Plan, legs: number): number =>
  Math.max(1, Math.round(legs / Math.max(1, Object.keys(house.legs).length)));

import { services } from '../../../catalogue/services.ts';
import { sayTubeSize } from '../../../catalogue/tubes.ts';
import type { Selected } from '../../../editor/editor-api.ts';
import { pointFrame } from '../../../geometry/hosting.ts';
import { nodePlace } from '../../../geometry/places.ts';
import { faceAt, type RoomFace, roomFaces } from '../../../geometry/rooms.ts';
import { aliveIn } from '../../../network/cases.ts';
import type { Case, Plan } from '../../../plan/plan.ts';
import type { Xyz } from '../../../plan/records/parts.ts';
import { pointLabel } from '../kind-labels.ts';
import { nameOf } from '../name-of.ts';

export type ListedMap = 'points' | 'runs' | 'items' | 'rooms' | 'voids' | 'openings' | 'walls' | 'roofs' | 'grounds';

const KINDS: readonly { readonly map: ListedMap; readonly word: string }[] = [
  { map: 'points', word: 'Points' },
  { map: 'runs', word: 'Runs' },
  { map: 'items', word: 'Valves and items' },
  { map: 'rooms', word: 'Rooms' },
  { map: 'voids', word: 'Voids' },
  { map: 'openings', word: 'Openings' },
  { map: 'walls', word: 'Walls' },
  { map: 'roofs', word: 'Roofs' },
  { map: 'grounds', word: 'Ground' },
];

/** A place that stands for a thing, and its floor. */
export interface ThingPlace {
  readonly storey: string;
  readonly at: Xyz;
}

export interface Thing extends Selected {
  readonly map: ListedMap;
  readonly name: string;
}

/** Things of one kind on one floor. The floor is told where there is more than one. */
export interface ThingGroup {
  readonly key: string;
  readonly title: string;
  readonly things: readonly Thing[];
}

/** The first pipe of each run: where a run is looked for, and on which floor it is listed. */
function firstNodes(plan: Plan): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const map of ['legs', 'stretches'] as const) {
    for (const pipe of Object.values(plan[map])) if (!found.has(pipe.run)) found.set(pipe.run, pipe.a);
  }
  return found;
}

const flat = (at: { readonly x: number; readonly y: number } | undefined, storey: string): ThingPlace | null =>
  at ? { storey, at: { x: at.x, y: at.y, z: 0 } } : null;

/** Where a thing is; null where nothing of it has a place. */
export function placeOf(plan: Plan, { map, id }: Selected, nodes = firstNodes(plan)): ThingPlace | null {
  const atNode = (node: string | undefined): ThingPlace | null => {
    const record = plan.nodes[node ?? ''];
    const place = record && nodePlace(plan, record);
    return place ? { storey: place.storey, at: place.at } : null;
  };
  const between = (wall: string | undefined): ThingPlace | null => {
    const w = plan.walls[wall ?? ''];
    return w ? flat({ x: (w.a.x + w.b.x) / 2, y: (w.a.y + w.b.y) / 2 }, w.storey) : null;
  };
  switch (map) {
    case 'points': {
      const point = plan.points[id];
      const at = point && pointFrame(plan, point)?.origin;
      return at ? { storey: point.storey, at } : null;
    }
    case 'runs':
      return atNode(nodes.get(id));
    case 'items':
      return atNode(plan.items[id]?.node);
    case 'rooms':
      return flat(plan.rooms[id]?.seed, plan.rooms[id]?.storey ?? '');
    case 'walls':
      return between(id);
    case 'openings':
      return between(plan.openings[id]?.wall);
    case 'voids':
      return flat(plan.voids[id]?.outline[0], plan.voids[id]?.storey ?? '');
    case 'roofs':
      return flat(plan.roofs[id]?.outline[0], plan.roofs[id]?.storey ?? '');
    default:
      return null;
  }
}

const byName = new Intl.Collator('en', { numeric: true }).compare;

/** Everything that stands in a case, by floor and kind, in the order of the names: the same things a hand could tap. */
export function groupsOf(plan: Plan, chosen: Case): readonly ThingGroup[] {
  const alive = aliveIn(plan, chosen);
  const nodes = firstNodes(plan);
  const storeys = Object.values(plan.storeys).sort((a, b) => a.floorMm - b.floorMm);
  const found = new Map<string, Thing[]>();
  for (const { map } of KINDS) {
    for (const id of Object.keys(plan[map])) {
      if (!alive.has(map, id)) continue;
      const record = plan[map][id];
      const own = record && 'storey' in record ? record.storey : undefined;
      const storey = own ?? placeOf(plan, { map, id }, nodes)?.storey ?? '';
      const key = `${storey}/${map}`;
      const thing = { map, id, name: nameOf(plan, { map, id }) };
      const group = found.get(key);
      if (group) group.push(thing);
      else found.set(key, [thing]);
    }
  }
  const floors = [...storeys.map((s) => ({ id: s.id, name: s.name })), { id: '', name: '' }];
  const used = floors.filter((f) => KINDS.some(({ map }) => found.has(`${f.id}/${map}`)));
  return used.flatMap(({ id, name }) =>
    KINDS.flatMap(({ map, word }) => {
      const things = found.get(`${id}/${map}`);
      if (!things) return [];
      things.sort((a, b) => byName(a.name, b.name) || (a.id < b.id ? -1 : 1));
      const title = used.length > 1 && name !== '' ? `${name}: ${word.toLowerCase()}` : word;
      return [{ key: `${id}/${map}`, title, things }];
    }),
  );
}

/** Words by which a thing is found: its name, kind, service, sizes, room and floor, in small letters. */
export function wordsOf(plan: Plan): (thing: Thing) => string {
  const nodes = firstNodes(plan);
  const sizes = new Map<string, Set<string>>();
  for (const leg of Object.values(plan.legs)) {
    const of = sizes.get(leg.run) ?? new Set();
    sizes.set(leg.run, of.add(sayTubeSize(leg.tube)));
  }
  const faces = new Map<string, readonly RoomFace[]>();
  const serviceWords = (id: string | undefined): readonly string[] => {
    const kind = services.get(id ?? '');
    return kind ? [kind.label, kind.tag] : [id ?? ''];
  };
  const kindWords = ({ map, id }: Thing): readonly string[] => {
    if (map === 'points') {
      const point = plan.points[id];
      return [pointLabel(point?.kind ?? ''), ...(point?.connections.flatMap((c) => serviceWords(c.service)) ?? [])];
    }
    if (map === 'runs') return [...serviceWords(plan.runs[id]?.service), ...(sizes.get(id) ?? [])];
    if (map === 'rooms') return [plan.rooms[id]?.use ?? ''];
    if (map === 'walls') return [plan.walls[id]?.construction ?? ''];
    return map === 'openings' ? [plan.openings[id]?.kind ?? ''] : [];
  };
  return (thing) => {
    const place = placeOf(plan, thing, nodes);
    const storey = place?.storey ?? '';
    const known = faces.get(storey) ?? roomFaces(plan, storey).faces;
    faces.set(storey, known);
    const room = place ? plan.rooms[faceAt(known, place.at)?.rooms[0] ?? '']?.name : undefined;
    return [thing.name, ...kindWords(thing), room ?? '', plan.storeys[storey]?.name ?? ''].join(' ').toLowerCase();
  };
}

/** Groups with only the things that have every typed word in them. */
export function found(
  groups: readonly ThingGroup[],
  typed: string,
  words: (thing: Thing) => string,
): readonly ThingGroup[] {
  const asked = typed.toLowerCase().split(/\s+/).filter(Boolean);
  if (asked.length === 0) return groups;
  return groups.flatMap((g) => {
    const things = g.things.filter((t) => {
      const own = words(t);
      return asked.every((w) => own.includes(w));
    });
    return things.length === 0 ? [] : [{ ...g, things }];
  });
}

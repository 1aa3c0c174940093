import { pointKinds } from '../../catalogue/point-kinds.ts';
import { sayTubeSize } from '../../catalogue/tubes.ts';
import type { Selected } from '../../editor/editor-api.ts';
import { resolveHeight } from '../../geometry/heights.ts';
import { roomFaces } from '../../geometry/rooms.ts';
import type { Plan } from '../../plan/plan.ts';

/** What follows the kind's own words in its sentence: "connections gas 22; heat input 30 kW". */
function sayPoint(plan: Plan, id: string): string {
  const point = plan.points[id];
  if (!point) return '';
  const sentence = pointKinds.get(point.kind)?.describe(point) ?? '';
  const z = resolveHeight(plan, point.place.height)?.z;
  const floor = plan.storeys[point.storey]?.floorMm ?? 0;
  const off = z === undefined ? null : Math.round(z - floor);
  const height = off === null ? 'height not known' : off < 0 ? `${-off} below the floor` : `${off} off floor`;
  const told = /^[^:]*: (.*)\.$/.exec(sentence)?.[1];
  return [height, told].filter((t) => t !== undefined && t !== '').join('; ');
}

function sayRun(plan: Plan, id: string): string {
  const legs = Object.values(plan.legs).filter((l) => l.run === id);
  const unseen = Object.values(plan.stretches).filter((s) => s.run === id).length;
  const sizes = [...new Set(legs.map((l) => sayTubeSize(l.tube)))].join(', ');
  const parts = [
    legs.length === 0 ? '' : `${legs.length} ${legs.length === 1 ? 'leg' : 'legs'}`,
    unseen === 0 ? '' : `${unseen} unseen`,
    sizes,
  ];
  return parts.filter((t) => t !== '').join(', ');
}

/** What it is used for, where its name does not say so already, and how large it is inside its walls. */
function sayRoom(plan: Plan, id: string): string {
  const room = plan.rooms[id];
  if (!room) return '';
  const use = room.use.toLowerCase() !== room.name.toLowerCase() ? room.use : '';
  const face = roomFaces(plan, room.storey).faces.find((f) => f.rooms.includes(id));
  const area = face ? `${(face.areaMm2 / 1e6).toFixed(1)} m²` : '';
  return [use, area].filter((t) => t !== '').join(', ');
}

/** One line about a thing for the list beside the drawing and for a screen reader; empty where its name says all. */
export function sayThing(plan: Plan, of: Selected): string {
  switch (of.map) {
    case 'points':
      return sayPoint(plan, of.id);
    case 'runs':
      return sayRun(plan, of.id);
    case 'walls': {
      const w = plan.walls[of.id];
      if (!w) return '';
      const metres = Math.hypot(w.a.x - w.b.x, w.a.y - w.b.y) / 1000;
      return [`${metres.toFixed(2)} m`, w.construction].filter((t) => t !== '').join(', ');
    }
    case 'openings': {
      const o = plan.openings[of.id];
      if (!o) return '';
      const opens = o.opens === null ? 'not told whether it opens' : o.opens ? 'opens' : 'does not open';
      return [o.name === '' ? '' : o.kind, `${o.widthMm} wide`, opens].filter((t) => t !== '').join(', ');
    }
    case 'voids': {
      const v = plan.voids[of.id];
      if (!v) return '';
      const joists = v.joists ? `joists at ${v.joists.centresMm}` : '';
      // A void without a name is called by its kind: it is not said again.
      return [v.name === '' ? '' : v.kind, joists].filter((t) => t !== '').join(', ');
    }
    case 'rooms':
      return sayRoom(plan, of.id);
    case 'roofs': {
      const r = plan.roofs[of.id];
      return r ? `${r.pitchDeg} degrees${r.rafters ? `, rafters at ${r.rafters.centresMm}` : ''}` : '';
    }
    case 'grounds': {
      const g = plan.grounds[of.id];
      const places = g ? `${g.line.length} ${g.line.length === 1 ? 'place' : 'places'}` : '';
      return [g?.kind ?? '', places].filter((t) => t !== '').join(', ');
    }
    default:
      return '';
  }
}

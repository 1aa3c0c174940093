import { sayTubeSize } from '../../catalogue/tubes.ts';
import type { Selected } from '../../editor/editor-api.ts';
import type { Plan } from '../../plan/plan.ts';
import { itemLabel, pointLabel, serviceLabel } from './kind-labels.ts';

const MAP_WORD: Readonly<Record<Selected['map'], string>> = {
  walls: 'Wall',
  openings: 'Opening',
  points: 'Point',
  runs: 'Run',
  legs: 'Leg',
  nodes: 'Corner',
  items: 'Item',
  voids: 'Void',
  rooms: 'Room',
  stretches: 'Unseen stretch',
  roofs: 'Roof',
  grounds: 'Ground level',
  blobRefs: 'Photo',
};

const sentence = (s: string): string => s.charAt(0).toUpperCase() + s.slice(1);

function voidName(plan: Plan, id: string): string {
  const v = plan.voids[id];
  if (!v) return MAP_WORD.voids;
  return v.name || sentence(v.kind === 'ceiling' || v.kind === 'floor' ? `${v.kind} void` : v.kind);
}

/** What a record is called on the page: its own name, else its kind. */
export function nameOf(plan: Plan, of: Selected): string {
  const { map, id } = of;
  switch (map) {
    case 'points': {
      const p = plan.points[id];
      return p ? p.name || pointLabel(p.kind) : MAP_WORD.points;
    }
    case 'runs': {
      const r = plan.runs[id];
      return r ? r.name || `${sentence(serviceLabel(r.service))} run` : MAP_WORD.runs;
    }
    case 'legs': {
      const l = plan.legs[id];
      const r = l && plan.runs[l.run];
      return l ? `${sentence(serviceLabel(r?.service ?? ''))} leg, ${sayTubeSize(l.tube)}` : MAP_WORD.legs;
    }
    case 'items': {
      const i = plan.items[id];
      return i ? i.name || itemLabel(i.kind) : MAP_WORD.items;
    }
    case 'openings': {
      const o = plan.openings[id];
      return o ? o.name || sentence(o.kind) : MAP_WORD.openings;
    }
    case 'blobRefs':
      return plan.blobRefs[id]?.name || MAP_WORD.blobRefs;
    case 'rooms':
      return plan.rooms[id]?.name || MAP_WORD.rooms;
    case 'voids':
      return voidName(plan, id);
    case 'walls':
      return `Wall, ${plan.walls[id]?.thicknessMm ?? ''}`.replace(/, $/, '');
    default:
      return MAP_WORD[map];
  }
}

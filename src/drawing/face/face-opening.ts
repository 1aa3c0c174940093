import type { Plan } from '../../plan/plan.ts';
import type { Opening } from '../../plan/records/building.ts';
import type { Fragment, Item, LineStyle, Vec, Wish } from '../display-list.ts';
import { makeFragment } from '../fragments/fragment.ts';
import { PEN } from '../look/tokens.ts';
import type { FacePlane } from '../pipes/plane.ts';
import { openingAcross, rectangle } from './face-wall.ts';

const EDGE: LineStyle = { ink: 'wallEdge', pen: PEN.doorLeaf, dash: [], fit: false };
const THIN: LineStyle = { ink: 'opening', pen: PEN.opening, dash: [], fit: false };
/** Face width of a drawn frame. */
const FRAME_MM = 35;

function words(opening: Opening): string {
  const opens = opening.opens === null ? 'opens?' : opening.opens ? 'opens' : 'fixed';
  return opening.kind === 'window' || opening.kind === 'vent' ? `${opening.kind}, ${opens}` : opening.kind;
}

/** An opening of the wall, seen from the room: its edge, its frame, a line where it parts, what it is. */
export function faceOpening(plan: Plan, opening: Opening, plane: FacePlane): Fragment {
  const a = openingAcross(plan, opening, plane);
  const floor = plan.storeys[plane.storey]?.floorMm ?? 0;
  if (!a) return makeFragment(opening.id, 'openings', 'opening', []);
  const [low, high] = [floor + opening.sillMm, floor + opening.headMm];
  const items: Item[] = [{ t: 'area', rings: [rectangle(a, low, high)], fill: 'paper', edge: EDGE }];
  const inner = { from: a.from + FRAME_MM, upTo: a.upTo - FRAME_MM };
  if (opening.kind === 'window' && inner.upTo > inner.from && high - low > 2 * FRAME_MM) {
    items.push({ t: 'area', rings: [rectangle(inner, low + FRAME_MM, high - FRAME_MM)], fill: 'none', edge: THIN });
    if (opening.widthMm > 900) {
      const x = (a.from + a.upTo) / 2;
      items.push({
        t: 'line',
        pts: [
          [x, low + FRAME_MM],
          [x, high - FRAME_MM],
        ],
        style: THIN,
      });
    }
  } else if (opening.kind === 'door' && inner.upTo > inner.from) {
    const frame: Vec[] = [
      [inner.from, low],
      [inner.from, high - FRAME_MM],
      [inner.upTo, high - FRAME_MM],
      [inner.upTo, low],
    ];
    items.push({ t: 'line', pts: frame, style: THIN });
  }
  const middle: Vec = [(a.from + a.upTo) / 2, high - 150];
  const wishes: Wish[] = [{ w: 'name', at: middle, text: '', second: words(opening), ring: rectangle(a, low, high) }];
  const unsure = opening.sureness === 'assumed';
  const upright = (from: number, upTo: number, what: 'sill' | 'height'): Wish => ({
    w: 'dimension',
    a: [a.upTo, from],
    b: [a.upTo, upTo],
    side: [1, 0],
    awayMm: 6,
    text: Math.round(upTo - from).toString(),
    unsure,
    measures: { of: 'opening', id: opening.id, what, sign: 1 },
  });
  if (opening.kind === 'window') {
    if (opening.sillMm > 0) wishes.push(upright(floor, low, 'sill'));
    wishes.push(upright(low, high, 'height'));
  }
  return makeFragment(opening.id, 'openings', 'opening', items, wishes);
}

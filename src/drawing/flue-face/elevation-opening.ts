import { openingSpan } from '../../geometry/opening-box.ts';
import { outOfWall, wallLength } from '../../geometry/wall-frame.ts';
import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Opening } from '../../plan/records/building.ts';
import type { Item, LineStyle, Vec } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import type { Elevation } from './elevation.ts';
import { type Part, rectangle } from './elevation-building.ts';
import type { WordWish } from './word-labels.ts';

const EDGE: LineStyle = { ink: 'wallEdge', pen: PEN.doorLeaf, dash: [], fit: false };
const THIN: LineStyle = { ink: 'opening', pen: PEN.opening, dash: [], fit: false };
const OPENS: LineStyle = { ink: 'opening', pen: PEN.opening, dash: [2.4, 1.2], fit: false };
const FRAME_MM = 45;

/** What is seen through, and how it opens. */
export interface Pane {
  readonly from: number;
  readonly upTo: number;
  readonly low: number;
  readonly high: number;
  /** Null: nobody looked. */
  readonly opens: boolean | null;
  /** Where it is hung, and its lines meet; null: not told, and no line is drawn. */
  readonly hung: 'left' | 'right' | 'top' | null;
}

/** Dashed from the corners that swing to the middle of where it hangs; a fixed one has none. */
function openingLines({ from, upTo, low, high, opens, hung }: Pane): Item[] {
  if (opens !== true || hung === null) return [];
  const [l, r, b, t] = [from + FRAME_MM, upTo - FRAME_MM, low + FRAME_MM, high - FRAME_MM];
  const middle = (b + t) / 2;
  const pts: Vec[] =
    hung === 'left'
      ? [
          [r, b],
          [l, middle],
          [r, t],
        ]
      : hung === 'right'
        ? [
            [l, b],
            [r, middle],
            [l, t],
          ]
        : [
            [l, b],
            [(l + r) / 2, t],
            [r, b],
          ];
  return [{ t: 'line', pts, style: OPENS }];
}

/** A window or door from outside: edge, frame, and the dashed lines of a part that opens. "?" where nobody looked. */
export function paneItems(pane: Pane, framed: boolean, clear: boolean): Item[] {
  const { from, upTo, low, high } = pane;
  const items: Item[] = [
    { t: 'area', rings: [rectangle(from, upTo, low, high)], fill: clear ? 'none' : 'paper', edge: EDGE },
  ];
  if (upTo - from <= 3 * FRAME_MM || high - low <= 3 * FRAME_MM) return items;
  if (framed) {
    const inner = rectangle(from + FRAME_MM, upTo - FRAME_MM, low + FRAME_MM, high - FRAME_MM);
    items.push({ t: 'area', rings: [inner], fill: 'none', edge: THIN });
  }
  items.push(...openingLines(pane));
  if (pane.opens === null) {
    items.push({
      t: 'text',
      at: [(from + upTo) / 2, (low + high) / 2],
      text: '?',
      size: 'room',
      weight: 600,
      align: 'middle',
      ink: 'cantTell',
      turnDeg: 0,
      halo: true,
    });
  }
  return items;
}

const sayOpens = (opens: boolean | null): string => (opens === null ? 'opens?' : opens ? 'opens' : 'fixed');

export function sayPane(name: string, opens: boolean | null, told: boolean): string {
  return told ? `${name}, ${sayOpens(opens)}` : name;
}

function paneOf(plan: Plan, opening: Opening, elevation: Elevation): Pane | undefined {
  const wall = plan.walls[opening.wall];
  const storey = wall && plan.storeys[wall.storey];
  if (!wall || !storey) return undefined;
  const [near, far] = openingSpan(opening, wallLength(wall));
  const across = (s: number): number => elevation.at({ ...outOfWall(wall, s, 0), z: 0 })[0];
  const [a, b] = [across(near), across(far)];
  // Nobody tells how a window hangs: its lines then say no more than that it opens. A leaf of a door is not drawn by guess.
  const untold = opening.kind === 'window' ? 'top' : null;
  const hung = opening.hinge === null ? untold : (opening.hinge === 'a') === a < b ? 'left' : 'right';
  return {
    from: Math.min(a, b),
    upTo: Math.max(a, b),
    low: storey.floorMm + opening.sillMm,
    high: storey.floorMm + opening.headMm,
    // A door or a way through is open whenever somebody goes through it.
    opens: opening.kind === 'door' ? (opening.opens ?? true) : opening.kind === 'window' ? opening.opens : true,
    hung,
  };
}

/** Openings of the walls in line. `clear`: nothing is filled, so that a picture shows. */
export function openingParts(plan: Plan, elevation: Elevation, alive: Alive, clear: boolean): Part {
  const items: Item[] = [];
  const words: WordWish[] = [];
  const walls = new Set(elevation.walls.filter((w) => w.side !== null).map((w) => w.id));
  for (const opening of Object.values(plan.openings)) {
    if (!walls.has(opening.wall) || !alive.has('openings', opening.id)) continue;
    const pane = paneOf(plan, opening, elevation);
    if (!pane) continue;
    if (opening.kind === 'vent') items.push(...ventItems(pane, clear));
    else items.push(...paneItems(pane, opening.kind !== 'archway', clear));
    const name = opening.name === '' ? opening.kind : opening.name;
    words.push({
      at: [(pane.from + pane.upTo) / 2, pane.low],
      text: sayPane(name, pane.opens, opening.kind === 'window'),
      tries: 'under',
      ids: [opening.id],
      top: pane.high,
    });
  }
  return { items, words };
}

const VENT_BARS = 4;

function ventItems({ from, upTo, low, high }: Pane, clear: boolean): Item[] {
  const bar = (i: number): Item => {
    const z = low + ((high - low) * i) / VENT_BARS;
    return {
      t: 'line',
      pts: [
        [from, z],
        [upTo, z],
      ],
      style: THIN,
    };
  };
  return [
    { t: 'area', rings: [rectangle(from, upTo, low, high)], fill: clear ? 'none' : 'paper', edge: EDGE },
    ...Array.from({ length: VENT_BARS - 1 }, (_, i) => bar(i + 1)),
  ];
}

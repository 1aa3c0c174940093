import { pointKinds } from '../../catalogue/point-kinds.ts';
import { pointBox } from '../../geometry/point-box.ts';
import { dot } from '../../geometry/vec.ts';
import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { FlueFace } from '../../report/flue-face.ts';
import type { Item, LineStyle, Vec } from '../display-list.ts';
import { symbolItems } from '../fragments/symbol-items.ts';
import { PEN } from '../look/tokens.ts';
import type { Elevation } from './elevation.ts';
import type { Part } from './elevation-building.ts';
import { paneItems, sayPane } from './elevation-opening.ts';
import type { WordWish } from './word-labels.ts';

/** So far before the face a thing still belongs to it; further across than this past its ends it does not. */
const BEFORE_MM = 700;
const ASIDE_MM = 3000;
/** Stand before the face and would only hide it. */
const NOT_ON_FACE = new Set(['boundary', 'hazard', 'obstacle', 'protected-area', 'beam', 'soakaway']);

/** Named whether or not a distance is measured to them; of the rest only those that are. */
const ALWAYS_NAMED = new Set(
  'neighbour-window roof-window rainwater-pipe soil-stack gutter eaves flue-terminal gas-meter electricity-meter'.split(
    ' ',
  ),
);

export interface OnElevation {
  readonly point: Point;
  /** Across and up, mm. */
  readonly from: number;
  readonly upTo: number;
  readonly low: number;
  readonly high: number;
}

/** Where a point is on the face, as wide and high as it is; undefined where it stands on nothing. */
export function pointOn(
  plan: Plan,
  point: Point,
  elevation: Elevation,
): (OnElevation & { readonly out: number; readonly faces: number }) | undefined {
  const body = pointBox(plan, point);
  if (!body) return undefined;
  const across = body.footprint.map((p) => elevation.at(p)[0]);
  const depths = body.footprint.map((p) => elevation.depth(p));
  return {
    point,
    from: Math.min(...across),
    upTo: Math.max(...across),
    low: body.frame.origin.z,
    high: body.frame.origin.z + point.size.heightMm,
    out: (Math.min(...depths) + Math.max(...depths)) / 2,
    faces: dot(body.frame.out, elevation.out),
  };
}

/** Everything on the outside of the face that stands in this case, but for the terminal that is looked at. */
function thingsOn(plan: Plan, elevation: Elevation, alive: Alive, terminal: string): OnElevation[] {
  return Object.values(plan.points).flatMap((point) => {
    if (point.id === terminal || NOT_ON_FACE.has(point.kind) || !alive.has('points', point.id)) return [];
    const on = pointOn(plan, point, elevation);
    if (!on || on.out < -1 || on.out > BEFORE_MM || on.faces < -0.7) return [];
    return on.upTo < elevation.from - ASIDE_MM || on.from > elevation.upTo + ASIDE_MM ? [] : [on];
  });
}

const edgeOf = (point: Point, heavy: boolean): LineStyle => ({
  ink: heavy ? 'accent' : 'symbol',
  pen: heavy ? PEN.wallEdge : PEN.opening,
  dash: point.sureness === 'assumed' ? [1.2, 0.7] : [],
  fit: false,
});

function symbol(on: OnElevation, heavy: boolean): Item[] {
  const { point, from, upTo, low, high } = on;
  const middle = (from + upTo) / 2;
  const at = (x: number, y: number): Vec => [middle + x, low + y];
  const parts = pointKinds.get(point.kind)?.faceSymbol({ ...point.size, widthMm: upTo - from }) ?? [
    { draw: 'rect', x: (from - upTo) / 2, y: 0, w: upTo - from, h: high - low, fill: false } as const,
  ];
  const shown = parts.filter((p) => p.draw !== 'letter');
  return symbolItems(shown, at, edgeOf(point, heavy), [(upTo - from) / 2, (high - low) / 2], false).items;
}

/** Pipes, gutters, windows of others, meters and other terminals on the face. */
export function thingParts(plan: Plan, elevation: Elevation, alive: Alive, face: FlueFace, clear: boolean): Part {
  const named = new Set(face.distances.flatMap((d) => d.ids));
  const items: Item[] = [];
  const words: WordWish[] = [];
  for (const on of thingsOn(plan, elevation, alive, face.terminal)) {
    const { point, from, upTo, low, high } = on;
    const isWindow = point.kind === 'neighbour-window';
    const opens = typeof point.fields.opens === 'boolean' ? point.fields.opens : null;
    if (isWindow) items.push(...paneItems({ from, upTo, low, high, opens, hung: 'top' }, true, clear));
    else items.push(...symbol(on, false));
    if (!ALWAYS_NAMED.has(point.kind) && !named.has(point.id)) continue;
    words.push({
      at: [(from + upTo) / 2, low],
      text: sayPane(point.name, opens, isWindow),
      tries: high - low > 3 * (upTo - from) ? 'along' : 'under',
      ids: [point.id],
      top: high,
    });
  }
  return { items, words };
}

/** The terminal that is looked at, in the ink of what is chosen. */
export function terminalParts(plan: Plan, elevation: Elevation, terminal: string): Part {
  const point = plan.points[terminal];
  const on = point && pointOn(plan, point, elevation);
  if (!on) return { items: [], words: [] };
  return {
    items: symbol(on, true),
    words: [
      {
        at: [(on.from + on.upTo) / 2, on.low],
        text: on.point.name,
        tries: 'under',
        ids: [terminal],
        top: on.high,
        strong: true,
      },
    ],
  };
}

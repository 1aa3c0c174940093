import { pointKinds } from '../../catalogue/point-kinds.ts';
import { services } from '../../catalogue/services.ts';
import type { Vec } from '../../drawing/display-list.ts';
import { lengthBetween, nodePlace } from '../../geometry/places.ts';
import { distance, dot, scale, sub, unit } from '../../geometry/vec.ts';
import { wallLength } from '../../geometry/wall-frame.ts';
import { JOINT_MM } from '../../geometry/wall-joints.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Opening, Wall } from '../../plan/records/building.ts';
import type { PlacedFigure } from '../editor-api.ts';
import { type WorkPlane, wayInHouse } from '../input/work-plane.ts';

export interface FigureEnd {
  readonly key: 'a' | 'b';
  readonly label: string;
  readonly at: Vec;
}

/** What a figure is called, which of two ends may move as it is set, and the command that sets it. */
export interface FigureSetting {
  readonly title: string;
  /** The one that moves unless told otherwise goes first; empty where there is no choice. */
  readonly ends: readonly FigureEnd[];
  change(mm: number, moves: 'a' | 'b'): { readonly command: string; readonly args: unknown };
}

const sentence = (s: string): string => s.charAt(0).toUpperCase() + s.slice(1);

/** Two ends by how they are seen: left and right, or lower and upper. */
function endsOf(a: Vec, b: Vec, word: string): readonly [FigureEnd, FigureEnd] {
  const across = Math.abs(a[0] - b[0]) >= Math.abs(a[1] - b[1]);
  const first = across ? a[0] < b[0] : a[1] < b[1];
  const [less, more] = across ? ['left', 'right'] : ['lower', 'upper'];
  return [
    { key: 'a', label: `${first ? less : more} ${word} moves`, at: a },
    { key: 'b', label: `${first ? more : less} ${word} moves`, at: b },
  ];
}

function ofLeg(plan: Plan, plane: WorkPlane, id: string, shown: number): FigureSetting | undefined {
  const leg = plan.legs[id];
  const [a, b] = [leg && plan.nodes[leg.a], leg && plan.nodes[leg.b]];
  const [pa, pb] = [a && nodePlace(plan, a)?.at, b && nodePlace(plan, b)?.at];
  const full = a && b ? lengthBetween(plan, a, b)?.mm : undefined;
  if (!a || !b || !pa || !pb || full === undefined || shown === 0) return undefined;
  const service = services.get(plan.runs[leg?.run ?? '']?.service ?? '')?.label ?? '';
  const [ea, eb] = endsOf(plane.onto(pa), plane.onto(pb), 'end');
  // A tail is its point's business: that end has no choice.
  const ends = [eb, ea].filter((e) => (e.key === 'a' ? a : b).place.on === 'storey');
  return {
    title: sentence(`${service} leg`.trim()),
    ends,
    // What is seen of a leg that slopes is shorter than it is: it is lengthened by the same part.
    change: (mm, moves) => ({
      command: 'leg.length',
      args: { leg: id, lengthMm: (full * mm) / shown, keep: moves === 'a' ? 'b' : 'a' },
    }),
  };
}

/** Cosine under which two walls stand across each other. */
const ACROSS = 0.1;

/** The wall that stands across another at one of its ends and makes a corner with it there, drawn to the middle or to a face. */
function acrossAt(plan: Plan, wall: Wall, end: 'a' | 'b'): string | undefined {
  const way = unit(sub(wall.b, wall.a));
  return Object.values(plan.walls).find(
    (w) =>
      w.id !== wall.id &&
      w.storey === wall.storey &&
      Math.abs(dot(unit(sub(w.b, w.a)), way)) < ACROSS &&
      Math.min(distance(w.a, wall[end]), distance(w.b, wall[end])) <= (w.thicknessMm + wall.thicknessMm) / 2 + JOINT_MM,
  )?.id;
}

/** Where a wall stands across at the end that moves it is that wall that goes, and stays straight. */
function ofWall(plan: Plan, plane: WorkPlane, id: string): FigureSetting | undefined {
  const wall = plan.walls[id];
  if (!wall) return undefined;
  const [a, b] = endsOf(plane.onto({ ...wall.a, z: 0 }), plane.onto({ ...wall.b, z: 0 }), 'end');
  return {
    title: 'Wall, along its middle',
    ends: [b, a],
    change(mm, moves) {
      const across = acrossAt(plan, wall, moves);
      if (across === undefined) {
        return { command: 'wall.length', args: { wall: id, lengthMm: mm, keep: moves === 'a' ? 'b' : 'a' } };
      }
      const out = scale(unit(sub(wall.b, wall.a)), (mm - wallLength(wall)) * (moves === 'a' ? -1 : 1));
      return { command: 'wall.move', args: { wall: across, by: out } };
    },
  };
}

function ofClear(plane: WorkPlane, figure: PlacedFigure): FigureSetting | undefined {
  const { measures, mm: shown, a, b } = figure;
  if (measures.of !== 'clear') return undefined;
  const { low, high, way } = measures;
  const lowFirst = (b[0] - a[0]) * way[0] + (b[1] - a[1]) * way[1] > 0;
  const [ea, eb] = endsOf(lowFirst ? a : b, lowFirst ? b : a, 'wall');
  return {
    title: 'Clear between walls',
    ends: [eb, ea],
    change(mm, moves) {
      const by = (mm - shown) * (moves === 'a' ? -1 : 1);
      const { x, y } = wayInHouse(plane, [way[0] * by, way[1] * by]);
      return { command: 'wall.move', args: { wall: moves === 'a' ? low : high, by: { x, y } } };
    },
  };
}

const OPENING_TITLE = { along: 'from the corner', width: 'width', sill: 'sill over floor', height: 'height' } as const;

function ofOpening(opening: Opening | undefined, { measures, mm: shown }: PlacedFigure): FigureSetting | undefined {
  if (!opening || measures.of !== 'opening') return undefined;
  const { what, sign } = measures;
  return {
    title: `${opening.name || sentence(opening.kind)}, ${OPENING_TITLE[what]}`,
    ends: [],
    change(mm) {
      const by = mm - shown;
      if (what === 'along') {
        return { command: 'opening.move', args: { opening: opening.id, alongMm: opening.alongMm + sign * by } };
      }
      const sides = {
        width: { widthMm: opening.widthMm + by },
        sill: { sillMm: opening.sillMm + by, headMm: opening.headMm + by },
        height: { headMm: opening.headMm + by },
      };
      return { command: 'opening.set', args: { opening: opening.id, change: sides[what] } };
    },
  };
}

function ofPoint(plan: Plan, plane: WorkPlane, { measures, mm: shown }: PlacedFigure): FigureSetting | undefined {
  const point = measures.of === 'point' ? plan.points[measures.id] : undefined;
  if (!point || measures.of !== 'point') return undefined;
  const { way } = measures;
  const upright = plane.kind === 'face' && way[1] !== 0;
  const name = point.name || (pointKinds.get(point.kind)?.label ?? point.kind);
  return {
    title: upright ? `${name}, base over floor` : `${name}, this distance`,
    ends: [],
    change: (mm) => ({
      command: 'point.move',
      args: { point: point.id, by: wayInHouse(plane, [way[0] * (mm - shown), way[1] * (mm - shown)]) },
    }),
  };
}

/** Undefined where what is measured is gone. */
export function settingOf(plan: Plan, plane: WorkPlane, figure: PlacedFigure): FigureSetting | undefined {
  const { measures } = figure;
  switch (measures.of) {
    case 'leg':
      return ofLeg(plan, plane, measures.id, figure.mm);
    case 'wall':
      return ofWall(plan, plane, measures.id);
    case 'clear':
      return ofClear(plane, figure);
    case 'opening':
      return ofOpening(plan.openings[measures.id], figure);
    case 'point':
      return ofPoint(plan, plane, figure);
  }
}

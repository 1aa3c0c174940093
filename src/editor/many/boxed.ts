import type { Box, Vec } from '../../drawing/display-list.ts';
import { touches } from '../../drawing/labels/paper.ts';
import type { Plan } from '../../plan/plan.ts';
import type { EditorState, Selected } from '../editor-api.ts';
import type { Entry } from '../hit/pipework-entries.ts';
import { inRing, type Shape } from '../hit/shapes.ts';
import { viewIndex } from '../hit/view-index.ts';

export const boxBetween = (p: Vec, q: Vec): Box => ({
  minX: Math.min(p[0], q[0]),
  minY: Math.min(p[1], q[1]),
  maxX: Math.max(p[0], q[0]),
  maxY: Math.max(p[1], q[1]),
});

const within = (b: Box, [x, y]: Vec): boolean => x >= b.minX && x <= b.maxX && y >= b.minY && y <= b.maxY;

/** `edge`: only the outline of an area counts, not the ground it covers. */
function touched(shape: Shape, box: Box, edge: boolean): boolean {
  if (shape.is === 'spot') return within(box, shape.at);
  if (shape.is === 'line') return within(box, shape.a) || within(box, shape.b) || touches(box, shape.a, shape.b);
  const { ring } = shape;
  const crossed = ring.some((p, i) => within(box, p) || touches(box, p, ring[(i + 1) % ring.length] ?? p));
  return crossed || (!edge && inRing(ring, [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2]));
}

/** What a box takes by touching it. Corners go with their pipes; rooms, roofs and ground lie under everything. */
const TAKEN: Readonly<Partial<Record<Entry['kind'], Selected['map']>>> = {
  point: 'points',
  leg: 'legs',
  stretch: 'stretches',
  item: 'items',
  opening: 'openings',
  wall: 'walls',
  void: 'voids',
};

/** A run of which every piece was taken is taken as a run; else its pieces by themselves. */
function asRuns(plan: Plan, found: readonly Selected[]): Selected[] {
  const taken = new Set(found.map((f) => f.id));
  const pipes = [...Object.values(plan.legs), ...Object.values(plan.stretches)];
  const broken = new Set(pipes.filter((p) => !taken.has(p.id)).map((p) => p.run));
  const all: Selected[] = [];
  const runs = new Set<string>();
  for (const thing of found) {
    const pipe = thing.map === 'legs' || thing.map === 'stretches' ? plan[thing.map][thing.id] : undefined;
    if (!pipe || broken.has(pipe.run)) all.push(thing);
    else if (!runs.has(pipe.run)) {
      runs.add(pipe.run);
      all.push({ map: 'runs', id: pipe.run });
    }
  }
  return all;
}

/** Everything of the active pane that a box touches, what is gone in the case looked at left out. */
export function boxed({ plan, panes, chosen }: EditorState, box: Box): Selected[] {
  const pane = panes[panes.active] ?? panes.plan;
  const found = (viewIndex(plan, pane.view, chosen)?.near(box) ?? []).flatMap((e): Selected[] => {
    const map = TAKEN[e.kind];
    return map && !e.gone && touched(e.shape, box, e.kind === 'void') ? [{ map, id: e.id }] : [];
  });
  return asRuns(plan, found);
}

import { resolveHeight } from '../../geometry/heights.ts';
import { distance3 } from '../../geometry/vec.ts';
import { followed } from '../../network/steps/follow.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { PlaceArg } from '../commands/place-arg.ts';
import type { Pick } from '../input/pick.ts';
import type { ToolContext } from '../tools/define-tool.ts';
import { free, type Route, type RouteFrame, routeTo } from '../tools/route-path.ts';

const chosenRun = ({ state }: ToolContext<unknown>): string | null => {
  const [only, more] = state.selection;
  return only?.map === 'runs' && !more ? only.id : null;
};

/**
 * The way of a run along what is in hand to be followed: up or down to the height in hand first, along it, and on to what
 * was tapped where that is a tail or a pipe. Null where nothing is followed, or the run is drawn on a wall. `loose`: the first place
 * is not on anything yet.
 */
export function routeAlong(
  ctx: ToolContext<unknown>,
  frame: RouteFrame,
  run: string | null,
  loose: boolean,
  from: Xyz,
  pick: Pick,
): Route | null {
  const { follow } = ctx.inHand;
  if (!follow || frame.plane.kind !== 'plan') return null;
  const { plan, storey, height } = frame;
  const at = { ...from, z: resolveHeight(plan, height)?.z ?? from.z };
  const found = followed(plan, follow, { storey, from: at, to: pick.at, own: run }, chosenRun(ctx));
  if (!found.ok) return { ...routeTo(frame, from, pick), word: found.why };
  // A first place that was only tapped beside what is followed is taken to begin on the way itself.
  const corners = loose ? found.pts : [at, ...found.pts];
  const first = loose ? found.begins : from;
  const start = loose ? { start: free(frame, first) } : {};
  const pts: Xyz[] = [first];
  const path: PlaceArg[] = [];
  for (const corner of corners) {
    if (distance3(pts.at(-1) ?? first, corner) < COINCIDENT_MM) continue;
    pts.push(corner);
    path.push(free(frame, corner));
  }
  const { target } = pick;
  if (!target || target.is === 'wall') return { path, pts, word: found.word, ...start };
  const end = routeTo(frame, pts.at(-1) ?? first, pick);
  return { path: [...path, ...end.path], pts: [...pts, ...end.pts.slice(1)], word: found.word, ...start };
}

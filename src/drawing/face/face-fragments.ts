import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Fragment, Item, LineStyle, Wish } from '../display-list.ts';
import { makeFragment } from '../fragments/fragment.ts';
import { PEN } from '../look/tokens.ts';
import { remember } from '../memo/remember.ts';
import { stateOf } from '../pipes/pipes-in-view.ts';
import { type FacePlane, viewKey } from '../pipes/plane.ts';
import { faceOpening } from './face-opening.ts';
import { faceGround, faceRoof } from './face-outside.ts';
import { type Beside, facePoint, onFace } from './face-point.ts';
import { faceVoid } from './face-void.ts';
import { openingAcross, rectangle, wallsCut } from './face-wall.ts';
import { slabsOf } from './slabs.ts';

const EDGE: LineStyle = { ink: 'wallEdge', pen: PEN.wallEdge, dash: [], fit: false };
const THIN: LineStyle = { ink: 'wallEdge', pen: PEN.opening, dash: [], fit: false };

/** The face itself between floor and ceiling, the walls that meet it, what lies over and under. */
function shell(plan: Plan, plane: FacePlane, alive: Alive): Fragment[] {
  if (plane.view.kind !== 'face') return [];
  const { wall } = plane.view;
  const whole = { from: plane.from, upTo: plane.upTo };
  const slabs = slabsOf(plan, plane);
  const cuts = wallsCut(plan, plane, alive);
  const ground: Item[] = [
    { t: 'area', rings: [rectangle(whole, plane.floorZ, plane.ceilingZ)], fill: 'room', edge: THIN },
  ];
  const solid: Item[] = cuts.map((cut) => ({
    t: 'area',
    rings: [rectangle(cut, plane.floorZ, plane.ceilingZ)],
    fill: 'wall',
    edge: EDGE,
  }));
  const wishes: Wish[] = [];
  if (slabs) {
    for (const slab of [slabs.over, slabs.under]) {
      if (slab.upTo - slab.from < 1) continue;
      const fill = slab.solid ? 'slab' : 'void';
      solid.push({ t: 'area', rings: [rectangle(whole, slab.from, slab.upTo)], fill, edge: EDGE });
      if (slab.solid) {
        const at = [whole.upTo, (slab.from + slab.upTo) / 2] as const;
        wishes.push({ w: 'flag', at, what: 'slab, no cuts', how: null, rank: 5, along: [at, at], clearMm: 0.5 });
      }
    }
  }
  return [makeFragment(wall, 'walls', 'ground', ground), makeFragment(wall, 'walls', 'wall', solid, wishes)];
}

/** Everything of a wall's side but its pipes. */
export function faceFragments(plan: Plan, plane: FacePlane, alive: Alive, stripped: boolean): Fragment[] {
  if (plane.view.kind !== 'face') return [];
  const { wall: wallId } = plane.view;
  const wall = plan.walls[wallId];
  if (!wall || !alive.has('walls', wallId)) return [];
  const key = viewKey(plane.view);
  const walls = Object.values(plan.walls).filter((w) => w.storey === plane.storey && alive.has('walls', w.id));
  const found = [...remember(wall, `shell:${key}`, plan, walls, (traced) => shell(traced, plane, alive))];

  for (const v of Object.values(plan.voids)) {
    if (v.storey !== plane.storey || !alive.has('voids', v.id)) continue;
    found.push(remember(v, key, plan, [wall], (traced) => faceVoid(traced, v, plane)));
  }
  for (const roof of Object.values(plan.roofs)) {
    if (roof.storey !== plane.storey) continue;
    found.push(
      remember(roof, key, plan, [wall], (traced) =>
        makeFragment(roof.id, 'roofs', 'void', faceRoof(traced, roof, plane).items),
      ),
    );
  }
  for (const ground of Object.values(plan.grounds)) {
    found.push(
      remember(ground, key, plan, [wall], (traced) => {
        const { items, wishes } = faceGround(traced, ground, plane);
        return makeFragment(ground.id, 'grounds', 'opening', items, wishes);
      }),
    );
  }
  const openings = Object.values(plan.openings).filter((o) => o.wall === wallId && alive.has('openings', o.id));
  for (const opening of openings)
    found.push(remember(opening, key, plan, [wall], (traced) => faceOpening(traced, opening, plane)));

  const cuts = wallsCut(plan, plane, alive).map((c): Beside => ({ ...c, low: plane.floorZ, high: plane.ceilingZ }));
  const beside = [
    ...cuts,
    ...openings.flatMap((o): Beside[] => {
      const a = openingAcross(plan, o, plane);
      return a ? [{ ...a, low: plane.floorZ + o.sillMm, high: plane.floorZ + o.headMm }] : [];
    }),
  ];
  const besideKey = beside.map((b) => `${b.from},${b.upTo},${b.low},${b.high}`).join(';');
  for (const point of Object.values(plan.points)) {
    const state = stateOf(alive, 'points', point.id, stripped);
    if (!state || !onFace(plan, point, plane)) continue;
    found.push(
      remember(point, key, plan, [state, wall, besideKey], (traced) => facePoint(traced, point, state, plane, beside)),
    );
  }
  return found;
}

import { outlineOnWall } from '../../drawing/building/box-on-wall.ts';
import type { Vec } from '../../drawing/display-list.ts';
import { facePlane } from '../../geometry/face-plane.ts';
import { floorZ } from '../../geometry/heights.ts';
import type { HeightRef } from '../../plan/records/parts.ts';
import type { KeyInput } from '../editor-api.ts';
import { workPlane } from '../input/work-plane.ts';
import type { ToolEvent, ToolStateChart } from './define-tool.ts';
import { figureKey, sizeAsk } from './void-figure.ts';
import { type Ctx, LIVE_PEN, leave, type Memory, slid } from './void-memory.ts';

const ONLY = ['wallCorner', 'wallFace', 'openingEdge', 'level', 'roomCorner', 'alignment', 'grid'];
/** Narrower or lower than this it was no drag. */
const LEAST_MM = 20;

function onFace(ctx: Ctx, event: ToolEvent): Vec | null {
  const { face } = ctx.state.panes;
  const plane = face && workPlane(ctx.plan, face.view);
  if (!plane) return null;
  const pick = event.snap({ only: ONLY, depth: 0 });
  ctx.memory.word = pick.word;
  const [s, z] = plane.onto(pick.at);
  return [Math.round(s), Math.round(z)];
}

function show(ctx: Ctx): void {
  const { box } = ctx.memory;
  const wall = box && ctx.plan.walls[box.wall];
  ctx.caught(ctx.memory.word);
  if (!box || !wall) {
    ctx.draft(null);
    return;
  }
  const face = facePlane(wall, box.side);
  const [[s0, z0], [s1, z1]] = [box.from, box.to];
  const at = (s: number, z: number) => face.toHouse({ s, z, depth: 0 });
  ctx.draft({
    pane: 'face',
    lines: [{ pts: [at(s0, z0), at(s1, z0), at(s1, z1), at(s0, z1), at(s0, z0)], ink: 'live', pen: LIVE_PEN }],
    labels: [
      { at: at(Math.max(s0, s1), Math.max(z0, z1)), text: `${Math.abs(s1 - s0)} wide, ${Math.abs(z1 - z0)} high` },
    ],
  });
}

/** Begins a box or a chase on the face that is folded up. */
export function startBox(ctx: Ctx, event: ToolEvent): string | undefined {
  const { face } = ctx.state.panes;
  const { voidKind, voidTask } = ctx.inHand;
  if (face?.view.kind !== 'face') return undefined;
  if (voidTask !== 'room' && voidTask !== 'outline') {
    ctx.say('That is done in the plan.', true);
    return undefined;
  }
  if (voidKind !== 'boxing' && voidKind !== 'chase') {
    ctx.say('On a wall face boxings and chases are drawn. Take one of them in hand, or draw in the plan.', true);
    return undefined;
  }
  const from = onFace(ctx, event);
  if (!from) return undefined;
  ctx.memory.pressed = event.screen;
  ctx.memory.box = { wall: face.view.wall, side: face.view.side, from, to: from };
  return 'boxing';
}

function dragTo(ctx: Ctx, event: ToolEvent): void {
  const { box } = ctx.memory;
  const to = box && event.pane === 'face' ? onFace(ctx, event) : null;
  if (box && to) ctx.memory.box = { ...box, to };
  show(ctx);
}

const keysOf = ({ inHand, assumptions }: Ctx): readonly number[] =>
  (inHand.voidKind === 'chase' ? assumptions.voidChoices?.chaseDepthMm : assumptions.voidChoices?.boxDepthMm) ?? [];

const lastOf = ({ inHand }: Ctx): number | null => (inHand.voidKind === 'chase' ? null : inHand.boxDepthMm);

function askDepth(ctx: Ctx): string {
  const chase = ctx.inHand.voidKind === 'chase';
  ctx.caught(null);
  ctx.ask(
    sizeAsk({
      title: chase ? 'How deep into the wall?' : 'How deep, clear off the wall?',
      figure: ctx.memory.figure,
      keys: keysOf(ctx),
      last: lastOf(ctx),
      without: null,
    }),
  );
  show(ctx);
  return 'boxDepth';
}

/** A level told from the ceiling where it lies on it, else from the floor. */
function heightAt(ctx: Ctx, storey: string, z: number): HeightRef {
  const floor = floorZ(ctx.plan, storey) ?? 0;
  const ceiling = floor + (ctx.plan.storeys[storey]?.ceilingMm ?? 0);
  return Math.abs(z - ceiling) < 1
    ? { from: 'ceiling', of: storey, mm: 0 }
    : { from: 'floor', of: storey, mm: z - floor };
}

function make(ctx: Ctx, depthMm: number): string {
  const { box } = ctx.memory;
  const wall = box && ctx.plan.walls[box.wall];
  if (!box || !wall) return leave(ctx);
  const kind = ctx.inHand.voidKind;
  const into = kind === 'chase';
  if (depthMm <= 0) return askDepth(ctx);
  if (into && depthMm >= wall.thicknessMm) {
    ctx.say(`A chase of ${depthMm} goes through this wall of ${wall.thicknessMm}. Make it shallower.`, true);
    ctx.memory.figure = '';
    return askDepth(ctx);
  }
  const [s, z] = [
    [box.from[0], box.to[0]],
    [box.from[1], box.to[1]],
  ];
  const outline = outlineOnWall(wall, {
    side: box.side,
    fromS: Math.min(...s),
    toS: Math.max(...s),
    depthMm,
    into,
  });
  const told = {
    storey: wall.storey,
    kind,
    outline,
    bottom: heightAt(ctx, wall.storey, Math.min(...z)),
    top: heightAt(ctx, wall.storey, Math.max(...z)),
    sureness: 'seen',
    made: ctx.state.chosen.when === 'after' ? 'new' : 'there',
  };
  const outcome = ctx.commit('void.add', told);
  const made = outcome.ok ? outcome.made[0] : undefined;
  if (made === undefined) return askDepth(ctx);
  ctx.select([{ map: 'voids', id: made }]);
  if (!into) ctx.setInHand({ boxDepthMm: depthMm });
  return leave(ctx);
}

function depthKey(ctx: Ctx, input: KeyInput): string | undefined {
  const { memory } = ctx;
  const read = figureKey(input, memory.figure, keysOf(ctx), lastOf(ctx));
  if (read.is === 'none') return undefined;
  if (read.is === 'back') return leave(ctx);
  if (read.is === 'told') return read.mm === null ? askDepth(ctx) : make(ctx, read.mm);
  memory.figure = read.figure;
  return askDepth(ctx);
}

/** A boxing or chase, drawn as a rectangle on a wall's face; then how deep it is. */
export const faceStates: Readonly<Record<string, ToolStateChart<Memory>>> = {
  boxing: {
    move: dragTo,
    up(ctx, event) {
      dragTo(ctx, event);
      const { box } = ctx.memory;
      const [wide, high] = box ? [Math.abs(box.to[0] - box.from[0]), Math.abs(box.to[1] - box.from[1])] : [0, 0];
      if (!slid(ctx, event) || wide < LEAST_MM || high < LEAST_MM) {
        ctx.say('Drag from one corner of it to the other.', true);
        return leave(ctx);
      }
      ctx.memory.figure = '';
      return askDepth(ctx);
    },
    cancel: leave,
  },
  boxDepth: { key: depthKey, cancel: leave, interrupt: askDepth },
};

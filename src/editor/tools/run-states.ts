import { distance3 } from '../../geometry/vec.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { Pick } from '../input/pick.ts';
import type { ToolContext, ToolEvent, ToolStateChart } from './define-tool.ts';
import { firstPick } from './first-pick.ts';
import { begin, catchUp, isSecondTap, leave, moved, options, place, takeEnd, typedKey } from './lay-run.ts';
import { lastPlace, type RunMemory, showRun } from './live-run.ts';

export interface RunStart {
  /** Snaps that a first tap may catch; all where not told. */
  readonly only?: readonly string[];
  /** Said when the first tap caught nothing it may start on; a run may then start anywhere where this is not told. */
  readonly missed?: string;
}

/** The chart of every tool that lays pipe: they differ only in what a first tap may start on. */
export function runStates(start: RunStart): Readonly<Record<string, ToolStateChart<RunMemory>>> {
  const first = (ctx: ToolContext<RunMemory>, event: ToolEvent): Pick => firstPick(ctx, event, start.only);
  return {
    idle: {
      move(ctx, event) {
        ctx.memory.aim = first(ctx, event);
        showRun(ctx);
      },
      down(ctx, event) {
        const pick = first(ctx, event);
        if (start.missed !== undefined && (!pick.target || pick.target.is === 'wall')) {
          ctx.say(start.missed);
          return;
        }
        begin(ctx, pick);
        ctx.memory.aim = pick;
        ctx.memory.pressed = event.screen;
        isSecondTap(ctx, event);
        showRun(ctx);
        return 'starting';
      },
      changed: takeEnd,
      cancel: leave,
    },
    starting: {
      move(ctx, event) {
        if (!moved(ctx, event)) return;
        ctx.memory.aim = event.snap(options(ctx));
        showRun(ctx);
      },
      up(ctx, event) {
        if (!moved(ctx, event)) return 'aiming';
        ctx.memory.aim = event.snap(options(ctx));
        return place(ctx);
      },
      cancel: leave,
    },
    aiming: {
      move(ctx, event) {
        ctx.memory.aim = event.snap(options(ctx));
        showRun(ctx);
      },
      down(ctx, event) {
        ctx.memory.pressed = event.screen;
        ctx.memory.aim = event.snap(options(ctx));
        if (isSecondTap(ctx, event)) {
          const from = lastPlace(ctx);
          const to = ctx.memory.aim?.at;
          const flat = from && to ? distance3({ ...from, z: 0 }, { ...to, z: 0 }) : 0;
          if (ctx.memory.run !== null || flat < COINCIDENT_MM) return leave(ctx);
        }
        showRun(ctx);
        return 'placing';
      },
      key: typedKey,
      changed: catchUp,
      cancel: leave,
    },
    placing: {
      move(ctx, event) {
        ctx.memory.aim = event.snap(options(ctx));
        showRun(ctx);
      },
      up(ctx, event) {
        ctx.memory.aim = event.snap(options(ctx));
        return place(ctx);
      },
      cancel(ctx) {
        ctx.memory.aim = null;
        showRun(ctx);
        return 'aiming';
      },
    },
  };
}

import { type BankContext, type BankMemory, emptyBankMemory } from '../bank/bank-memory.ts';
import { showBank } from '../bank/bank-preview.ts';
import { begin, catchUp, leave, options, place, typedKey } from '../bank/bank-steps.ts';
import { defineTool, type ToolEvent } from '../tools/define-tool.ts';
import { isSecondTap, moved } from '../tools/lay-run.ts';

function aim(ctx: BankContext, event: ToolEvent): void {
  ctx.memory.aim = event.snap(options(ctx));
  showBank(ctx);
}

/** Lays several runs at once: each tap is a corner of their middle, a tap on an appliance ends each at its own tail. */
export default defineTool<BankMemory>({
  id: 'bank',
  label: 'Bank',
  key: 'a',
  order: 25,
  initial: 'idle',
  memory: emptyBankMemory,
  states: {
    idle: {
      move(ctx, event) {
        const pick = event.snap(options(ctx));
        ctx.caught(pick.word);
        ctx.draft({ marks: [{ mark: 'aim', at: pick.at }] });
      },
      down(ctx, event) {
        const next = begin(ctx, event);
        ctx.memory.pressed = event.screen;
        isSecondTap(ctx, event);
        if (next === 'starting') showBank(ctx);
        return next;
      },
      cancel: leave,
    },
    starting: {
      move(ctx, event) {
        if (moved(ctx, event)) aim(ctx, event);
      },
      up(ctx, event) {
        if (!moved(ctx, event)) return 'aiming';
        aim(ctx, event);
        return place(ctx);
      },
      cancel: leave,
    },
    aiming: {
      move: aim,
      down(ctx, event) {
        ctx.memory.pressed = event.screen;
        if (isSecondTap(ctx, event)) return leave(ctx);
        aim(ctx, event);
        return 'placing';
      },
      key: typedKey,
      changed: catchUp,
      cancel: leave,
    },
    placing: {
      move: aim,
      up(ctx, event) {
        aim(ctx, event);
        return place(ctx);
      },
      cancel(ctx) {
        ctx.memory.aim = null;
        showBank(ctx);
        return 'aiming';
      },
    },
  },
});

import type { Selected } from '../editor-api.ts';
import type { Hit } from '../hit/hit-test.ts';
import { apart } from '../hit/shapes.ts';
import { SLOP_PX } from '../input/tolerance.ts';
import { defineTool } from './define-tool.ts';

interface Memory {
  pressed: { screen: readonly [number, number]; hits: readonly Hit[] } | null;
}
const plain = ({ map, id }: Selected): Selected => ({ map, id });

export default defineTool<Memory>({
  id: 'select',
  label: 'Select',
  key: 's',
  order: 10,
  initial: 'idle',
  memory: () => ({ pressed: null }),
  states: {
    idle: {
      down(ctx, event) {
        ctx.memory.pressed = { screen: event.screen, hits: event.hits() };
        return 'pointing';
      },
    },
    pointing: {
      move(ctx, event) {
        if (apart(event.screen, ctx.memory.pressed?.screen ?? event.screen) < SLOP_PX[event.kind]) return;
        return 'idle';
      },
      up(ctx) {
        const hits = ctx.memory.pressed?.hits ?? [];
        const [first] = hits;
        ctx.select(first ? [plain(first)] : []);
        ctx.candidates(hits.length > 1 ? hits.map(plain) : []);
        return 'idle';
      },
      cancel: () => 'idle',
    },
  },
});

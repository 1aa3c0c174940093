import { GROUND_KINDS } from '../../catalogue/ground-kinds.ts';
import { distance } from '../../geometry/vec.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { Ask, KeyInput } from '../editor-api.ts';
import { storeyOf } from '../panes.ts';
import { at3 } from '../tools/chain-of-corners.ts';
import { defineTool, type ToolContext, type ToolEvent } from '../tools/define-tool.ts';

/** A place with its level over the floor; null until it is typed. */
interface Level {
  readonly at: Xy;
  readonly mm: number | null;
}

interface Memory {
  levels: Level[];
  aim: Xy | null;
  word: string | null;
  typed: string;
  below: boolean;
}
type Ctx = ToolContext<Memory>;

const ONLY = ['wallCorner', 'wallFace', 'alignment', 'grid'];
const LIVE_PEN = 0.5;
const MOST_DIGITS = 5;
const blank = (): Memory => ({ levels: [], aim: null, word: null, typed: '', below: true });

const say = (mm: number): string => (mm < 0 ? `${-mm} below` : mm === 0 ? 'level with it' : `${mm} above`);

function ask(ctx: Ctx): Ask {
  const { memory, inHand } = ctx;
  const n = memory.levels.length;
  const before = memory.levels.at(-2);
  const says = before?.mm == null ? 'Type its level, then tap the next place.' : `Empty: as before, ${say(before.mm)}.`;
  return {
    title: `Ground, place ${n}`,
    figure: memory.typed,
    unit: `mm ${memory.below ? 'below' : 'above'} the floor`,
    says: [says],
    rows: [
      [
        { key: 'below', label: 'below the floor', on: memory.below },
        { key: 'above', label: 'above it', on: !memory.below },
      ],
      GROUND_KINDS.map((kind) => ({ key: `kind ${kind}`, label: kind, on: kind === inHand.groundKind })),
    ],
    enter: 'keep',
  };
}

function show(ctx: Ctx): void {
  const { memory } = ctx;
  ctx.caught(memory.word);
  ctx.typed(memory.typed);
  const places = [...memory.levels.map((l) => l.at), ...(memory.aim ? [memory.aim] : [])];
  const mark = places.at(-1);
  if (!mark) {
    ctx.draft(null);
    return;
  }
  ctx.draft({
    lines: places.length > 1 ? [{ pts: places.map(at3), ink: 'live', pen: LIVE_PEN }] : [],
    marks: [{ mark: 'aim', at: at3(mark) }],
    labels: memory.levels.flatMap(({ at, mm }) => (mm === null ? [] : [{ at: at3(at), text: say(mm) }])),
  });
}

function look(ctx: Ctx, event: ToolEvent): void {
  const first = ctx.memory.levels[0]?.at;
  const pick = event.snap({ only: ONLY, ...(first ? { earlier: [at3(first)] } : {}) });
  ctx.memory.aim = { x: pick.at.x, y: pick.at.y };
  ctx.memory.word = pick.word;
  show(ctx);
}

function leave(ctx: Ctx): string {
  Object.assign(ctx.memory, blank());
  ctx.draft(null);
  ctx.caught(null);
  ctx.typed('');
  ctx.ask(null);
  return 'idle';
}

/** Takes what was typed for the last place, or the level of the one before it. False where neither was told. */
function settle({ memory }: Ctx): boolean {
  const last = memory.levels.at(-1);
  if (!last) return false;
  const typed = memory.typed === '' ? null : (memory.below ? -1 : 1) * Number(memory.typed);
  const mm = typed ?? last.mm ?? memory.levels.at(-2)?.mm ?? null;
  if (mm === null) return false;
  memory.levels[memory.levels.length - 1] = { ...last, mm };
  memory.typed = '';
  return true;
}

const WANTED = 'Type the level of this place first.';

function tapped(ctx: Ctx): string {
  const { memory } = ctx;
  const { aim } = memory;
  const last = memory.levels.at(-1);
  memory.aim = null;
  if (aim && last && distance(aim, last.at) >= COINCIDENT_MM && !settle(ctx)) ctx.say(WANTED);
  else if (aim && (!last || distance(aim, last.at) >= COINCIDENT_MM)) memory.levels.push({ at: aim, mm: null });
  show(ctx);
  ctx.ask(ask(ctx));
  return 'levelling';
}

function keep(ctx: Ctx): string {
  const { memory, inHand } = ctx;
  const floorMm = ctx.plan.storeys[storeyOf(ctx.state.panes)]?.floorMm ?? 0;
  if (!settle(ctx)) {
    ctx.say(WANTED);
    return 'levelling';
  }
  const line = memory.levels.map(({ at, mm }) => ({ x: at.x, y: at.y, z: floorMm + (mm ?? 0) }));
  const outcome = ctx.commit('ground.set', { line, kind: inHand.groundKind, sureness: 'seen' });
  if (!outcome.ok) return 'levelling';
  const [made] = outcome.made;
  if (made !== undefined) ctx.select([{ map: 'grounds', id: made }]);
  return leave(ctx);
}

function key(ctx: Ctx, input: KeyInput): string | undefined {
  const { memory } = ctx;
  const kind = GROUND_KINDS.find((k) => input.key === `kind ${k}`);
  if (/^\d+$/.test(input.key)) {
    memory.typed = (memory.typed + input.key).replace(/^0+(?=\d)/, '').slice(0, MOST_DIGITS);
  } else if (kind !== undefined) ctx.setInHand({ groundKind: kind });
  else if (input.key === 'below' || input.key === '-') memory.below = true;
  else if (input.key === 'above' || input.key === '+') memory.below = false;
  else if (input.key === 'Enter') return keep(ctx);
  else if (input.key === 'Escape') return leave(ctx);
  else if (input.key !== 'Backspace') return undefined;
  else if (memory.typed !== '') memory.typed = memory.typed.slice(0, -1);
  else {
    memory.levels.pop();
    if (memory.levels.length === 0) return leave(ctx);
  }
  show(ctx);
  ctx.ask(ask(ctx));
  return 'levelling';
}

/** Levels of the ground along the outside: a tap and a figure for each place, then keep. */
export default defineTool<Memory>({
  id: 'ground',
  label: 'Ground',
  key: 'g',
  order: 64,
  initial: 'idle',
  memory: blank,
  states: {
    idle: {
      move: look,
      down(ctx, event) {
        if (event.pane === 'face') {
          ctx.say('Ground levels are put in the plan.');
          return;
        }
        look(ctx, event);
        return 'starting';
      },
      cancel: leave,
    },
    starting: {
      move: look,
      up(ctx, event) {
        look(ctx, event);
        return tapped(ctx);
      },
      cancel: leave,
    },
    levelling: {
      move: look,
      down(ctx, event) {
        look(ctx, event);
        return 'placing';
      },
      key,
      cancel: leave,
    },
    placing: {
      move: look,
      up(ctx, event) {
        look(ctx, event);
        return tapped(ctx);
      },
      cancel(ctx) {
        ctx.memory.aim = null;
        show(ctx);
        return 'levelling';
      },
    },
  },
});

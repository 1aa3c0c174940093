import { type PointerEvent, useEffect, useRef, useState } from 'react';
import type { RibbonBar } from '../../drawing/ribbon/ribbon-bars.ts';
import type { RibbonLevel } from '../../drawing/ribbon.ts';
import { levelMark } from '../../drawing/text/say-level.ts';
import type { Editor } from '../../editor/editor-api.ts';
import { SLOP_PX } from '../../editor/input/tolerance.ts';
import type { Network } from '../../network/network.ts';
import type { Plan } from '../../plan/plan.ts';
import { useSession } from '../app/use-session.ts';
import { type Aim, aimAt, type HeldRun, holdRun, JUST_CLEAR, raisedPlan, sayHeld, setAim } from './held-run.ts';
import { CATCH_PX, type StoreyHeights } from './levels.ts';
import type { RibbonScale } from './ribbon-scale.ts';

/** Levels catch a hand from no further than this, however small the ribbon is drawn. */
const MOST_CATCH_MM = 30;

/** What is shown while a bar is dragged. */
export interface BarDrag {
  readonly held: HeldRun;
  readonly aim: Aim;
  /** The plan as it would be; null where it cannot be. */
  readonly plan: Plan | null;
  /** Why it cannot be, in words. */
  readonly refused: string | null;
  /** "2420, under the heating flow 22 by 12 clear". */
  readonly says: string;
}

interface Grab {
  readonly id: number;
  readonly startY: number;
  /** From the finger to the middle of the pipe, px. */
  readonly off: number;
  readonly kind: 'mouse' | 'pen' | 'touch';
  readonly bar: RibbonBar | null;
  held: HeldRun | null;
}

interface Setting {
  readonly network: Network;
  readonly levels: readonly RibbonLevel[];
  readonly heights: StoreyHeights;
  readonly scale: RibbonScale;
  readonly storey: string;
}

function dragAt(editor: Editor, { storey }: Setting, held: HeldRun, z: number, catchMm: number): BarDrag {
  const { plan } = editor.store.getState();
  const aim = aimAt(held, z, catchMm);
  const by = aim.z - held.bar.z;
  const moved = Math.abs(by) < 0.5 ? null : raisedPlan(plan, held.bar.leg, by);
  const refused = moved && !moved.ok ? moved.why : null;
  const figure = levelMark(plan, aim.z, storey);
  // What is just clear of a pipe has said the one thing that is to be said of it.
  const clear = aim.caught?.startsWith(JUST_CLEAR) ? null : sayHeld(held, aim.z);
  const words = [figure, aim.caught, clear].filter((w) => w !== null);
  show(editor, held, moved?.ok ? moved : null, `${held.bar.tag}: ${figure}`);
  return {
    held,
    aim,
    plan: moved?.ok ? moved.plan : moved ? null : plan,
    refused,
    says: refused ?? words.join(', '),
  };
}

/** The same in the drawing: what moves is shown in the live layer, with its height. */
function show(
  editor: Editor,
  held: HeldRun,
  moved: { readonly plan: Plan; readonly touched: ReadonlySet<string> } | null,
  text: string,
): void {
  const { panes } = editor.store.getState();
  const piece = held.pieces.find((p) => p.leg.id === held.bar.leg);
  const at = piece && {
    x: (piece.a.x + piece.b.x) / 2,
    y: (piece.a.y + piece.b.y) / 2,
    z: (piece.a.z + piece.b.z) / 2,
  };
  editor.showDraft({
    pane: panes.active,
    lines: [],
    marks: [],
    labels: at ? [{ at, text }] : [],
    moved: moved?.touched ?? new Set(),
    plan: moved?.plan ?? null,
  });
}

export interface BarHand {
  readonly drag: BarDrag | null;
  down(e: PointerEvent<HTMLElement>, bar: RibbonBar | null): void;
  move(e: PointerEvent<HTMLElement>): void;
  up(e: PointerEvent<HTMLElement>): void;
  cancel(): void;
}

/**
 * A bar dragged by its height: shown live, carried out once when it is let go. A second finger and Escape give it up and
 * leave no mark. `onTap`: a press that went nowhere.
 */
export function useBarDrag(setting: Setting, onTap: (bar: RibbonBar | null) => void): BarHand {
  const { editor, join } = useSession();
  const grab = useRef<Grab | null>(null);
  const [drag, setDrag] = useState<BarDrag | null>(null);
  const latest = useRef<BarDrag | null>(null);

  const over = (): void => {
    if (grab.current?.held) {
      editor.showDraft(null);
      join.gestureEnds();
    }
    grab.current = null;
    latest.current = null;
    setDrag(null);
  };
  const end = useRef(over);
  end.current = over;

  const dragging = drag !== null;
  useEffect(() => {
    if (!dragging) return;
    const second = (e: globalThis.PointerEvent): void => {
      if (e.pointerId === grab.current?.id) return;
      // It takes hold of nothing itself.
      e.stopPropagation();
      end.current();
    };
    const giveUp = (e: KeyboardEvent): void => {
      if (e.key !== 'Escape') return;
      e.preventDefault();
      e.stopPropagation();
      end.current();
    };
    document.addEventListener('pointerdown', second, true);
    document.addEventListener('keydown', giveUp, true);
    return () => {
      document.removeEventListener('pointerdown', second, true);
      document.removeEventListener('keydown', giveUp, true);
    };
  }, [dragging]);
  useEffect(() => () => end.current(), []);

  return {
    drag,
    down(e, bar) {
      if (grab.current) {
        end.current();
        return;
      }
      if (e.button !== 0) return;
      e.currentTarget.setPointerCapture(e.pointerId);
      const kind = e.pointerType === 'touch' || e.pointerType === 'pen' ? e.pointerType : 'mouse';
      const off = bar ? e.clientY - setting.scale.y(bar.z) : 0;
      grab.current = { id: e.pointerId, startY: e.clientY, off, kind, bar, held: null };
    },
    move(e) {
      const g = grab.current;
      if (!g || g.id !== e.pointerId || !g.bar) return;
      if (!g.held) {
        if (Math.abs(e.clientY - g.startY) < SLOP_PX[g.kind]) return;
        const { plan, readOnly } = editor.store.getState();
        if (readOnly !== null) return;
        g.held = holdRun(plan, setting.network, g.bar, setting.levels, setting.heights.floor);
        if (!g.held) return;
        join.gestureStarts();
      }
      const catchMm = Math.min(CATCH_PX / setting.scale.perMm, MOST_CATCH_MM);
      latest.current = dragAt(editor, setting, g.held, setting.scale.z(e.clientY - g.off), e.altKey ? 0 : catchMm);
      setDrag(latest.current);
    },
    up(e) {
      const g = grab.current;
      if (!g || g.id !== e.pointerId) return;
      const last = latest.current;
      over();
      if (g.held && last) setAim(editor, g.held.bar, last.aim);
      else if (!g.held && Math.abs(e.clientY - g.startY) < SLOP_PX[g.kind]) onTap(g.bar);
    },
    cancel: over,
  };
}

import { type KeyboardEvent, lazy, type PointerEvent, Suspense, useEffect, useRef, useState } from 'react';
import type { Item } from '../../drawing/display-list.ts';
import type { Frame } from '../../drawing/paint/frame.ts';
import type { RibbonBar } from '../../drawing/ribbon/ribbon-bars.ts';
import { bar as barItem } from '../../drawing/ribbon/ribbon-section.ts';
import type { RibbonLevel } from '../../drawing/ribbon.ts';
import type { Network } from '../../network/network.ts';
import type { Plan } from '../../plan/plan.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { Painted } from '../look/painted.tsx';
import { besideRibbon } from './beside-ribbon.ts';
import type { Grip } from './grips.ts';
import { setAim } from './held-run.ts';
import type { StoreyHeights } from './levels.ts';
import type { RibbonScale } from './ribbon-scale.ts';
import { sayBar } from './say-height.ts';
import { barAt } from './slots.ts';
import { type BarDrag, useBarDrag } from './use-bar-drag.ts';

const RunHeightBox = lazy(() => import('./run-height-box.tsx'));

const STEPS: Readonly<Record<string, number>> = { ArrowUp: 10, ArrowDown: -10, PageUp: 100, PageDown: -100 };
/** A finger tells two bars apart when one is so much nearer to it. */
const APART_PX = { mouse: 2, pen: 5, touch: 14 } as const;
const BOX_PX = 470;
const TOP_PX = 60;

interface Props {
  readonly grips: readonly Grip[];
  readonly bars: readonly RibbonBar[];
  readonly levels: readonly RibbonLevel[];
  readonly network: Network;
  readonly heights: StoreyHeights;
  readonly scale: RibbonScale;
  readonly frame: Frame;
  readonly storey: string;
  readonly width: number;
  readonly height: number;
  /** Width of the section, mm of the plane. */
  readonly acrossMm: number;
  /** The chosen run as it lies in a plan. */
  readonly chosenItems: (plan: Plan) => readonly Item[];
  /** The run that keys or a finger had last. */
  readonly onHold: (run: string | null) => void;
  /** Runs that are drawn here for now, in place of the still ones. */
  readonly onLift: (runs: string) => void;
}

/** The box that is open: for which run, for which piece of it, and what else lies there. */
interface Open {
  readonly run: string | null;
  readonly leg: string | null;
  readonly runs: readonly string[];
}

const opened = ({ hand, bars }: Grip): Open => ({
  run: hand?.run ?? null,
  leg: hand?.leg ?? null,
  runs: bars.map((b) => b.run),
});

/** What moves, where it would be: the chosen run at its length, the others as bars. */
function movedItems(drag: BarDrag, props: Props, plan: Plan): Item[] {
  const by = drag.aim.z - drag.held.bar.z;
  const bars = props.bars
    .filter((b) => !b.chosen && drag.held.moving.has(b.leg))
    .map((b) => barItem(b.z + by, 0, props.acrossMm, b.style));
  const chosen = liftsChosen(drag, props.bars) ? props.chosenItems(drag.plan ?? plan) : [];
  return [...chosen, ...bars];
}

const liftsChosen = (drag: BarDrag, bars: readonly RibbonBar[]): boolean =>
  drag.held.bar.chosen || bars.some((b) => b.chosen && drag.held.moving.has(b.leg));

/** Runs as one word: the same while the same are moved. */
function liftedRuns(drag: BarDrag, bars: readonly RibbonBar[]): string {
  const moved = bars.filter((b) => drag.held.moving.has(b.leg)).map((b) => b.run);
  return [...new Set([...moved, drag.held.bar.run])].sort().join(' ');
}

/** The bars of the ribbon as things to touch: a tap chooses a run, a drag or the arrows move its height, Enter types it. */
export default function Bars(props: Props) {
  const { grips, bars, levels, network, heights, scale, storey, frame, width, height, onHold, onLift } = props;
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const box = useRef<HTMLElement>(null);
  const [open, setOpen] = useState<Open | null>(null);
  const grip = useRef<Grip | null>(null);
  const hand = useBarDrag({ network, levels, heights, scale, storey }, (bar) => {
    const on = grip.current;
    if (!on) return;
    if (on.bars.length === 1 && bar && !bar.chosen) editor.select([{ map: 'runs', id: bar.run }]);
    else setOpen(opened(on));
  });
  const { drag } = hand;
  const lifted = drag ? liftedRuns(drag, bars) : '';
  useEffect(() => onLift(lifted), [lifted, onLift]);

  const down = (e: PointerEvent<HTMLElement>, on: Grip): void => {
    grip.current = on;
    const kind = e.pointerType === 'touch' || e.pointerType === 'pen' ? e.pointerType : 'mouse';
    const y = e.clientY - (box.current?.getBoundingClientRect().top ?? 0);
    hand.down(
      e,
      barAt(on, (z) => scale.y(z), y, APART_PX[kind]),
    );
  };
  const key = (e: KeyboardEvent<HTMLElement>, on: Grip): void => {
    const step = STEPS[e.key];
    if (step !== undefined && on.hand) {
      e.preventDefault();
      onHold(on.hand.run);
      setAim(editor, on.hand, { z: on.hand.z + (e.shiftKey ? step * 5 : step), height: null });
    } else if (e.key === 'Enter' || e.key === ' ') {
      e.preventDefault();
      setOpen(opened(on));
    }
  };
  const close = (): void => {
    const run = open?.run;
    setOpen(null);
    const focus = [...(box.current?.querySelectorAll<HTMLElement>('[data-run]') ?? [])];
    (focus.find((f) => f.dataset.leg === open?.leg) ?? focus.find((f) => f.dataset.run === run))?.focus();
  };
  const touchable = grips.flatMap((g) => g.bars);
  const shownBars = (open?.runs ?? []).flatMap(
    (run) =>
      touchable.find((b) => b.run === run && b.leg === open?.leg) ??
      touchable.find((b) => b.run === run) ??
      bars.find((b) => b.run === run) ??
      [],
  );
  const told = shownBars.find((b) => b.run === open?.run) ?? null;
  const beside = told ?? shownBars[0];
  const openAt = beside ? scale.y(beside.z) : 0;
  const pageTop = box.current?.getBoundingClientRect().top ?? 0;
  return (
    <section ref={box} className="ribbon-bars" aria-label="Pipes by their heights">
      {drag && (
        <>
          <Painted parts={[{ items: movedItems(drag, props, plan) }]} frame={frame} width={width} height={height} />
          <p
            className="height-says"
            data-refused={drag.refused !== null}
            aria-hidden="true"
            style={besideRibbon(box.current, pageTop + scale.y(drag.aim.z) - 17)}
          >
            {drag.says}
          </p>
        </>
      )}
      {grips.map((g) => (
        <button
          key={g.key}
          type="button"
          className="ribbon-bar"
          data-leg={g.hand?.leg}
          data-run={g.hand?.run}
          data-chosen={g.hand?.chosen === true}
          style={{ top: g.top, height: g.height, left: g.left, width: g.width }}
          {...(g.hand
            ? {
                role: 'slider',
                'aria-orientation': 'vertical' as const,
                'aria-label': `Height of ${g.hand.name}`,
                'aria-valuemin': Math.round(-heights.buildUpMm),
                'aria-valuemax': Math.round(heights.ceiling - heights.floor + heights.buildUpMm),
                'aria-valuenow': Math.round(g.hand.z - heights.floor),
                'aria-valuetext': sayBar(plan, g.hand, storey, heights.floor),
              }
            : {
                'aria-haspopup': 'dialog' as const,
                'aria-label': `${g.bars.length} pipes: ${g.bars.map((b) => b.tag).join(', ')}`,
              })}
          onFocus={() => onHold(g.hand?.run ?? null)}
          onPointerDown={(e) => down(e, g)}
          onPointerMove={hand.move}
          onPointerUp={hand.up}
          onPointerCancel={hand.cancel}
          onKeyDown={(e) => key(e, g)}
        />
      ))}
      {open && shownBars.length > 0 && (
        <Suspense fallback={null}>
          <RunHeightBox
            at={besideRibbon(box.current, Math.max(TOP_PX, Math.min(pageTop + openAt - 90, innerHeight - BOX_PX)))}
            bars={shownBars}
            bar={told}
            levels={levels}
            network={network}
            heights={heights}
            storey={storey}
            onPick={(b) => {
              editor.select([{ map: 'runs', id: b.run }]);
              onHold(b.run);
              setOpen({ ...open, run: b.run, leg: b.leg });
            }}
            onClose={close}
          />
        </Suspense>
      )}
    </section>
  );
}

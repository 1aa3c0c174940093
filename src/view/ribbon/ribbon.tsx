import { lazy, Suspense, useCallback, useMemo, useRef, useState } from 'react';
import { unroll } from '../../drawing/ribbon/ribbon-run.ts';
import type { RibbonLevel } from '../../drawing/ribbon.ts';
import { resolveHeight } from '../../geometry/heights.ts';
import type { Plan } from '../../plan/plan.ts';
import { afterFirstLine } from '../app/first-line.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { useSize } from '../app/use-size.ts';
import { Painted } from '../look/painted.tsx';
import { look } from '../look/tokens.ts';
import { barGrips } from './grips.ts';
import { HeightTab } from './height-tab.tsx';
import { heightAt, overCeiling, type StoreyHeights, sayWorkHeight, storeyHeights } from './levels.ts';
import { PullOut, usePulled } from './pull-out.tsx';
import { fitScale, type RibbonScale, scaleFrom, TAB_HALF_PX, tabY } from './ribbon-scale.ts';
import { underTab, without } from './under-tab.ts';
import { chosenRun, useRibbon } from './use-ribbon.ts';
import './ribbon.css';

const HEAD_PX = 50;
const MARGIN_PX = 14;
/** Narrower than this it is the ribbon of a phone: no heading, figures close by. */
const NARROW_PX = 80;
/** From here on it is pulled out, and shows the chosen run at its length. */
const LONG_PX = 240;
/** Its figures are a little smaller, so that letters and height stand on one line. */
const NARROW_TEXT = 0.9;

interface Across {
  /** Left edge of the section, and its width, px. */
  readonly left: number;
  readonly px: number;
}

const acrossOf = (width: number): Across =>
  width < NARROW_PX
    ? { left: 37, px: 9 }
    : { left: width < LONG_PX ? 52 : 60, px: width - (width < LONG_PX ? 58 : 72) };

/** Room for the chain of distances under the floor, px. */
const CHAIN_PX = 30;

/** The scale of the face, where one is folded up, so that a height can be followed straight across; else all of the storey. */
function useScale(
  heights: StoreyHeights | null,
  over: number,
  heightPx: number,
  headPx: number,
  footPx: number,
): RibbonScale | null {
  const face = useEditorState((s) => s.panes.face);
  return useMemo(() => {
    if (!heights || heightPx === 0) return null;
    if (face) {
      return scaleFrom(face.camera.centre[1] + (face.height / 2) * face.camera.mmPerPx, 1 / face.camera.mmPerPx);
    }
    const { floor, buildUpMm } = heights;
    const scale = fitScale(floor - buildUpMm, over, heightPx - headPx - footPx, MARGIN_PX);
    return scaleFrom(scale.topZ + headPx / scale.perMm, scale.perMm);
  }, [heights, over, heightPx, headPx, footPx, face]);
}

/** A true upright section of the floor in hand, with the work height on it. */
export function Ribbon() {
  const place = useRef<HTMLDivElement>(null);
  const { width, height } = useSize(place);
  const pulled = usePulled();
  const plan = useEditorState((s) => s.plan);
  const storey = useEditorState((s) => (s.panes.plan.view.kind === 'plan' ? s.panes.plan.view.storey : ''));
  const ref = useEditorState((s) => s.inHand.height);
  const heights = useMemo(() => storeyHeights(plan, storey), [plan, storey]);
  const over = heights ? overCeiling(plan, heights) : 0;
  const scale = useScale(heights, over, height, width < NARROW_PX ? 0 : HEAD_PX, width < LONG_PX ? 0 : CHAIN_PX);
  const work = useMemo(() => resolveHeight(plan, ref)?.z, [plan, ref]);
  return (
    <>
      <div className="ribbon" ref={place} data-out={pulled.out} style={pulled.style}>
        {!(heights && scale && width > 0 && work !== undefined) && (
          <header className="ribbon-head">
            <h2>Heights</h2>
          </header>
        )}
        {heights && scale && width > 0 && (
          <Cut heights={heights} scale={scale} width={width} height={height} work={work} storey={storey} />
        )}
      </div>
      <PullOut pulled={pulled} />
    </>
  );
}

interface CutProps {
  readonly heights: StoreyHeights;
  readonly scale: RibbonScale;
  readonly width: number;
  readonly height: number;
  readonly work: number | undefined;
  readonly storey: string;
}

const Bars = lazy(afterFirstLine(() => import('./bars.tsx')));
/** What is pulled out is fetched when it is. */
const LongSection = lazy(afterFirstLine(() => import('./long-section.tsx')));

const NO_RUNS: ReadonlySet<string> = new Set();

function Cut({ heights, scale, width, height, work, storey }: CutProps) {
  const across = acrossOf(width);
  const long = width >= LONG_PX;
  const perPaperMm = look.screen.pxPerMm * (width < NARROW_PX ? NARROW_TEXT : 1);
  const room = across.left / perPaperMm;
  const widthMm = across.px / scale.perMm;
  const drawn = useRibbon(widthMm, perPaperMm / scale.perMm, null, room, long);
  const { list, levels, bars, network } = drawn;
  const [held, setHeld] = useState<string | null>(null);
  const [lifted, setLifted] = useState('');
  const run = useEditorState(chosenRun);
  const away = useMemo(() => (lifted === '' ? NO_RUNS : new Set(lifted.split(' '))), [lifted]);
  const under = underTab(list.items, work, scale.perMm);
  const parts = useMemo(
    () => without(list.items, under).filter((p) => p.group !== 'run' || !away.has(p.id)),
    [list, under, away],
  );
  const says = useEditorState((s) => sayWorkHeight(s.plan, levels, s.inHand.height));
  const frame = useMemo(
    () => ({
      perMm: scale.perMm,
      perPaperMm,
      origin: [across.left, scale.topZ * scale.perMm] as const,
      turnDeg: 0,
      leastPen: look.screen.leastPenPx,
      medium: 'screen' as const,
    }),
    [scale, across.left, perPaperMm],
  );
  const unrolled = useCallback(
    (plan: Plan) => (run === null ? [] : unroll(plan, network, run, widthMm * 0.12, widthMm * 0.88).items),
    [network, run, widthMm],
  );
  const tab = work === undefined ? null : tabY(scale, work, height);
  const off = useMemo(() => (tab === null ? null : ([tab - TAB_HALF_PX, tab + TAB_HALF_PX] as const)), [tab]);
  const grips = useMemo(
    () => barGrips(bars, scale, held, across.left, width - across.left, width < NARROW_PX ? off : null),
    [bars, scale, held, across.left, width, off],
  );
  const common = { bars, levels, network, heights, scale, frame, storey, width, height, onHold: setHeld };
  return (
    <>
      <div className="ribbon-air" style={{ left: across.left, width: across.px }} />
      <Painted parts={parts} frame={frame} width={width} height={height} />
      <Touch heights={heights} levels={levels} scale={scale} storey={storey} />
      <Suspense fallback={null}>
        {long && run !== null ? (
          <LongSection
            {...common}
            run={run}
            held={held}
            off={off}
            across={across}
            lifted={away.has(run)}
            onLift={setLifted}
          />
        ) : (
          <Bars {...common} grips={grips} acrossMm={widthMm} chosenItems={unrolled} onLift={setLifted} />
        )}
      </Suspense>
      {work !== undefined && (
        <>
          <header className="ribbon-head">
            <h2>{long ? 'Long section' : 'Heights'}</h2>
            <p title={says}>{says}</p>
          </header>
          <HeightTab heights={heights} levels={levels} scale={scale} z={work} storey={storey} height={height} />
        </>
      )}
    </>
  );
}

/** A tapped line comes no nearer than a finger does. */
const TAP_CATCH_PX = 16;

interface TouchProps {
  readonly heights: StoreyHeights;
  readonly levels: readonly RibbonLevel[];
  readonly scale: RibbonScale;
  readonly storey: string;
}

/** The section itself: a tap on a line takes its height up, a tap beside takes the height it hits. Keys have the tab for it. */
function Touch({ heights, levels, scale, storey }: TouchProps) {
  const editor = useEditor();
  return (
    <div
      className="ribbon-touch"
      aria-hidden="true"
      onClick={(e) => {
        const z = scale.z(e.clientY - e.currentTarget.getBoundingClientRect().top);
        editor.setInHand({ height: heightAt(levels, storey, heights.floor, z, TAP_CATCH_PX / scale.perMm) });
      }}
    />
  );
}

import { lazy, Suspense, useEffect, useMemo } from 'react';
import { useStore } from 'zustand';
import { loadLater } from '../../editor/later/load-later.ts';
import type { Plan } from '../../plan/plan.ts';
import { asked as askedByKey } from '../a11y/asked.ts';
import { LiveRegion } from '../a11y/live-region.tsx';
import { Bench } from '../bench/bench.tsx';
import { Panel, SheetPanel } from '../panels/panel.tsx';
import { Ribbon } from '../ribbon/ribbon.tsx';
import { Canvas } from '../stage/canvas.tsx';
import { Strip } from '../strip/strip.tsx';
import { EmptyPage } from './empty-page.tsx';
import { useKeyboard } from './keyboard.ts';
import type { Session } from './session.ts';
import { usePhone } from './use-phone.ts';
import { SessionContext, useEditorState, useScreen } from './use-session.ts';
import './frame.css';

const AskPad = lazy(() => import('../bench/ask-pad.tsx').then((m) => ({ default: m.AskPad })));
const Tray = lazy(() => import('../bench/tray.tsx').then((m) => ({ default: m.Tray })));
/** What is told is carried out by commands that come later. */
const WordsScreen = lazy(async () => (await Promise.all([import('../words/words-screen.tsx'), loadLater()]))[0]);
const JobsScreen = lazy(() => import('../jobs/jobs-screen.tsx'));
const PrintScreen = lazy(() => import('../print/print-screen.tsx'));
const HelpSheet = lazy(() => import('../help/help-sheet.tsx'));
const ThingsScreen = lazy(() => import('../things/things-screen.tsx'));
const FlueFaceScreen = lazy(() => import('../flue-face/flue-face-screen.tsx'));
const OptionsScreen = lazy(() => import('../options/options-screen.tsx'));
const SumsScreen = lazy(() => import('../sums/sums-screen.tsx'));
const HeightAsk = lazy(() => import('../a11y/height-ask.tsx'));
const MoreSheet = lazy(() => import('../help/more-sheet.tsx'));

const emptiness = new WeakMap<Plan, boolean>();

/** Nothing that could be looked at on the floor plan yet. Asked with every move of the hand, so found once a plan. */
function isEmpty(plan: Plan): boolean {
  const known = emptiness.get(plan);
  if (known !== undefined) return known;
  const { walls, points, nodes, rooms, voids, roofs, grounds, blobRefs } = plan;
  const empty = [walls, points, nodes, rooms, voids, roofs, grounds, blobRefs].every(
    (map) => Object.keys(map).length === 0,
  );
  emptiness.set(plan, empty);
  return empty;
}

const useEmpty = (): boolean => useEditorState((s) => isEmpty(s.plan));

/** What the first line does without is fetched when the page has been painted. */
function useRestOfTheEditor(): void {
  useEffect(() => {
    const frame = requestAnimationFrame(() => {
      performance.mark('first line');
      void loadLater().catch(() => undefined);
    });
    return () => cancelAnimationFrame(frame);
  }, []);
}

/** The open job: strip, heights, drawing, panel and bench, and whatever lies over them. */
export function Frame({ session }: { readonly session: Session }) {
  return (
    <SessionContext.Provider value={session}>
      <Parts />
    </SessionContext.Provider>
  );
}

function Parts() {
  const phone = usePhone();
  const folded = useScreen((s) => s.folded);
  const hand = useScreen((s) => s.hand);
  const stop = useScreen((s) => s.sheetStop);
  const over = useScreen((s) => s.over);
  const tray = useScreen((s) => s.tray);
  const tool = useEditorState((s) => s.tool);
  const readOnly = useEditorState((s) => s.readOnly);
  const asked = useEditorState((s) => s.ask !== null);
  const heightAsked = useStore(askedByKey, (s) => s.height);
  const empty = useEmpty();
  useKeyboard();
  useRestOfTheEditor();
  const words = over === 'words';
  const beside = words && !phone;
  const panel = useMemo(() => (phone ? <SheetPanel /> : <Panel />), [phone]);
  return (
    <div className="frame" data-folded={folded && !phone && !beside} data-hand={hand}>
      <header className="frame-strip">
        <Strip />
      </header>
      <aside className="frame-ribbon" aria-label="Heights">
        <Ribbon />
      </aside>
      <main className="frame-canvas">
        <Canvas />
        {empty && !words && tool === 'select' && <EmptyPage />}
        {readOnly !== null && <p className="read-only">{readOnly}</p>}
        <LiveRegion />
        {tray && (
          <Suspense fallback={null}>
            <Tray />
          </Suspense>
        )}
      </main>
      <aside className="frame-panel" data-stop={stop} aria-label="Answers">
        {beside ? (
          <Suspense fallback={<p className="waiting">opening</p>}>
            <WordsScreen beside />
          </Suspense>
        ) : (
          panel
        )}
      </aside>
      <footer className="frame-bench">
        <Bench phone={phone} />
      </footer>
      {!beside && asked && (
        <Suspense fallback={null}>
          <AskPad />
        </Suspense>
      )}
      <Suspense fallback={null}>
        {words && phone && (
          <div className="cover">
            <WordsScreen beside={false} />
          </div>
        )}
        {heightAsked && <HeightAsk />}
        {over === 'jobs' && <JobsScreen />}
        {over === 'print' && <PrintScreen />}
        {over === 'help' && <HelpSheet />}
        {over === 'more' && <MoreSheet />}
        {over === 'my-things' && <ThingsScreen />}
        {over === 'sums' && <SumsScreen />}
        {over === 'options' && <OptionsScreen />}
        {over === 'flue-face' && <FlueFaceScreen />}
      </Suspense>
    </div>
  );
}

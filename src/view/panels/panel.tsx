import { useEffect, useMemo, useRef, useState } from 'react';
import { isStaying } from '../a11y/asked.ts';
import { openChapter, type SheetStop, screen } from '../app/screen.ts';
import { isFocusLost } from '../app/use-focus-back.ts';
import { usePhone } from '../app/use-phone.ts';
import { useEditorState, useReport, useScreen } from '../app/use-session.ts';
import { KickTurn } from '../look/kick.tsx';
import { FindingMark } from '../look/mark.tsx';
import { shownDifference } from '../options/shown-difference.ts';
import { ChapterBody } from './chapter-body.tsx';
import { type Chapter, chaptersOf, openChapterOf, shownFirst } from './chapters.ts';
import { sayUnit } from './rows/figures.ts';
import { SumsState } from './sums-state.tsx';
import './panel.css';
import './bar.css';
import './rows/rows.css';

function useChapters(): { readonly chapters: readonly Chapter[]; readonly open: Chapter | undefined } {
  const plan = useEditorState((s) => s.plan);
  const selection = useEditorState((s) => s.selection);
  const report = useReport((s) => s.report);
  const asked = useScreen((s) => s.chapter);
  const chapters = useMemo(() => chaptersOf({ plan, selection }, report), [plan, selection, report]);
  return { chapters, open: openChapterOf(chapters, asked) };
}

/** A fresh choice opens what is chosen; letting go of it gives the answers back. */
function useFollowSelection(): void {
  const selection = useEditorState((s) => s.selection);
  const before = useRef(selection);
  useEffect(() => {
    if (before.current === selection) return;
    before.current = selection;
    if (isStaying()) return;
    const { chapter, finding } = screen.getState();
    if (finding !== null || selection === shownDifference.selection) return;
    if (selection.length > 0) screen.setState({ chapter: 'inspect' });
    else if (chapter === 'inspect') screen.setState({ chapter: null });
  }, [selection]);
}

/** A picture is laid from its chapter: what is done with it stands there. */
function useFollowTracing(): void {
  const tracing = useEditorState((s) => s.tool === 'trace');
  useEffect(() => {
    if (tracing) openChapter('traces');
  }, [tracing]);
}

/** What is told where there is room for one answer: the open chapter's where it is one of the report's, else the first. */
function mainOf(chapters: readonly Chapter[], open: Chapter): Chapter {
  const isAnswer = (c: Chapter): boolean => c.id.startsWith('section:');
  return isAnswer(open) ? open : (chapters.find(isAnswer) ?? open);
}

/** The panel at the side: one chapter open, the others as rows with their answers; folded, only the answer. */
export function Panel() {
  const { chapters, open } = useChapters();
  const folded = useScreen((s) => s.folded);
  useFollowSelection();
  useFollowTracing();
  if (!open) return null;
  return (
    <>
      <button
        type="button"
        className="panel-handle"
        aria-expanded={!folded}
        aria-label={folded ? 'Open the panel' : 'Fold the panel'}
        onClick={() => screen.setState({ folded: !folded })}
      >
        <span>
          <KickTurn />
        </span>
      </button>
      {folded ? <Spine open={mainOf(chapters, open)} /> : <Open chapters={chapters} open={open} />}
    </>
  );
}

function Spine({ open }: { readonly open: Chapter }) {
  const counts = useReport((s) => s.report?.counts);
  return (
    <button type="button" className="spine" onClick={() => screen.setState({ folded: false })}>
      <span className="spine-answer">{sayUnit(open.answer)}</span>
      <span className="spine-name">{open.title}</span>
      {counts !== undefined && counts.stop > 0 && <FindingMark outcome="stop" />}
    </button>
  );
}

function Open({ chapters, open }: { readonly chapters: readonly Chapter[]; readonly open: Chapter }) {
  return (
    <div className="panel">
      <OpenChapter chapter={open} />
      <Foot chapters={chapters.filter((c) => c.id !== open.id)} />
    </div>
  );
}

function OpenChapter({ chapter }: { readonly chapter: Chapter }) {
  const place = useRef<HTMLElement>(null);
  const title = useRef<HTMLHeadingElement>(null);
  const was = useRef(chapter.id);
  useEffect(() => {
    if (was.current === chapter.id) return;
    was.current = chapter.id;
    place.current?.scrollTo(0, 0);
    // Opened from its row, which is gone now.
    if (isFocusLost()) title.current?.focus({ preventScroll: true });
  }, [chapter.id]);
  return (
    <section className="panel-open" ref={place} aria-label={chapter.title}>
      <h2 className="panel-title" ref={title} tabIndex={-1}>
        {chapter.title}
      </h2>
      <SumsState />
      <ChapterBody id={chapter.id} />
    </section>
  );
}

/** More closed chapters than this stand two in a row. */
const MOST_ROWS = 4;
/** So many are shown at once, the key for the others among them. */
const MOST_SHOWN = 6;

/** The closed chapters: the worst news and the list at once, the others behind one key. */
function Foot({ chapters }: { readonly chapters: readonly Chapter[] }) {
  const [all, setAll] = useState(false);
  const first = useMemo(() => shownFirst(chapters, MOST_SHOWN), [chapters]);
  // Half up, a phone has them all in one line that is pushed along.
  const half = useScreen((s) => s.sheetStop === 'half');
  const phone = usePhone();
  const inLine = half && phone;
  const shown = all || inLine ? chapters : chapters.filter((c) => first.has(c.id));
  const more = !inLine && first.size < chapters.length;
  return (
    <nav className="panel-foot" data-many={chapters.length > MOST_ROWS} data-all={all} aria-label="Chapters">
      {shown.map((c) => (
        <ChapterRow key={c.id} chapter={c} onOpen={() => setAll(false)} />
      ))}
      {more && (
        <button type="button" className="chapter-row chapter-all" aria-expanded={all} onClick={() => setAll(!all)}>
          <span className="chapter-name">{all ? 'Fewer' : 'All chapters'}</span>
          <span className="chapter-answer">
            {all ? 'those that matter now' : `${chapters.length - first.size} more`}
          </span>
        </button>
      )}
    </nav>
  );
}

function ChapterRow({ chapter, onOpen }: { readonly chapter: Chapter; readonly onOpen: () => void }) {
  const open = (): void => {
    onOpen();
    screen.setState({ finding: null });
    openChapter(chapter.id);
  };
  return (
    <button type="button" className="chapter-row" onClick={open}>
      <span className="chapter-name" title={chapter.title}>
        {chapter.title}
      </span>
      <span className="chapter-answer">{sayUnit(chapter.answer)}</span>
      <KickTurn />
    </button>
  );
}

const NEXT_STOP: Readonly<Record<SheetStop, SheetStop>> = { low: 'half', half: 'full', full: 'low' };

/** The same panel on a phone: a sheet from below with three stops. A tap on its bar goes on to the next. */
export function SheetPanel() {
  const { chapters, open } = useChapters();
  const stop = useScreen((s) => s.sheetStop);
  useFollowSelection();
  useFollowTracing();
  if (!open) return null;
  const told = mainOf(chapters, open);
  return (
    <div className="panel">
      <button
        type="button"
        className="sheet-bar"
        aria-label={`${told.title}: ${told.answer}. ${stop === 'full' ? 'Lower' : 'Raise'} the sheet`}
        onClick={() => screen.setState({ sheetStop: NEXT_STOP[stop] })}
      >
        <KickTurn size={28} />
        <span>
          <span className="sheet-name">{told.title}</span>
          <span className="sheet-answer">{told.answer === '' ? 'no answer yet' : sayUnit(told.answer)}</span>
        </span>
      </button>

      <OpenChapter chapter={open} />
      <Foot chapters={chapters.filter((c) => c.id !== open.id)} />
    </div>
  );
}

import { useEffect, useMemo, useReducer, useRef } from 'react';
import { createWords } from '../../editor/words/create-words.ts';
import type { Chip, Words } from '../../editor/words/words-api.ts';
import { SaidHere } from '../a11y/live-region.tsx';
import { screen, setOver } from '../app/screen.ts';
import { useFocusBack } from '../app/use-focus-back.ts';
import { useEditor } from '../app/use-session.ts';
import { KickMark } from '../look/kick.tsx';
import { keepInView } from './keep-in-view.ts';
import { keyFor } from './typed-keys.ts';
import { WordsAnswer } from './words-answer.tsx';
import { WordsChips } from './words-chips.tsx';
import { WordsHeights } from './words-heights.tsx';
import { WordsPad } from './words-pad.tsx';
import { WordsSketch } from './words-sketch.tsx';
import './words.css';
import '../panels/bar.css';
import '../panels/rows/rows.css';

/** The telling, and a reason to render when it or the plan has moved on. */
function useWords(): Words {
  const editor = useEditor();
  const [, again] = useReducer((n: number) => n + 1, 0);
  const words = useMemo(() => createWords(editor), [editor]);
  useEffect(() => {
    // A step may be more than one change of the plan; the run it belongs to is known when they are all done.
    const follow = (): void => queueMicrotask(() => keepInView(editor, words.store.getState().run));
    const stops = [
      words.store.subscribe(again),
      editor.store.subscribe((s, before) => {
        if (s.plan !== before.plan || s.chosen !== before.chosen) again();
        if (s.plan !== before.plan || (s.draft !== before.draft && s.draft?.plan)) follow();
      }),
    ];
    return () => {
      for (const stop of stops) stop();
      words.dispose();
      editor.showDraft(null);
    };
  }, [words, editor]);
  return words;
}

/** A run told in words on any page, empty or not: chips, answer, pad. On a phone with a small sketch of it. */
export default function WordsScreen({ beside }: { readonly beside: boolean }) {
  const editor = useEditor();
  const words = useWords();
  const section = useRef<HTMLElement>(null);
  useFocusBack();
  useEffect(() => section.current?.querySelector<HTMLElement>('.pad')?.focus({ preventScroll: true }), []);
  const { run, changing, phase } = words.store.getState();
  useEffect(() => {
    const onKey = (e: KeyboardEvent): void => {
      if (e.ctrlKey || e.metaKey || e.altKey) return;
      if (e.target instanceof Element && e.target.closest('input, textarea, select, dialog, [role="dialog"]')) return;
      // A key that the tab key has led to is pressed by Enter like any other.
      if (e.key === 'Enter' && e.target instanceof Element && e.target.closest('.words button')) return;
      const key = keyFor(e.key, words.keys());
      if (key !== null && words.press(key)) e.preventDefault();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [words]);
  const place = (): void => {
    setOver(null);
    screen.setState({ chapter: null });
    editor.zoomToFit();
  };
  const change = (chip: Chip): void => {
    words.retype(chip.kind === 'class' ? 'class' : (chip.stepIndex ?? 0));
  };
  return (
    <section ref={section} className={`words${beside ? ' beside' : ''}`} aria-label="Run by words">
      <header className="words-head">
        <KickMark size={beside ? 26 : 30} />
        <h2>Run by words</h2>
        <button type="button" className="bare-key accent" onClick={place}>
          {beside ? 'Done' : 'Place in a house'}
        </button>
      </header>
      {!beside && (
        <div className="words-see">
          <WordsHeights run={run} />
          <WordsSketch run={run} />
          <SaidHere />
        </div>
      )}
      <WordsChips chips={words.chips()} changing={changing?.step ?? null} onChange={change} />
      <WordsAnswer run={run} full={beside || phase === 'told'} />
      <WordsPad told={phase === 'told'} keys={words.keys()} onPress={(key) => words.press(key)} />
    </section>
  );
}

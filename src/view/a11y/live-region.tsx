import { useEffect, useRef, useState } from 'react';
import type { Report } from '../../report/report.ts';
import { useEditorState, useReport } from '../app/use-session.ts';
import { sayCounts } from '../panels/chapters.ts';
import './said.css';

/** What changed between two reports, in a few words: nothing where the counts are as they were. */
export function sayChange(before: Report['counts'] | null, now: Report['counts']): string {
  if (before === null) return '';
  const same = (['stop', 'check', 'note', 'cantTell'] as const).every((k) => before[k] === now[k]);
  return same ? '' : `Findings: ${sayCounts(now)}.`;
}

const SHOWN_MS = 6000;

/** Refusals aloud at once, everything else when there is a pause; and the same words for the eye, over the bench. */
export function LiveRegion() {
  const said = useEditorState((s) => s.said);
  const counts = useReport((s) => s.report?.counts);
  const before = useRef<Report['counts'] | null>(null);
  const [change, setChange] = useState('');
  useEffect(() => {
    if (counts === undefined) return;
    setChange(sayChange(before.current, counts));
    before.current = counts;
  }, [counts]);
  return (
    <>
      <div className="out-of-sight" role="status">
        {said !== null && !said.refusal ? said.text : change}
      </div>
      <div className="out-of-sight" role="alert">
        {said?.refusal ? said.text : ''}
      </div>
      <SaidHere />
    </>
  );
}

/** The last thing said, for the eye. A page that covers the drawing shows its own. */
export function SaidHere() {
  const said = useEditorState((s) => s.said);
  return said === null ? null : <Said key={said.n} text={said.text} refusal={said.refusal} />;
}

function Said({ text, refusal }: { readonly text: string; readonly refusal: boolean }) {
  const [shown, setShown] = useState(true);
  useEffect(() => {
    const timer = setTimeout(() => setShown(false), SHOWN_MS);
    return () => clearTimeout(timer);
  }, []);
  if (!shown) return null;
  return (
    <div className={`said${refusal ? ' refusal' : ''}`} aria-hidden="true">
      {text}
    </div>
  );
}

import { useEffect } from 'react';
import { flipCase } from '../../editor/flip-case.ts';
import type { Case } from '../../plan/plan.ts';
import { openChapter, setOver } from '../app/screen.ts';
import { useEditor, useEditorState, useKept, useReport, useSession } from '../app/use-session.ts';
import { Icon } from '../look/icon.tsx';
import { KickMark, KickUnderline } from '../look/kick.tsx';
import { FindingMark, OUTCOME_WORD } from '../look/mark.tsx';
import { RadioKeys } from '../look/radio-keys.tsx';
import { type CaseKey, casesOf } from './cases.ts';
import { sayKept } from './say-kept.ts';
import './strip.css';

/** Mark, job, case, findings, and when it was last kept. */
export function Strip() {
  return (
    <div className="strip">
      <Title />
      <JobName />
      <CaseSwitch />
      <div className="strip-right">
        <Counts />
        <Kept />
        <button type="button" className="bare-key strip-help" aria-label="Help" onClick={() => setOver('help')}>
          <Icon name="help" size={22} />
        </button>
      </div>
    </div>
  );
}

/** The page's own heading and title: what this is, and which job is open. */
function Title() {
  const name = useEditorState((s) => s.plan.name);
  useEffect(() => {
    document.title = name === '' ? 'Kickset' : `${name}, Kickset`;
  }, [name]);
  return <h1 className="out-of-sight">{name === '' ? 'Kickset' : `Kickset: ${name}`}</h1>;
}

function JobName() {
  const name = useEditorState((s) => s.plan.name);
  const sub = useEditorState((s) => s.plan.job.reason || s.plan.job.address);
  return (
    <button
      type="button"
      className="strip-job"
      onClick={() => setOver('jobs')}
      aria-label={`Job: ${name === '' ? 'without a name' : name}. All jobs`}
    >
      <KickMark />
      <span>
        <span className="strip-name">{name === '' ? 'Job without a name' : name}</span>
        {sub !== '' && <span className="strip-subtitle">{sub}</span>}
      </span>
    </button>
  );
}

const caseKey = (c: Case): string => (c.when === 'before' ? 'before' : `after ${c.option ?? ''}`);

function CaseSwitch() {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const chosen = useEditorState((s) => s.chosen);
  const cases = casesOf(plan, chosen.option);
  const now = cases.find((c) => caseKey(c.chosen) === caseKey(chosen));
  return (
    <div className="cases" title="Before: the house as found. After: as it will be.">
      {cases.length > 2 && <FlipKey />}
      <RadioKeys
        legend="Before or after the work"
        legendHidden
        className="case-switch"
        choices={cases.map((c) => ({ value: caseKey(c.chosen), label: <CaseWords at={c} alone={cases.length < 3} /> }))}
        chosen={caseKey(chosen)}
        mark={<CaseMark />}
        onChoose={(key) => {
          const found = cases.find((c) => caseKey(c.chosen) === key);
          if (found) editor.setCase(found.chosen);
        }}
      />
      <span className="out-of-sight" role="status">
        {now?.label}
      </span>
    </div>
  );
}

/** Where there are several options, one press goes from what is looked at to before the work, and back to the same one. */
function FlipKey() {
  const editor = useEditor();
  const before = useEditorState((s) => s.chosen.when === 'before');
  return (
    <button
      type="button"
      className="bare-key flip-key"
      aria-label={before ? 'Back to after the work' : 'To before the work and back'}
      onClick={() => flipCase(editor)}
    >
      <svg width={24} height={24} viewBox="0 0 24 24" aria-hidden="true" focusable="false">
        <path d="M4 8h7l3-3h6M4 16h6l3 3h7" />
        <path d="M4 5.500v5M20 2.500v5M4 13.500v5M20 16.500v5" />
      </svg>
    </button>
  );
}

/** So much of the next case shows beside the chosen one. */
const BESIDE_PX = 24;

/** Where there are more cases than have room, the chosen one is brought in among those that show. */
function bringIn(mark: HTMLSpanElement | null): void {
  const key = mark?.parentElement;
  const row = key?.parentElement;
  if (!key || !row) return;
  const [k, r] = [key.getBoundingClientRect(), row.getBoundingClientRect()];
  row.scrollLeft += Math.max(0, k.right + BESIDE_PX - r.right) - Math.max(0, r.left + BESIDE_PX - k.left);
}

function CaseMark() {
  return (
    <span ref={bringIn} className="case-mark">
      <KickUnderline />
    </span>
  );
}

/** "After, A"; on a phone only as much of it as tells it from the others. */
function CaseWords({ at, alone }: { readonly at: CaseKey; readonly alone: boolean }) {
  if (at.name === null) return at.label;
  return (
    <>
      <span className={alone ? '' : 'case-long'}>After{alone ? '' : ', '}</span>
      <span className={alone ? 'case-long' : ''}>
        {alone ? ', ' : ''}
        {at.name}
      </span>
    </>
  );
}

const COUNTED = ['stop', 'check', 'note', 'cantTell'] as const;

function Counts() {
  const report = useReport((s) => s.report);
  const waiting = useReport((s) => s.waiting);
  const counts = report?.counts;
  const shown = counts ? COUNTED.filter((o) => counts[o] > 0) : [];
  const spoken = counts ? shown.map((o) => `${counts[o]} ${OUTCOME_WORD[o]}`).join(', ') : '';
  return (
    <button
      type="button"
      className="counts"
      title={spoken === '' ? 'Findings' : `Findings: ${spoken}`}
      aria-label={spoken === '' ? 'Findings: none' : `Findings: ${spoken}`}
      aria-busy={waiting}
      onClick={() => openChapter('findings')}
    >
      {counts && shown.length === 0 && <span className="none">no findings</span>}
      {counts &&
        shown.map((o) => (
          <span key={o} className="count">
            <FindingMark outcome={o} hidden />
            {counts[o]}
          </span>
        ))}
    </button>
  );
}

function Kept() {
  const session = useSession();
  const at = useKept((s) => s.at);
  const failed = useKept((s) => s.failed);
  const elsewhere = useKept((s) => s.elsewhere);
  const readOnly = useEditorState((s) => s.readOnly);
  if (elsewhere) {
    return (
      <button type="button" className="bare-key accent" onClick={() => void session.takeOver()}>
        Take over here
      </button>
    );
  }
  if (readOnly !== null) return <span className="kept">read only</span>;
  if (failed !== null) return <span className="kept wrong">not kept</span>;
  return <span className="kept">{sayKept(at)}</span>;
}

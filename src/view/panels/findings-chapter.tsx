import { useEffect, useMemo, useRef } from 'react';
import { useStore } from 'zustand';
import { nameFindings } from '../../drawing/labels/finding-names.ts';
import { acknowledged } from '../../report/acknowledged.ts';
import type { Finding } from '../../report/finding.ts';
import { openFinding } from '../app/screen.ts';
import { isFocusLost } from '../app/use-focus-back.ts';
import { useEditor, useEditorState, useReport, useScreen } from '../app/use-session.ts';
import { FindingMark } from '../look/mark.tsx';
import { FindingDetail } from './finding-detail.tsx';
import { FindingsKeys } from './findings/findings-keys.tsx';
import { findingsLook, showAll } from './findings/findings-look.ts';
import { groupFindings } from './findings/group-findings.ts';
import { placesOf } from './findings/place-of-finding.ts';
import { goToFinding } from './go-to-finding.ts';
import './findings.css';

/** Fewer than these are seen at a glance. */
const MANY = 4;

/** What is wrong, worst first. One may stand open; the others follow as "next". */
export function FindingsChapter() {
  const findings = useReport((s) => s.report?.findings);
  const openKey = useScreen((s) => s.finding);
  const names = useMemo(() => nameFindings(findings ?? []), [findings]);
  const cured = useReport((s) => !s.waiting && openKey !== null && !s.report?.findings.some((f) => f.key === openKey));
  useEffect(() => {
    // What is not found any more is not told in full any more either.
    if (cured) openFinding(null);
  }, [cured]);
  const list = useRef<HTMLDivElement>(null);
  const plan = useEditorState((s) => s.plan);
  const { by, hidden } = useStore(findingsLook);
  const told = useRef(openKey);
  useEffect(() => {
    const before = told.current;
    told.current = openKey;
    // Back among the others, it is the one that was just read.
    if (before !== null && openKey === null && isFocusLost())
      list.current
        ?.querySelector<HTMLElement>(`[data-finding="${CSS.escape(before)}"]`)
        ?.focus({ preventScroll: true });
  }, [openKey]);
  if (findings === undefined) return <p className="empty-chapter">Working it out.</p>;
  const open = findings.find((f) => f.key === openKey);
  const rest = findings.filter((f) => f !== open);
  const shown = rest.filter((f) => !hidden.has(f.outcome));
  const groups = groupFindings(shown, by, placesOf(plan));
  return (
    <>
      {open && <FindingDetail key={open.key} finding={open} name={names.get(open.key) ?? ''} />}
      {open && rest.length > 0 && <h3 className="next-title">Next</h3>}
      {findings.length === 0 && (
        <p className="empty-chapter">
          Nothing found in what is drawn. Limits are compared, not approved: the registered engineer decides.
        </p>
      )}
      {findings.length >= MANY && !open && <FindingsKeys findings={findings} />}
      <div ref={list}>
        {groups.map(({ title, findings: of }) => (
          <section key={title} aria-label={title === '' ? undefined : title}>
            {title !== '' && <h3 className="finding-group">{title}</h3>}
            <ul className="finding-list">
              {of.map((f) => (
                <FindingRow key={f.key} finding={f} name={names.get(f.key) ?? ''} />
              ))}
            </ul>
          </section>
        ))}
      </div>
      {shown.length < rest.length && (
        <p className="empty-chapter">
          {rest.length - shown.length} more {rest.length - shown.length === 1 ? 'is' : 'are'} hidden.{' '}
          <button type="button" className="key slight" onClick={showAll}>
            Show all
          </button>
        </p>
      )}
    </>
  );
}

function FindingRow({ finding, name }: { readonly finding: Finding; readonly name: string }) {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const seen = acknowledged(plan, finding);
  const open = (): void => {
    openFinding(finding.key);
    goToFinding(editor, finding);
  };
  return (
    <li>
      <button type="button" className="finding-row" data-finding={finding.key} onClick={open}>
        <FindingMark outcome={finding.outcome} name={name} size={30} />
        <span>
          <span className="finding-title">{finding.title}</span>
          <span className="finding-under">
            {seen !== null && (seen.worse ? 'worse than when it was seen. ' : 'seen. ')}
            {finding.outcome === 'cantTell' && finding.missing.length > 0
              ? `not told: ${finding.missing.join(', ')}`
              : finding.why}
          </span>
        </span>
      </button>
    </li>
  );
}

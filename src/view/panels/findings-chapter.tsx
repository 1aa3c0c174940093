import { useEffect, useMemo, useRef } from 'react';
import { nameFindings } from '../../drawing/labels/finding-names.ts';
import { acknowledged } from '../../report/acknowledged.ts';
import type { Finding } from '../../report/finding.ts';
import { openFinding } from '../app/screen.ts';
import { isFocusLost } from '../app/use-focus-back.ts';
import { useEditor, useEditorState, useReport, useScreen } from '../app/use-session.ts';
import { FindingMark } from '../look/mark.tsx';
import { FindingDetail } from './finding-detail.tsx';
import { goToFinding } from './go-to-finding.ts';
import './findings.css';

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
  const list = useRef<HTMLUListElement>(null);
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
  return (
    <>
      {open && <FindingDetail key={open.key} finding={open} name={names.get(open.key) ?? ''} />}
      {open && rest.length > 0 && <h3 className="next-title">Next</h3>}
      {findings.length === 0 && (
        <p className="empty-chapter">
          Nothing found in what is drawn. Limits are compared, not approved: the registered engineer decides.
        </p>
      )}
      <ul className="finding-list" ref={list}>
        {rest.map((f) => (
          <FindingRow key={f.key} finding={f} name={names.get(f.key) ?? ''} />
        ))}
      </ul>
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

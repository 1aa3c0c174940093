import type { Issue } from '../../plan/records/basis.ts';
import { useEditorState } from '../app/use-session.ts';
import { TextBox } from '../panels/inspect/text-box.tsx';
import { useChange } from '../panels/inspect/use-change.ts';

const EMPTY: Issue = { number: '', revision: '', reason: '', createdBy: '', on: null };

const FIELDS: readonly { readonly key: 'number' | 'revision' | 'reason' | 'createdBy'; readonly label: string }[] = [
  { key: 'number', label: 'Number' },
  { key: 'revision', label: 'Revision' },
  { key: 'reason', label: 'Reason for the revision' },
  { key: 'createdBy', label: 'Created by' },
];

/** What the title block tells. It is kept with the job; what is left empty prints as not told. */
export function IssueFields({ today }: { readonly today: string }) {
  const plan = useEditorState((s) => s.plan);
  const { disabled, run } = useChange();
  const issue = { ...EMPTY, ...plan.job.issue };
  const set = (change: Partial<Issue>): boolean => run('plan.rename', { job: { issue: { ...issue, ...change } } });
  return (
    <details className="print-fields">
      <summary>Title block</summary>
      <TextBox label="Title" value={plan.name} disabled={disabled} onSet={(name) => run('plan.rename', { name })} />
      <TextBox
        label="Legal owner"
        value={plan.job.owner}
        disabled={disabled}
        onSet={(owner) => run('plan.rename', { job: { owner } })}
      />
      {FIELDS.map(({ key, label }) => (
        <TextBox key={key} label={label} value={issue[key]} disabled={disabled} onSet={(v) => set({ [key]: v })} />
      ))}
      <label className="field">
        <span className="field-label">Date of issue</span>
        <span className="field-box">
          <input
            type="date"
            readOnly={disabled}
            value={issue.on ?? today}
            onChange={(e) => set({ on: e.target.value === '' ? null : e.target.value })}
          />
        </span>
      </label>
      <p className="field-help">Approved by is left open: it is for whoever answers for the work.</p>
    </details>
  );
}

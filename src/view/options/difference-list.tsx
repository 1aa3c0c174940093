import { useEffect, useMemo, useRef, useState } from 'react';
import type { Case, Plan } from '../../plan/plan.ts';
import type { Difference } from '../../report/tally.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { SelectBox } from '../panels/inspect/select-box.tsx';
import { keyed } from '../panels/keyed.ts';
import { casesOf } from '../strip/cases.ts';
import { showDifference } from './show-difference.ts';
import { caseId, useDifferences } from './use-compare.ts';

const WORD: Readonly<Record<Difference['kind'], string>> = {
  new: 'new',
  gone: 'gone',
  moved: 'moved',
  changed: 'changed',
};

function useCases() {
  const plan = useEditorState((s) => s.plan);
  return useMemo(() => casesOf(plan), [plan]);
}

/** Which two cases to begin with: before the work and what is looked at, or two options where a second is looked at. */
function firstPair(plan: Plan, chosen: Case): readonly [string, string] {
  const cases = casesOf(plan).map((c) => caseId(c.chosen));
  const after = chosen.when === 'after' ? caseId(chosen) : (cases[1] ?? 'before');
  return ['before', after];
}

/** What differs between two cases, by system. A tap shows one on the drawing, with the other case faint under it. */
export function DifferenceList() {
  const plan = useEditorState((s) => s.plan);
  const chosen = useEditorState((s) => s.chosen);
  const cases = useCases();
  const [asked, setAsked] = useState<readonly [string, string] | null>(null);
  const [from, to] = asked ?? firstPair(plan, chosen);
  const caseOf = (id: string): Case => (cases.find((c) => caseId(c.chosen) === id) ?? cases[0] ?? BEFORE).chosen;
  const choices = cases.map((c) => ({ value: caseId(c.chosen), label: c.label }));
  if (cases.length < 2) return null;
  return (
    <section className="differences" aria-label="What differs">
      <h3>What differs</h3>
      <div className="pair">
        <SelectBox label="From" choices={choices} chosen={from} onChoose={(v) => setAsked([v ?? 'before', to])} />
        <SelectBox label="To" choices={choices} chosen={to} onChoose={(v) => setAsked([from, v ?? 'before'])} />
      </div>
      <Differences from={caseOf(from)} to={caseOf(to)} />
    </section>
  );
}

const BEFORE = { chosen: { option: null, when: 'before' } } as const;

function Differences({ from, to }: { readonly from: Case; readonly to: Case }) {
  const { all, stale, failed } = useDifferences(from, to);
  const systems = [...new Set((all ?? []).map((d) => d.system))];
  if (failed !== null) return <p className="field-wrong">It could not be worked out: {failed}</p>;
  if (all === null) return <p className="options-says">Working it out.</p>;
  if (all.length === 0) return <p className="options-says">Nothing: they are the same.</p>;
  return (
    <div aria-busy={stale} data-stale={stale}>
      {systems.map((system) => (
        <section key={system} aria-label={system}>
          <h4>{system}</h4>
          <ul className="difference-list">
            {keyed(
              all.filter((d) => d.system === system),
              (d) => `${d.kind} ${d.name} ${d.say}`,
            ).map(({ key, item }) => (
              <li key={key}>
                <DifferenceRow of={item} from={from} to={to} />
              </li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}

/** The sheet of a phone has come down. */
const LOWERED_MS = 250;

function DifferenceRow({ of, from, to }: { readonly of: Difference; readonly from: Case; readonly to: Case }) {
  const editor = useEditor();
  const selection = useEditorState((s) => s.selection);
  const ids = of.after.length === 0 ? of.before : of.after;
  const shown = selection.length > 0 && selection.every((s) => ids.includes(s.id));
  const row = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (!shown) return;
    // On a phone the sheet is lowered meanwhile.
    const timer = setTimeout(() => row.current?.scrollIntoView({ block: 'nearest' }), LOWERED_MS);
    return () => clearTimeout(timer);
  }, [shown]);
  return (
    <button
      ref={row}
      type="button"
      className="difference-row"
      aria-pressed={shown}
      onClick={() => showDifference(editor, of, from, to)}
    >
      <span className="difference-kind" data-kind={of.kind}>
        {WORD[of.kind]}
      </span>
      <span>
        <span className="difference-name">{of.name}</span>
        {of.say !== '' && <span className="difference-say">{of.say}</span>}
      </span>
    </button>
  );
}

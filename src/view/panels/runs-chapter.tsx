import { useMemo } from 'react';
import { sayTubeSize } from '../../catalogue/tubes.ts';
import type { Plan } from '../../plan/plan.ts';
import type { LegFacts } from '../../report/report.ts';
import { useEditor, useEditorState, useReport } from '../app/use-session.ts';
import { nameOf } from './name-of.ts';
import { ServiceTag } from './service-tag.tsx';
import './runs.css';

const metres = (mm: number): string => (mm / 1000).toFixed(1);

/** "8.9 to 10.2 m", "12.9 m". */
export function sayLength(of: { readonly lo: number; readonly hi: number }): string {
  const [lo, hi] = [metres(of.lo), metres(of.hi)];
  return lo === hi ? `${lo} m` : `${lo} to ${hi} m`;
}

interface RunSum {
  readonly id: string;
  readonly legs: readonly LegFacts[];
  readonly lo: number;
  readonly hi: number;
  readonly sizes: readonly string[];
}

export function runSums(plan: Plan, facts: readonly LegFacts[]): RunSum[] {
  return Object.values(plan.runs).map((run) => {
    const legs = facts.filter((f) => f.run === run.id);
    const sizes = new Set<string>();
    for (const part of [...Object.values(plan.legs), ...Object.values(plan.stretches)]) {
      if (part.run === run.id) sizes.add(sayTubeSize(part.tube));
    }
    const sum = (pick: 'lo' | 'hi'): number => legs.reduce((total, l) => total + l.lengthMm[pick], 0);
    return { id: run.id, legs, lo: sum('lo'), hi: sum('hi'), sizes: [...sizes] };
  });
}

/** Every run of the plan with what it is made of; a tap chooses it and shows its legs. */
export function RunsChapter() {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const selection = useEditorState((s) => s.selection);
  const facts = useReport((s) => s.report?.legs);
  const sums = useMemo(() => runSums(plan, facts ?? []), [plan, facts]);
  if (sums.length === 0) return <p className="empty-chapter">No run yet: say one in words, or draw one with Run.</p>;
  return (
    <ul className="run-list">
      {sums.map((sum) => {
        const run = plan.runs[sum.id];
        const chosen = selection.some((s) => s.map === 'runs' && s.id === sum.id);
        return (
          <li key={sum.id}>
            <button
              type="button"
              className={`run-row${chosen ? ' chosen' : ''}`}
              aria-pressed={chosen}
              onClick={() => editor.select([{ map: 'runs', id: sum.id }])}
            >
              <ServiceTag service={run?.service ?? ''} />
              <span className="run-name">{nameOf(plan, { map: 'runs', id: sum.id })}</span>
              <span className="run-length">{sum.legs.length > 0 ? sayLength(sum) : ''}</span>
              <span className="run-under">{sum.sizes.join(', ')}</span>
            </button>
          </li>
        );
      })}
    </ul>
  );
}

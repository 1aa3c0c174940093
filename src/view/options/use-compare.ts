import { useEffect, useState } from 'react';
import type { Case, Plan } from '../../plan/plan.ts';
import type { Comparer, Difference, Tally } from '../../report/tally.ts';
import { startComparer } from '../../worker/comparer.ts';
import { useEditorState } from '../app/use-session.ts';

let port: Comparer | null = null;
/** Started with the first comparison that is asked for. */
const comparer = (): Comparer => {
  port ??= startComparer();
  return port;
};

export const caseId = (c: Case): string => (c.when === 'before' ? 'before' : `after ${c.option ?? ''}`);
const why = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** What was worked out of a plan while it stays as it is. */
const known = new WeakMap<Plan, Map<string, Tally>>();

function knownOf(plan: Plan): Map<string, Tally> {
  const there = known.get(plan) ?? new Map<string, Tally>();
  known.set(plan, there);
  return there;
}

export interface Column {
  readonly chosen: Case;
  /** The last figures there are; null while the first are on their way. */
  readonly tally: Tally | null;
  /** The drawing is newer than the figures. */
  readonly stale: boolean;
}

interface Tallied {
  readonly columns: readonly Column[];
  readonly failed: string | null;
}

/**
 * Figures of some cases (a list that stays the same one while they do), one after the other, worked out while somebody looks at them and again when the plan has
 * changed. Until the fresh ones come, the last ones stand and are told to be stale.
 */
export function useTallies(cases: readonly Case[]): Tallied {
  const plan = useEditorState((s) => s.plan);
  const [last, setLast] = useState<ReadonlyMap<string, { readonly plan: Plan; readonly tally: Tally }>>(new Map());
  const [failed, setFailed] = useState<string | null>(null);
  useEffect(() => {
    let gone = false;
    const work = async (): Promise<void> => {
      const there = knownOf(plan);
      for (const chosen of cases) {
        const id = caseId(chosen);
        const tally = there.get(id) ?? (await comparer().tally(plan, chosen));
        there.set(id, tally);
        if (gone) return;
        setLast((all) => new Map(all).set(id, { plan, tally }));
      }
    };
    setFailed(null);
    work().catch((error) => !gone && setFailed(why(error)));
    return () => {
      gone = true;
    };
  }, [plan, cases]);
  const columns = cases.map((chosen): Column => {
    const found = last.get(caseId(chosen));
    return { chosen, tally: found?.tally ?? null, stale: found?.plan !== plan };
  });
  return { columns, failed };
}

export interface Differing {
  /** Null while the first are on their way. */
  readonly all: readonly Difference[] | null;
  readonly stale: boolean;
  readonly failed: string | null;
}

/** What differs between two cases, kept up while somebody looks at it. */
export function useDifferences(from: Case, to: Case): Differing {
  const plan = useEditorState((s) => s.plan);
  const asked = `${caseId(from)}|${caseId(to)}`;
  const [last, setLast] = useState<{
    readonly plan: Plan;
    readonly asked: string;
    readonly all: readonly Difference[];
  }>();
  const [failed, setFailed] = useState<string | null>(null);
  useEffect(() => {
    let gone = false;
    setFailed(null);
    comparer()
      .differences(plan, from, to)
      .then((all) => !gone && setLast({ plan, asked, all }))
      .catch((error) => !gone && setFailed(why(error)));
    return () => {
      gone = true;
    };
  }, [plan, from, to, asked]);
  const here = last?.asked === asked ? last : undefined;
  return { all: here?.all ?? null, stale: here?.plan !== plan, failed };
}

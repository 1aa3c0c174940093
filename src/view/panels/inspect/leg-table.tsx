import { useMemo } from 'react';
import { sayTubeSize } from '../../../catalogue/tubes.ts';
import { fittingAt } from '../../../network/fitting-at.ts';
import { buildNetwork } from '../../../network/graph.ts';
import { orderedLegs } from '../../../network/runs.ts';
import type { Case, Plan } from '../../../plan/plan.ts';
import type { LegFacts } from '../../../report/report.ts';
import { useEditor, useEditorState, useReport } from '../../app/use-session.ts';
import { sayLength } from '../runs-chapter.tsx';
import { sayFitting } from './say-fitting.ts';
import '../runs.css';

export interface TableLeg {
  readonly id: string;
  /** What stands at its far end, as it is asked for at a counter; empty where the pipe only goes on. */
  readonly endsAt: string;
}

/** Legs and unseen stretches of a run as they are told, source first, each with what it ends at. */
export function legsInOrder(plan: Plan, chosen: Case, run: string): readonly TableLeg[] {
  const network = buildNetwork(plan, chosen);
  const told = orderedLegs(network, run);
  const endOf = (vertex: string): string => {
    const fitting = fittingAt(network, vertex);
    return fitting.is === 'plain' || fitting.is === 'none' ? '' : sayFitting(fitting).replace(/\.$/, '');
  };
  return [
    ...told.steps.map((s) => ({ id: s.edge, endsAt: endOf(s.to) })),
    ...told.aside.map((id) => ({ id, endsAt: '' })),
  ];
}

const between = (lo: number, hi: number | null, digits: number): string => {
  const [low, high] = [lo.toFixed(digits), hi?.toFixed(digits)];
  return high === undefined || high === low ? low : `${low} to ${high}`;
};

/** Legs of a run: length, what it counts as with its fittings, gas drop, and what stands at its end. A tap chooses the leg. */
export function LegTable({ run }: { readonly run: string }) {
  const plan = useEditorState((s) => s.plan);
  const chosen = useEditorState((s) => s.chosen);
  const facts = useReport((s) => s.report?.legs);
  const legs = useMemo(() => legsInOrder(plan, chosen, run), [plan, chosen, run]);
  if (legs.length === 0) return null;
  const of = (id: string) => facts?.find((f) => f.leg === id);
  const counts = legs.some(({ id }) => of(id)?.equivalentM != null);
  const drops = legs.some(({ id }) => of(id)?.dropMbar != null);
  return (
    <table className="leg-table">
      <thead>
        <tr>
          <th scope="col">leg</th>
          <th scope="col">length</th>
          {counts && <th scope="col">counts as</th>}
          {drops && <th scope="col">mbar</th>}
        </tr>
      </thead>
      {legs.map((leg, i) => (
        <LegRows key={leg.id} leg={leg} index={i} facts={of(leg.id)} counts={counts} drops={drops} />
      ))}
    </table>
  );
}

interface RowProps {
  readonly leg: TableLeg;
  readonly index: number;
  readonly facts: LegFacts | undefined;
  readonly counts: boolean;
  readonly drops: boolean;
}

function LegRows({ leg, index, facts, counts, drops }: RowProps) {
  const editor = useEditor();
  const record = useEditorState((s) => s.plan.legs[leg.id]);
  const stretch = useEditorState((s) => s.plan.stretches[leg.id]);
  const tube = record?.tube ?? stretch?.tube;
  const eq = facts?.equivalentM;
  const drop = facts?.dropMbar;
  const choose = (): void => editor.select([{ map: record ? 'legs' : 'stretches', id: leg.id }]);
  return (
    <tbody>
      <tr>
        <td>
          <button type="button" onClick={choose}>
            {index + 1}: {tube ? sayTubeSize(tube) : '?'}
            {record ? '' : ', unseen'}
          </button>
        </td>
        <td>{facts ? sayLength(facts.lengthMm) : ''}</td>
        {counts && <td>{eq ? `${between(eq.lo, eq.hi, 1)} m` : ''}</td>}
        {drops && <td>{drop ? between(drop.lo, drop.hi, 2) : ''}</td>}
      </tr>
      {leg.endsAt !== '' && (
        <tr className="leg-then">
          <td colSpan={2 + Number(counts) + Number(drops)}>
            then {leg.endsAt.charAt(0).toLowerCase() + leg.endsAt.slice(1)}
          </td>
        </tr>
      )}
    </tbody>
  );
}

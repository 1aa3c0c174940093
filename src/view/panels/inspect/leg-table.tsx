import { useMemo } from 'react';
import { sayTubeSize } from '../../../catalogue/tubes.ts';
import { buildNetwork } from '../../../network/graph.ts';
import { orderedLegs } from '../../../network/runs.ts';
import { useEditor, useEditorState, useReport } from '../../app/use-session.ts';
import { sayLength } from '../runs-chapter.tsx';
import '../runs.css';

/** Legs of a run as they are told, source first: length, equivalent length and drop. A tap chooses the leg. */
export function LegTable({ run }: { readonly run: string }) {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const chosen = useEditorState((s) => s.chosen);
  const facts = useReport((s) => s.report?.legs);
  const ids = useMemo(() => {
    const told = orderedLegs(buildNetwork(plan, chosen), run);
    return [...told.steps.map((s) => s.edge), ...told.aside];
  }, [plan, chosen, run]);
  if (ids.length === 0) return null;
  const of = (id: string) => facts?.find((f) => f.leg === id);
  const drops = ids.some((id) => of(id)?.dropMbar != null);
  return (
    <table className="leg-table">
      <thead>
        <tr>
          <th scope="col">leg</th>
          <th scope="col">length</th>
          <th scope="col">counts as</th>
          {drops && <th scope="col">drop, mbar</th>}
        </tr>
      </thead>
      <tbody>
        {ids.map((id, i) => {
          const fact = of(id);
          const leg = plan.legs[id];
          const tube = leg?.tube ?? plan.stretches[id]?.tube;
          const eq = fact?.equivalentM;
          const drop = fact?.dropMbar;
          return (
            <tr key={id}>
              <td>
                <button type="button" onClick={() => editor.select([{ map: leg ? 'legs' : 'stretches', id }])}>
                  {i + 1}: {tube ? sayTubeSize(tube) : '?'}
                  {leg ? '' : ', unseen'}
                </button>
              </td>
              <td>{fact ? sayLength(fact.lengthMm) : ''}</td>
              <td>
                {eq
                  ? `${eq.lo.toFixed(1)}${eq.hi === null || eq.hi.toFixed(1) === eq.lo.toFixed(1) ? '' : ` to ${eq.hi.toFixed(1)}`} m`
                  : ''}
              </td>
              {drops && (
                <td>
                  {drop
                    ? `${drop.lo.toFixed(2)}${drop.hi === null || drop.hi.toFixed(2) === drop.lo.toFixed(2) ? '' : ` to ${drop.hi.toFixed(2)}`}`
                    : ''}
                </td>
              )}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

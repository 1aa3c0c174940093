import { hazardOf, hazards } from '../../catalogue/hazards.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { lowerSheet } from '../app/screen.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';

/** Hazards that are pinned, the worst first, those that were tested and are not there last. */
export function hazardsOf(plan: Plan): readonly Point[] {
  const rank = (p: Point): number =>
    (p.fields.tested === 'clear' ? hazards.length : 0) + hazards.indexOf(hazardOf(p.fields.what));
  return Object.values(plan.points)
    .filter((p) => p.kind === 'hazard')
    .sort((a, b) => rank(a) - rank(b) || (a.id < b.id ? -1 : 1));
}

export function answerHazards(all: readonly Point[]): string {
  const standing = all.filter((p) => p.fields.tested !== 'clear');
  if (standing.length === 0) return all.length === 0 ? 'none pinned' : 'all clear';
  return [...new Set(standing.map((p) => hazardOf(p.fields.what).label))].join(', ');
}

const TESTED: Readonly<Record<string, string>> = {
  asked: 'test asked for',
  found: 'confirmed',
  clear: 'tested, not there',
};

/** Everything pinned on the plan that hurts whoever drills into it, with what to do first. */
export function Hazards() {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const disabled = useEditorState((s) => s.readOnly !== null);
  const all = hazardsOf(plan);
  const pin = (): void => {
    if (disabled) return;
    editor.setInHand({ pointKind: 'hazard', thing: null });
    editor.setTool('point');
    lowerSheet();
  };
  return (
    <>
      {all.length === 0 && (
        <p className="fold-says">
          None is pinned. In an older house look for asbestos in flues and boards, lead, cables and old iron before
          anything is drilled.
        </p>
      )}
      <ul className="job-lines">
        {all.map((p) => {
          const hazard = hazardOf(p.fields.what);
          const clear = p.fields.tested === 'clear';
          const tested = TESTED[String(p.fields.tested)] ?? 'not looked into';
          const where = typeof p.fields.where === 'string' ? p.fields.where : '';
          return (
            <li key={p.id}>
              <button type="button" className="job-line" onClick={() => editor.select([{ map: 'points', id: p.id }])}>
                <span className="line-top">
                  <span className="line-what">{p.fields.what === null ? p.name : hazard.label}</span>
                  <span className={clear ? 'line-figure' : 'line-figure line-open'}>{tested}</span>
                </span>
                <span className="line-more">
                  {[where, plan.storeys[p.storey]?.name ?? ''].filter((t) => t !== '').join('; ')}
                </span>
                {!clear && <span className="hazard-caution">{hazard.caution}</span>}
              </button>
            </li>
          );
        })}
      </ul>
      <div className="key-row">
        <button type="button" className="key slight" aria-disabled={disabled} onClick={pin}>
          Pin a hazard: tap the plan
        </button>
      </div>
    </>
  );
}

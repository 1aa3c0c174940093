import { useEditor, useEditorState } from '../app/use-session.ts';

/** One key a floor, highest on top; nothing where there is only one. */
export function FloorSwitch() {
  const editor = useEditor();
  const storeys = useEditorState((s) => s.plan.storeys);
  const shown = useEditorState((s) => (s.panes.plan.view.kind === 'plan' ? s.panes.plan.view.storey : ''));
  const sorted = Object.values(storeys).sort((a, b) => b.floorMm - a.floorMm);
  if (sorted.length < 2) return null;
  return (
    <fieldset className="plain-set floor-switch">
      <legend className="out-of-sight">Floor</legend>
      {sorted.map((s) => (
        <button
          key={s.id}
          type="button"
          className="key slight"
          aria-pressed={s.id === shown}
          onClick={() => editor.setStorey(s.id)}
        >
          {s.name}
        </button>
      ))}
    </fieldset>
  );
}

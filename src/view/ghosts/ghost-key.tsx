import { useEffect, useId, useMemo, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { ghostChoices, ghostTitle } from './ghost-choices.ts';
import { ghosts, sameCase } from './ghosts.ts';
import './ghosts.css';

/** With the other side in view, the one that was looked at before becomes the faint one: the two change places. */
function useChangingPlaces(): void {
  const editor = useEditor();
  useEffect(
    () =>
      editor.store.subscribe((s, before) => {
        if (s.chosen === before.chosen) return;
        const { other } = ghosts.getState();
        if (other && sameCase(other, s.chosen)) ghosts.setState({ other: before.chosen });
      }),
    [editor],
  );
}

/** One key for all that is shown faint. What it says is the title of it; the list opens over it. */
export default function GhostKey() {
  const plan = useEditorState((s) => s.plan);
  const chosen = useEditorState((s) => s.chosen);
  const storey = useEditorState((s) => (s.panes.plan.view.kind === 'plan' ? s.panes.plan.view.storey : ''));
  const shown = useStore(ghosts);
  const [open, setOpen] = useState(false);
  const box = useRef<HTMLDivElement>(null);
  const key = useRef<HTMLButtonElement>(null);
  const id = useId();
  useChangingPlaces();
  const choices = useMemo(() => ghostChoices(plan, storey, chosen, shown), [plan, storey, chosen, shown]);
  const title = ghostTitle(choices);
  useEffect(() => {
    if (!open) return;
    const outside = (e: PointerEvent): void => {
      if (e.target instanceof Node && !box.current?.contains(e.target)) setOpen(false);
    };
    const close = (e: KeyboardEvent): void => {
      if (e.key !== 'Escape') return;
      e.preventDefault();
      e.stopPropagation();
      setOpen(false);
      key.current?.focus();
    };
    document.addEventListener('pointerdown', outside, true);
    document.addEventListener('keydown', close, true);
    return () => {
      document.removeEventListener('pointerdown', outside, true);
      document.removeEventListener('keydown', close, true);
    };
  }, [open]);
  if (choices.length === 0) return null;
  return (
    <div className="ghosts" ref={box}>
      {open && (
        <fieldset className="plain-set ghost-list" id={id}>
          <legend>Shown faint</legend>
          {choices.map((c) => (
            <label key={c.key} className="ghost-row">
              <input type="checkbox" checked={c.on} onChange={() => ghosts.setState(c.to)} />
              <span>{c.label}</span>
            </label>
          ))}
        </fieldset>
      )}
      <button
        ref={key}
        type="button"
        className="key slight ghost-key"
        aria-expanded={open}
        aria-controls={id}
        title={title ?? 'What is shown faint under the drawing'}
        onClick={() => setOpen(!open)}
      >
        <svg className="ghost-sample" viewBox="0 0 22 14" width="22" height="14" aria-hidden="true">
          <path d="M1 3h13v10" />
          <path d="M4 6h7v7" />
        </svg>
        <span>{title ?? 'Faint'}</span>
      </button>
    </div>
  );
}

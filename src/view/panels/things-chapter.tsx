import { useEffect, useMemo, useRef, useState } from 'react';
import type { Selected } from '../../editor/editor-api.ts';
import type { Plan } from '../../plan/plan.ts';
import { sayThing } from '../a11y/say-thing.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { nameOf } from './name-of.ts';
import './things.css';

const GROUPS: readonly {
  readonly map: 'points' | 'runs' | 'rooms' | 'walls' | 'openings' | 'voids' | 'items' | 'roofs' | 'grounds';
  readonly word: string;
}[] = [
  { map: 'points', word: 'Points' },
  { map: 'runs', word: 'Runs' },
  { map: 'items', word: 'Valves and items' },
  { map: 'rooms', word: 'Rooms' },
  { map: 'voids', word: 'Voids' },
  { map: 'openings', word: 'Openings' },
  { map: 'walls', word: 'Walls' },
  { map: 'roofs', word: 'Roofs' },
  { map: 'grounds', word: 'Ground' },
];

interface Thing extends Selected {
  readonly name: string;
  readonly says: string;
  readonly head: string | null;
}

/** Everything on the drawing in one list, by what it is: the same things a hand could tap. */
export function thingsOf(plan: Plan): Thing[] {
  return GROUPS.flatMap(({ map, word }) =>
    Object.keys(plan[map])
      .map((id) => ({ map, id, name: nameOf(plan, { map, id }), says: sayThing(plan, { map, id }) }))
      .sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : a.id < b.id ? -1 : 1))
      .map((thing, i) => ({ ...thing, head: i === 0 ? word : null })),
  );
}

/** The drawing as a list: one stop for the tab key, arrows within, Enter chooses, Escape goes back to the drawing. */
export function ThingsChapter() {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const selection = useEditorState((s) => s.selection);
  const things = useMemo(() => thingsOf(plan), [plan]);
  const [at, setAt] = useState(0);
  const list = useRef<HTMLUListElement>(null);
  const moved = useRef(false);
  const here = Math.min(at, Math.max(0, things.length - 1));
  useEffect(() => {
    if (!moved.current) return;
    moved.current = false;
    list.current?.querySelectorAll<HTMLElement>('.thing')[here]?.focus();
  }, [here]);
  if (things.length === 0) return <p className="empty-chapter">Nothing is drawn yet.</p>;
  const go = (to: number): void => {
    moved.current = true;
    setAt((to + things.length) % things.length);
  };
  return (
    <ul
      className="things"
      ref={list}
      onKeyDown={(e) => {
        if (e.key === 'ArrowDown') go(here + 1);
        else if (e.key === 'ArrowUp') go(here - 1);
        else if (e.key === 'Home') go(0);
        else if (e.key === 'End') go(things.length - 1);
        else if (e.key === 'Escape') document.querySelector<HTMLElement>('[data-pane="plan"]')?.focus();
        else return;
        e.preventDefault();
        e.stopPropagation();
      }}
    >
      {things.map((t, i) => (
        <li key={`${t.map}${t.id}`}>
          {t.head !== null && <h3 className="things-head">{t.head}</h3>}
          <button
            type="button"
            className="thing"
            tabIndex={i === here ? 0 : -1}
            aria-pressed={selection.some((s) => s.map === t.map && s.id === t.id)}
            onFocus={() => setAt(i)}
            onClick={() => editor.select([{ map: t.map, id: t.id }])}
          >
            <span className="thing-name">{t.name}</span>
            {t.says !== '' && <span className="thing-says">{t.says}</span>}
          </button>
        </li>
      ))}
    </ul>
  );
}

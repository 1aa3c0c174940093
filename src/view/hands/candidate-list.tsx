import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from 'react';
import type { Selected } from '../../editor/editor-api.ts';
import { sayAloud } from '../a11y/aloud.tsx';
import { useEditor, useEditorState } from '../app/use-session.ts';
import type { PaneName } from '../stage/draw-counts.ts';
import { toPx } from '../stage/frame-of.ts';
import { Beat } from './beat.tsx';
import { candidateRows, sayRow } from './candidate-rows.ts';
import { LIST, listPlace } from './list-place.ts';
import { touched } from './touched.ts';

interface Open {
  readonly of: readonly Selected[];
  readonly pane: PaneName;
  /** px of the pane. */
  readonly x: number;
  readonly y: number;
  /** The tap was made with the cross: the keys go on in the list. */
  readonly byKey: boolean;
}

/** While things lie over one another under the last tap: a list of them beside it, closed by a tap elsewhere. */
export function CandidateList() {
  const [open, close] = useOpen();
  const plan = useEditorState((s) => s.plan);
  const rows = useMemo(() => (open ? candidateRows(plan, open.of) : []), [plan, open]);
  return open && rows.length > 0 ? <List open={open} rows={rows} close={close} /> : null;
}

/** Opened by a tap that met several things; anything else that is done shuts it, but for a tap at the same place. */
function useOpen(): readonly [Open | null, () => void] {
  const editor = useEditor();
  const [open, setOpen] = useState<Open | null>(null);
  useEffect(
    () =>
      editor.store.subscribe((s, was) => {
        if (s.candidates !== was.candidates && s.candidates.length > 1) {
          const { cursor } = s;
          // The pointer is told of a moment after the tool has had it.
          queueMicrotask(() => {
            const last = touched.getState().last;
            const pane = cursor ? s.panes[cursor.pane] : null;
            if (cursor && pane) {
              const [x, y] = toPx(pane, cursor.at);
              setOpen({ of: s.candidates, pane: cursor.pane, x, y, byKey: true });
            } else if (last) setOpen({ of: s.candidates, pane: last.pane, x: last.x, y: last.y, byKey: false });
          });
          return;
        }
        const elsewhere =
          s.selection !== was.selection && !s.selection.some((c) => s.candidates.some((o) => o.id === c.id));
        const looks = s.panes.plan.camera !== was.panes.plan.camera || s.panes.face?.camera !== was.panes.face?.camera;
        if (s.candidates.length === 0 || elsewhere || looks || s.draft !== was.draft) setOpen(null);
      }),
    [editor],
  );
  return [open, () => setOpen(null)];
}

interface ListProps {
  readonly open: Open;
  readonly rows: ReturnType<typeof candidateRows>;
  readonly close: () => void;
}

const paneOf = (name: PaneName): HTMLElement | null => document.querySelector(`.pane-box[data-pane="${name}"]`);

function List({ open, rows, close }: ListProps) {
  const editor = useEditor();
  const [chosen] = useEditorState((s) => s.selection);
  const box = useRef<HTMLFieldSetElement>(null);
  const place = usePlace(open, rows.length);
  useShut(box, close);
  useEffect(() => {
    sayAloud(`${rows.length} here: ${rows.map(sayRow).join('; ')}.`);
    if (open.byKey) box.current?.querySelector<HTMLElement>('button[aria-pressed="true"], button')?.focus();
  }, [open, rows]);
  const back = (): void => {
    if (box.current?.contains(document.activeElement)) paneOf(open.pane)?.focus({ preventScroll: true });
    close();
  };
  const key = (e: KeyboardEvent): void => {
    const all = [...(box.current?.querySelectorAll('button') ?? [])];
    const at = all.indexOf(document.activeElement as HTMLButtonElement);
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: all.length - 1 }[e.key];
    if (to === undefined || at < 0) return;
    e.preventDefault();
    e.stopPropagation();
    all[(to + all.length) % all.length]?.focus();
  };
  return (
    <fieldset
      ref={box}
      className="plain-set under-tap"
      style={{ left: place.left, top: place.top, width: LIST.width, maxHeight: place.height }}
      onKeyDown={key}
    >
      <legend className="out-of-sight">Under the tap</legend>
      <p aria-hidden="true">{rows.length} here, highest first</p>
      <div>
        {rows.map((r) => (
          <button
            key={`${r.chooses.map}${r.chooses.id}`}
            type="button"
            aria-pressed={chosen !== undefined && r.holds.includes(chosen.id)}
            aria-label={sayRow(r)}
            onClick={() => {
              editor.select([r.chooses]);
              back();
            }}
          >
            <span className="under-tap-beat">{r.service !== null && <Beat service={r.service} />}</span>
            <span className="under-tap-name">
              {r.name}
              {r.more !== '' && <small>{r.more}</small>}
            </span>
            {r.height !== null && <span className="under-tap-height">{r.height}</span>}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

/** Beside the tap, in px of the box that holds the panes. */
function usePlace(open: Open, rows: number): ReturnType<typeof listPlace> {
  return useMemo(() => {
    const pane = paneOf(open.pane)?.getBoundingClientRect();
    const room = document.querySelector('.panes')?.getBoundingClientRect();
    if (!pane || !room) return { left: 0, top: 0, height: 0 };
    const gloves = document.documentElement.dataset.gloves === 'yes';
    const at = [pane.left - room.left + open.x, pane.top - room.top + open.y] as const;
    return listPlace(...at, rows, room, gloves ? LIST.gloveRow : LIST.row);
  }, [open, rows]);
}

/** Shut by Escape before anything else hears of it, and by a press anywhere but on it and on the drawing. */
function useShut(box: React.RefObject<HTMLElement | null>, close: () => void): void {
  const editor = useEditor();
  const shut = useRef(close);
  shut.current = close;
  useEffect(() => {
    const onKey = (e: globalThis.KeyboardEvent): void => {
      if (e.key !== 'Escape') return;
      e.preventDefault();
      e.stopPropagation();
      const inside = box.current?.contains(document.activeElement);
      shut.current();
      if (inside) paneOf(editor.store.getState().panes.active)?.focus({ preventScroll: true });
    };
    const onPress = (e: PointerEvent): void => {
      const { target } = e;
      // A press on the drawing is the next tap: it says by itself what lies there.
      if (target instanceof Element && !box.current?.contains(target) && !target.closest('.pane-box')) shut.current();
    };
    window.addEventListener('keydown', onKey, true);
    window.addEventListener('pointerdown', onPress, true);
    return () => {
      window.removeEventListener('keydown', onKey, true);
      window.removeEventListener('pointerdown', onPress, true);
    };
  }, [box, editor]);
}
